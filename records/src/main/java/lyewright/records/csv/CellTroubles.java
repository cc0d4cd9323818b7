package lyewright.records.csv;

import java.util.HashMap;
import java.util.Map;
import lyewright.measure.Problem;
import org.jspecify.annotations.Nullable;

/** Where in a file a problem of the cupboard's rules stands. */
final class CellTroubles {

    private final CsvTable table;
    private final CsvChoice choice;
    private final Map<Integer, CsvTable.Row> rows = new HashMap<>();

    CellTroubles(CsvTable table, CsvChoice choice) {
        this.table = table;
        this.choice = choice;
        table.rows().forEach(row -> rows.put(row.number(), row));
    }

    CellTrouble of(int number, Problem problem) {
        CsvTable.Row row = rows.get(number);
        int at = -1;
        for (int i = 0; i < choice.meanings().size(); i++) {
            // one path may have several columns; one with something in it is meant rather than an empty one
            boolean says = choice.meanings().get(i).path().equals(problem.path());
            boolean better = at < 0 || (cell(row, at).isBlank() && !cell(row, i).isBlank());
            at = says && better ? i : at;
        }
        return at < 0
                ? new CellTrouble(number, "", "", problem)
                : new CellTrouble(number, table.header().get(at), CellReader.shown(cell(row, at)), problem);
    }

    private static String cell(CsvTable.@Nullable Row row, int column) {
        return row == null ? "" : row.cell(column);
    }
}
