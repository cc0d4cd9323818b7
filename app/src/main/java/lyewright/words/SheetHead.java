package lyewright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.Use;
import lyewright.makingsheet.MakingSheet;

/**
 * What a sheet makes, in a few lines.
 *
 * @param recipe its name
 * @param version which
 * @param use {@code for sale} or {@code own use}
 * @param notes the maker's own, often empty
 * @param intoTheMould what reaches the mould, and what was asked
 * @param weighedInAll everything on the balances, and what of it stays behind
 * @param oils their sum
 * @param superfat of the rounded sheet, and what was asked
 * @param howSure some plain sentences
 * @param bars what comes out, where that is known
 */
public record SheetHead(
        String recipe,
        String version,
        String use,
        String notes,
        String intoTheMould,
        String weighedInAll,
        String oils,
        String superfat,
        String howSure,
        Optional<String> bars) {

    /** The head of a sheet, in grams. */
    public static SheetHead of(MakingSheet sheet) {
        return of(sheet, UnitsShown.METRIC);
    }

    /** The head of a sheet, in the units that are wanted. */
    public static SheetHead of(MakingSheet sheet, UnitsShown units) {
        Formula formula = sheet.formula().formula();
        SheetView view = new SheetView(sheet);
        return new SheetHead(
                formula.recipe(),
                String.valueOf(formula.version()),
                formula.use() == Use.SALE ? "for sale" : "own use",
                formula.notes(),
                intoTheMould(sheet, units),
                weighedInAll(sheet, view, units),
                units.sum(view.where(SheetView::isOil)),
                superfat(sheet),
                sheet.howSure(),
                sheet.bars().map(bars -> bars(bars, units)));
    }

    /** All of it with labels, in order. */
    public List<Labelled> lines() {
        List<Labelled> lines = new ArrayList<>(List.of(
                new Labelled("Into the mould", intoTheMould),
                new Labelled("Weighed in all", weighedInAll),
                new Labelled("Oils", oils),
                new Labelled("Superfat", superfat),
                new Labelled("How sure", howSure)));
        bars.ifPresent(text -> lines.add(new Labelled("Bars", text)));
        return List.copyOf(lines);
    }

    private static String intoTheMould(MakingSheet sheet, UnitsShown units) {
        MakingSheet.Totals totals = sheet.totals();
        String here = units.tenths(totals.mould());
        if (totals.target().isEmpty()) {
            return here;
        }
        String target = units.tenths(totals.target().get());
        String asked =
                sheet.fill().target() instanceof Fill.FullMould ? "the mould takes " + target : target + " asked";
        // brackets are taken where masses are said twice
        return units.ounces() ? here + "; " + asked : here + " (" + asked + ")";
    }

    private static String weighedInAll(MakingSheet sheet, SheetView view, UnitsShown units) {
        MakingSheet.Totals totals = sheet.totals();
        String all = units.sum(view.all());
        double heldBack = sheet.fill().holdBack();
        return heldBack > 0
                ? all + "; " + Figures.upTo(100 * heldBack, 2) + " % of it, "
                        + units.about(totals.batch() - totals.mould()) + ", stays in jugs and tools"
                : all;
    }

    private static String superfat(MakingSheet sheet) {
        String here = Figures.percent(sheet.sheetSuperfatPercent(), 2);
        return sheet.askedSuperfatPercent()
                .map(asked -> here + " (" + Figures.upTo(asked, 2) + " % asked)")
                .orElse(here + ", from the alkali given");
    }

    private static String bars(MakingSheet.Bars bars, UnitsShown units) {
        String each = bars.count() + " of " + units.about(bars.cutGrams()) + " as cut, about "
                + units.about(bars.curedGrams()) + " once cured";
        return bars.offcutsGrams() >= 0.5 ? each + "; offcuts " + units.about(bars.offcutsGrams()) : each;
    }
}
