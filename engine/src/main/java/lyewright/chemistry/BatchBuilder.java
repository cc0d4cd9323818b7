package lyewright.chemistry;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.AcidRule;
import lyewright.formula.Linear;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.formula.Stage;
import lyewright.formula.WaterRule;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.StockLye;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/** Lays one formula out as lines, once. */
final class BatchBuilder {

    private static final Stage OILS = Stage.of(Stage.Kind.OILS);
    private static final Stage LYE = Stage.of(Stage.Kind.LYE);

    private final ResolvedFormula formula;
    private final List<BatchLine> lines;
    private final Linear[] potOils;
    private boolean oilsGivenAway;
    private Linear oilEquivalents = Linear.ZERO;
    private Linear fatEquivalents = Linear.ZERO;
    private Linear taken = Linear.ZERO;
    private Linear dispersingWater = Linear.ZERO;
    private Linear replacingLiquids = Linear.ZERO;

    BatchBuilder(ResolvedFormula formula) {
        this.formula = formula;
        this.lines =
                new ArrayList<>(formula.oils().size() + 3 * formula.additions().size() + 3);
        this.potOils = new Linear[formula.oils().size()];
    }

    Outcome<BatchLines> build() {
        layOils();
        for (AdditionPart addition : formula.additions()) {
            layAddition(addition);
        }
        if (oilsGivenAway) {
            for (int i = 0; i < potOils.length; i++) {
                lines.set(i, lines.get(i).with(potOils[i]));
            }
        }
        Linear moles = alkaliMoles();
        Linear water = waterByRule(moles);
        layWater(water, moles);
        layAlkali(moles);
        Linear total = total();
        if (total.perBatch() > 1 - 1e-9) {
            return Outcome.refused(
                    new Problem("additions", "the additions by % of batch leave nothing for the rest", "lower them"));
        }
        return Outcome.ok(new BatchLines(formula, lines, total, water, moles));
    }

    /** Everything weighed, added up without a line for each step. */
    private Linear total() {
        double perOils = 0;
        double fixed = 0;
        double perBatch = 0;
        for (BatchLine line : lines) {
            perOils += line.mass().perOils();
            fixed += line.mass().fixed();
            perBatch += line.mass().perBatch();
        }
        return new Linear(perOils, fixed, perBatch);
    }

    private void layOils() {
        double temperature = temperatureOfOils();
        for (int i = 0; i < potOils.length; i++) {
            OilPart part = formula.oils().get(i);
            potOils[i] = Linear.ofOils(part.fraction());
            BatchLine line = oilLine(Kind.OIL, part, i, OILS, -1, potOils[i], temperature);
            lines.add(line);
            oilEquivalents = oilEquivalents.plus(potOils[i].times(line.equivalents()));
        }
    }

    private double temperatureOfOils() {
        var written = formula.formula().process().oils();
        return written.isPresent() ? written.get().celsius() : BatterVolume.USUAL_TEMPERATURE;
    }

    private static BatchLine oilLine(
            Kind kind, OilPart part, int place, Stage stage, int portion, Linear mass, double temperature) {
        double density = temperature == BatterVolume.USUAL_TEMPERATURE
                ? part.gramsPerMillilitreAt40()
                : part.densityAt(temperature);
        return new BatchLine(
                kind,
                part.key(),
                stage,
                portion,
                place,
                mass,
                Stoichiometry.molesPerGram(part.saponificationValue()),
                Stoichiometry.molesPerGram(part.acidPart()),
                0,
                0,
                0,
                density);
    }

    private void layAddition(AdditionPart addition) {
        if (addition.stage() == Stage.Kind.EVERY_PORTION && !formula.portions().isEmpty()) {
            for (int p = 0; p < formula.portions().size(); p++) {
                layAddition(addition, p, formula.portions().get(p).fraction());
            }
        } else {
            layAddition(addition, portionOf(addition.written().stage()), 1);
        }
    }

    private int portionOf(Stage stage) {
        if (stage.kind() == Stage.Kind.PORTION) {
            for (int p = 0; p < formula.portions().size(); p++) {
                if (formula.portions().get(p).name().equals(stage.portion())) {
                    return p;
                }
            }
        }
        return -1;
    }

    private void layAddition(AdditionPart addition, int portion, double fraction) {
        Linear mass = fraction == 1 ? addition.mass() : addition.mass().times(fraction);
        Additive.Makeup makeup = addition.material().makeup();
        boolean onTop = addition.stage() == Stage.Kind.TOP;
        // what lies on top does not mix with the batter, so its acid and fat stay out of the chemistry
        double equivalents = onTop ? 0 : Stoichiometry.molesPerGram(makeup.fat() * makeup.fatSaponificationValue());
        double acid = onTop ? 0 : makeup.acidMolesPerGram();
        lines.add(new BatchLine(
                Kind.ADDITION,
                addition.written().of(),
                addition.written().stage(),
                portion,
                addition.place(),
                mass,
                equivalents,
                0,
                acid,
                0,
                makeup.water(),
                addition.material().gramsPerMillilitre()));
        fatEquivalents = fatEquivalents.plus(mass.times(equivalents));
        taken = taken.plus(mass.times(acid));
        if (addition.written().replacesWater()) {
            replacingLiquids = replacingLiquids.plus(mass);
        }
        if (addition.liquid().isPresent()) {
            layLiquid(addition, addition.liquid().get(), portion, mass);
        }
    }

