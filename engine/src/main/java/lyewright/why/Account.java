package lyewright.why;

import java.util.ArrayList;
import java.util.List;

/**
 * What a rule says of a figure, before it is laid out: a sentence, the formula as a term, equations that hold, and notes.
 * Changes as it is spoken.
 */
final class Account {

    /** An equation a rule gives. */
    record Equation(Term.Stage left, Term.Stage right, String meaning) {}

    private final String sentence;
    private final Term formula;
    private final List<Equation> equations = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Account(String sentence, Term formula) {
        this.sentence = sentence;
        this.formula = formula;
    }

    String sentence() {
        return sentence;
    }

    Term formula() {
        return formula;
    }

    List<Equation> equations() {
        return equations;
    }

    List<String> notes() {
        return notes;
    }

    /** Equations that hold. */
    Account holds(List<Equation> more) {
        equations.addAll(more);
        return this;
    }

    /** Something else to know; nothing where it is empty. */
    Account note(String note) {
        if (!note.isEmpty()) {
            notes.add(note);
        }
        return this;
    }
}
