package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import lyewright.makingsheet.MakingSheet;
import lyewright.web.Piece;
import lyewright.words.MakingStep;
import lyewright.words.MakingSteps;
import lyewright.words.StepTable;
import lyewright.words.UnitsShown;

/** The steps of making with their figures leading to their reasons. */
final class StepsShown {

    private final FigureLinks links;
    private final SheetFigures figures;
    private final boolean portions;

    /** Portions come before the fade that pours them; of tables with titles there are no others. */
    private final UnitsShown units;

    private boolean portionsAreTold;

    private StepsShown(MakingSheet sheet, UnitsShown units, FigureLinks links) {
        this.units = units;
        this.links = links;
        this.figures = new SheetFigures(sheet);
        this.portions = !sheet.portions().isEmpty();
    }

    static List<StepShown> of(MakingSheet sheet, UnitsShown units, FigureLinks links) {
        StepsShown steps = new StepsShown(sheet, units, links);
        return MakingSteps.of(sheet, units).stream().map(steps::step).toList();
    }

    private StepShown step(MakingStep step) {
        return new StepShown(
                step.number(),
                links.sentence(step.text(), figures.step()),
                step.table().map(this::table));
    }

    private StepShown.Table table(StepTable table) {
        List<StepShown.Group> groups = new ArrayList<>();
        boolean shares = table.titled() && portions && !portionsAreTold;
        for (int g = 0; g < table.groups().size(); g++) {
            StepTable.Group group = table.groups().get(g);
            List<Piece> heading = group.heading().isEmpty()
                    ? List.of()
                    : shares
                            ? links.sentence(group.heading(), figures.portionHeading(g))
                            : List.of(Piece.plain(group.heading()));
            List<List<List<Piece>>> rows = new ArrayList<>();
            for (int r = 0; r < group.rows().size(); r++) {
                List<String> row = group.rows().get(r);
                rows.add(
                        shares
                                ? cells(row, 1, figures.portionRow(g, r, units))
                                : table.titled() ? cells(row, 1, figures.fadeRow(r)) : listed(row));
            }
            groups.add(new StepShown.Group(heading, rows));
        }
        portionsAreTold |= shares;
        return new StepShown.Table(table.columns(), table.titled(), groups);
    }

    /** Cells from a place on each hold one figure. */
    private List<List<Piece>> cells(List<String> row, int from, List<Known> known) {
        List<List<Piece>> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            cells.add(
                    i >= from && i - from < known.size()
                            ? links.cell(row.get(i), known.get(i - from))
                            : List.of(Piece.plain(row.get(i))));
        }
        return cells;
    }

    /** A row that begins with a name and goes on with what is weighed of it. */
    private List<List<Piece>> listed(List<String> row) {
        List<List<Piece>> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            cells.add(
                    i == 0
                            ? List.of(Piece.plain(row.get(i)))
                            : links.sentence(row.get(i), figures.listed(i == 1 ? row.get(0) : "")));
        }
        return cells;
    }
}
