package lyewright.makingsheet;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import lyewright.material.Tables;
import lyewright.material.Tables.BalanceErrorRow;
import lyewright.measure.Mass;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;

/**
 * A balance in the workshop: what it is called, the most it carries, what it counts in (a decimal of some unit: 0.05 oz is
 * a step), and its OIML class where that is known. Immutable. Not a record only because it keeps its figures in grams at
 * hand: every weighing asks for them.
 */
public final class Balance {

    private static final Set<String> CLASSES = Set.of("I", "II", "III", "IIII");
    private static final double STEPS_OF_CLASS_III = 10_000;
    private static final double STEPS_OF_CLASS_II = 100_000;

    /** Steps that stand for nothing but the arithmetic of doubles. */
    private static final double ARITHMETIC = 1e-9;

    private final String name;
    private final WrittenMass capacity;
    private final WrittenMass step;
    private final Optional<String> accuracyClass;
    private final double capacityGrams;
    private final double stepGrams;

    /**
     * A balance.
     *
     * @param name what it is called
     * @param capacity the most it carries
     * @param step what it counts in
     * @param accuracyClass OIML class I, II, III or IIII, if known
     * @throws IllegalArgumentException for one that cannot weigh: a broken promise of the caller
     */
    public Balance(String name, WrittenMass capacity, WrittenMass step, Optional<String> accuracyClass) {
        this.name = name;
        this.capacity = capacity;
        this.step = step;
        this.accuracyClass = accuracyClass;
        this.capacityGrams = capacity.grams();
        this.stepGrams = step.grams();
        if (!(stepGrams > 0) || !(capacityGrams >= stepGrams)) {
            throw new IllegalArgumentException("balance " + name + ": step " + step + ", capacity " + capacity);
        }
    }

    /**
     * What it is called.
     *
     * @return its name
     */
    public String name() {
        return name;
    }

    /**
     * The most it carries.
     *
     * @return as typed
     */
    public WrittenMass capacity() {
        return capacity;
    }

    /**
     * What it counts in.
     *
     * @return as typed
     */
    public WrittenMass step() {
        return step;
    }

    /**
     * Its OIML class.
     *
     * @return I, II, III or IIII, if known
     */
    public Optional<String> accuracyClass() {
        return accuracyClass;
    }

    /** The most it carries, in grams. */
    double capacityGrams() {
        return capacityGrams;
    }

    /** What it counts in, in grams. */
    double stepGrams() {
        return stepGrams;
    }

    /**
     * Reads {@code kitchen:5kg:1g}, with the class after it where it is known: {@code fine:200g:0.01g:II}.
     *
     * @param text the text
     * @return the balance, or why not
     */
    public static Outcome<Balance> parse(String text) {
        String[] parts = text.strip().split(":", -1);
        if (parts.length < 3 || parts.length > 4 || parts[0].isBlank()) {
            return Outcome.refused("'" + text + "' is not a balance", "write name:capacity:step, as in kitchen:5kg:1g");
        }
        Optional<String> accuracyClass = parts.length == 4 ? Optional.of(parts[3]) : Optional.empty();
        Outcome<Balance> read = WrittenMass.parse(parts[1])
                .then(capacity ->
                        WrittenMass.parse(parts[2]).then(step -> of(parts[0].strip(), capacity, step, accuracyClass)));
        return read instanceof Outcome.Ok<Balance> ? read : new Outcome.Refused<>(whole(read.problems()));
    }

    /** In a text of one piece no part has a path of its own. */
    private static List<Problem> whole(List<Problem> problems) {
        return problems.stream()
                .map(problem -> new Problem("", problem.what(), problem.remedy()))
                .toList();
    }

    /**
     * Puts a balance together.
     *
     * @param name its name
     * @param capacity the most it carries
     * @param step what it counts in
     * @param accuracyClass its OIML class, in letters of any case, if known
     * @return the balance, or why not; the path says of which of the four: {@code class} or {@code step}
     */
    public static Outcome<Balance> of(
            String name, WrittenMass capacity, WrittenMass step, Optional<String> accuracyClass) {
        Optional<String> known = accuracyClass.map(text -> text.strip().toUpperCase(Locale.ROOT));
        if (known.isPresent() && !CLASSES.contains(known.get())) {
            return Outcome.refused(new Problem(
                    "class", "'" + accuracyClass.get() + "' is not an accuracy class", "write I, II, III or IIII"));
        }
        if (step.grams() < 0.001) {
            return Outcome.refused(new Problem(
                    "step", "balance '" + name + "' has a step of " + step, "write a step of 1 mg or more"));
        }
        if (capacity.grams() < step.grams()) {
            return Outcome.refused(new Problem(
                    "step",
                    "balance '" + name + "' carries " + capacity + " in steps of " + step,
                    "write the capacity first, then the step"));
        }
        return Outcome.ok(new Balance(name, capacity, step, known));
    }

    /**
     * A whole number of steps nearest to a mass.
     *
     * @param grams 0 or more
     * @return to the nearest milligram
     */
    Mass nearest(double grams) {
        return Mass.ofGrams(Math.round(grams / stepGrams + ARITHMETIC) * stepGrams);
    }

    /**
     * A whole number of steps, never over a mass.
     *
     * @param grams 0 or more
     * @return to the nearest milligram
     */
    Mass down(double grams) {
        // a billionth of a step over a whole step is arithmetic, not mass
        double steps = Math.floor(grams / stepGrams + ARITHMETIC);
        Mass mass = Mass.ofGrams(steps * stepGrams);
        if (grams / stepGrams - steps < ARITHMETIC) {
            // a whole number of steps to begin with, such as 4.20 oz on a balance of 0.05 oz
            return mass;
        }
        // a step such as 0.05 oz is no whole milligram, and the nearest one may lie over
        return mass.grams() > grams + ARITHMETIC * stepGrams ? Mass.ofGrams((steps - 1) * stepGrams) : mass;
    }

    /**
     * The class it is taken to be: its own, else III, or II or I where it has more steps than those may have.
     *
     * @return I, II, III or IIII
     */
    public String classTaken() {
        if (accuracyClass.isPresent()) {
            return accuracyClass.get();
        }
        double steps = capacityGrams / stepGrams;
        if (steps > STEPS_OF_CLASS_II) {
            return "I";
        }
        return steps > STEPS_OF_CLASS_III ? "II" : "III";
    }

    /**
     * The error it may have in service at a load, verification step taken as its own step (OIML R 76-1, table of maximum
     * permissible errors; figures from memory, see docs/sources).
     *
     * @param grams load
     * @param tables with the permitted errors
     * @return grams, either way
     */
    public double permittedErrorGrams(double grams, Tables tables) {
        double steps = grams / stepGrams;
        double permitted = 0;
        for (BalanceErrorRow row : tables.balanceErrors()) {
            // a row holds up to its upper end, that end included; beyond a class's last row that row holds
            if (row.accuracyClass().equals(classTaken()) && (steps > row.fromSteps() || row.fromSteps() == 0)) {
                permitted = row.inServiceSteps();
            }
        }
        return permitted * stepGrams;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Balance that
                && name.equals(that.name)
                && capacity.equals(that.capacity)
                && step.equals(that.step)
                && accuracyClass.equals(that.accuracyClass);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, capacity, step, accuracyClass);
    }

    /** As it is written on the command line. */
    @Override
    public String toString() {
        return name + ":" + capacity.toString().replace(" ", "") + ":"
                + step.toString().replace(" ", "")
                + accuracyClass.map(c -> ":" + c).orElse("");
    }
}
