package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;

/**
 * What there is to weigh with.
 *
 * @param balances finest first, at least one
 * @param vesselGrams empty weight of vessels that are not tared, by name ({@code lye jug}, {@code oil pot}, {@code jug
 *     NAME} of a portion)
 */
public record Equipment(List<Balance> balances, Map<String, Double> vesselGrams) {

    /** Without a register: a kitchen balance of 5 kg in 1 g, a fine one of 500 g in 0.1 g, every vessel tared. */
    public static final Equipment USUAL = new Equipment(
            List.of(
                    Balance.parse("kitchen:5kg:1g").orThrow(),
                    Balance.parse("fine:500g:0.1g").orThrow()),
            Map.of());

    /**
     * The same for who weighs in ounces: a kitchen balance of 11 lb in 0.1 oz, a fine one of 17 oz in 0.01 oz, every vessel
     * tared.
     */
    public static final Equipment USUAL_IN_OUNCES = new Equipment(
            List.of(
                    Balance.parse("kitchen:11lb:0.1oz").orThrow(),
                    Balance.parse("fine:17oz:0.01oz").orThrow()),
            Map.of());

    /** Sorts the balances, finest first. */
    public Equipment {
        List<Balance> sorted = new ArrayList<>(balances);
        sorted.sort(
                Comparator.comparingDouble((Balance b) -> b.stepGrams()).thenComparingDouble(Balance::capacityGrams));
        balances = List.copyOf(sorted);
        vesselGrams = Map.copyOf(vesselGrams);
        if (balances.isEmpty()) {
            throw new IllegalArgumentException("equipment needs a balance");
        }
    }

    /**
     * Reads a register, {@code kitchen:5kg:1g,fine:200g:0.01g}.
     *
     * @param text the text
     * @return the equipment, every vessel tared, or why not
     */
    public static Outcome<Equipment> parseBalances(String text) {
        // a comma between digits is a decimal comma, for the number's own reader to refuse
        List<Balance> balances = new ArrayList<>();
        for (String part : text.split("(?<!\\d),|,(?!\\d)", -1)) {
            Outcome<Balance> balance = Balance.parse(part);
            if (!(balance instanceof Outcome.Ok<Balance> ok)) {
                return new Outcome.Refused<>(balance.problems());
            }
            balances.add(ok.value());
        }
        return Outcome.ok(new Equipment(balances, Map.of()));
    }

    /**
     * The same with empty weights, {@code lye jug:312g,oil pot:1480g}.
     *
     * @param text the text
     * @return the equipment, or why not
     */
    public Outcome<Equipment> withVessels(String text) {
        Map<String, Double> weights = new HashMap<>();
        for (String part : text.split(",", -1)) {
            int colon = part.lastIndexOf(':');
            if (colon < 1) {
                return Outcome.refused("'" + part + "' is not a vessel", "write name:weight, as in lye jug:312g");
            }
            Outcome<WrittenMass> mass = WrittenMass.parse(part.substring(colon + 1));
            if (!(mass instanceof Outcome.Ok<WrittenMass> ok)) {
                return new Outcome.Refused<>(mass.problems());
            }
            String name = part.substring(0, colon).strip();
            if (!name.equals(Vessel.Kind.LYE_JUG.word())
                    && !name.equals(Vessel.Kind.OIL_POT.word())
                    && !name.startsWith("jug ")) {
                return Outcome.refused(
                        "'" + name + "' is not a vessel of the sheet",
                        "write lye jug, oil pot, or jug and a portion's name");
            }
            weights.put(name, ok.value().grams());
        }
        return Outcome.ok(new Equipment(balances, weights));
    }

    /**
     * The finest balance that carries a load.
     *
     * @param grams the load, with the vessel
     * @return that balance; where none carries it the one that carries most
     */
    Balance finestFor(double grams) {
        for (Balance balance : balances) {
            if (balance.capacityGrams() >= grams) {
                return balance;
            }
        }
        return strongest();
    }

    private Balance strongest() {
        Balance strongest = balances.get(0);
        for (Balance balance : balances) {
            if (balance.capacityGrams() > strongest.capacityGrams()) {
                strongest = balance;
            }
        }
        return strongest;
    }

    /**
     * A vessel's empty weight.
     *
     * @param vessel its name
     * @return grams, 0 where it is tared
     */
    double vesselGrams(String vessel) {
        return vesselGrams.isEmpty() ? 0 : vesselGrams.getOrDefault(vessel, 0.0);
    }

    /**
     * What a vessel burdens its balance with, tared or not.
     *
     * @param kind what it is
     * @param tables with what vessels usually weigh
     * @return grams: its weight, or the usual one where that is not known
     */
    double burdenGrams(Vessel.Kind kind, Tables tables) {
        Double known = vesselGrams.get(kind.word());
        return known == null ? kind.usualGrams(tables) : known;
    }
}
