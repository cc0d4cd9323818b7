package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames.Place;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * What is noted while a form is read: which field each entry of the file comes from, and what only a form can have wrong, in the
 * form's words.
 */
final class FormNotes {

    private final FormNames names;
    private final Map<String, String> places = new HashMap<>();
    private final Map<String, List<Problem>> own = new LinkedHashMap<>();

    FormNotes(FormNames names) {
        this.names = names;
    }

    FormNames names() {
        return names;
    }

    /** Notes the field that an entry comes from. */
    void place(String path, String field) {
        places.put(path, field);
    }

    /** What the form comes to, once its file was read. */
    FormRead settled(FormulaFile.Read read, UnaryOperator<Formula> whole) {
        Map<String, List<Problem>> all = new LinkedHashMap<>();
        own.forEach((field, problems) -> all.put(field, new ArrayList<>(problems)));
        for (Problem problem : read.problems()) {
            String field = FormRead.field(places, problem.path());
            if (!isSaid(field)) {
                all.computeIfAbsent(field, at -> new ArrayList<>()).add(problem);
            }
        }
        Optional<Formula> formula = all.isEmpty() ? read.formula().map(whole) : Optional.empty();
        return new FormRead(formula, all, places);
    }

    /** Whether the form's own words are enough: of the field, or, for a whole group, of a row of it. */
    private boolean isSaid(String field) {
        return own.containsKey(field) || own.keySet().stream().anyMatch(said -> said.startsWith(field + "."));
    }

    void say(String field, String what, String remedy) {
        own.computeIfAbsent(field, at -> new ArrayList<>()).add(new Problem(field, what, remedy));
    }

    void say(String field, Outcome<?> refused) {
        refused.problems().forEach(problem -> say(field, problem.what(), problem.remedy()));
    }

    /** A field that must say something; what stands in where it does not is up to the caller. */
    boolean need(String field, String text, String what, String remedy) {
        if (text.isBlank()) {
            say(field, what, remedy);
        }
        return !text.isBlank();
    }

    void text(Map<String, Object> group, String name, String path, String text, String field) {
        places.put(path, field);
        if (!text.isBlank()) {
            group.put(name, text);
        }
    }

    /** The key of what was typed; where it is not known, what was typed, or a name that is nobody's. */
    String named(String typed, Place place, String field, String noName) {
        if (!need(field, typed, noName, "write its name")) {
            return field;
        }
        Outcome<String> key = names.key(typed.strip(), place, field);
        say(field, key);
        return key instanceof Outcome.Ok<String> ok ? ok.value() : typed.strip();
    }
}
