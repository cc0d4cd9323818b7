package lyewright.why;

import java.util.List;
import java.util.Optional;

/**
 * Why one figure of a sheet is what it is, as data: read from top to bottom it says what the figure is, how it is computed, what
 * was put in, where that comes from and how sure it is. The formula's notation is told in docs/guide/why.md; it gives the
 * figure again, to the last digit shown, from the texts of the inputs alone.
 *
 * @param path the figure, as in docs/sheet.schema.json
 * @param title what it is, in plain words
 * @param value the figure as on the sheet; empty where the sheet has none there
 * @param text the figure as text, to the sheet's six decimals; empty where there is none
 * @param unit its unit, empty for a plain number
 * @param sentence what it stands for and how it comes about, a sentence or two
 * @param steps how it is computed: the figure itself first, then each step named in one before it
 * @param checks equations that a figure found by trial has to satisfy, with their own steps among {@code steps}
 * @param inputs what is put in, in the order of the formula
 * @param notes what else to know
 */
public record Reason(
        String path,
        String title,
        Optional<Double> value,
        String text,
        String unit,
        String sentence,
        List<Step> steps,
        List<Check> checks,
        List<Input> inputs,
        List<String> notes) {

    /** Copies its lists. */
    public Reason {
        steps = List.copyOf(steps);
        checks = List.copyOf(checks);
        inputs = List.copyOf(inputs);
        notes = List.copyOf(notes);
    }

    /**
     * One line of the computation.
     *
     * @param name what it is called in formulas
     * @param formula how it is computed from inputs and later steps
     * @param value what that comes to
     * @param text the value as text; of a step to six decimals, or six digits under 1
     * @param unit its unit, empty for a plain number
     * @param meaning what it is, empty for the figure itself
     */
    public record Step(String name, String formula, double value, String text, String unit, String meaning) {}

    /**
     * An equation that a figure found by trial satisfies. Both sides come to the same, to a hundred-millionth of it.
     *
     * @param left one side
     * @param right the other
     * @param meaning what is equal to what, in words
     */
    public record Check(Step left, Step right, String meaning) {}

    /**
     * A number put in.
     *
     * @param name what it is called in formulas
     * @param value the number
     * @param text the number with enough digits to compute with: twelve, more only where the figure needs them
     * @param unit its unit, empty for a plain number
     * @param meaning what it is
     * @param source who says so; empty where it is another figure
     * @param figure path of the figure it is, if it is one of the sheet's
     * @param spread between which ends it may lie, and how, if it is not sure
     */
    public record Input(
            String name,
            double value,
            String text,
            String unit,
            String meaning,
            String source,
            Optional<String> figure,
            Optional<Spread> spread) {}

    /**
     * Everything that stands behind it.
     *
     * @return sources of the inputs and of their spreads, each once, in the order of the inputs
     */
    public List<String> sources() {
        return inputs.stream()
                .flatMap(input -> java.util.stream.Stream.of(
                        input.source(), input.spread().map(Spread::source).orElse("")))
                .filter(source -> !source.isBlank())
                .distinct()
                .toList();
    }
}
