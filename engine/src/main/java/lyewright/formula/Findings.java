package lyewright.formula;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lyewright.formula.Places.Place;
import lyewright.measure.Problem;

/** What was found wrong while a file was read, in the order of the file's reading; a hundred are enough. */
final class Findings {

    private static final int ENOUGH = 100;

    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Place> places;

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

    void addAll(String path, List<Problem> inner) {
        inner.forEach(problem -> add(problem.within(path)));
    }

    private void add(Problem problem) {
        if (problems.size() < ENOUGH) {
            problems.add(problem);
        }
    }

    /** Adds what the rules say, except where the reading already found the cause: at the same entry, around or inside it. */
    void addConsequences(List<Problem> rules) {
        List<Problem> causes = List.copyOf(problems);
        for (Problem rule : rules) {
            if (causes.stream().noneMatch(cause -> concern(cause.path(), rule.path()))) {
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
