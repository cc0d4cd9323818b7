package lyewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.Use;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;

/** A making sheet as a page of text: what it makes, what to beware of, what to weigh, how to make it, and why. */
final class SheetText {

    private static final int MOST_AT_HEAD = 3;
    private static final int LABEL = 17;

    private final MakingSheet sheet;
    private final SheetView view;
    private final Page page = new Page();

    private SheetText(MakingSheet sheet) {
        this.sheet = sheet;
        this.view = new SheetView(sheet);
    }

    static String of(MakingSheet sheet) {
        return new SheetText(sheet).write();
    }

    private String write() {
        title();
        whatItMakes();
        cautionsAtHead();
        new WeighText(view, page).write();
        Safety.write(page);
        new MakeText(view, page).write();
        new ChemistryText(view, page).write();
        moreToKnow();
        CompositionText.write(sheet.composition(), sheet.formula().tables(), page);
        FattyAcidsText.write(OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams()), page);
        page.blank();
        page.rule();
        page.ends("Lyewright", "tables of " + sheet.formula().tables().edition());
        return page.toString();
    }

    private void title() {
        Formula formula = sheet.formula().formula();
        String use = formula.use() == Use.SALE ? "for sale" : "own use";
        page.ends(formula.recipe() + ", version " + formula.version(), "Making sheet, " + use);
        page.rule();
        if (!formula.notes().isBlank()) {
            page.paragraph(formula.notes(), 0);
            page.blank();
        }
    }

    private void whatItMakes() {
        MakingSheet.Totals totals = sheet.totals();
        page.pair("Into the mould", intoTheMould(totals), LABEL);
        page.pair("Weighed in all", weighedInAll(totals), LABEL);
        page.pair("Oils", Figures.sum(view.where(WeighText::oil)), LABEL);
        page.pair("Superfat", superfat(), LABEL);
        page.pair("How sure", sheet.howSure(), LABEL);
        sheet.bars().ifPresent(bars -> page.pair("Bars", bars(bars), LABEL));
    }

    private String intoTheMould(MakingSheet.Totals totals) {
        String grams = Figures.fixed(totals.mould(), 1) + " g";
        Optional<Double> off = totals.offTarget();
        if (off.isEmpty()) {
            return grams;
        }
        String target = Figures.fixed(totals.target().orElse(0.0), 1) + " g";
        String asked =
                sheet.fill().target() instanceof Fill.FullMould ? "the mould takes " + target : target + " asked";
        String by = Figures.signed(off.get(), 1);
        return by.equals("0.0") ? grams + " (" + asked + ")" : grams + " (" + asked + ", off by " + by + " g)";
    }

    private String weighedInAll(MakingSheet.Totals totals) {
        String all = Figures.sum(view.all());
        double heldBack = sheet.fill().holdBack();
        return heldBack > 0
                ? all + "; " + Figures.upTo(100 * heldBack, 2) + " % of it, "
                        + Figures.about(totals.batch() - totals.mould()) + ", stays in jugs and tools"
                : all;
    }

    private String superfat() {
        String here = Figures.percent(sheet.sheetSuperfatPercent(), 2);
        return sheet.askedSuperfatPercent()
                .map(asked -> here + " (" + Figures.upTo(asked, 2) + " % asked)")
                .orElse(here + ", from the alkali given");
    }

    private static String bars(MakingSheet.Bars bars) {
        String each = bars.count() + " of " + Figures.about(bars.cutGrams()) + " as cut, about "
                + Figures.about(bars.curedGrams()) + " once cured";
        return bars.offcutsGrams() >= 0.5 ? each + "; offcuts " + Figures.about(bars.offcutsGrams()) : each;
    }

    private void cautionsAtHead() {
        List<Caution> cautions = sheet.cautions();
        if (cautions.isEmpty()) {
            return;
        }
        page.blank();
        if (sheet.stopped()) {
            page.line("*** NOT TO BE MADE AS IT STANDS ***");
        }
        cautions.stream().limit(MOST_AT_HEAD).forEach(caution -> caution(caution, !isNote(caution)));
        int more = cautions.size() - MOST_AT_HEAD;
        if (more > 0) {
            page.line("       " + more + " more under \"More to know\", after the chemistry.");
        }
    }

    private static boolean isNote(Caution caution) {
        return caution.level() == Caution.Level.NOTE;
    }

    private void caution(Caution caution, boolean whole) {
        String word = isNote(caution) ? "note" : caution.level().word().toUpperCase(Locale.ROOT);
        String text = whole ? caution.text() + " " + caution.remedy() + " [" + caution.source() + "]" : caution.text();
        page.hanging(" " + Widths.left(word, 6), text);
    }

    /** All that the head had no room for: further cautions, and what to do about notes. */
    private void moreToKnow() {
        List<Caution> cautions = sheet.cautions();
        List<Caution> more = new ArrayList<>();
        for (int i = 0; i < cautions.size(); i++) {
            if (i >= MOST_AT_HEAD || isNote(cautions.get(i))) {
                more.add(cautions.get(i));
            }
        }
        if (!more.isEmpty()) {
            page.heading("More to know");
            more.forEach(caution -> caution(caution, true));
        }
    }
}
