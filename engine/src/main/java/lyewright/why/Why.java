package lyewright.why;

import java.util.List;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * Says why figures of a sheet are what they are. A figure is named by its path in the sheet's JSON (docs/sheet.schema.json),
 * such as {@code alkali.naohGrams} or {@code vessels[1].items[0].weighGrams}.
 */
public final class Why {

    private Why() {}

    /**
     * Why one figure is what it is.
     *
     * @param sheet the sheet
     * @param path the figure's path
     * @return the reason; a refusal where the sheet has no such figure, with the nearest that it has
     */
    public static Outcome<Reason> of(MakingSheet sheet, String path) {
        Figures figures = figures(sheet);
        Figures.Entry entry = figures.entries().get(path);
        return entry == null
                ? Outcome.refused(new Problem(path, "the sheet has no figure '" + path + "'", "see the list"))
                : Outcome.ok(entry.reason());
    }

    /**
     * Everything that can be asked of a sheet.
     *
     * @param sheet the sheet
     * @return paths, in the order of the sheet's JSON
     */
    public static List<String> paths(MakingSheet sheet) {
        return List.copyOf(figures(sheet).entries().keySet());
    }

    private static Figures figures(MakingSheet sheet) {
        Ledger ledger = new Ledger(sheet);
        Figures figures = new Figures();
        Totals.addTo(figures, ledger);
        AlkaliFigures.addTo(figures, ledger);
        Superfat.addTo(figures, ledger);
        return figures;
    }
}
