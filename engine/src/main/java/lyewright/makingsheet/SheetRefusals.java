package lyewright.makingsheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.Reaction;
import lyewright.formula.ResolvedFormula;
import lyewright.measure.Problem;
import lyewright.measure.Share;
import org.jspecify.annotations.Nullable;

/** What makes a batch impossible once its size is known. */
final class SheetRefusals {

    private static final double NOTHING = 1e-9;

    private SheetRefusals() {}

    static @Nullable Problem first(BatchLines batch, double[] exact) {
        Problem problem = negative(batch, exact);
        if (problem != null) {
            return problem;
        }
        if (Reaction.of(batch.lines(), exact).equivalents() <= 0) {
            return new Problem(
                    "oils", "nothing among the oils takes alkali for sure", "add an oil: waxes alone make no soap");
        }
        return batch.formula().alkali().givenMoles().isPresent() ? superfatAtOdds(batch, exact) : null;
    }

    /** Why the rounded masses make no sheet: on balances too coarse for the batch oils or alkali round to nothing. */
    static @Nullable Problem rounded(BatchLines batch, double[] weighed, Reaction reaction) {
        return batch.oilsIn(weighed) > 0 && reaction.equivalents() > 0 && reaction.alkali() > 0
                ? null
                : new Problem(
                        "", "the balances are too coarse for so small a batch", "make more, or use a finer balance");
    }

    /** Why a portion makes no soap: all the oils are wetted out with what goes into others, and alkali alone is left for it. */
    static @Nullable Problem portions(List<PortionSheet> portions) {
        for (PortionSheet portion : portions) {
            if (!Double.isFinite(portion.superfatPercent())) {
                return new Problem(
                        "portions." + portion.name(),
                        "no oil is left for portion " + portion.name() + ": what goes into others takes all of it",
                        "stir those additions into less oil, or use more oils");
            }
        }
        return null;
    }

    private static @Nullable Problem negative(BatchLines batch, double[] exact) {
        for (int i = 0; i < exact.length; i++) {
            if (exact[i] < -NOTHING) {
                return negative(batch.lines().get(i), -exact[i]);
            }
            exact[i] = Math.max(0, exact[i]);
        }
        return null;
    }

    private static Problem negative(BatchLine line, double short_) {
        String grams = String.format(Locale.ROOT, "%.1f g", short_);
        if (line.kind() == Kind.WATER) {
            return new Problem(
                    "water",
                    "stock lye, liquids that replace water, and dispersions bring " + grams
                            + " more water than the recipe has in all",
                    "use less of them, a stronger stock lye, or more water");
        }
        return new Problem(
                "oils." + line.key(),
                "dispersions take " + grams + " more " + line.key() + " than the formula has",
                "disperse in another oil, or with less of it");
    }

    /** Alkali and superfat both written: they agree if the superfat rounds to the one that the alkali gives. */
    private static @Nullable Problem superfatAtOdds(BatchLines batch, double[] exact) {
        ResolvedFormula formula = batch.formula();
        if (formula.formula().superfat().isEmpty()) {
            return null;
        }
        Share written = formula.formula().superfat().get();
        double computed = Reaction.of(batch.lines(), exact).superfatPercent();
        int decimals = Math.max(0, written.percent().scale());
        double halfStep = Math.max(0.05, 0.5 * Math.pow(10, -decimals));
        if (Math.abs(computed - written.percent().doubleValue()) <= halfStep) {
            return null;
        }
        String gives =
                new BigDecimal(computed).setScale(2, RoundingMode.HALF_UP).toPlainString();
        return new Problem(
                "superfat",
                "the alkali given makes a superfat of " + gives + " %, not " + written,
                "leave one of the two out, or write " + gives + " %");
    }
}
