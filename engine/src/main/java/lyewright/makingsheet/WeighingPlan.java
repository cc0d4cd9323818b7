package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
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
 * light for the balance under jug or pot goes into a cup on a finer one. Alkali comes last: recomputed from the rounded
 * masses and rounded down.
 */
final class WeighingPlan {

    /** Fewer steps of the balance than this make a weighing coarse; the design's own rule. */
    static final int STEPS_FOR_ALKALI = 200;

    static final int STEPS_FOR_FRAGRANCE = 50;
    static final int STEPS_FOR_OTHERS = 20;

    private final BatchLines batch;
    private final ResolvedFormula formula;
    private final Equipment equipment;
    private final double[] exact;
    private final double oilsGrams;
    private final Mass[] weighed;
    private final Balance[] balances;
    private final int[] cups;
    private int cupCount;
    private boolean alkaliInCup;
    private final List<Vessel> vessels;

    WeighingPlan(BatchLines batch, Equipment equipment, double[] exact) {
        this.batch = batch;
        this.formula = batch.formula();
        this.equipment = equipment;
        this.exact = exact;
        this.weighed = new Mass[exact.length];
        this.balances = new Balance[exact.length];
        this.cups = new int[exact.length];
        this.oilsGrams = oils();
        this.vessels = new ArrayList<>(formula.additions().size() + 4);
        chooseVessels();
        lightenVessels();
        roundAllButAlkali();
        roundAlkali();
        fillVessels();
    }

