package lyewright.cli;

import lyewright.makingsheet.MakingSheet;
import lyewright.words.ChemistryWords;
import lyewright.words.Labelled;

/** The part of a sheet that says why: superfat and how sure it is, alkali, lye, water, salt, density. */
final class ChemistryText {

    private static final int LABEL = 21;

    private ChemistryText() {}

    static void write(MakingSheet sheet, Page page) {
        page.heading("Chemistry");
        pair(ChemistryWords.superfat(sheet), page);
        BandText.write(sheet.band(), LABEL, page);
        ChemistryWords.of(sheet).forEach(line -> pair(line, page));
    }

    private static void pair(Labelled line, Page page) {
        page.pair(line.label(), line.text(), LABEL);
    }
}
