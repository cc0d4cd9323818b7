package lyewright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.BatterVolume;
import lyewright.chemistry.Reaction;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * Turns what is asked into a mass of oils. Everything poured is a straight line in the oils, so mould mass is solved at
 * once; volume and cured mass bend a little where amounts are fixed, and are solved by the secant through two batches,
 * which is exact where they do not.
 */
public final class FillSolver {

    private static final double FIRST_TRY = 1000;
    private static final double CLOSE_ENOUGH = 1e-13;

    /** Where the steps no longer get nearer for want of digits, this near is there. */
    private static final double NEAR_ENOUGH = 1e-9;

    private static final int MOST_STEPS = 60;
    private static final double MOST_GRAMS = 1e9;

    private final BatchLines batch;
    private final Fill fill;
    private final double reachingMould;

    private FillSolver(BatchLines batch, Fill fill) {
        this.batch = batch;
        this.fill = fill;
        this.reachingMould = 1 - fill.holdBack();
    }

    /**
     * Solves a fill.
     *
     * @param batch what is to be made
     * @param fill how much of it
     * @return the mass of oils and what goes with it, or why there is none
     */
    public static Outcome<Filled> solve(BatchLines batch, Fill fill) {
        return new FillSolver(batch, fill).solve();
    }

    private Outcome<Filled> solve() {
        if (asksForNothing()) {
            return Outcome.refused("nothing is asked for", "ask for more than 0 g");
        }
        if (fill.mould().usual().isPresent() && !(usualOils(fill.mould().usual().get()) > 0)) {
            return Outcome.refused(
                    "the mould's usual mass is less than what is fixed in the formula it was measured with",
                    "give the usual mass with the formula that was in the mould");
        }
        Optional<CutPlan.Cut> cut = Optional.empty();
        if (fill.cut().isPresent()) {
            Outcome<CutPlan.Cut> planned = cut(fill.cut().get());
            if (!(planned instanceof Outcome.Ok<CutPlan.Cut> ok)) {
                return new Outcome.Refused<>(planned.problems());
            }
            cut = Optional.of(ok.value());
        }
        Outcome<Double> oils = oils(cut);
        if (!(oils instanceof Outcome.Ok<Double> ok)) {
            return new Outcome.Refused<>(oils.problems());
        }
        double grams = ok.value();
        if (!(grams > 0)) {
            return Outcome.refused(fixedTooHeavy());
        }
        if (!(batch.batchAt(grams) < MOST_GRAMS)) {
            return Outcome.refused("that is more than anybody can weigh", "ask for less than 1000 t");
        }
        return Outcome.ok(new Filled(grams, target(grams), mouldSays(grams), cut));
    }

    private Outcome<CutPlan.Cut> cut(CutPlan plan) {
        return fill.mould().shape().isPresent()
                ? plan.of(fill.mould().shape().get())
                : Outcome.refused("a cut needs the mould's measures", "give its box or tube too");
    }

    private Problem fixedTooHeavy() {
        return new Problem(
                batch.formula().additions().isEmpty() ? "water" : "additions",
                String.format(
                        java.util.Locale.ROOT,
                        "what is fixed weighs %.1f g by itself, more than there is room for",
                        batch.total().fixed()),
                "make more, or write the fixed amounts as a share of the oils");
    }

    private Outcome<Double> oils(Optional<CutPlan.Cut> cut) {
        Fill.Target target = fill.target();
        if (target instanceof Fill.OilMass oils) {
            return Outcome.ok(oils.grams());
        }
        if (target instanceof Fill.MouldMass mass) {
            return Outcome.ok(batch.oilsFor(mass.grams() / reachingMould));
        }
        if (target instanceof Fill.AsWritten) {
            return asWritten();
        }
        if (target instanceof Fill.Bars bars) {
            return oilsForBars(bars, cut);
        }
        return fullMould();
    }

    private Outcome<Double> asWritten() {
        Optional<Double> written = batch.formula().writtenOilsGrams();
        return written.isPresent()
                ? Outcome.ok(written.get())
                : Outcome.refused(
                        "the formula is in percent, so it does not say how much to make",
                        "say how much, as a mould mass, a mass of oils, bars or a mould");
    }

