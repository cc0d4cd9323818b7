package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.Reaction;
import lyewright.formula.AcidRule;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.Stage;
import lyewright.material.AdditiveKind;
import lyewright.material.Alkali;
import lyewright.measure.Mass;

/**
 * Which vessel each line goes into, on which balance, rounded to what. Water and what dissolves with it go into the lye jug,
 * oils into the oil pot; every later addition waits in its own cup with the liquid it is wetted out with; whatever is too
 * light for the balance under jug or pot goes into a cup on a finer one. A balance is chosen for what it carries with the
 * vessel, whose usual weight counts where its own is not known. Alkali comes last: recomputed from the rounded
 * masses and rounded down.
 */
final class WeighingPlan {

    /** Fewer steps of the balance than this make a weighing coarse; the design's own rule. */
    static final int STEPS_FOR_ALKALI = 200;

    static final int STEPS_FOR_FRAGRANCE = 50;
    static final int STEPS_FOR_OTHERS = 20;

    /** What keeping a mass in whole milligrams may take from it or add to it, grams, with room for arithmetic. */
    private static final double HALF_MILLIGRAM = 0.000_501;

    private final BatchLines batch;
    private final ResolvedFormula formula;
    private final Equipment equipment;
    private final double[] exact;
    private final double oilsGrams;
    private final double cupGrams;
    private final Mass[] weighed;
    private final Balance[] balances;
    private final boolean[] inCup;
    private boolean alkaliTogether;
    private final List<Vessel> vessels;

    WeighingPlan(BatchLines batch, Equipment equipment, double[] exact) {
        this.batch = batch;
        this.formula = batch.formula();
        this.equipment = equipment;
        this.exact = exact;
        this.weighed = new Mass[exact.length];
        this.balances = new Balance[exact.length];
        this.inCup = new boolean[exact.length];
        this.oilsGrams = batch.oilsIn(exact);
        this.cupGrams = burden(Vessel.Kind.CUP);
        this.vessels = new ArrayList<>(formula.additions().size() + 4);
        chooseVessels();
        lightenVessels();
        roundAllButAlkali();
        roundAlkali();
        fillVessels();
    }

    double[] weighed() {
        double[] grams = new double[weighed.length];
        for (int i = 0; i < grams.length; i++) {
            grams[i] = weighed[i].grams();
        }
        return grams;
    }

    List<Vessel> vessels() {
        return vessels;
    }

    Balance balance(int line) {
        return balances[line];
    }

    /** Steps of its balance that a line should have. */
    int stepsNeeded(BatchLine line) {
        if (line.kind() == Kind.ALKALI) {
            return STEPS_FOR_ALKALI;
        }
        return line.kind() == Kind.ADDITION
                        && formula.additions().get(line.place()).material().kind() == AdditiveKind.FRAGRANCE
                ? STEPS_FOR_FRAGRANCE
                : STEPS_FOR_OTHERS;
    }

    private double burden(Vessel.Kind kind) {
        return equipment.burdenGrams(kind, formula.tables());
    }

