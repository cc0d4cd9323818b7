package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.BatterVolume;
import lyewright.chemistry.Reaction;
import lyewright.chemistry.Solutions;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.FillSolver;
import lyewright.fill.Filled;
import lyewright.fill.Shape;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/** Makes one sheet: solves the fill, rounds to the balances, recomputes the alkali, adds everything up. */
final class SheetBuilder {

    private final BatchLines batch;
    private final ResolvedFormula formula;
    private final Fill fill;
    private final Filled filled;
    private final Equipment equipment;
    private final double[] exact;
    private final double[] weighed;
    private final WeighingPlan plan;

    private SheetBuilder(BatchLines batch, Fill fill, Filled filled, Equipment equipment, double[] exact) {
        this.batch = batch;
        this.formula = batch.formula();
        this.fill = fill;
        this.filled = filled;
        this.equipment = equipment;
        this.exact = exact;
        this.plan = new WeighingPlan(batch, equipment, exact);
        this.weighed = plan.weighed();
    }

    static Outcome<MakingSheet> build(BatchLines batch, Fill fill, Equipment equipment) {
        Outcome<Filled> filled = FillSolver.solve(batch, fill);
        if (!(filled instanceof Outcome.Ok<Filled> ok)) {
            return new Outcome.Refused<>(filled.problems());
        }
        double[] exact = batch.massesAt(ok.value().oilsGrams());
        Problem problem = SheetRefusals.first(batch, exact);
        if (problem != null) {
            return Outcome.refused(problem);
        }
        SheetBuilder builder = new SheetBuilder(batch, fill, ok.value(), equipment, exact);
        Reaction reaction = Reaction.of(batch.lines(), builder.weighed);
        Problem coarse = SheetRefusals.rounded(batch, builder.weighed, reaction);
        if (coarse != null) {
            return Outcome.refused(coarse);
        }
        MakingSheet sheet = builder.build(reaction);
        Problem bare = SheetRefusals.portions(sheet.portions());
        return bare == null ? Outcome.ok(sheet) : Outcome.refused(bare);
    }

    private MakingSheet build(Reaction reaction) {
        List<PortionSheet> portions = PortionPlan.of(batch, weighed, plan.vessels(), equipment);
        MakingSheet.Totals totals = totals(reaction);
        LyeSheet lye = lye(reaction, totals.water());
        double density = BatterVolume.density(batch, weighed);
        Outcome<List<FadingPour.Layer>> fade = fade(portions);
        Optional<Double> asked = formula.superfat().map(s -> s * 100);
        SheetFacts facts =
                new SheetFacts(batch, exact, weighed, plan, fill, filled, lye, totals, reaction, asked, portions, fade);
        return new MakingSheet(
                formula,
                batch,
                fill,
                filled,
                equipment,
                plan.vessels(),
                totals,
                lye,
                asked,
                reaction.superfatPercent(),
                new SuperfatBand(batch, plan.vessels(), -1, reaction.superfatPercent()),
                portions,
                fade instanceof Outcome.Ok<List<FadingPour.Layer>> ok ? ok.value() : List.of(),
                bars(totals.mould(), reaction),
                density,
                UsualPractice.of(facts),
                CautionRules.of(facts));
    }

    private MakingSheet.Totals totals(Reaction reaction) {
        double oils = batch.oilsIn(weighed);
        double water = 0;
        double brought = 0;
        for (int i = 0; i < weighed.length; i++) {
            BatchLine line = batch.lines().get(i);
            switch (line.kind()) {
                case OIL -> {}
                case WATER -> water += weighed[i];
                case DISPERSING_LIQUID -> {
                    // what was taken out of the water or the oils still counts there; glycerin counts nowhere
                    switch (batch.liquidFrom(line)) {
                        case WATER -> water += weighed[i];
                        case OILS -> {}
                        case EXTRA -> brought += weighed[i] * line.water();
                    }
                }
                case ADDITION -> {
                    if (formula.additions().get(line.place()).written().replacesWater()) {
                        water += weighed[i];
                    } else {
                        brought += weighed[i] * line.water();
                    }
                }
                case ALKALI -> {
                    if (formula.alkali().stock().isPresent()) {
                        water += weighed[i] * line.water();
                    } else {
                        brought += weighed[i] * line.water();
                    }
                }
            }
        }
        double total = reaction.totalGrams();
        return new MakingSheet.Totals(oils, total, total * (1 - fill.holdBack()), filled.targetGrams(), water, brought);
    }

