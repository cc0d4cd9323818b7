package lyewright.cli;

import lyewright.makingsheet.SuperfatBand;
import lyewright.words.BandWords;

/** The superfat as a band on a scale, what its width hangs on, and what would narrow it. */
final class BandText {

    private final SuperfatBand band;
    private final BandWords words;
    private final int label;
    private final Page page;

    private BandText(SuperfatBand band, int label, Page page) {
        this.band = band;
        this.words = new BandWords(band);
        this.label = label;
        this.page = page;
    }

    /** What each sheet and each look at a superfat says of how sure it is, labels as wide as those around it. */
    static void write(SuperfatBand band, int label, Page page) {
        new BandText(band, label, page).write();
    }

    private void write() {
        words.hangsOn().ifPresent(told -> {
            BandScale.of(band.worstPercent(), band.lowPercent(), band.highPercent(), band.sheetPercent())
                    .ifPresentOrElse(this::draw, this::tell);
            page.pair("It hangs on", told, label);
        });
        words.takenAsExact().ifPresent(told -> page.pair("Taken as exact", told, label));
        words.certificate().ifPresent(told -> page.pair("A certificate", told, label));
    }

    private void draw(BandScale drawing) {
        page.pair("How far off", "19 times in 20 it lies between [ and ]", label);
        drawing.lines().forEach(line -> page.line(" ".repeat(label) + line));
        page.line(" ".repeat(label) + "# by the sheet   x all at its worst at once   left of 0: alkali left over");
    }

    private void tell() {
        page.pair("How far off", words.inNumbers() + ": too far off to draw.", label);
    }
}
