package lyewright.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Fractions;
import lyewright.measure.Outcome;
import lyewright.measure.Said;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;

/**
 * How much of a thing, as a maker says it: {@code 2.5 kg}, {@code 1 lb 4 oz}, {@code 30 ml}, {@code 2 teaspoons}, {@code 50}.
 *
 * @param amount milligrams of what is weighed, pieces of what is counted, 0 or more
 * @param words what was said where that was no metric mass and no count, such as {@code 2 teaspoons} or {@code 5 lb}; else empty
 */
public record SaidAmount(long amount, String words) {

    /** More digits than anybody means. */
    private static final int LONGEST = 200;

    /** More pieces than lie in any small workshop; our own choice. */
    private static final long MOST_PIECES = 999_999_999L;

    private static final long MOST_IN_TEASPOON = 30_000;
    private static final long MOST_IN_TABLESPOON = 60_000;

    private static final Pattern PIECES = Pattern.compile("([0-9]{1,9})(?:\\s*(?:pieces?|pcs?))?");

    private static final Pattern SPOON = Pattern.compile("([0-9][0-9.]*)\\s*(?:level )?(\\p{L}[\\p{L} ]*)");

    private static final Pattern METRIC = Pattern.compile("(?<!\\p{L})[mk]?g$", Pattern.CASE_INSENSITIVE);

    private static final BigDecimal MILLIGRAMS_IN_GRAM = new BigDecimal(1000);

    /** 100 t, more than lies in any small workshop; our own choice. */
    private static final BigDecimal MOST = new BigDecimal(100_000_000_000L);

    /**
     * What has to be known of a thing to weigh it without a balance.
     *
     * @param density g/ml; empty where nobody knows it
     * @param spoons what the maker's own spoons hold of it, milligrams by the spoon's name
     */
    public record Known(Optional<Double> density, Map<String, Long> spoons) {

        /** Of which nothing is known. */
        public static final Known NOTHING = new Known(Optional.empty(), Map.of());

        /** Copies its map. */
        public Known {
            spoons = Map.copyOf(spoons);
        }
    }

    /**
     * Reads how many there are.
     *
     * @param typed such as {@code 50} or {@code 50 pieces}
     * @return the amount, or why not
     */
    public static Outcome<SaidAmount> pieces(String typed) {
        Matcher pieces = PIECES.matcher(typed.strip().toLowerCase(Locale.ROOT));
        return pieces.matches()
                ? Outcome.ok(new SaidAmount(Long.parseLong(pieces.group(1)), ""))
                : Outcome.refused(quoted(typed) + " is not a number of pieces", "write how many there are, as in 50");
    }

    /**
     * Reads how much there is.
     *
     * @param typed a mass; or a volume of what has a density; or spoons whose content somebody weighed
     * @param known what is known of the thing
     * @return milligrams, and the words where they were no metric mass; or why not
     */
    public static Outcome<SaidAmount> mass(String typed, Known known) {
        String text = Said.measure(typed);
        if (text.isEmpty() || text.length() > LONGEST) {
            return Outcome.refused("nothing says how much", "write it with its unit, as in 500 g or 2.5 kg");
        }
        Outcome<WrittenMass> mass = WrittenMass.parse(text);
        if (mass instanceof Outcome.Ok<WrittenMass> ok) {
            String words = METRIC.matcher(text).find() ? "" : typed.strip();
            return milligrams(ok.value()).then(number -> Outcome.ok(new SaidAmount(number, words)));
        }
        if (Volume.parse(text) instanceof Outcome.Ok<Volume> volume) {
            return known.density()
                    .map(density -> milligrams(new BigDecimal(volume.value().millilitres() * density), typed.strip()))
                    .orElseGet(() -> Outcome.refused(
                            quoted(typed) + " is a volume, and nobody said how dense it is",
                            "weigh it and write g, or say its density with the material"));
        }
        return spoons(typed, known).orElseGet(() -> mass.then(any -> Outcome.refused("", "")));
    }

