package lyewright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Fractions;
import org.jspecify.annotations.Nullable;

/**
 * A line taken apart: what it says when, and the numbers in it. Whatever is no amount belongs to the name, so that nothing
 * typed is passed over.
 *
 * @param body the line without its stage
 * @param stageText how it is said when it goes in; empty where it is not
 * @param stage when it goes in, if that is said
 * @param numbers all numbers, in order
 */
record NotebookLine(String body, String stageText, Optional<Stage.Kind> stage, List<Quantity> numbers) {

    /** The end of a line whose liquid is part of the lye's water. */
    static final String AS_WATER = "in the lye as water";

    /** A number that ends a key, as in brine-25, is part of it; so is one inside a word. */
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\p{L}\\p{N}.,/])(?<![\\p{L}\\p{N}]-)(?:" + Fractions.WRITTEN + "|[-+\u2212]?[.,]?[0-9][0-9.,]*)");

    private static final Pattern UNIT = Pattern.compile(
            "\\s{0,9}(?:(?:level|heaped|heaping|rounded|scant)\\s{1,4}(?=\\p{L}))?(%|[fF][lL]\\.?\\s?[oO][zZ](?!\\p{L})|\\p{L}+)");

    private static final Pattern OF = Pattern.compile(
            "\\s{1,9}(of (?:the )?(?:oils|batch)|per (?:g|kg|oz|lb) (?:of )?oils)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

    /** A times sign behind a number: 2x. */
    private static final Pattern TIMES =
            Pattern.compile("(?<![\\p{L}\\p{N}])[0-9][0-9.,]*\\s?[xX\u00d7](?![\\p{L}\\p{N}])");

    /** A pint of water. */
    private static final Pattern OF_A_THING = Pattern.compile("^\\s{1,9}of\\s{1,9}", Pattern.CASE_INSENSITIVE);

    private static final Pattern BETWEEN_TWO = Pattern.compile("[\\s,]{1,9}|\\s{1,9}and\\s{1,9}");

    private static final Pattern STAGE = Pattern.compile(
            "(?:[\\s,;(])(at trace|in (?:the )?lye,? as (?:part of (?:the|its) )?water|in the lye|in lye|in the oils|in oils|on top)[).\\s]{0,9}$",
            Pattern.CASE_INSENSITIVE);

    /**
     * A number and its unit.
     *
     * @param number as typed
     * @param unit its symbol, empty without one
     * @param of what it is said to be of, as a file has it, such as {@code of oils}; mostly empty
     * @param start where it begins in the body
     * @param end where it ends
     */
    record Quantity(String number, String unit, String of, int start, int end) {

        boolean isBare() {
            return unit.isEmpty();
        }

        /** A share of nobody knows what. */
        boolean isPercent() {
            return unit.equals(NotebookUnits.PERCENT) && of.isEmpty();
        }

        /** Another number in its place. */
        Quantity as(String other) {
            return new Quantity(other, unit, of, start, end);
        }

        Quantity in(String symbol) {
            return new Quantity(number, symbol, of, start, end);
        }

        /** As an amount is written: {@code 350 g}. */
        @Override
        public String toString() {
            return (unit.isEmpty() ? number : number + " " + unit) + (of.isEmpty() ? "" : " " + of);
        }
    }

    NotebookLine {
        numbers = List.copyOf(numbers);
    }

    static NotebookLine of(String text) {
        Matcher stage = STAGE.matcher(text);
        boolean staged = stage.find();
        String body = staged ? text.substring(0, stage.start()) : text;
        return new NotebookLine(
                body,
                text.substring(body.length()),
                staged ? Optional.of(kind(stage.group(1))) : Optional.empty(),
                together(numbers(body), body));
    }

    /** Whether what goes into the lye is part of its water. */
    boolean isAsWater() {
        return stageText.toLowerCase(Locale.ROOT).contains("water");
    }

    private static Stage.Kind kind(String words) {
        char last = words.charAt(words.length() - 1);
        return switch (last) {
            case 'p', 'P' -> Stage.Kind.TOP;
            case 's', 'S' -> Stage.Kind.OILS;
            default -> words.charAt(0) == 'a' || words.charAt(0) == 'A' ? Stage.Kind.TRACE : Stage.Kind.LYE;
        };
    }

    private static List<Quantity> numbers(String body) {
        List<Quantity> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(body);
        int from = 0;
        while (from <= body.length() && number.find(from)) {
            Quantity read = quantity(body, number.start(), number.end());
            numbers.add(read);
            from = read.end();
        }
        return numbers;
    }

    private static Quantity quantity(String body, int start, int end) {
        Matcher unit = UNIT.matcher(body).region(end, body.length()).useTransparentBounds(true);
        String symbol = unit.lookingAt() ? symbol(unit.group(1)) : null;
        String number = NotebookUnits.decimal(body.substring(start, end));
        if (symbol == null) {
            return new Quantity(number, "", "", start, end);
        }
        Matcher of = OF.matcher(body).region(unit.end(), body.length()).useTransparentBounds(true);
        return of.lookingAt()
                ? new Quantity(number, symbol, ofWhat(of.group(1)), start, of.end())
                : new Quantity(number, symbol, "", start, unit.end());
    }

    private static String ofWhat(String words) {
        String small = words.toLowerCase(Locale.ROOT).replace("of the ", "of ");
        return small.startsWith("per ") ? small.replace(" of oils", " oils") : small;
    }

    /** Pounds and ounces side by side are one mass. */
    private static List<Quantity> together(List<Quantity> apart, String body) {
        List<Quantity> numbers = new ArrayList<>();
        for (Quantity next : apart) {
            Quantity last = numbers.isEmpty() ? null : numbers.get(numbers.size() - 1);
            String sum = last == null ? null : NotebookUnits.sum(last, next);
            if (last != null
                    && sum != null
                    && BETWEEN_TWO
                            .matcher(body.substring(last.end(), next.start()))
                            .matches()) {
                numbers.set(numbers.size() - 1, new Quantity(sum, next.unit(), next.of(), last.start(), next.end()));
            } else {
                numbers.add(next);
            }
        }
        return numbers;
    }

    private static @Nullable String symbol(String word) {
        return NotebookUnits.symbol(word);
    }

    /** How many times something is said to be taken, as typed. */
    Optional<String> times() {
        Matcher times = TIMES.matcher(body);
        return times.find() ? Optional.of(times.group()) : Optional.empty();
    }

    /** The line without its numbers that have no unit, and without its stage. */
    String nameWithoutBare() {
        StringBuilder name = new StringBuilder(body);
        for (int i = numbers.size() - 1; i >= 0; i--) {
            name.replace(numbers.get(i).start(), numbers.get(i).end(), " ");
        }
        return trimmed(name.toString());
    }

    /** Numbers with a unit of mass or volume, or with what was meant as one. */
    List<Quantity> measured() {
        return numbers.stream().filter(q -> !q.isBare() && !q.isPercent()).toList();
    }

    List<Quantity> bare() {
        return numbers.stream().filter(Quantity::isBare).toList();
    }

    List<Quantity> percents() {
        return numbers.stream().filter(Quantity::isPercent).toList();
    }

    /** What the line says besides one quantity. */
    String nameWithout(Quantity amount) {
        String before = body.substring(0, amount.start());
        String after = body.substring(amount.end());
        return trimmed(before.isBlank() ? OF_A_THING.matcher(after).replaceFirst("") : before + " " + after);
    }

    /** Without the spaces, dashes and colons that join a name and its amount. */
    private static String trimmed(String name) {
        int start = 0;
        int end = name.length();
        while (start < end && isJoint(name.charAt(start))) {
            start++;
        }
        while (end > start && isJoint(name.charAt(end - 1))) {
            end--;
        }
        return Wording.tidy(name.substring(start, end));
    }

    private static boolean isJoint(char c) {
        return Character.isWhitespace(c) || "-\u2013\u2014:=,;.\u2022*".indexOf(c) >= 0;
    }
}