    private LyeSheet lye(Reaction reaction, double waterByRule) {
        double[] product = new double[2];
        double[] pure = new double[2];
        double waterInJug = 0;
        double salt = 0;
        List<String> dissolvesIn = new ArrayList<>(2);
        for (int i = 0; i < weighed.length; i++) {
            BatchLine line = batch.lines().get(i);
            salt += saltIn(line, weighed[i]);
            if (line.kind() == Kind.ALKALI) {
                Alkali alkali = formula.alkaliOf(line.key());
                int which = alkali == Alkali.SODIUM ? 0 : 1;
                product[which] = weighed[i];
                pure[which] = weighed[i] * line.alkali() * alkali.molarMass();
            }
            if (line.inLyeJug()) {
                waterInJug += weighed[i] * line.water();
                if (line.kind() == Kind.WATER && weighed[i] > 0) {
                    dissolvesIn.add(0, line.key());
                } else if (line.kind() == Kind.ADDITION && weighed[i] > 0) {
                    dissolvesIn.add(line.key());
                }
            }
        }
        return lye(product, pure, waterInJug, waterByRule, salt, reaction.waterGrams(), dissolvesIn);
    }

    private LyeSheet lye(
            double[] product,
            double[] pure,
            double waterInJug,
            double waterByRule,
            double salt,
            double allWater,
            List<String> dissolvesIn) {
        double pureGrams = pure[0] + pure[1];
        double productGrams = product[0] + product[1];
        double asWeighed = formula.alkali().stock().isPresent() ? pureGrams : productGrams;
        double moles = pure[0] / Alkali.SODIUM.molarMass() + pure[1] / Alkali.POTASSIUM.molarMass();
        Solutions solutions = Solutions.of(formula.tables());
        double needed = waterToHold(pure[0], solutions.solubilityPercent("NaOH", 20))
                + waterToHold(pure[1], solutions.solubilityPercent("KOH", 20));
        return new LyeSheet(
                product[0],
                product[1],
                pure[0],
                pure[1],
                moles == 0 ? 0 : 100 * pure[1] / Alkali.POTASSIUM.molarMass() / moles,
                pureGrams == 0 ? 0 : 100 * pure[1] / pureGrams,
                productGrams == 0 ? 0 : 100 * product[1] / productGrams,
                waterInJug,
                100 * pureGrams / (pureGrams + waterInJug),
                100 * pureGrams / (pureGrams + waterByRule),
                // a stock lye is no product beside its water: as weighed is pure too
                100 * asWeighed / (asWeighed + waterByRule),
                waterInJug - needed,
                dissolvesIn,
                allWater == 0 ? 0 : 100 * salt / allWater,
                allWater == 0 ? 0 : 100 * solutions.saltPerWater(pureGrams / allWater));
    }

    private static double waterToHold(double alkaliGrams, double saturatedPercent) {
        return alkaliGrams * (100 - saturatedPercent) / saturatedPercent;
    }

    private double saltIn(BatchLine line, double grams) {
        if (line.kind() != Kind.ADDITION || line.onTop()) {
            return 0;
        }
        Additive material = formula.additions().get(line.place()).material();
        return grams * material.makeup().salt();
    }

    private Outcome<List<FadingPour.Layer>> fade(List<PortionSheet> portions) {
        Process process = formula.formula().process();
        if (process.pour().isEmpty()) {
            return Outcome.ok(List.of());
        }
        Process.Pour pour = process.pour().get();
        double coloured = 0;
        double plain = 0;
        for (PortionSheet portion : portions) {
            coloured += portion.name().equals(pour.coloured()) ? portion.totalGrams() : 0;
            plain += portion.name().equals(pour.plain()) ? portion.totalGrams() : 0;
        }
        // what stays in the jugs stays in both of them alike
        double reaching = 1 - fill.holdBack();
        return FadingPour.of(
                coloured * reaching, plain * reaching, pour.layers().intValue());
    }

    private Optional<MakingSheet.Bars> bars(double mouldGrams, Reaction reaction) {
        if (!filled.takes(mouldGrams)) {
            // bars as heavy as that would stand higher than their mould
            return Optional.empty();
        }
        double curedShare = reaction.curedGrams(formula.curedWater()) / reaction.totalGrams();
        if (filled.cut().isPresent()) {
            CutPlan.Cut cut = filled.cut().get();
            return Optional.of(barsOf(cut.bars(), mouldGrams * cut.barShare(), mouldGrams, curedShare));
        }
        if (fill.target() instanceof Fill.Bars bars) {
            return Optional.of(barsOf(bars.count(), mouldGrams / bars.count(), mouldGrams, curedShare));
        }
        if (fill.mould().shape().isPresent() && fill.mould().shape().get() instanceof Shape.Cavities cavities) {
            return Optional.of(barsOf(cavities.count(), mouldGrams / cavities.count(), mouldGrams, curedShare));
        }
        return Optional.empty();
    }

    private static MakingSheet.Bars barsOf(int count, double cutGrams, double mouldGrams, double curedShare) {
        double offcuts = mouldGrams - count * cutGrams;
        return new MakingSheet.Bars(count, cutGrams, cutGrams * curedShare, Math.max(0, offcuts));
    }
}
