package lyewright.web.start;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Place;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Hints;
import lyewright.words.Sentences;

/**
 * A notebook and its answer, as a page shows them.
 *
 * @param form as typed
 * @param answer to it
 * @param bench what the workshop has
 * @param asksWorkshop whether keeping it begins the workshop
 * @param problems why it was not kept
 */
public record NotebookView(
        NotebookForm form, NotebookAnswer answer, Bench bench, boolean asksWorkshop, List<Problem> problems) {

    /** The example one click away. */
    static final String EXAMPLE = """
            Harbour trial

            coconut oil    350 g
            olive (virgin) 350 g
            castor          50 g
            soda           108 g
            water          215 g
            # from the blue bottle
            lavender oil    20 g at trace
            """;

    private static final int MOST_TROUBLES = 6;
    private static final int LINES_NAMED = 6;

    private static final Pattern FRAGRANT = Pattern.compile(
            "(?<![\\p{L}\\p{N}])(?:f\\.?o\\.?|e\\.?o\\.?|fragrance|essential|parfum|perfume|scent)(?![\\p{L}\\p{N}])",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern FATTY =
            Pattern.compile("(?<!\\p{L})(?:oil|butter|fat|tallow|lard)(?!\\p{L})", Pattern.CASE_INSENSITIVE);

    /** Copies its list. */
    public NotebookView {
        problems = List.copyOf(problems);
    }

    static NotebookView of(NotebookForm form, Bench bench, boolean asksWorkshop) {
        return new NotebookView(form, NotebookAnswer.of(form, bench), bench, asksWorkshop, List.of());
    }

    NotebookView with(List<Problem> found) {
        return new NotebookView(form, answer, bench, asksWorkshop, found);
    }

    public Optional<NotebookResult> result() {
        return answer.result();
    }

    /** Whether there is nothing to answer yet. */
    public boolean isBlank() {
        return form.isBlank();
    }

    /** Lines as a notebook may have them. */
    public List<String> helpLines() {
        return List.of(
                "coconut oil 350 g",
                "350g olive (virgin)",
                "castor 1.75 oz",
                "soda 71 g, or superfat 5 %",
                "water 155 g",
                "lavender 15 g at trace",
                "# a remark of yours");
    }

    /** Whether it is asked under what name to keep it. */
    public boolean asksToKeep() {
        return result().isPresent() || !problems.isEmpty();
    }

    /** Whether what was answered last may stay: all that cannot be read is the one line that is being typed. */
    public boolean keepsFormer() {
        return !isBlank()
                && result().isEmpty()
                && form.typing().onlyThere()
                && answer.troubles().stream().allMatch(LineTrouble::typing);
    }

    /** What stands where the answer comes. */
    public String waiting() {
        if (isBlank()) {
            return "Its superfat will stand here.";
        }
        if (answer.reading().isUnfinished()) {
            return "The answer comes when all is there.";
        }
        List<Integer> wrong = answer.reading().wrongLines();
        if (wrong.isEmpty()) {
            return "This cannot be worked out yet.";
        }
        if (form.typing().first() && answer.troubles().stream().allMatch(LineTrouble::typing)) {
            return "Go on.";
        }
        return form.inRows() ? "The answer comes when what is marked is understood." : waitingFor(wrong);
    }

    private static String waitingFor(List<Integer> wrong) {
        List<String> numbers =
                wrong.stream().map(number -> Integer.toString(number)).toList();
        if (numbers.size() == 1) {
            return "The answer comes when line " + numbers.get(0) + " is understood.";
        }
        return numbers.size() > LINES_NAMED
                ? "The answer comes when the " + numbers.size() + " lines that are marked are understood."
                : "The answer comes when lines " + Sentences.row(numbers) + " are understood.";
    }

    /** That the first line is taken for a name, where it could be something to weigh; empty where it could not. */
    public String nameNote() {
        String name = nameInText();
        MaterialNames names = bench.names();
        boolean isMaterial = !form.inRows()
                && !name.isEmpty()
                && !name.equals(form.keep().name())
                && (MaterialNames.alkali(name).isPresent()
                        || names.key(name, Place.OILS) instanceof Outcome.Ok
                        || names.key(name, Place.ADDITIONS) instanceof Outcome.Ok);
        return isMaterial
                ? "Line " + answer.reading().nameLine() + ", " + name
                        + ", is taken for the recipe's name. If it goes in, write how much of it."
                : "";
    }

    /** Which of the workshop's own materials it is worked out with, in a sentence; empty where with none. */
    public String ownNote() {
        List<String> own = answer.reading()
                .formula()
                .map(formula ->
                        formula.materials().stream().map(OwnMaterial::key).toList())
                .orElse(List.of());
        return own.isEmpty() ? "" : "Worked out with your own figures for " + Sentences.row(own) + ".";
    }

    /** Where something that is not known yet can be described. */
    public String describe(LineTrouble trouble) {
        String kind = FRAGRANT.matcher(trouble.unknown()).find()
                ? "fragrance"
                : FATTY.matcher(trouble.unknown()).find() ? "oil" : "";
        String key = URLEncoder.encode(trouble.unknown(), StandardCharsets.UTF_8);
        return "/stores/materials/new" + (kind.isEmpty() ? "" : "?kind=" + kind + "&key=" + key);
    }

    /** What is still to come, in a sentence; empty where nothing is. */
    public String stillToCome() {
        String missing = answer.reading().missingPhrase();
        return missing.isEmpty() || isBlank() ? "" : "Still to come: " + missing + ".";
    }

    public List<LineTrouble> troubles() {
        return answer.troubles().stream().limit(shownTroubles()).toList();
    }

    /** Those beyond what is looked at in one go. */
    public List<LineTrouble> moreTroubles() {
        return answer.troubles().stream().skip(shownTroubles()).toList();
    }

    /** One alone is never folded away: the fold would be as long as it. */
    private int shownTroubles() {
        int all = answer.troubles().size();
        return all == MOST_TROUBLES + 1 ? all : MOST_TROUBLES;
    }

    /** Whether anything is wrong that is not just being typed. */
    public boolean hasTroubles() {
        return answer.troubles().stream().anyMatch(trouble -> !trouble.typing());
    }

    /** The numbers beside the text. */
    public List<Line> lines() {
        Set<Integer> wrong = answer.troubles().stream()
                .filter(trouble -> !trouble.typing())
                .map(LineTrouble::number)
                .collect(Collectors.toSet());
        return IntStream.rangeClosed(1, form.lineCount())
                .mapToObj(number -> new Line(number, wrong.contains(number)))
                .toList();
    }

    /**
     * A line's number.
     *
     * @param number from 1
     * @param wrong whether something is wrong with the line
     */
    public record Line(int number, boolean wrong) {}

    /** What is wrong with a box, in sentences. */
    public String troubleOf(String box) {
        List<NotebookRows.Boxed> boxed = form.rows().boxed(form.unit());
        return answer.troubles().stream()
                .filter(trouble -> trouble.number() > 0 && trouble.number() <= boxed.size())
                .filter(trouble -> boxed.get(trouble.number() - 1).box().equals(box))
                .map(LineTrouble::sentence)
                .collect(Collectors.joining(" "));
    }

    /** The boxes that have a trouble slot, besides those of rows. */
    public List<String> boxes() {
        return List.of("name", "soda", "potash", "water", "superfat");
    }

    /** The recipe's name where the text says one. */
    public String nameInText() {
        return answer.reading()
                .formula()
                .filter(f -> answer.reading().named())
                .map(f -> f.recipe())
                .orElse("");
    }

    public String nameTrouble() {
        return troubleAt("recipe");
    }

    public String workshopTrouble() {
        return troubleAt(WorkshopForm.FIELD);
    }

    /** What else kept it from being kept. */
    public String otherTrouble() {
        return problems.stream()
                .filter(p -> !p.path().equals("recipe") && !p.path().equals(WorkshopForm.FIELD))
                .map(Sentences::two)
                .findFirst()
                .orElse("");
    }

    private String troubleAt(String path) {
        return problems.stream()
                .filter(problem -> problem.path().equals(path))
                .map(Sentences::two)
                .collect(Collectors.joining(" "));
    }

    /** Names to pick from in the boxes. */
    public List<String> oilNames() {
        return bench.names().all(Place.OILS).stream()
                .map(MaterialNames.Named::name)
                .toList();
    }

    public String mouldExamples() {
        return hints().moulds();
    }

    /** Examples in the units that it is typed in. */
    public Hints hints() {
        return new Hints(bench.units().ounces());
    }

    /** Whether the example stands in the text instead of what was typed. */
    public boolean showsExample() {
        return !form.inRows() && !form.before().isBlank();
    }
}
