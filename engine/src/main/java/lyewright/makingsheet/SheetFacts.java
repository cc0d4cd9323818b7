package lyewright.makingsheet;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.Reaction;
import lyewright.fill.Fill;
import lyewright.fill.Filled;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.formula.ResolvedFormula.PortionPart;
import lyewright.formula.Stage;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.measure.Outcome;

/** What the caution rules look at: the sheet's figures and a few sums over its additions and oils, taken once. */
final class SheetFacts {

    /** Salts that are mostly sodium chloride count whole; of other things only the salt in them. */
    private static final double BILLION = 1e9;

    private static final double MOSTLY_SALT = 0.5;

    /** Fatty acids up to this iodine value are solid; oleic has 90, stearic under 4. */
    private static final double HARD_TO_IODINE_VALUE = 20;

    /** Mol of acid in a gram up to which a liquid is hardly sour: beer, wine. */
    private static final double HARDLY_ACID = 1e-4;

    final BatchLines batch;
    final ResolvedFormula formula;
    final double[] exact;
    final double[] weighed;
    final WeighingPlan plan;
    final Fill fill;
    final Filled filled;
    final LyeSheet lye;
    final MakingSheet.Totals totals;
    final Reaction reaction;
    final Optional<Double> askedSuperfat;
    final List<PortionSheet> portions;
    final Outcome<List<FadingPour.Layer>> fade;

    /** Grams of each addition over all portions, by its place in the formula. */
    final double[] additionGrams;

    /** Of additions as the list tells them: before rounding, of all oils. */
    private final double[] percentOfOils;

    private double saltPercent;
    private double sugarPercent;
    private double fragrancePercent;
    int fragrances;
    boolean milk;
    boolean milkInJug;
    boolean ultramarine;
    boolean freeAcidAddition;
    double hardAcidFraction;
    double waxFraction;
    boolean beeswax;
    double latherFraction;

    SheetFacts(
            BatchLines batch,
            double[] exact,
            double[] weighed,
            WeighingPlan plan,
            Fill fill,
            Filled filled,
            LyeSheet lye,
            MakingSheet.Totals totals,
            Reaction reaction,
            Optional<Double> askedSuperfat,
            List<PortionSheet> portions,
            Outcome<List<FadingPour.Layer>> fade) {
        this.batch = batch;
        this.formula = batch.formula();
        this.exact = exact;
        this.weighed = weighed;
        this.plan = plan;
        this.fill = fill;
        this.filled = filled;
        this.lye = lye;
        this.totals = totals;
        this.reaction = reaction;
        this.askedSuperfat = askedSuperfat;
        this.portions = portions;
        this.fade = fade;
        this.additionGrams = new double[formula.additions().size()];
        this.percentOfOils = new double[formula.additions().size()];
        sumAdditions();
        sumOils();
    }

    private void sumAdditions() {
        double oils = batch.oilsIn(exact);
        for (int i = 0; i < weighed.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.kind() == Kind.ADDITION) {
                additionGrams[line.place()] += weighed[i];
                percentOfOils[line.place()] += 100 * exact[i] / oils;
            }
        }
        for (AdditionPart addition : formula.additions()) {
            if (addition.stage() != Stage.Kind.TOP) {
                look(addition, percentOfOils[addition.place()]);
            }
        }
    }

    private void look(AdditionPart addition, double percent) {
        Additive material = addition.material();
        Additive.Makeup makeup = material.makeup();
        saltPercent += makeup.salt() >= MOSTLY_SALT ? percent : percent * makeup.salt();
        sugarPercent += percent * (material.kind() == AdditiveKind.SUGAR ? 1 - makeup.water() : makeup.sugar());
        fragrancePercent += material.kind() == AdditiveKind.FRAGRANCE ? percent : 0;
        fragrances += material.kind() == AdditiveKind.FRAGRANCE ? 1 : 0;
        if (material.kind() == AdditiveKind.MILK) {
            milk = true;
            milkInJug |= addition.stage() == Stage.Kind.LYE;
        }
        ultramarine |= addition.written().of().startsWith("ultramarine");
        // in the lye jug acid is neutralised before it meets anything else; beer and wine hardly have any
        freeAcidAddition |= addition.stage() != Stage.Kind.LYE
                && (material.kind() == AdditiveKind.ACID || material.kind() == AdditiveKind.LIQUID)
                && makeup.acidMolesPerGram() > HARDLY_ACID;
    }

    private void sumOils() {
        for (OilPart part : formula.oils()) {
            for (OilBlend.Part inIt : part.parts()) {
                double fraction = part.fraction() * inIt.fraction();
                latherFraction += inIt.oil().lathersInSalt() ? fraction : 0;
                hardAcidFraction += hardAcid(inIt.oil()) ? fraction : 0;
                waxFraction += inIt.oil().kind() == OilKind.WAX ? fraction : 0;
                beeswax |= inIt.oil().key().equals("beeswax");
            }
        }
    }

    /** Free acid that is solid at room temperature: all but the unsaturated ones. */
    private static boolean hardAcid(Oil oil) {
        return oil.kind() == OilKind.FATTY_ACID
                && (oil.iodineValue().isEmpty() || oil.iodineValue().get().middle() <= HARD_TO_IODINE_VALUE);
    }

    /** Sugar as percent of all oils. */
    double sugarPercent() {
        return settled(sugarPercent);
    }

    /** Fragrance as percent of all oils. */
    double fragrancePercent() {
        return settled(fragrancePercent);
    }

    /** Salt as percent of all oils. */
    double saltPercent() {
        return settled(saltPercent);
    }

    /** An addition as percent of the oils it goes into: a portion's own, else all. */
    double percentOfItsOils(AdditionPart addition) {
        double percent = percentOfOils[addition.place()];
        if (addition.stage() == Stage.Kind.PORTION) {
            for (PortionPart portion : formula.portions()) {
                percent /= portion.name().equals(addition.written().stage().portion()) ? portion.fraction() : 1;
            }
        }
        return percent;
    }

    /** What stands on a limit is on it, whatever the last digits of a sum are. */
    private static double settled(double percent) {
        return Math.rint(percent * BILLION) / BILLION;
    }

    /** Whether it is a salt bar: a quarter of the oils in salt, common practice. */
    boolean saltBar() {
        return saltPercent() >= 25;
    }

    /** Whether it is a shaving or soft soap: a fifth of hard free acid, or a third of the alkali potassium. */
    boolean shavingSoap() {
        return hardAcidFraction >= 0.2 || lye.potassiumMolesPercent() >= 33;
    }

    /** Temperature of the oils, if it is written. */
    Optional<Double> oilsCelsius() {
        return formula.formula().process().oils().map(t -> t.celsius());
    }

    /** Temperature of the lye, if it is written. */
    Optional<Double> lyeCelsius() {
        return formula.formula().process().lye().map(t -> t.celsius());
    }
}
