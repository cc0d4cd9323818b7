package lyewright.web.why;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.Picture;
import lyewright.why.Reason;
import lyewright.words.UnitsShown;

/**
 * One figure's reason, as it stands on the page.
 *
 * @param title what the figure is
 * @param value the figure with its unit; empty where the sheet has none
 * @param path its name in data
 * @param sentence what it stands for
 * @param steps how it is computed
 * @param checks equations that it satisfies
 * @param inputs what is put in
 * @param sources who says so, numbered from 1
 * @param notes what else to know
 * @param drawn what is drawn of it; empty for most figures
 * @param exact every number with all its digits
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
        List<Exact> exact,
        Optional<Posted> posted) {

    /** Copies its lists. */
    public ReasonShown {
        steps = List.copyOf(steps);
        checks = List.copyOf(checks);
        inputs = List.copyOf(inputs);
        sources = List.copyOf(sources);
        notes = List.copyOf(notes);
        exact = List.copyOf(exact);
    }

    /**
     * A number with all its digits.
     *
     * @param name what it is called in formulas; empty for the figure itself
     * @param value the number with its unit
     */
    public record Exact(String name, String value) {}

    /**
     * One line of the computation.
     *
     * @param name what it is called; empty for the figure itself
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
    static ReasonShown of(Reason reason, UnaryOperator<String> address, MakingSheet sheet, UnitsShown units) {
        return new Reading(reason, address, new WhyUnits(units, sheet))
                .shown(WhyPicture.of(reason, sheet), Optional.empty());
    }

    /** Of a figure whose inputs are asked about with all of the recipe. */
    static ReasonShown posted(Reason reason, Posted posted, MakingSheet sheet, UnitsShown units) {
        return new Reading(reason, UnaryOperator.identity(), new WhyUnits(units, sheet))
                .shown(WhyPicture.of(reason, sheet), Optional.of(posted));
    }
}
