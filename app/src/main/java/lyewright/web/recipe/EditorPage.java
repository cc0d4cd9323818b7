package lyewright.web.recipe;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Named;
import lyewright.formula.MaterialNames.Place;
import lyewright.measure.Problem;
import lyewright.web.Frame;
import lyewright.web.Hints;
import lyewright.web.Piece;
import lyewright.words.Labelled;
import lyewright.words.Sentences;

/**
 * The editor's page.
 *
 * @param frame what stands around it
 * @param address where its form is sent
 * @param leave where one goes who wants none of it
 * @param recipe which recipe and version is being changed
 * @param form the fields as typed
 * @param fields the same by name
 * @param file the formula as a file, where that is shown instead of the fields
 * @param read what the form comes to
 * @param figures what that comes to, if it can be reckoned
 * @param newer where the workshop's own figures are others than those it is reckoned with
 * @param draft where it is kept
 * @param note what another window did, if it did anything
 * @param names what may be typed
 * @param focus the field to go on in
 * @param strict whether what is missing is said too, as when somebody wants to save
 * @param unfinished other recipes that were begun and not saved
 * @param hints in the units of the workshop
 */
public record EditorPage(
        Frame frame,
        String address,
        String leave,
        Of recipe,
        FormulaForm form,
        Map<String, String> fields,
        Optional<String> file,
        FormRead read,
        Optional<EditorFigures> figures,
        NewerFigures newer,
        Kept draft,
        Optional<Note> note,
        MaterialNames names,
        String focus,
        boolean strict,
        List<Unfinished> unfinished,
        Hints hints) {

    /** The number of a row that is not there yet, which the page has ready for whoever asks for one more. */
    public static final int NEXT_ROW = 8888;

    private static final String NEXT_STAGE = "additions." + NEXT_ROW + ".stage";

    /** The most rows of one group. */
    public static final int MOST_ROWS = FormulaForm.MOST_ROWS;

    /** What the bars are for. */
    public static final List<Labelled> USES = List.of(new Labelled("own", "Own use"), new Labelled("sale", "For sale"));

    /** What is done about what takes alkali. */
    public static final List<Labelled> ACIDS = List.of(
            new Labelled("", "by the use: own use adds alkali for them"),
            new Labelled("compensate", "add alkali for them"),
            new Labelled("as written", "leave the alkali: the superfat rises"));

    /** Ways of making. */
    public static final List<Labelled> MAKES = List.of(
            new Labelled("", "cold, as usual"),
            new Labelled("cold", "cold"),
            new Labelled("oven", "in the oven"),
            new Labelled("cooked", "cooked"));

    /** What a liquid may stand in for. */
    public static final List<Labelled> REPLACES =
            List.of(new Labelled("", "nothing: it comes on top"), new Labelled("water", "as much water"));

    /** When an addition goes in. */
    public static final List<String> STAGES = List.of("trace", "lye", "oils", "every portion", "top");

    /** Kinds of materials. */
    public static final List<String> KINDS = List.of(
            "oil",
            "wax",
            "fatty-acid",
            "oils",
            "lye",
            "salt",
            "liquid",
            "clay",
            "colourant",
            "milk",
            "sugar",
            "acid",
            "alkali-salt",
            "chelator",
            "antioxidant",
            "exfoliant",
            "botanical",
            "protein",
            "humectant",
            "fragrance",
            "other");

    private static final Map<String, String> EXAMPLES = Map.of(
            "saponification value", "189.5 ± 1.0, or 184 to 196 mg KOH/g",
            "density", "0.915 g/ml",
            "water", "of a liquid, such as 95 %",
            "acid", "5 % acetic acid",
            "strength", "of a lye: 50 % sodium",
            "source", "certificate L-204");

    /**
     * What is being changed.
     *
     * @param name the recipe's name when this began; empty for a new one
     * @param basedOn its newest version then; 0 for a new one
     * @param made whether a batch was made from that, so that it cannot be written over
     * @param why the reason that its newest version has; empty without one
     */
    public record Of(String name, int basedOn, boolean made, String why) {

        static final Of NEW = new Of("", 0, false, "");

        /** Whether it is saved for the first time. */
        public boolean isNew() {
            return basedOn == 0;
        }
    }

    /**
     * Where the typing is kept.
     *
     * @param id the draft; empty before the first keystroke
     * @param revision its revision
     * @param window this window
     * @param serial what it sent so far
     * @param why why it will be saved
     * @param asNext whether the next version is asked for
     */
    public record Kept(String id, int revision, String window, long serial, String why, boolean asNext) {}

    /**
     * Something about the draft that the maker must decide.
     *
     * @param sentence what happened
     * @param theirs what the button says that takes the other's; empty where there is nothing to take
     * @param mine what the button says that keeps this; empty where it cannot be kept
     */
    public record Note(String sentence, String theirs, String mine) {}

    /**
     * A recipe that was begun.
     *
     * @param name so far
     * @param address where it goes on
     * @param when it was changed last
     */
    public record Unfinished(String name, String address, String when) {}

    /** The same with more that is wrong. */
    EditorPage refused(List<Problem> problems) {
        return with(read.and(problems), focus, strict);
    }

    /** The same, going on in the first field that something is wrong in. */
    EditorPage atFirstTrouble() {
        return with(read, read.problems().keySet().stream().findFirst().orElse(""), true);
    }

    private EditorPage with(FormRead other, String goOn, boolean all) {
        return new EditorPage(
                frame,
                address,
                leave,
                recipe,
                form,
                fields,
                file,
                other,
                figures,
                newer,
                draft,
                note,
                names,
                goOn,
                all,
                unfinished,
                hints);
    }

    /** A word with its first letter large. */
    public static String capital(String word) {
        return Sentences.upperFirst(word);
    }

    /** How a material's figure is written; empty where that is plain. */
    public static String example(String word) {
        return EXAMPLES.getOrDefault(word, "");
    }

    /** What a field says. */
    public String value(String field) {
        return fields.getOrDefault(field, field.equals(NEXT_STAGE) ? AdditionRow.EMPTY.stage() : "");
    }

    private EditorTroubles wrong() {
        return new EditorTroubles(fields, file.isPresent(), read, strict);
    }

    /** What is wrong in a field, on one line; that it is still empty is no fault of somebody who is still typing. */
    public String trouble(String field) {
        return wrong().trouble(field);
    }

    /** What is still missing before it can be reckoned, in a sentence; empty where something else is wrong. */
    public String missing() {
        return wrong().missing();
    }

    /** What is wrong, by the field that can show it; the empty name for what none can. */
    public Map<String, String> troubles() {
        return wrong().troubles();
    }

    /** What is wrong and has no field of its own. */
    public String troubleOfAll() {
        return wrong().troubleOfAll();
    }

    /** An input's id. */
    public String id(String field) {
        return "f-" + field.replace('.', '-');
    }

    /** Whether to go on in a field. */
    public boolean focused(String field) {
        return focus.equals(field);
    }

    /** The oils that may be named. */
    public List<Named> oils() {
        return names.all(Place.OILS);
    }

    /** The additions that may be named. */
    public List<Named> additions() {
        return names.all(Place.ADDITIONS);
    }

    /** What a row comes to. */
    public List<Piece> says(String row) {
        return figures.map(f -> f.says(row)).orElse(List.of());
    }

    /** Where its figures say why, asked with all that is typed. */
    public String why() {
        return "/why/draft?back=" + address;
    }

    /** Whether a part that is folded away has something in it. */
    public boolean opens(String group) {
        boolean said = fields.entrySet().stream()
                .anyMatch(entry -> entry.getKey().startsWith(group + ".")
                        && !entry.getValue().isBlank()
                        && !entry.getValue().equals("cold"));
        boolean wrong = read.problems().keySet().stream()
                .anyMatch(field -> field.equals(group) || field.startsWith(group + "."));
        return said || wrong || focus.startsWith(group + ".");
    }

    /** Whether saving writes over a version, unless the next is asked for. */
    public boolean writesOver() {
        return !recipe.isNew() && !recipe.made();
    }
}
