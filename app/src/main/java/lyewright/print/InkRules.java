package lyewright.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the shapes of a picture look, as the picture's own style sheet says: rules for a class or an element by itself, later
 * ones over earlier ones. No more of style sheets is used in pictures.
 */
final class InkRules {

    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");

    private record Rule(Set<String> names, Map<String, String> says) {}

    private final List<Rule> rules = new ArrayList<>();

    InkRules(String sheet) {
        Matcher rule = RULE.matcher(sheet);
        while (rule.find()) {
            rules.add(new Rule(names(rule.group(1)), says(rule.group(2))));
        }
    }

    private static Set<String> names(String selectors) {
        return Set.of(selectors.strip().split("\\s*,\\s*", -1));
    }

    private static Map<String, String> says(String declarations) {
        Map<String, String> says = new HashMap<>();
        for (String one : declarations.split(";", -1)) {
            int colon = one.indexOf(':');
            if (colon > 0) {
                says.put(
                        one.substring(0, colon).strip(),
                        one.substring(colon + 1).strip());
            }
        }
        return says;
    }

    /** What holds for an element with some classes. */
    Map<String, String> of(String element, String classes) {
        Set<String> wanted = new HashSet<>();
        wanted.add(element);
        for (String one : classes.strip().split("\\s+", -1)) {
            wanted.add("." + one);
        }
        Map<String, String> all = new HashMap<>();
        for (Rule rule : rules) {
            if (rule.names().stream().anyMatch(wanted::contains)) {
                all.putAll(rule.says());
            }
        }
        return all;
    }
}
