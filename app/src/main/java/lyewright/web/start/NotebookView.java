package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.Problem;
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

    /** What stands where the answer comes. */
    public String waiting() {
        if (isBlank()) {
            return "Its superfat will stand here.";
        }
        return answer.reading().isUnfinished() ? "Go on." : "This cannot be read yet.";
    }

    /** What is still to come, in a sentence; empty where nothing is. */
    public String stillToCome() {
        String missing = answer.reading().missingPhrase();
        return missing.isEmpty() || isBlank() ? "" : "Still to come: " + missing + ".";
    }

    public List<LineTrouble> troubles() {
        return answer.troubles().stream().limit(MOST_TROUBLES).toList();
    }

    /** Those beyond what is looked at in one go. */
    public List<LineTrouble> moreTroubles() {
        return answer.troubles().stream().skip(MOST_TROUBLES).toList();
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
        return Tables.bundled().oils().stream().map(Oil::name).toList();
    }

    public String mouldExamples() {
        return MouldText.EXAMPLES;
    }

    /** Whether the example stands in the text instead of what was typed. */
    public boolean showsExample() {
        return !form.inRows() && !form.before().isBlank();
    }
}
