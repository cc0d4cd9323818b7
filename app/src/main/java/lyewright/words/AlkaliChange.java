package lyewright.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Comparison.Row;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;

/** How much more or less alkali one sheet needs than another, in a clause. */
final class AlkaliChange {

    private static final double KILOGRAM = 1000;

    /** Batches whose oils differ by less are of one size, grams. */
    private static final double SAME = 0.05;

    private final Comparison comparison;
    private final UnitsShown units;
    private final boolean weighed;

    /**
     * Of two sheets.
     *
     * @param comparison what changes
     * @param units that masses are said in
     * @param weighed whether a kilogram of oils takes it as balances round it, else before that
     */
    AlkaliChange(Comparison comparison, UnitsShown units, boolean weighed) {
        this.comparison = comparison;
        this.units = units;
        this.weighed = weighed;
    }

    /** Whether both make as much of oils, so that their masses can be set beside each other. */
    boolean sameSize() {
        return Math.abs(oils(comparison.a()) - oils(comparison.b())) < SAME;
    }

    private static double oils(MakingSheet sheet) {
        return sheet.totals().oils();
    }

    /** What of alkali changes; for a kilogram of oils as well where the one makes more than the other. */
    Optional<String> clause() {
        List<String> perKilogram = needs(this::perKilogram);
        if (sameSize() && !weighed && isOfAKilogram()) {
            return perKilogram.isEmpty() ? Optional.empty() : Optional.of(verb() + row(perKilogram) + perOils());
        }
        List<String> inAll = needs(this::inAll);
        if (sameSize()) {
            return inAll.isEmpty()
                    ? Optional.empty()
                    : Optional.of(verb() + row(inAll) + (isOfAKilogram() && !units.ounces() ? perOils() : ""));
        }
        String help = perKilogram.isEmpty() ? "" : ", " + row(perKilogram) + perOils();
        return inAll.isEmpty() && help.isEmpty()
                ? Optional.empty()
                : Optional.of((inAll.isEmpty() ? noChange() : verb() + row(inAll)) + help);
    }

    private static String row(List<String> needs) {
        return String.join(" and ", needs);
    }

    private String verb() {
        return given() ? "has " : "needs ";
    }

    /** Where there is no change. */
    String noChange() {
        return given() ? "the alkali stays as written" : "needs as much alkali";
    }

    private String perOils() {
        return " " + units.perOils() + " of oils";
    }

    private boolean isOfAKilogram() {
        return sameSize() && Math.abs(oils(comparison.a()) - KILOGRAM) < SAME;
    }

    /** A stock lye's mass says little beside flakes, so then both are told as pure alkali. */
    private List<String> needs(Function<Alkali, Optional<BigDecimal>> change) {
        boolean stock = comparison.a().formula().alkali().stock().isPresent()
                || comparison.b().formula().alkali().stock().isPresent();
        return Alkali.ALL.stream()
                .filter(alkali -> alkali.pure == stock)
                .flatMap(alkali -> change.apply(alkali).map(by -> amount(by) + " " + alkali.words).stream())
                .toList();
    }

    /** An alkali, as it is weighed or as much of it as is pure. */
    private record Alkali(String figure, String words, boolean pure, ToDoubleFunction<LyeSheet> mass) {

        private static final List<Alkali> ALL = List.of(
                new Alkali("naohGrams", "NaOH", false, LyeSheet::naohGrams),
                new Alkali("kohGrams", "KOH", false, LyeSheet::kohGrams),
                new Alkali("naohPureGrams", "pure NaOH", true, LyeSheet::naohPureGrams),
                new Alkali("kohPureGrams", "pure KOH", true, LyeSheet::kohPureGrams));

        private BigDecimal tenths(MakingSheet sheet) {
            return BigDecimal.valueOf(mass.applyAsDouble(sheet.lye())).setScale(1, RoundingMode.HALF_UP);
        }
    }

    private Optional<BigDecimal> perKilogram(Alkali alkali) {
        return comparison
                .row("perKgOils." + alkali.figure)
                .filter(Row::differs)
                .flatMap(Row::shownDifference)
                .map(units::per);
    }

    private Optional<BigDecimal> inAll(Alkali alkali) {
        return Optional.of(alkali.tenths(comparison.b()).subtract(alkali.tenths(comparison.a())))
                .filter(change -> change.signum() != 0);
    }

    /** Alkali that is written is no need: the superfat gives way instead. */
    private boolean given() {
        return comparison.a().formula().alkali().givenMoles().isPresent()
                || comparison.b().formula().alkali().givenMoles().isPresent();
    }

    private String amount(BigDecimal change) {
        return units.tenths(change.abs().doubleValue()) + " " + (change.signum() > 0 ? "more" : "less");
    }
}
