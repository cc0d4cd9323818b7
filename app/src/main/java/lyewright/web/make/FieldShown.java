package lyewright.web.make;

import java.util.List;
import lyewright.measure.Problem;

/**
 * A field of the form: what stands in it, and what is wrong with that. Where what is wrong is said stays on the page, empty or not, so
 * that an answer in place can fill it without touching the field.
 *
 * @param name as in the address
 * @param text as typed
 * @param troubles as sentences
 */
public record FieldShown(String name, String text, List<String> troubles) {

    /** Copies its list. */
    public FieldShown {
        troubles = List.copyOf(troubles);
    }

    static FieldShown of(MakeChoice choice, String name, List<Problem> problems) {
        return new FieldShown(
                name,
                choice.text(name),
                problems.stream()
                        .filter(problem -> problem.path().equals(name))
                        .map(Problem::sentence)
                        .toList());
    }

    /** An id for the input; names may hold what an id may not. */
    public String id() {
        return "f-" + name.replaceAll("[^A-Za-z0-9-]", "-");
    }

    /** Where what is wrong is said. */
    public String slot() {
        return id() + "-trouble";
    }

    /** As an attribute. */
    public String invalid() {
        return troubles.isEmpty() ? "false" : "true";
    }
}
