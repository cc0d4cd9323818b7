package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.measure.Problem;

/**
 * What reading a form gave.
 *
 * @param formula the formula, present exactly when there are no problems
 * @param problems what is wrong, by the name of the field it is wrong in; {@code oils}, {@code portions} and the like for a
 *     whole group, the empty name for the whole form
 * @param places which field each entry of the formula's file came from
 */
public record FormRead(Optional<Formula> formula, Map<String, List<Problem>> problems, Map<String, String> places) {

    /** Keeps the order of the problems. */
    public FormRead {
        problems = Collections.unmodifiableMap(new LinkedHashMap<>(problems));
        places = Map.copyOf(places);
    }

    /** What is wrong in a field; none if it is fine. */
    public List<Problem> at(String field) {
        return problems.getOrDefault(field, List.of());
    }

    /** The same, and what was found wrong later, when the formula was looked up or reckoned. */
    public FormRead and(List<Problem> more) {
        if (more.isEmpty()) {
            return this;
        }
        Map<String, List<Problem>> all = new LinkedHashMap<>();
        problems.forEach((field, some) -> all.put(field, new ArrayList<>(some)));
        more.forEach(problem -> all.computeIfAbsent(field(places, problem.path()), field -> new ArrayList<>())
                .add(problem));
        return new FormRead(Optional.empty(), all, places);
    }

    /** The field of an entry: its own, else that of the nearest entry around it. */
    static String field(Map<String, String> places, String path) {
        String at = path;
        while (!at.isEmpty()) {
            String field = places.get(at);
            if (field != null) {
                return field;
            }
            int dot = at.lastIndexOf('.');
            at = dot < 0 ? "" : at.substring(0, dot);
        }
        return "";
    }
}
