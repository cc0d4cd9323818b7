package lyewright.web.recipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lyewright.measure.Problem;

/**
 * What is wrong in the editor's form, at the fields that can show it. That something is still empty is no fault of somebody who is
 * still typing.
 *
 * @param fields the fields by name
 * @param isFile whether the formula is shown as a file instead
 * @param read what the form comes to
 * @param strict whether what is missing is said too, as when somebody wants to save
 */
record EditorTroubles(Map<String, String> fields, boolean isFile, FormRead read, boolean strict) {

    /** Fields that are a whole list of rows. */
    static final List<String> GROUPS = List.of("oils", "additions", "portions", "materials");

    /** What is wrong in a field, on one line; that it is still empty is no fault of somebody who is still typing. */
    String trouble(String field) {
        return strict || !isStillEmpty(field) ? sentences(read.at(field)) : "";
    }

    private boolean isStillEmpty(String field) {
        return GROUPS.contains(field)
                ? fields.entrySet().stream()
                        .noneMatch(entry -> entry.getKey().startsWith(field + ".")
                                && !entry.getValue().isBlank())
                : fields.getOrDefault(field, "").isBlank()
                        && (fields.containsKey(field) || field.startsWith("materials."));
    }

    /** What is still missing before it can be reckoned, in a sentence; empty where something else is wrong. */
    String missing() {
        List<String> missing = read.problems().entrySet().stream()
                .filter(entry -> !entry.getKey().equals("recipe"))
                .flatMap(entry -> entry.getValue().stream().map(problem -> missing(entry.getKey(), problem)))
                .distinct()
                .limit(2)
                .toList();
        return missing.isEmpty() ? "" : "Before it can be reckoned: " + String.join("; ", missing) + ".";
    }

    private String missing(String field, Problem problem) {
        if (!isStillEmpty(field) || GROUPS.contains(field)) {
            return problem.what();
        }
        int end = field.lastIndexOf('.');
        String row = end < 0 ? "" : fields.getOrDefault(field.substring(0, end) + ".name", "");
        String of = end < 0 ? "" : fields.getOrDefault(field.substring(0, end) + ".of", row);
        return of.isBlank() ? problem.what() : of.strip() + ": " + problem.what();
    }

    private static String sentences(List<Problem> problems) {
        return problems.stream().map(Problem::sentence).collect(Collectors.joining(". "));
    }

    /** What is wrong, by the field that can show it; the empty name for what none can. */
    Map<String, String> troubles() {
        Map<String, String> shown = new LinkedHashMap<>();
        read.problems().forEach((field, some) -> {
            if (!strict && isStillEmpty(field)) {
                return;
            }
            String slot = hasSlot(field) ? field : "";
            shown.merge(slot, sentences(some), (a, b) -> a + ". " + b);
        });
        return shown;
    }

    /** What is wrong and has no field of its own. */
    String troubleOfAll() {
        return troubles().getOrDefault("", "");
    }

    private boolean hasSlot(String field) {
        return !isFile
                ? fields.containsKey(field)
                        || GROUPS.contains(field)
                        || field.startsWith("materials.")
                        || field.equals("why")
                : field.equals(FormFields.FILE);
    }
}
