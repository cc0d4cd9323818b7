package lyewright.chemistry;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Tables;

/** Reckons one batch's composition, once. */
final class CompositionBuilder {

    private static final String WATER_INCI = "Aqua";

    private final BatchLines batch;
    private final ResolvedFormula formula;
    private final double[] masses;
    private final Reaction reaction;
    private final double addedWater;

    CompositionBuilder(BatchLines batch, double[] masses) {
        this.batch = batch;
        this.formula = batch.formula();
        this.masses = masses;
        this.reaction = Reaction.of(batch.lines(), masses);
        this.addedWater = addedWater();
    }

    List<Composition> moments() {
        return List.of(poured(), cut(), cured());
    }

    private Composition poured() {
        CompositionLedger ledger = ledger(CompositionExtent.NOTHING);
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = batch.lines().get(i);
            ledger.add(
                    Kind.WATER,
                    isAdded(line) ? "Water added by the rule" : "Water brought by materials",
                    WATER_INCI,
                    line.key(),
                    masses[i] * line.water());
        }
        return settled(Moment.POUR, ledger, reaction.totalGrams(), 0, water(0, 0));
    }

    private Composition cut() {
        Process process = formula.formula().process();
        Tables.Practice reacted = formula.tables().practice(practice(process));
        return new Composition(
                Moment.CUT,
                reaction.totalGrams(),
                false,
                reacted.low(),
                reacted.high(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                water(reaction.waterFormedGrams(), 0));
    }

    private static String practice(Process process) {
        if (process.make() == Process.Make.COOKED) {
            return "reacted-at-cut-cooked";
        }
        boolean warm = process.make() == Process.Make.OVEN || process.oven().isPresent();
        return warm ? "reacted-at-cut-oven" : "reacted-at-cut-cold";
    }

    private Composition cured() {
        double total = reaction.curedGrams(formula.curedWater());
        CompositionLedger ledger = ledger(CompositionExtent.full(reaction, sodium()));
        Composition.Water water = water(reaction.waterFormedGrams(), reaction.totalGrams() - total);
        ledger.add(Kind.WATER, "Water", WATER_INCI, "water", water.leftGrams());
        return settled(Moment.CURED, ledger, total, 100, water);
    }

    private static Composition settled(
            Moment moment, CompositionLedger ledger, double total, double reacted, Composition.Water water) {
        return new Composition(
                moment,
                total,
                true,
                reacted,
                reacted,
                ledger.substances(total),
                Optional.of(100 * ledger.fattyMatter() / total),
                Optional.of(100 * ledger.commonSalt() / total),
                water);
    }

    private Composition.Water water(double formed, double lost) {
        return new Composition.Water(addedWater, countedAsWater(), reaction.waterGrams() - addedWater, formed, lost);
    }

    private double addedWater() {
        double added = 0;
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = batch.lines().get(i);
            added += isAdded(line) ? masses[i] * line.water() : 0;
        }
        return added;
    }

    /** Solids of milk and the like take the place of so much water. */
    private double countedAsWater() {
        double counted = 0;
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = batch.lines().get(i);
            counted += line.kind() == BatchLine.Kind.ADDITION && isAdded(line) ? masses[i] * (1 - line.water()) : 0;
        }
        return counted;
    }

    /** Whether a line's water is the rule's, or comes beside it. */
    private boolean isAdded(BatchLine line) {
        return switch (line.kind()) {
            case OIL -> false;
            case WATER -> true;
            case DISPERSING_LIQUID -> batch.liquidFrom(line) == DispersingLiquid.From.WATER;
            case ADDITION -> formula.additions().get(line.place()).written().replacesWater();
            case ALKALI -> formula.alkali().stock().isPresent();
        };
    }

    private double sodium() {
        double sodium = 0;
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.kind() == BatchLine.Kind.ALKALI && formula.alkaliOf(line.key()) == Alkali.SODIUM) {
                sodium += masses[i] * line.alkali();
            }
        }
        return reaction.alkali() > 0 ? sodium / reaction.alkali() : 1;
    }

    /** Everything but water. */
    private CompositionLedger ledger(CompositionExtent extent) {
        CompositionLedger ledger = new CompositionLedger();
        CompositionOils oils = new CompositionOils(formula.tables(), ledger, extent);
        CompositionAdditions additions = new CompositionAdditions(formula.tables(), ledger, extent, oils);
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = batch.lines().get(i);
            switch (line.kind()) {
                case OIL -> oils.add(formula.oils().get(line.place()), masses[i]);
                case ADDITION -> additions.add(formula.additions().get(line.place()), masses[i], line.onTop());
                case DISPERSING_LIQUID -> addLiquid(line, masses[i], oils, additions);
                case ALKALI -> addAlkali(ledger, line, masses[i], extent);
                case WATER -> {}
            }
        }
        return ledger;
    }

    private void addLiquid(BatchLine line, double grams, CompositionOils oils, CompositionAdditions additions) {
        DispersingLiquid liquid = formula.additions().get(line.place()).liquid().orElseThrow();
        switch (liquid.from()) {
            case WATER -> {}
            case OILS -> oils.add(formula.oils().get(liquid.oil()), grams);
            case EXTRA -> additions.addGlycerin(glycerin(), grams);
        }
    }

    private Additive glycerin() {
        return formula.tables()
                .additive("glycerin")
                .orElseThrow(() -> new IllegalStateException("the tables lack glycerin"));
    }

    private void addAlkali(CompositionLedger ledger, BatchLine line, double grams, CompositionExtent extent) {
        Alkali alkali = formula.alkaliOf(line.key());
        double pure = line.alkali() * alkali.molarMass();
        boolean sodium = alkali == Alkali.SODIUM;
        ledger.add(
                Kind.FREE_ALKALI,
                sodium ? "Sodium hydroxide" : "Potassium hydroxide",
                sodium ? "Sodium Hydroxide" : "Potassium Hydroxide",
                line.key(),
                grams * pure * extent.alkaliLeft());
        ledger.add(
                Kind.INERT,
                "Impurities of the " + (sodium ? "sodium hydroxide" : "potassium hydroxide"),
                "",
                line.key(),
                grams * (1 - pure - line.water()));
    }
}