    private double oils() {
        double oils = 0;
        for (int i = 0; i < exact.length; i++) {
            oils += batch.isOil(batch.lines().get(i)) ? exact[i] : 0;
        }
        return oils;
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

    private void chooseVessels() {
        double jugLoad = equipment.vesselGrams(Vessel.Kind.LYE_JUG.word());
        double potLoad = equipment.vesselGrams(Vessel.Kind.OIL_POT.word());
        double alkaliLoad = 0;
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            jugLoad += line.inLyeJug() ? exact[i] : 0;
            potLoad += line.stage().kind() == Stage.Kind.OILS ? exact[i] : 0;
            alkaliLoad += line.kind() == Kind.ALKALI ? exact[i] : 0;
        }
        Balance underJug = equipment.finestFor(jugLoad);
        Balance underPot = equipment.finestFor(potLoad);
        Balance forAlkali = balanceForAlkali(underJug, alkaliLoad);
        for (int i = 0; i < exact.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.kind() == Kind.ALKALI) {
                balances[i] = forAlkali;
                cups[i] = 0;
            } else if (line.inLyeJug() || line.stage().kind() == Stage.Kind.OILS) {
                chooseBetweenVesselAndCup(i, line, line.inLyeJug() ? underJug : underPot);
            } else {
                inOwnCup(i, line);
            }
        }
    }

    /** What went into cups no longer burdens jug and pot, which a finer balance may carry now. */
    private void lightenVessels() {
        lighten(Vessel.Kind.LYE_JUG, this::inJug);
        lighten(Vessel.Kind.OIL_POT, this::inPot);
    }

    private void lighten(Vessel.Kind kind, IntPredicate in) {
        double load = equipment.vesselGrams(kind.word());
        for (int i = 0; i < exact.length; i++) {
            load += in.test(i) ? exact[i] : 0;
        }
        Balance balance = equipment.finestFor(load);
        for (int i = 0; i < exact.length; i++) {
            balances[i] = in.test(i) ? balance : balances[i];
        }
    }

    private boolean inPot(int i) {
        // an oil that is wholly used to wet something out leaves nothing for the pot
        return batch.lines().get(i).stage().kind() == Stage.Kind.OILS && cups[i] == 0 && exact[i] > 0;
    }

    /** Both alkalis keep together: in the jug, or in one dry cup where the jug's balance is too coarse for either. */
    private Balance balanceForAlkali(Balance underJug, double alkaliLoad) {
        for (int i = 0; i < exact.length; i++) {
            if (batch.lines().get(i).kind() == Kind.ALKALI && coarse(exact[i], underJug, STEPS_FOR_ALKALI)) {
                Balance finer = equipment.finestFor(alkaliLoad);
                alkaliInCup = finer.stepGrams() < underJug.stepGrams();
                return alkaliInCup ? finer : underJug;
            }
        }
        return underJug;
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
            Balance finer = equipment.finestFor(exact[i]);
            if (finer.stepGrams() < underVessel.stepGrams()) {
                cups[i] = ++cupCount;
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
            cups[i] = cups[i - 1];
            balances[i] = balances[i - 1];
            return;
        }
        double load = exact[i];
        if (i + 1 < exact.length && batch.lines().get(i + 1).kind() == Kind.DISPERSING_LIQUID) {
            load += exact[i + 1];
        }
        cups[i] = ++cupCount;
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
                double share = batch.pureGramsPerMole(formula.alkaliOf(line.key()))
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
            return written.alkali() <= written.taken()
                    ? written.alkali()
                    : written.reaching() / written.equivalents() * rounded.equivalents() + rounded.taken();
        }
        double reacting = 1 - formula.superfat().get();
        if (formula.formula().acidRule() == AcidRule.COMPENSATE) {
            return reacting * rounded.equivalents() + rounded.taken();
        }
        return reacting * equivalentsOfOils();
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
        for (int cup = 1; cup <= cupCount; cup++) {
            if (wettedOut(cup)) {
                addCup(cup);
            }
        }
        add(Vessel.Kind.OIL_POT, "", "", this::inPot);
        for (int cup = 1; cup <= cupCount; cup++) {
            if (!wettedOut(cup)) {
                addCup(cup);
            }
        }
        add(Vessel.Kind.LYE_JUG, "", "", this::inJug);
        if (alkaliInCup) {
            add(Vessel.Kind.CUP, "alkali", "", i -> batch.lines().get(i).kind() == Kind.ALKALI);
        }
    }

    private boolean inJug(int i) {
        BatchLine line = batch.lines().get(i);
        boolean alkali = line.kind() == Kind.ALKALI;
        return line.inLyeJug() && cups[i] == 0 && !(alkali && alkaliInCup) && (alkali || exact[i] > 0);
    }

    private boolean wettedOut(int cup) {
        for (int i = 0; i < cups.length; i++) {
            if (cups[i] == cup && batch.lines().get(i).kind() == Kind.DISPERSING_LIQUID) {
                return true;
            }
        }
        return false;
    }

    private void addCup(int cup) {
        for (int i = 0; i < cups.length; i++) {
            if (cups[i] == cup) {
                BatchLine line = batch.lines().get(i);
                add(Vessel.Kind.CUP, line.key(), portionOf(line), j -> cups[j] == cup);
                return;
            }
        }
    }

    private void add(Vessel.Kind kind, String of, String portion, IntPredicate in) {
        Filling filling = new Filling(kind == Vessel.Kind.CUP ? 0 : equipment.vesselGrams(kind.word()));
        if (kind == Vessel.Kind.LYE_JUG) {
            // water is there before anything dissolves in it; the other lines follow in their order, alkali last
            filling.take(i -> in.test(i) && batch.lines().get(i).kind() == Kind.WATER);
            filling.take(i -> in.test(i) && batch.lines().get(i).kind() != Kind.WATER);
        } else {
            filling.take(in);
        }
        if (!filling.weighings.isEmpty()) {
            vessels.add(new Vessel(kind, of, portion, filling.emptyGrams, filling.weighings));
        }
    }

    /** A vessel as it fills, with the reading under it. */
    private final class Filling {
        private final double emptyGrams;
        private final List<Weighing> weighings = new ArrayList<>(4);
        private Mass reading;

        Filling(double emptyGrams) {
            this.emptyGrams = emptyGrams;
            this.reading = Mass.ofGrams(emptyGrams);
        }

        void take(IntPredicate in) {
            for (int i = 0; i < exact.length; i++) {
                if (in.test(i)) {
                    reading = reading.plus(weighed[i]);
                    weighings.add(weighing(i, reading));
                }
            }
        }
    }

    private Weighing weighing(int i, Mass reading) {
        BatchLine line = batch.lines().get(i);
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