    private Outcome<Double> oilsForBars(Fill.Bars bars, Optional<CutPlan.Cut> cut) {
        if (fill.mould().shape().orElse(null) instanceof Shape.Cavities cavities && cavities.count() != bars.count()) {
            return Outcome.refused(
                    "this mould has " + cavities.count() + " cavities, not " + bars.count(),
                    "ask for as many bars as it has cavities");
        }
        double inMould = bars.count() * bars.grams();
        if (cut.isPresent()) {
            if (cut.get().bars() != bars.count()) {
                return Outcome.refused(
                        "this mould and cut give " + cut.get().bars() + " bars, not " + bars.count(),
                        "ask for " + cut.get().bars() + " bars, or change the cut");
            }
            inMould = bars.grams() / cut.get().barShare();
        }
        return Outcome.ok(bars.cured() ? oilsForCured(inMould) : batch.oilsFor(inMould / reachingMould));
    }

    private double oilsForCured(double curedGrams) {
        return secant(oils -> curedInMould(oils) - curedGrams, curedGrams);
    }

    private double curedInMould(double oils) {
        return reachingMould
                * Reaction.of(batch.lines(), batch.massesAt(oils))
                        .curedGrams(batch.formula().curedWater());
    }

    private Outcome<Double> fullMould() {
        Mould mould = fill.mould();
        if (mould.usual().isPresent()) {
            return Outcome.ok(oilsForVolume(usualVolume(mould.usual().get())));
        }
        if (mould.waterFillGrams().isPresent()) {
            return Outcome.ok(oilsForVolume(waterVolume(mould.waterFillGrams().get())));
        }
        if (mould.shape().isPresent()) {
            return Outcome.ok(oilsForVolume(mould.shape().get().millilitres()));
        }
        return Outcome.refused("nothing says what the mould holds", "give its box, cavities, water fill or usual mass");
    }

    private double oilsForVolume(double millilitres) {
        return secant(oils -> volumeInMould(oils) - millilitres, millilitres);
    }

    private double volumeInMould(double oils) {
        return reachingMould * BatterVolume.millilitres(batch, batch.massesAt(oils));
    }

    private static double waterVolume(double grams) {
        return grams / BatterVolume.WATER_DENSITY;
    }

    /** As much of that batch was held back then as is to be now: what reaches the mould is what was weighed there. */
    private double usualOils(Mould.Usual usual) {
        return usual.of().oilsFor(usual.grams() / reachingMould);
    }

    private double usualVolume(Mould.Usual usual) {
        return reachingMould * BatterVolume.millilitres(usual.of(), usual.of().massesAt(usualOils(usual)));
    }

    private boolean asksForNothing() {
        Fill.Target target = fill.target();
        return (target instanceof Fill.MouldMass mass && !(mass.grams() > 0))
                || (target instanceof Fill.OilMass oils && !(oils.grams() > 0))
                || (target instanceof Fill.Bars bars && !(bars.count() * bars.grams() > 0));
    }

    /** The zero of a function that is nearly a straight line, not a number if it has none; its size sets what is zero. */
    private static double secant(DoubleUnaryOperator function, double size) {
        double before = FIRST_TRY;
        double here = 2 * FIRST_TRY;
        double valueBefore = function.applyAsDouble(before);
        for (int step = 0; step < MOST_STEPS; step++) {
            double value = function.applyAsDouble(here);
            if (Math.abs(value) <= CLOSE_ENOUGH * size) {
                return here;
            }
            if (value == valueBefore) {
                break;
            }
            double next = here - value * (here - before) / (value - valueBefore);
            before = here;
            valueBefore = value;
            here = next;
        }
        return Math.abs(function.applyAsDouble(here)) <= NEAR_ENOUGH * size ? here : Double.NaN;
    }

    /** Mould mass asked for: said outright, or what the mould or the bars come to. */
    private Optional<Double> target(double oils) {
        Fill.Target target = fill.target();
        if (target instanceof Fill.OilMass || target instanceof Fill.AsWritten) {
            return Optional.empty();
        }
        return Optional.of(target instanceof Fill.MouldMass mass ? mass.grams() : reachingMould * batch.batchAt(oils));
    }

    private List<Filled.MouldSays> mouldSays(double oils) {
        Mould mould = fill.mould();
        if (!mould.known()) {
            return List.of();
        }
        double[] masses = batch.massesAt(oils);
        double gramsPerMillilitre = batch.batchAt(oils) / BatterVolume.millilitres(batch, masses);
        List<Filled.MouldSays> says = new ArrayList<>();
        mould.usual().ifPresent(u -> says.add(new Filled.MouldSays("usual mass", usualVolume(u) * gramsPerMillilitre)));
        mould.waterFillGrams()
                .ifPresent(w -> says.add(new Filled.MouldSays("water fill", waterVolume(w) * gramsPerMillilitre)));
        mould.shape().ifPresent(s -> says.add(new Filled.MouldSays("measures", s.millilitres() * gramsPerMillilitre)));
        return says;
    }
}
