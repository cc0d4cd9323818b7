package lyewright.cli;

import java.util.Locale;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.Labelled;
import lyewright.words.Safety;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;

/** A making sheet as a page of text: what it makes, what to beware of, what to weigh, how to make it, and why. */
final class SheetText {

    private static final int LABEL = 17;
    private static final int SAFETY_LABEL = 11;

    private final MakingSheet sheet;
    private final SheetCautions cautions;
    private final Page page = new Page();

    private SheetText(MakingSheet sheet) {
        this.sheet = sheet;
        this.cautions = SheetCautions.of(sheet);
    }

    static String of(MakingSheet sheet) {
        return new SheetText(sheet).write();
    }

    private String write() {
        head(SheetHead.of(sheet));
        cautionsAtHead();
        WeighText.write(sheet, page);
        safety();
        MakeText.write(sheet, page);
        ChemistryText.write(sheet, page);
        moreToKnow();
        CompositionText.write(sheet.composition(), sheet.formula().tables(), page);
        FattyAcidsText.write(OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams()), page);
        page.blank();
        page.rule();
        page.ends("Lyewright", "tables of " + sheet.formula().tables().edition());
        return page.toString();
    }

    private void head(SheetHead head) {
        page.ends(head.recipe() + ", version " + head.version(), "Making sheet, " + head.use());
        page.rule();
        if (!head.notes().isBlank()) {
            page.paragraph(head.notes(), 0);
            page.blank();
        }
        for (Labelled line : head.lines()) {
            page.pair(line.label(), line.text(), LABEL);
        }
    }

    private void safety() {
        page.heading(Safety.HEADING);
        Safety.LINES.forEach(line -> page.pair(line.label(), line.text(), SAFETY_LABEL));
    }

    private void cautionsAtHead() {
        if (cautions.face().isEmpty()) {
            return;
        }
        page.blank();
        if (cautions.stopped()) {
            page.line("*** NOT TO BE MADE AS IT STANDS ***");
        }
        cautions.face().forEach(caution -> caution(caution, !SheetCautions.isNote(caution)));
        if (cautions.beyondFace() > 0) {
            page.line("       " + cautions.beyondFace() + " more under \"More to know\", after the chemistry.");
        }
    }

    private void caution(Caution caution, boolean whole) {
        String level = caution.level().word();
        String word = SheetCautions.isNote(caution) ? level : level.toUpperCase(Locale.ROOT);
        page.hanging(" " + Widths.left(word, 6), whole ? SheetCautions.whole(caution) : caution.text());
    }

    /** All that the head had no room for: further cautions, and what to do about notes. */
    private void moreToKnow() {
        if (!cautions.more().isEmpty()) {
            page.heading("More to know");
            cautions.more().forEach(caution -> caution(caution, true));
        }
    }
}
