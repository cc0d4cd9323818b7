package lyewright.why;

import java.util.List;
import lyewright.chemistry.BatchComposition;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;

/**
 * Says why figures of a sheet are what they are. A figure is named by its path in the sheet's JSON (docs/sheet.schema.json),
 * such as {@code alkali.naohGrams} or {@code vessels[1].items[0].weighGrams}; vessels, items, portions and their additions may
 * be named instead of counted: {@code vessels.oil pot.coconut.weighGrams}, {@code portions.kelp.superfatPercent}.
 *
 * <p>Nothing is laid out before it is asked for. Immutable.
 */
public final class Why {

    private final Figures figures;
    private final Paths paths;

    private Why(Figures figures) {
        this.figures = figures;
        this.paths = new Paths(figures);
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
        Moments.addTo(figures, Scope.batch(ledger), composition.moments());
        WorstBars.addTo(figures, composition);
        AcidFigures.addTo(figures, ledger);
        return new Why(figures);
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