    private void chooseVessels() {
        double jugLoad = burden(Vessel.Kind.LYE_JUG);
        double potLoad = burden(Vessel.Kind.OIL_POT);
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            jugLoad += line.inLyeJug() ? exact[i] : 0;
            potLoad += line.stage().kind() == Stage.Kind.OILS ? exact[i] : 0;
        }
        Balance underJug = equipment.finestFor(jugLoad);
        Balance underPot = equipment.finestFor(potLoad);
        chooseForAlkali(underJug);
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (isAlkali(i)) {
                continue;
            }
            if (line.inLyeJug() || line.stage().kind() == Stage.Kind.OILS) {
                chooseBetweenVesselAndCup(i, line, line.inLyeJug() ? underJug : underPot);
            } else {
                inOwnCup(i, line);
            }
        }
    }

    /** What went into cups no longer burdens jug and pot, which a finer balance may carry now. */
    private void lightenVessels() {
        double jugLoad = burden(Vessel.Kind.LYE_JUG);
        double potLoad = burden(Vessel.Kind.OIL_POT);
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            jugLoad += inJug(i, line) ? exact[i] : 0;
            potLoad += inPot(i, line) ? exact[i] : 0;
        }
        Balance underJug = equipment.finestFor(jugLoad);
        Balance underPot = equipment.finestFor(potLoad);
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (inJug(i, line)) {
                balances[i] = underJug;
            } else if (inPot(i, line)) {
                balances[i] = underPot;
            }
        }
    }

    private boolean inPot(int i, BatchLine line) {
        // an oil that is wholly used to wet something out leaves nothing for the pot
        return line.stage().kind() == Stage.Kind.OILS && !inCup[i] && exact[i] > 0;
    }

    private boolean inJug(int i, BatchLine line) {
        return line.inLyeJug() && !inCup[i] && (isAlkali(i) || exact[i] > 0);
    }

    /**
     * Both alkalis keep together: in the jug, or in one dry cup where the jug's balance is too coarse for either. Where a cup
     * with both is too heavy for a finer balance, each that needs one has a cup of its own.
     */
    private void chooseForAlkali(Balance underJug) {
        double load = cupGrams;
        boolean coarse = false;
        for (int i = 0; i < exact.length; i++) {
            if (isAlkali(i)) {
                balances[i] = underJug;
                load += exact[i];
                coarse |= coarse(exact[i], underJug, STEPS_FOR_ALKALI);
            }
        }
        if (!coarse) {
            return;
        }
        Balance finer = equipment.finestFor(load);
        alkaliTogether = finer.stepGrams() < underJug.stepGrams();
        for (int i = 0; i < exact.length; i++) {
            if (isAlkali(i)) {
                intoAlkaliCup(i, underJug, finer);
            }
        }
    }

    private void intoAlkaliCup(int i, Balance underJug, Balance forBoth) {
        Balance own = alkaliTogether ? forBoth : equipment.finestFor(exact[i] + cupGrams);
        boolean better = own.stepGrams() < underJug.stepGrams();
        if (alkaliTogether || (better && coarse(exact[i], underJug, STEPS_FOR_ALKALI))) {
            inCup[i] = true;
            balances[i] = own;
        }
    }

    private boolean isAlkali(int i) {
        return batch.lines().get(i).kind() == Kind.ALKALI;
    }

    private void chooseBetweenVesselAndCup(int i, BatchLine line, Balance underVessel) {
        boolean dispersed = line.kind() == Kind.ADDITION
                && formula.additions().get(line.place()).liquid().isPresent();
        if (dispersed || line.kind() == Kind.DISPERSING_LIQUID) {
            inOwnCup(i, line);
            return;
        }
        balances[i] = underVessel;
        if (line.kind() != Kind.WATER && coarse(exact[i], underVessel, stepsNeeded(line))) {
            Balance finer = equipment.finestFor(exact[i] + cupGrams);
            if (finer.stepGrams() < underVessel.stepGrams()) {
                inCup[i] = true;
                balances[i] = finer;
            }
        }
    }

    static boolean coarse(double grams, Balance balance, int steps) {
        return grams > 0 && grams / balance.stepGrams() < steps;
    }

    /** An addition and the liquid after it share a cup, on the finest balance that carries both. */
    private void inOwnCup(int i, BatchLine line) {
        if (line.kind() == Kind.DISPERSING_LIQUID) {
            inCup[i] = true;
            balances[i] = balances[i - 1];
            return;
        }
        double load = exact[i] + cupGrams;
        if (isWettedOut(i)) {
            load += exact[i + 1];
        }
        inCup[i] = true;
        balances[i] = equipment.finestFor(load);
    }

    private void roundAllButAlkali() {
        for (int i = 0; i < exact.length; i++) {
            weighed[i] = batch.lines().get(i).kind() == Kind.ALKALI ? Mass.ZERO : balances[i].nearest(exact[i]);
        }
    }

    private void roundAlkali() {
        double moles = alkaliMoles();
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.kind() == Kind.ALKALI) {
                double share = formula.alkali().pureGramsPerMole(formula.alkaliOf(line.key()))
                        / formula.alkaliOf(line.key()).molarMass();
                weighed[i] = balances[i].down(moles * share / line.alkali());
            }
        }
    }

    /** All alkali for the rounded masses: by the superfat asked, or by the superfat that the given alkali makes. */
    private double alkaliMoles() {
        Reaction rounded = Reaction.of(batch.lines(), weighed());
        if (formula.superfat().isEmpty()) {
            Reaction written = Reaction.of(batch.lines(), exact);
            return written.alkali() <= written.taken() || keepsToTheMilligram()
                    ? written.alkali()
                    : written.reaching() / written.equivalents() * rounded.equivalents() + rounded.taken();
        }
        double reacting = 1 - formula.superfat().get();
        if (formula.formula().acidRule() == AcidRule.COMPENSATE) {
            return reacting * rounded.equivalents() + rounded.taken();
        }
        return reacting * equivalentsOfOils();
    }

    /**
     * Whether all that takes alkali stands as written but for the milligram it is kept to. 32 oz of oil are no whole
     * milligrams, and the alkali beside them must not lose a step of its balance for that.
     */
    private boolean keepsToTheMilligram() {
        for (int i = 0; i < exact.length; i++) {
            Kind kind = batch.lines().get(i).kind();
            if (kind != Kind.ALKALI && kind != Kind.WATER && Math.abs(weighed[i].grams() - exact[i]) > HALF_MILLIGRAM) {
                return false;
            }
        }
        return true;
    }

    /** Without the fat that additions bring, which is not compensated when the formula stands as written. */
    private double equivalentsOfOils() {
        double sum = 0;
        for (int i = 0; i < weighed.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.kind() != Kind.ADDITION) {
                sum += weighed[i].grams() * line.equivalents();
            }
        }
        return sum;
    }

    /** In the order of weighing: cups that are wetted out ahead, oils, what waits in cups, and alkali last. */
    private void fillVessels() {
        addCups(true);
        addPot();
        addCups(false);
        addJug();
        addAlkaliCups();
    }

    private boolean isWettedOut(int i) {
        return i + 1 < exact.length && batch.lines().get(i + 1).kind() == Kind.DISPERSING_LIQUID;
    }

    /** A cup holds one line, and its dispersing liquid if there is one, which is the next line. */
    private void addCups(boolean wettedOut) {
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (inCup[i] && !isAlkali(i) && line.kind() != Kind.DISPERSING_LIQUID && isWettedOut(i) == wettedOut) {
                Filling cup = new Filling(0, 2);
                cup.take(i, line);
                if (wettedOut) {
                    cup.take(i + 1, batch.lines().get(i + 1));
                }
                cup.add(Vessel.Kind.CUP, line.key(), portionOf(line));
            }
        }
    }

    private void addPot() {
        Filling pot = new Filling(
                equipment.vesselGrams(Vessel.Kind.OIL_POT.word()),
                formula.oils().size());
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (inPot(i, line)) {
                pot.take(i, line);
            }
        }
        pot.add(Vessel.Kind.OIL_POT, "", "");
    }

    /** Water is there before anything dissolves in it; the other lines follow in their order, alkali last. */
    private void addJug() {
        Filling jug = new Filling(equipment.vesselGrams(Vessel.Kind.LYE_JUG.word()), 3);
        takeIntoJug(jug, true);
        takeIntoJug(jug, false);
        jug.add(Vessel.Kind.LYE_JUG, "", "");
    }

    private void takeIntoJug(Filling jug, boolean water) {
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if ((line.kind() == Kind.WATER) == water && inJug(i, line)) {
                jug.take(i, line);
            }
        }
    }

    private void addAlkaliCups() {
        Filling cup = new Filling(0, 2);
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (isAlkali(i) && inCup[i]) {
                cup.take(i, line);
                if (!alkaliTogether) {
                    cup.add(Vessel.Kind.CUP, line.key(), "");
                    cup = new Filling(0, 1);
                }
            }
        }
        cup.add(Vessel.Kind.CUP, "alkali", "");
    }

    /** A vessel as it fills, with the reading under it. */
    private final class Filling {
        private final double emptyGrams;
        private final List<Weighing> weighings;
        private Mass reading;

        Filling(double emptyGrams, int lines) {
            this.emptyGrams = emptyGrams;
            this.weighings = new ArrayList<>(lines);
            this.reading = Mass.ofGrams(emptyGrams);
        }

        void take(int i, BatchLine line) {
            reading = reading.plus(weighed[i]);
            weighings.add(weighing(i, line, reading));
        }

        void add(Vessel.Kind kind, String of, String portion) {
            if (!weighings.isEmpty()) {
                vessels.add(new Vessel(kind, of, portion, emptyGrams, weighings));
            }
        }
    }

    private Weighing weighing(int i, BatchLine line, Mass reading) {
        return new Weighing(
                line,
                nameOf(line),
                portionOf(line),
                exact[i],
                weighed[i],
                reading,
                balances[i],
                100 * exact[i] / oilsGrams);
    }

    private String portionOf(BatchLine line) {
        return line.portion() < 0 ? "" : formula.portions().get(line.portion()).name();
    }

    private String nameOf(BatchLine line) {
        return switch (line.kind()) {
            case OIL -> formula.oils().get(line.place()).name();
            case ADDITION -> formula.additions().get(line.place()).material().name();
            case DISPERSING_LIQUID -> liquidName(line);
            case WATER -> "Water";
            case ALKALI -> alkaliName(line);
        };
    }

    private String liquidName(BatchLine line) {
        if (!batch.isOil(line)) {
            return line.water() == 1 ? "Water" : "Glycerin";
        }
        for (ResolvedFormula.OilPart oil : formula.oils()) {
            if (oil.key().equals(line.key())) {
                return oil.name();
            }
        }
        return line.key();
    }

    private String alkaliName(BatchLine line) {
        if (formula.alkali().stock().isPresent()) {
            return formula.alkali().stock().get().name();
        }
        return formula.alkaliOf(line.key()) == Alkali.SODIUM
                ? "Sodium hydroxide (caustic soda)"
                : "Potassium hydroxide (potash)";
    }
}
