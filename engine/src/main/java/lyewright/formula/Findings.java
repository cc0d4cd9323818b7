package lyewright.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lyewright.formula.Places.Place;
import lyewright.measure.Problem;

/** What was found wrong while a file was read, in the order of the file's reading; a hundred are enough. */
final class Findings {

    private static final int ENOUGH = 100;

    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Place> places;
    private final Set<String> expected = new HashSet<>();

    Findings(Map<String, Place> places) {
        this.places = new HashMap<>(places);
    }

    void add(String path, String what, String remedy) {
        add(new Problem(path, what, remedy));
    }

    /** Adds a problem whose place is not where its path is otherwise shown. */
    void addAt(Place place, String path, String what, String remedy) {
        places.put(path, place);
        add(path, what, remedy);
    }

    /** Notes where an entry stands. */
    void placeOf(String path, Place place) {
        places.put(path, place);
    }

    void addAll(String path, List<Problem> inner) {
        inner.forEach(problem -> add(problem.within(path)));
    }

    /** Notes that an entry is surely meant to be there, only misspelt: that it is missing need not be said. */
    void expect(String path) {
        expected.add(path);
    }

    boolean expects(String path) {
        return expected.contains(path);
    }

    /** Whether so much is wrong already that nothing more is noted. */
    boolean areEnough() {
        return problems.size() >= ENOUGH;
    }

    /** Whether something is wrong with an entry or inside it. */
    boolean has(String path) {
        return problems.stream().anyMatch(p -> p.path().equals(path) || p.path().startsWith(path + "."));
    }

    private void add(Problem problem) {
        if (!areEnough()) {
            problems.add(problem);
        }
    }

    /** Adds what the rules say, except where the reading already found the cause: at the same entry, around or inside it. */
    void addConsequences(List<Problem> rules) {
        List<Problem> causes = List.copyOf(problems);
        for (Problem rule : rules) {
            if (!expected.contains(rule.path())
                    && causes.stream().noneMatch(cause -> concern(cause.path(), rule.path()))) {
                add(rule);
            }
        }
    }

    private static boolean concern(String cause, String rule) {
        return cause.equals(rule) || cause.startsWith(rule + ".") || rule.startsWith(cause + ".");
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    Places asPlaces() {
        return new Places(Place.BEGINNING, places);
    }
}
