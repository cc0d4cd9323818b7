package lyewright.web.make;

import java.util.List;
import java.util.Set;
import lyewright.measure.Problem;

/**
 * A field of the form: what stands in it, and what is wrong with that. Where what is wrong is said stays on the page, empty or not, so
 * that an answer in place can fill it without touching the field.
 *
 * @param name as in the address
 * @param text as typed
 * @param troubles as sentences
 * @param awaited what is still to be typed, a sentence; empty where nothing is
 */
public record FieldShown(String name, String text, List<String> troubles, String awaited) {

    /** Fields that are seen once a choice asks for them: empty they are not wrong yet. */
    private static final Set<String> REVEALED = Set.of(MakeChoice.AMOUNT, MakeChoice.INSIDE);

    /** Copies its list. */
    public FieldShown {
        troubles = List.copyOf(troubles);
    }

    static FieldShown of(MakeChoice choice, String name, List<Problem> problems) {
        List<Problem> here =
                problems.stream().filter(problem -> problem.path().equals(name)).toList();
        boolean awaited =
                !here.isEmpty() && REVEALED.contains(name) && choice.typed(name).isEmpty();
        return new FieldShown(
                name,
                choice.text(name),
                awaited ? List.of() : here.stream().map(Problem::sentence).toList(),
                awaited ? "The sheet comes once this is typed: " + here.get(0).remedy() + "." : "");
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
