package lyewright.why;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** Lays an account out as a reason: names given, steps and inputs in the order in which they are read, digits chosen. */
final class Layout {

    /** Digits of what is put in: enough for most, then more, then all that a double has. */
    private static final int[] DIGITS = {12, 15, 17};

    private final Figures.Entry figure;
    private final Account account;
    private final Names names = new Names();
    private final Set<Stage> stages = new LinkedHashSet<>();
    private final Set<Given> givens = new LinkedHashSet<>();

    private Layout(Figures.Entry figure, Account account) {
        this.figure = figure;
        this.account = account;
    }

    static Reason of(Figures.Entry figure, Account account) {
        return new Layout(figure, account).reason();
    }

    private Reason reason() {
        String name = figure.name();
        Stage answer = new Stage(name, figure.unit(), "", account.formula());
        names.of(answer);
        List<Stage> roots = new ArrayList<>(List.of(answer));
        for (Account.Equation equation : account.equations()) {
            roots.add((Stage) equation.left());
        }
        roots.forEach(this::gather);
        account.equations().forEach(e -> givens.add(e.right()));
        int digits = enoughDigits();
        List<Reason.Step> steps = new ArrayList<>(List.of(step(answer, Digits.figure(value(answer, digits)))));
        stages.forEach(s -> steps.add(step(s)));
        return new Reason(
                figure.path(),
                figure.title(),
                figure.value(),
                figure.value().map(Digits::figure).orElse(""),
                figure.unit(),
                account.sentence(),
                steps,
                checks(),
                givens.stream().map(g -> input(g, digits)).toList(),
                account.notes());
    }

    /** Steps in the order in which they are first named, a step's own before what follows it; inputs likewise. */
    private void gather(Stage root) {
        List<Stage> open = new ArrayList<>(List.of(root));
        for (int i = 0; i < open.size(); i++) {
            for (Term inside : open.get(i).term().inside()) {
                if (inside instanceof Given given) {
                    givens.add(given);
                } else if (inside instanceof Stage stage && stages.add(stage)) {
                    open.add(stage);
                }
            }
        }
    }

    private int enoughDigits() {
        String shown = figure.value().map(Digits::figure).orElse("");
        for (int digits : DIGITS) {
            if (Digits.figure(value(account.formula(), digits)).equals(shown)) {
                return digits;
            }
        }
        return DIGITS[0];
    }

    private static double value(Term term, int digits) {
        return term.value(rounded(digits));
    }

    private static ToDoubleFunction<Given> rounded(int digits) {
        return given -> Double.parseDouble(Digits.significant(given.amount(), digits));
    }

    private Reason.Step step(Stage stage) {
        return step(stage, Digits.step(stage.value(Given::amount)));
    }

    private Reason.Step step(Stage stage, String text) {
        return new Reason.Step(
                names.of(stage),
                stage.term().text(names),
                stage.value(Given::amount),
                text,
                stage.unit(),
                stage.meaning());
    }

    private List<Reason.Check> checks() {
        return account.equations().stream()
                .map(e -> new Reason.Check(step((Stage) e.left()), names.of(e.right()), e.meaning()))
                .toList();
    }

    private Reason.Input input(Given given, int digits) {
        return new Reason.Input(
                names.of(given),
                given.amount(),
                Digits.significant(given.amount(), digits),
                given.unit(),
                given.meaning(),
                given.source(),
                given.figure(),
                given.spread());
    }

    /** A reason for there being no figure. */
    static Reason absent(Figures.Entry figure, String why) {
        return new Reason(
                figure.path(),
                figure.title(),
                Optional.empty(),
                "",
                figure.unit(),
                why,
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }
}
