package lyewright.web;

import java.util.List;
import lyewright.measure.Problem;

/**
 * One line of text to type, with what is wrong with it.
 *
 * @param name of the field; also the path of its problems
 * @param label above it
 * @param hint between the two, perhaps empty
 * @param value as typed
 * @param troubles what is wrong, as sentences
 * @param decimal whether a phone should offer digits
 */
public record TextField(String name, String label, String hint, String value, List<String> troubles, boolean decimal) {

    /** Copies its list. */
    public TextField {
        troubles = List.copyOf(troubles);
    }

    /** A field with a value and nothing wrong. */
    public static TextField of(String name, String label, String hint, String value) {
        return new TextField(name, label, hint, value, List.of(), false);
    }

    /** The same with those problems that are of this field or of anything inside it. */
    public TextField with(List<Problem> problems) {
        List<String> mine = problems.stream()
                .filter(p -> p.path().equals(name) || p.path().startsWith(name + "."))
                .map(Problem::sentence)
                .toList();
        return new TextField(name, label, hint, value, mine, decimal);
    }

    /** The same for figures. */
    public TextField forFigures() {
        return new TextField(name, label, hint, value, troubles, true);
    }

    /** An id for the input; names may hold dots. */
    public String id() {
        return "f-" + name.replace('.', '-').replace(' ', '-');
    }

    /** What describes the input to those who hear the page. */
    public String describedBy() {
        String ids = (hint.isEmpty() ? "" : id() + "-hint ") + (troubles.isEmpty() ? "" : id() + "-trouble");
        return ids.strip();
    }
}
