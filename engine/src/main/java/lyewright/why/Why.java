package lyewright.why;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition.Moment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;

/**
 * Says why figures of a sheet are what they are. A figure is named by its path in the sheet's JSON (docs/sheet.schema.json),
 * such as {@code alkali.naohGrams} or {@code vessels[1].items[0].weighGrams}; vessels, items, portions and their additions may
 * be named instead of counted: {@code vessels.oil pot.coconut.weighGrams}, {@code portions.kelp.superfatPercent}. Beside what is in
 * the JSON there are the sums that sentences and pictures speak of ({@code sums}, and {@code kinds} of a composition), and what
 * only a comparison shows ({@code compared}); docs/guide/why.md lists them.
 *
 * <p>Nothing is laid out before it is asked for. Immutable.
 */
public final class Why {

    private final Figures figures;
    private final Paths paths;
    private final String cured;

    private Why(Figures figures, String cured) {
        this.figures = figures;
        this.paths = new Paths(figures);
        this.cured = cured;
    }

    /**
     * Takes a sheet to ask about.
     *
     * @param sheet the sheet
     * @return what answers for it
     */
    public static Why of(MakingSheet sheet) {
        Ledger ledger = new Ledger(sheet);
        Figures figures = new Figures();
        BatchComposition composition = sheet.composition();
        Recipe.addTo(figures, ledger);
        Vessels.addTo(figures, ledger);
        Totals.addTo(figures, ledger);
        AlkaliFigures.addTo(figures, ledger);
        Superfat.addTo(figures, ledger);
        Portions.addTo(figures, ledger, composition);
        Fade.addTo(figures, ledger);
        Bars.addTo(figures, ledger);
        Density.addTo(figures, ledger);
        Lye.addTo(figures, ledger);
        Scope batch = Scope.batch(ledger);
        Moments.addTo(figures, batch, composition.moments());
        WorstBars.addTo(figures, composition);
        AcidFigures.addTo(figures, ledger);
        Sums.addTo(figures, ledger);
        Compared.addTo(figures, ledger);
        return new Why(figures, Moments.path(batch, composition.moments().indexOf(composition.at(Moment.CURED))));
    }

    /**
     * Why one figure is what it is.
     *
     * @param path the figure's path
     * @return the reason; a refusal where the sheet has no such figure, with the nearest that it has
     */
    public Outcome<Reason> reason(String path) {
        Figures.Entry entry = figures.entries().get(paths.meant(path));
        return entry == null ? Outcome.refused(paths.unknown(path)) : Outcome.ok(entry.reason());
    }

    /**
     * Which figure a row of a comparison shows.
     *
     * @param row its path, as in docs/compare.schema.json
     * @return the path to ask for; empty where this sheet has nothing of it, such as an oil that only the other has
     */
    public Optional<String> ofComparison(String row) {
        return Compared.paths(row, cured).stream()
                .map(paths::meant)
                .filter(path -> figures.entries().containsKey(path))
                .findFirst();
    }

    /**
     * Everything that can be asked.
     *
     * @return paths, in the order of the sheet's JSON
     */
    public List<String> paths() {
        return List.copyOf(figures.entries().keySet());
    }

    /**
     * Why every figure is what it is.
     *
     * @return a reason for each path, in the order of the sheet's JSON
     */
    public List<Reason> all() {
        return figures.entries().values().stream().map(Figures.Entry::reason).toList();
    }
}