    private void layLiquid(AdditionPart addition, DispersingLiquid liquid, int portion, Linear solid) {
        Linear mass = solid.times(liquid.ratio());
        Stage stage = addition.written().stage();
        switch (liquid.from()) {
            case WATER -> {
                dispersingWater = dispersingWater.plus(mass);
                lines.add(plain(
                        Kind.DISPERSING_LIQUID,
                        "water",
                        stage,
                        portion,
                        addition.place(),
                        mass,
                        1,
                        BatterVolume.WATER_DENSITY));
            }
            case OILS -> {
                oilsGivenAway = true;
                potOils[liquid.oil()] = potOils[liquid.oil()].minus(mass);
                lines.add(oilLine(
                        Kind.DISPERSING_LIQUID,
                        formula.oils().get(liquid.oil()),
                        addition.place(),
                        stage,
                        portion,
                        mass,
                        temperatureOfOils()));
            }
            case EXTRA -> lines.add(glycerin(stage, portion, addition.place(), mass));
        }
    }

    private BatchLine glycerin(Stage stage, int portion, int place, Linear mass) {
        Additive glycerin = formula.tables()
                .additive("glycerin")
                .orElseThrow(() -> new IllegalStateException("the tables lack glycerin"));
        return plain(
                Kind.DISPERSING_LIQUID,
                "glycerin",
                stage,
                portion,
                place,
                mass,
                glycerin.makeup().water(),
                glycerin.gramsPerMillilitre());
    }

    private static BatchLine plain(
            Kind kind, String key, Stage stage, int portion, int place, Linear mass, double water, double density) {
        return new BatchLine(kind, key, stage, portion, place, mass, 0, 0, 0, 0, water, density);
    }

    /** All alkali: as given, else for the superfat, with what the additions take on top where that is compensated. */
    private Linear alkaliMoles() {
        if (formula.alkali().givenMoles().isPresent()) {
            return formula.alkali().givenMoles().get();
        }
        double reacting = 1 - formula.superfat().orElse(0.0);
        return formula.formula().acidRule() == AcidRule.COMPENSATE
                ? oilEquivalents.plus(fatEquivalents).times(reacting).plus(taken)
                : oilEquivalents.times(reacting);
    }

    private Linear waterByRule(Linear moles) {
        WaterRule rule = formula.formula().water();
        if (rule instanceof WaterRule.LyeStrength lye) {
            double strength = lye.strength().fraction();
            return moles.times(alkaliGramsPerMole(lye.asWeighed()) * (1 - strength) / strength);
        }
        if (rule instanceof WaterRule.OfOils ofOils) {
            return Linear.ofOils(ofOils.share().fraction());
        }
        if (rule instanceof WaterRule.Ratio ratio) {
            double parts = ratio.parts().doubleValue() / ratio.toAlkali().doubleValue();
            return moles.times(alkaliGramsPerMole(ratio.asWeighed()) * parts);
        }
        WaterRule.Weight weight = (WaterRule.Weight) rule;
        double grams = weight.mass().grams();
        return formula.writtenOilsGrams().isPresent() && !weight.fixed()
                ? Linear.ofOils(grams / formula.writtenOilsGrams().get())
                : Linear.fixed(grams);
    }

    private double alkaliGramsPerMole(boolean asWeighed) {
        double sum = 0;
        for (Alkali alkali : ALKALIS) {
            double pure = formula.alkali().pureGramsPerMole(alkali);
            // a stock lye has no product beside it, so as weighed is its pure alkali too
            sum += asWeighed && formula.alkali().stock().isEmpty() ? pure / strength(alkali) : pure;
        }
        return sum;
    }

    private static final Alkali[] ALKALIS = Alkali.values();

    /** Pure alkali in a gram of what is weighed: the product's purity, or the stock lye's strength. */
    private double strength(Alkali alkali) {
        return formula.alkali().stock().isPresent()
                ? formula.alkali().stock().get().strength().middle() / 100
                : formula.purities().fraction(alkali);
    }

    /** Plain water is what the rule asks less what is elsewhere already: dispersions, liquids, a stock lye's own. */
    private void layWater(Linear rule, Linear moles) {
        Linear plain = rule.minus(dispersingWater).minus(replacingLiquids);
        if (formula.alkali().stock().isPresent()) {
            plain = plain.minus(
                    moles.times(stockWaterPerMole(formula.alkali().stock().get())));
        }
        lines.add(plain(Kind.WATER, "water", LYE, -1, -1, plain, 1, BatterVolume.WATER_DENSITY));
    }

    private static double stockWaterPerMole(StockLye stock) {
        double strength = stock.strength().middle() / 100;
        return stock.alkali().molarMass() * (1 - strength) / strength;
    }

    private void layAlkali(Linear moles) {
        for (Alkali alkali : ALKALIS) {
            if (formula.alkali().has(alkali)) {
                lines.add(alkaliLine(alkali, moles));
            }
        }
    }

    private BatchLine alkaliLine(Alkali alkali, Linear moles) {
        double strength = strength(alkali);
        boolean stock = formula.alkali().stock().isPresent();
        double water = stock ? 1 - strength : (1 - strength) * alkali.waterInRest();
        return new BatchLine(
                Kind.ALKALI,
                stock ? formula.alkali().stock().get().key() : alkali.key(),
                LYE,
                -1,
                -1,
                moles.times(formula.alkali().pureGramsPerMole(alkali) / strength),
                0,
                0,
                0,
                strength / alkali.molarMass(),
                water,
                BatterVolume.ALKALI_REST_DENSITY);
    }
}
