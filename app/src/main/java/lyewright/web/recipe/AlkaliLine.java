package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.MaterialNames;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * The alkali in one line: {@code sodium}, {@code 40 % sodium, 60 % potassium by moles}, {@code 76 g sodium as weighed}, a stock
 * lye's name, {@code 280 g of my-lye}; names of the trade, such as soda and potash, may stand for the two.
 */
final class AlkaliLine {

    private static final String WAYS =
            "write sodium, potassium, 40 % sodium, 60 % potassium by moles, 76 g sodium as weighed, or a stock lye's name";

    private static final Pattern QUANTITY = Pattern.compile(
            "([-+\u2212]?[.,]?[0-9][0-9.,]*\\s?(?:%|\\p{L}+)?(?:\\sfixed(?!\\S))?|rest(?![\\p{L}\\p{N}-]))",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NAME = Pattern.compile(
            "((?:(?:sodium|potassium)(?:\\shydroxide)?|caustic\\s(?:soda|potash)|soda|potash|naoh|koh)"
                    + "(?:\\s\\((?:naoh|koh)\\))?)(?![\\p{L}\\p{N}-])",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern BASIS = Pattern.compile(
            "(?:(?:by|as):?\\s){0,2}(moles|mol|pure\\smass|pure|weighed)(?![\\p{L}\\p{N}-])", Pattern.CASE_INSENSITIVE);

    private static final Pattern JOINT = Pattern.compile("(?:[\\s,;:{}&+]|and\\s|with\\s)+", Pattern.CASE_INSENSITIVE);

    private final String text;
    private final Map<String, Object> said = new LinkedHashMap<>();
    private int at;

    private AlkaliLine(String text) {
        this.text = text;
    }

    /** What the file says under alkali, in one line. */
    static String print(@Nullable Object alkali) {
        Map<String, Object> said = YamlTexts.map(alkali);
        if (said.isEmpty()) {
            return alkali instanceof String word ? word : "";
        }
        List<String> parts = new ArrayList<>();
        String basis = "";
        for (Map.Entry<String, Object> entry : said.entrySet()) {
            switch (entry.getKey()) {
                case "sodium", "potassium" -> parts.add(entry.getValue() + " " + entry.getKey());
                case "by" -> basis = entry.getValue().equals("as weighed") ? " as weighed" : " by " + entry.getValue();
                case "as" -> basis = entry.getValue().equals("weighed") ? " as weighed" : " " + entry.getValue();
                default -> parts.add(entry.getValue() + " of " + entry.getKey());
            }
        }
        return String.join(", ", parts) + basis;
    }

    /** What the file would say: a text, or names and texts. */
    static Outcome<Object> parse(String given, Predicate<String> stockLye) {
        String line = given.strip();
        if (stockLye.test(line)) {
            return Outcome.ok(line);
        }
        for (Alkali alkali : Alkali.values()) {
            if (alkali.word().equalsIgnoreCase(line)) {
                return Outcome.ok(alkali.word());
            }
        }
        Optional<Alkali> alone = MaterialNames.alkali(line);
        return alone.isPresent() ? Outcome.ok(alone.get().word()) : new AlkaliLine(line).parse();
    }

    private Outcome<Object> parse() {
        skip();
        if (!saysHowMuch()) {
            return Outcome.ok(text);
        }
        while (at < text.length()) {
            Outcome<Object> stop = part();
            if (stop != null) {
                return stop;
            }
            skip();
        }
        return settled();
    }

    /** Whether the line begins with a quantity, or with one of the two and its quantity. */
    private boolean saysHowMuch() {
        int begin = at;
        if (looking(NAME) != null) {
            skip();
        }
        boolean quantity = looking(QUANTITY) != null;
        at = begin;
        return quantity;
    }

    /** Reads one alkali with its quantity, or the basis; what ends the reading, or null to go on. */
    private @Nullable Outcome<Object> part() {
        String basis = looking(BASIS);
        if (basis != null) {
            return put("by", basis.toLowerCase(Locale.ROOT));
        }
        String name = looking(NAME);
        if (name != null) {
            skip();
            String quantity = looking(QUANTITY);
            return quantity == null ? notUnderstood(text) : put(word(name), quantity);
        }
        String quantity = looking(QUANTITY);
        if (quantity == null) {
            return notUnderstood(text.substring(at));
        }
        boolean of = text.startsWith(" of ", at);
        if (of) {
            at += " of".length();
        }
        skip();
        String named = looking(NAME);
        if (named != null) {
            return put(word(named), quantity);
        }
        String rest = text.substring(at).strip();
        if (rest.isEmpty() || !said.isEmpty()) {
            return notUnderstood(rest.isEmpty() ? quantity : rest);
        }
        return Outcome.ok(Map.of(rest, quantity));
    }

    private @Nullable Outcome<Object> put(String name, String value) {
        return said.putIfAbsent(name, value) == null
                ? null
                : Outcome.refused(
                        name.equals("by") ? "'" + text + "' says twice what it is of" : name + " stands twice here",
                        "write it once");
    }

    private Outcome<Object> settled() {
        boolean shares = said.values().stream().anyMatch(value -> isShare(String.valueOf(value)));
        Object basis = said.remove("by");
        if (said.isEmpty()) {
            return notUnderstood(text);
        }
        if (basis == null) {
            return shares
                    ? Outcome.refused(
                            "'" + text + "' does not say what the shares are of",
                            "write by moles, by pure mass or as weighed behind it")
                    : Outcome.ok(said);
        }
        String word = String.valueOf(basis);
        if (shares) {
            said.put("by", word.startsWith("mol") ? "moles" : word.startsWith("pure") ? "pure mass" : "as weighed");
        } else {
            said.put("as", word);
        }
        return Outcome.ok(said);
    }

    private static boolean isShare(String value) {
        return value.contains("%") || value.equals("rest");
    }

    private static String word(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        boolean sodium = small.contains("sod") || small.contains("naoh");
        return (sodium ? Alkali.SODIUM : Alkali.POTASSIUM).word();
    }

    private static Outcome<Object> notUnderstood(String what) {
        return Outcome.refused("'" + what + "' is not a way of saying the alkali", WAYS);
    }

    private @Nullable String looking(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length()).useTransparentBounds(true);
        if (!matcher.lookingAt()) {
            return null;
        }
        at = matcher.end();
        return matcher.group(1);
    }

    private void skip() {
        Matcher joint = JOINT.matcher(text).region(at, text.length());
        if (joint.lookingAt()) {
            at = joint.end();
        }
    }
}
