package lyewright.web.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.picture.Picture;
import lyewright.why.Reason;
import lyewright.why.Spread;
import lyewright.words.Figures;

/**
 * One figure's reason, as it stands on the page.
 *
 * @param title what the figure is
 * @param value the figure with its unit; empty where the sheet has none
 * @param path its name
 * @param sentence what it stands for
 * @param steps how it is computed
 * @param checks equations that it satisfies
 * @param inputs what is put in
 * @param sources who says so, numbered from 1
 * @param notes what else to know
 * @param drawn what is drawn of it; empty for most figures
 * @param posted how its inputs are asked about; empty where each has an address of its own
 */
public record ReasonShown(
        String title,
        Optional<String> value,
        String path,
        String sentence,
        List<Step> steps,
        List<Check> checks,
        List<Input> inputs,
        List<String> sources,
        List<String> notes,
        Optional<Picture> drawn,
        Optional<Posted> posted) {

    private static final int DECIMALS = 6;

    /** Copies its lists. */
    public ReasonShown {
        steps = List.copyOf(steps);
        checks = List.copyOf(checks);
        inputs = List.copyOf(inputs);
        sources = List.copyOf(sources);
        notes = List.copyOf(notes);
    }

    /**
     * One line of the computation.
     *
     * @param name what it is called
     * @param formula how it is computed
     * @param value what that comes to, with its unit
     * @param meaning what it is, empty for the figure itself
     */
    public record Step(String name, String formula, String value, String meaning) {}

    /**
     * Two sides that come to the same.
     *
     * @param meaning what is equal to what
     * @param left one side
     * @param right the other
     */
    public record Check(String meaning, Step left, Step right) {}

    /**
     * A number put in.
     *
     * @param name what it is called in formulas
     * @param value the number with its unit
     * @param meaning what it is
     * @param between its ends and how it is spread between them; empty where it is taken as exact
     * @param figure address of the figure that it is, if it is one of the sheet's; its path where it is asked about by a form
     * @param sources numbers of the sources behind it
     */
    public record Input(
            String name, String value, String meaning, String between, Optional<String> figure, List<Integer> sources) {

        /** Copies its list. */
        public Input {
            sources = List.copyOf(sources);
        }
    }

    /**
     * A form that holds all of a recipe: what is not kept has no address, so its figures are asked about with all of it.
     *
     * @param form the form's id
     * @param action where it is sent
     */
    public record Posted(String form, String action) {}

    /** Of a figure whose inputs have addresses. */
    static ReasonShown of(Reason reason, UnaryOperator<String> address, Optional<Picture> drawn) {
        return of(reason, address, drawn, Optional.empty());
    }

    /** Of a figure whose inputs are asked about with all of the recipe. */
    static ReasonShown posted(Reason reason, Posted posted, Optional<Picture> drawn) {
        return of(reason, UnaryOperator.identity(), drawn, Optional.of(posted));
    }

    private static ReasonShown of(
            Reason reason, UnaryOperator<String> address, Optional<Picture> drawn, Optional<Posted> posted) {
        List<String> sources = reason.sources();
        return new ReasonShown(
                reason.title(),
                reason.value().map(value -> with(reason.text(), reason.unit())),
                reason.path(),
                reason.sentence(),
                reason.steps().stream().map(ReasonShown::step).toList(),
                reason.checks().stream()
                        .map(check -> new Check(check.meaning(), step(check.left()), step(check.right())))
                        .toList(),
                reason.inputs().stream()
                        .map(input -> input(input, sources, address))
                        .toList(),
                sources,
                reason.notes(),
                drawn,
                posted);
    }

    private static Step step(Reason.Step step) {
        return new Step(step.name(), step.formula(), with(step.text(), step.unit()), step.meaning());
    }

    private static Input input(Reason.Input input, List<String> sources, UnaryOperator<String> address) {
        List<Integer> numbers = new ArrayList<>();
        number(numbers, sources, input.source());
        input.spread().ifPresent(spread -> number(numbers, sources, spread.source()));
        return new Input(
                input.name(),
                with(input.text(), input.unit()),
                input.meaning(),
                input.spread().map(spread -> between(spread, input.unit())).orElse(""),
                input.figure().map(address),
                numbers);
    }

    private static void number(List<Integer> numbers, List<String> sources, String source) {
        int number = sources.indexOf(source) + 1;
        if (number > 0 && !numbers.contains(number)) {
            numbers.add(number);
        }
    }

    private static String between(Spread spread, String unit) {
        String ends = upTo(spread.low()) + " to " + with(upTo(spread.high()), unit);
        return switch (spread.kind()) {
            case RECTANGULAR -> ends + ", anywhere between";
            case NORMAL -> ends + ", in 19 cases of 20";
            case TRAPEZOIDAL ->
                ends + "; evenly " + upTo(spread.evenLow()) + " to " + upTo(spread.evenHigh()) + ", rarer outside";
        };
    }

    private static String upTo(double value) {
        return Figures.upTo(value, DECIMALS);
    }

    private static String with(String text, String unit) {
        return unit.isEmpty() ? text : text + " " + unit;
    }
}