    private static Optional<Outcome<SaidAmount>> spoons(String typed, Known known) {
        Matcher said = SPOON.matcher(Fractions.decimals(typed.strip().toLowerCase(Locale.ROOT)));
        if (!said.matches()) {
            return Optional.empty();
        }
        String name = said.group(2).strip();
        String spoon = inFull(name);
        Optional<Long> holds = known.spoons().entrySet().stream()
                .filter(own -> is(own.getKey().toLowerCase(Locale.ROOT), name))
                .map(Map.Entry::getValue)
                .findFirst();
        if (holds.isPresent() && said.group(1).matches("[0-9]{1,4}(\\.[0-9]{1,5})?")) {
            BigDecimal grams = new BigDecimal(said.group(1))
                    .multiply(BigDecimal.valueOf(holds.get()))
                    .divide(MILLIGRAMS_IN_GRAM);
            return Optional.of(milligrams(grams, typed.strip()));
        }
        return spoon.contains("spoon") || spoon.contains("cup") || spoon.contains("scoop")
                ? Optional.of(Outcome.refused(
                        "nobody said yet what '" + name + "' holds of it",
                        "weigh one, level, and say so with the material, as in teaspoon: 2.1 g"))
                : Optional.empty();
    }

    private static boolean is(String spoon, String said) {
        return inFull(said).equals(inFull(spoon));
    }

    /** One of a spoon, in full: a teaspoon, however it is written. */
    private static String inFull(String spoon) {
        String one = spoon.endsWith("s") && !spoon.equals("tbs") ? spoon.substring(0, spoon.length() - 1) : spoon;
        return switch (one) {
            case "tsp", "teaspoonful" -> "teaspoon";
            case "tbsp", "tbs", "tbl", "tablespoonful" -> "tablespoon";
            default -> one;
        };
    }

    /**
     * Whether nobody's spoon of a name holds so much: a teaspoon over 30 g, a tablespoon over 60 g; our own choice.
     *
     * @param spoon its name
     * @param milligrams what it is said to hold
     * @return whether that is worth asking about
     */
    public static boolean isTooMuch(String spoon, long milligrams) {
        return switch (inFull(spoon.strip().toLowerCase(Locale.ROOT))) {
            case "teaspoon" -> milligrams > MOST_IN_TEASPOON;
            case "tablespoon" -> milligrams > MOST_IN_TABLESPOON;
            default -> false;
        };
    }

    private static Outcome<SaidAmount> milligrams(BigDecimal grams, String words) {
        BigDecimal whole = grams.multiply(MILLIGRAMS_IN_GRAM).setScale(0, RoundingMode.HALF_UP);
        return whole.compareTo(MOST) > 0
                ? Outcome.refused("that is more than anybody has", "look at the number and its unit")
                : Outcome.ok(new SaidAmount(whole.longValueExact(), words));
    }

    /**
     * A mass as it is kept.
     *
     * @param mass as written
     * @return whole milligrams, or why it is not kept: more than anybody has, or something that rounds to nothing
     */
    public static Outcome<Long> milligrams(WrittenMass mass) {
        return milligrams(mass.exactGrams(), "")
                .then(read -> read.amount() == 0 && mass.value().signum() > 0
                        ? Outcome.refused("'" + mass + "' is less than a milligram", "look at the number and its unit")
                        : Outcome.ok(read.amount()));
    }

    /**
     * A count as it is kept.
     *
     * @param pieces how many, 0 or more
     * @return the same, or why it is not kept
     */
    public static Outcome<Long> pieces(BigDecimal pieces) {
        if (pieces.stripTrailingZeros().scale() > 0) {
            return Outcome.refused(
                    "'" + pieces.toPlainString() + "' is no whole number of pieces",
                    "write how many there are, as in 50");
        }
        return pieces.compareTo(BigDecimal.valueOf(MOST_PIECES)) > 0
                ? Outcome.refused("that is more than anybody has", "look at the number again")
                : Outcome.ok(pieces.longValueExact());
    }

    private static String quoted(String typed) {
        String text = typed.strip();
        return "'" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "'";
    }
}
