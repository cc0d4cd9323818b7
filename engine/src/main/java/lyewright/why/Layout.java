package lyewright.why;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** Lays an account out as a reason: names given, steps and inputs in the order in which they are read, digits chosen. */
final class Layout {

    /** Digits of what is put in: enough for most, then more, then all that a double has. */
    private static final int[] DIGITS = {12, 15, Reckoning.ALL};

    private final Figures.Entry figure;
    private final Account account;
    private final Labels names = new Labels();
    private final Reckoning exactly = new Reckoning(Reckoning.ALL);
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
            roots.add(equation.left());
            roots.add(equation.right());
        }
        List<Stage> read = inOrder(roots);
        gatherInputs(read);
        List<Stage> stages =
                read.stream().filter(stage -> !roots.contains(stage)).toList();
        int digits = enoughDigits();
        List<Reason.Step> steps = new ArrayList<>(
                List.of(step(answer, figure.value().map(Digits::figure).orElse(""))));
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

    /** In the order of reading: each step behind all in which it is named. */
    private static List<Stage> inOrder(List<Stage> roots) {
        Set<Stage> fromTheEnd = new LinkedHashSet<>();
        for (int i = roots.size() - 1; i >= 0; i--) {
            gather(roots.get(i), fromTheEnd);
        }
        List<Stage> order = new ArrayList<>(fromTheEnd);
        Collections.reverse(order);
        return order;
    }

    private static void gather(Stage stage, Set<Stage> fromTheEnd) {
        List<Term> inside = stage.term().inside();
        for (int i = inside.size() - 1; i >= 0; i--) {
            if (inside.get(i) instanceof Stage within && !fromTheEnd.contains(within)) {
                gather(within, fromTheEnd);
            }
        }
        fromTheEnd.add(stage);
    }

    private void gatherInputs(List<Stage> read) {
        for (Stage stage : read) {
            for (Term inside : stage.term().inside()) {
                if (inside instanceof Given given) {
                    givens.add(given);
                }
            }
        }
    }

    private int enoughDigits() {
        String shown = figure.value().map(Digits::figure).orElse("");
        for (int digits : DIGITS) {
            if (Digits.figure(account.formula().value(new Reckoning(digits))).equals(shown)) {
                return digits;
            }
        }
        return DIGITS[0];
    }

    private Reason.Step step(Stage stage) {
        return step(stage, Digits.step(stage.value(exactly)));
    }

    private Reason.Step step(Stage stage, String text) {
        return new Reason.Step(
                names.of(stage), stage.term().text(names), stage.value(exactly), text, stage.unit(), stage.meaning());
    }

    private List<Reason.Check> checks() {
        return account.equations().stream()
                .map(e -> new Reason.Check(step(e.left()), step(e.right()), e.meaning()))
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
