package lyewright.web.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.words.Sentences;

/**
 * What a notebook is answered: what is wrong with it, or what it comes to.
 *
 * @param reading what was read
 * @param troubles what is wrong, of lines and of the whole
 * @param mouldTrouble what is wrong with the mould; empty where nothing is
 * @param asked the mould, where it is one that the recipe can fill
 * @param result what it comes to, where nothing is wrong with the recipe
 * @param sheets the sheets that that is of
 */
public record NotebookAnswer(
        NotebookReading reading,
        List<LineTrouble> troubles,
        String mouldTrouble,
        Optional<AskedMould> asked,
        Optional<NotebookResult> result,
        Optional<Sheets> sheets) {

    /** What a recipe in shares is reckoned with until a mould is said. */
    private static final double SOME_GRAMS = 1000;

    /**
     * What it is reckoned with.
     *
     * @param paper as it stands
     * @param filled for the mould, where one is said that it can fill
     */
    public record Sheets(MakingSheet paper, Optional<MakingSheet> filled) {}

    /** Copies its lists. */
    public NotebookAnswer {
        troubles = List.copyOf(troubles);
    }

    static NotebookAnswer of(NotebookForm form, Bench bench) {
        Outcome<Optional<AskedMould>> mould = mould(form, bench);
        NotebookReading reading = form.isBlank() ? NotebookReading.NOTHING : form.reading(bench.names());
        if (reading.formula().isEmpty()) {
            return new NotebookAnswer(
                    reading,
                    reading.troubles(),
                    told(mould.problems()),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        return of(reading, reading.formula().get(), mould, bench);
    }

    private static NotebookAnswer of(
            NotebookReading reading, Formula formula, Outcome<Optional<AskedMould>> mould, Bench bench) {
        Fill asItStands = formula.inMasses() ? Fill.AS_WRITTEN : Fill.mouldMass(SOME_GRAMS);
        Outcome<ResolvedFormula> resolved = ResolvedFormula.of(formula, Tables.bundled(), bench.purities());
        Outcome<MakingSheet> written = resolved.then(r -> MakingSheet.of(r, asItStands, bench.equipment()));
        if (!(written instanceof Outcome.Ok<MakingSheet> paper)) {
            return new NotebookAnswer(
                    reading,
                    ofTheWhole(written.problems()),
                    told(mould.problems()),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        Optional<AskedMould> asked =
                mould instanceof Outcome.Ok<Optional<AskedMould>> ok ? ok.value() : Optional.empty();
        Optional<Outcome<MakingSheet>> filled =
                asked.map(a -> MakingSheet.of(paper.value().formula(), a.fill(bench.holdBack()), bench.equipment()));
        List<Problem> ofTheMould = new ArrayList<>(mould.problems());
        filled.ifPresent(outcome -> ofTheMould.addAll(outcome.problems()));
        Optional<MakingSheet> sheet = filled.flatMap(outcome ->
                outcome instanceof Outcome.Ok<MakingSheet> made ? Optional.of(made.value()) : Optional.empty());
        return new NotebookAnswer(
                reading,
                List.of(),
                told(ofTheMould),
                sheet.isPresent() ? asked : Optional.empty(),
                Optional.of(
                        NotebookResult.of(paper.value(), sheet.isPresent() ? asked : Optional.empty(), sheet, bench)),
                Optional.of(new Sheets(paper.value(), sheet)));
    }

    private static Outcome<Optional<AskedMould>> mould(NotebookForm form, Bench bench) {
        return form.mouldText().isBlank()
                ? Outcome.ok(bench.mould(form.mould()))
                : MouldText.read(form.mouldText()).then(asked -> Outcome.ok(Optional.of(asked)));
    }

    private static List<LineTrouble> ofTheWhole(List<Problem> problems) {
        return problems.stream()
                .map(problem -> LineTrouble.ofTheWhole(Sentences.two(problem)))
                .toList();
    }

    private static String told(List<Problem> problems) {
        return problems.isEmpty() ? "" : Sentences.two(problems.get(0));
    }
}
