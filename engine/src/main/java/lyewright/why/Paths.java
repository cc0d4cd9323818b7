package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import lyewright.material.NearestKey;
import lyewright.measure.Problem;

/** What somebody may have meant by a path: the path itself, a name instead of a place, or something near it. */
final class Paths {

    private static final int OFFERED = 3;

    private final Figures figures;

    Paths(Figures figures) {
        this.figures = figures;
    }

    /** The path that is meant; as typed where nothing is. */
    String meant(String typed) {
        if (figures.entries().containsKey(typed)) {
            return typed;
        }
        String named = figures.byName().get(typed);
        return named != null ? named : withinAbsent(typed);
    }

    /** Inside something that the sheet has not, that it has not is the answer. */
    private String withinAbsent(String typed) {
        return figures.entries().values().stream()
                .filter(entry -> entry.value().isEmpty() && typed.startsWith(entry.path() + "."))
                .map(Figures.Entry::path)
                .findFirst()
                .orElse(typed);
    }

    /** A refusal with what is near. */
    Problem unknown(String typed) {
        List<String> inside = known(path -> path.startsWith(typed + ".") || path.startsWith(typed + "["));
        if (!typed.isEmpty() && !inside.isEmpty()) {
            return new Problem(
                    "", "'" + typed + "' holds several figures", "ask for one, such as " + String.join(", ", inside));
        }
        List<String> near = near(typed);
        return new Problem(
                "",
                "the sheet has no figure '" + typed + "'",
                near.isEmpty()
                        ? "name it as in the sheet's JSON, such as alkali.naohGrams"
                        : "did you mean " + String.join(" or ", near) + "?");
    }

    private List<String> near(String typed) {
        if (typed.isBlank()) {
            return List.of();
        }
        List<String> ofTheSheet = near(typed, Paths::isOfTheSheet);
        return ofTheSheet.isEmpty() ? near(typed, path -> true) : ofTheSheet;
    }

    /** What only sentences or comparisons speak of is seldom meant. */
    private static boolean isOfTheSheet(String path) {
        return !path.startsWith("sums.") && !path.startsWith("compared.");
    }

    private List<String> near(String typed, Predicate<String> among) {
        String lower = typed.toLowerCase(Locale.ROOT);
        List<String> ending = known(path -> {
            String there = path.toLowerCase(Locale.ROOT);
            return among.test(path) && (there.equals(lower) || there.endsWith("." + lower));
        });
        if (!ending.isEmpty()) {
            return ending;
        }
        List<String> all = new ArrayList<>(figures.entries().keySet());
        all.addAll(figures.byName().keySet());
        all.removeIf(among.negate());
        List<String> near = NearestKey.among(typed, all);
        return near.isEmpty() ? endingNear(typed, among) : near;
    }

    /** Paths whose last word is near to the last word typed. */
    private List<String> endingNear(String typed, Predicate<String> among) {
        Set<String> words = new TreeSet<>();
        figures.entries().keySet().stream().filter(among).forEach(path -> words.add(lastOf(path)));
        List<String> near = NearestKey.among(lastOf(typed), words);
        return near.isEmpty()
                ? List.of()
                : known(path -> among.test(path) && lastOf(path).equals(near.get(0)));
    }

    private static String lastOf(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private List<String> known(Predicate<String> test) {
        return figures.entries().keySet().stream().filter(test).limit(OFFERED).toList();
    }
}
