package lyewright.formula;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NotebookLine.Quantity;
import org.jspecify.annotations.Nullable;

/** What the maker weighed once of a thing in a spoon of their own, so that a line in spoons is a weight. */
final class NotebookSpoons {

    private static final BigDecimal MILLIGRAMS = BigDecimal.valueOf(1000);

    private final MaterialNames materials;

    NotebookSpoons(MaterialNames materials) {
        this.materials = materials;
    }

    /**
     * An amount that was weighed.
     *
     * @param amount in grams, where it stood in the line
     * @param remark how it was said
     */
    record Weighed(Quantity amount, String remark) {}

    /** So many spoons in grams; empty where nobody weighed such a spoon level, or the name is not one material. */
    Optional<Weighed> weighed(NotebookLine line, Quantity amount) {
        String words = line.body().substring(amount.start(), amount.end()).strip();
        String small = words.toLowerCase(Locale.ROOT);
        boolean level = !small.contains("heap") && !small.contains("rounded") && !small.contains("scant");
        if (!level || !amount.of().isEmpty() || !amount.number().matches("[0-9]{1,4}(\\.[0-9]{1,5})?")) {
            return Optional.empty();
        }
        String typed = line.nameWithout(amount);
        Meant meant = materials.names().find(typed, any -> true);
        return meant.isOne()
                ? holds(materials.spoons(meant.key()), amount.unit()).map(held -> weighed(typed, words, amount, held))
                : Optional.empty();
    }

    private static Weighed weighed(String typed, String words, Quantity amount, long held) {
        BigDecimal one = BigDecimal.valueOf(held).divide(MILLIGRAMS);
        BigDecimal all = new BigDecimal(amount.number()).multiply(one);
        return new Weighed(
                amount.as(plain(all)).in("g"),
                " " + typed + ": " + words + ", each of " + plain(one) + " g by your own spoon");
    }

    private static String plain(BigDecimal grams) {
        return grams.stripTrailingZeros().toPlainString();
    }

    private static Optional<Long> holds(Map<String, Long> spoons, String unit) {
        return spoons.entrySet().stream()
                .filter(spoon -> isOne(spoon.getKey().strip().toLowerCase(Locale.ROOT), unit))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** A teaspoon is one however it is written; scoops are scoops. */
    private static boolean isOne(String spoon, String unit) {
        @Nullable String symbol = NotebookUnits.symbol(spoon);
        String name = symbol == null ? spoon : symbol;
        return name.equals(unit) || (name + "s").equals(unit) || name.equals(unit + "s");
    }
}
