package lyewright.records.csv;

import java.util.HashMap;
import java.util.Map;
import lyewright.measure.Problem;

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
        for (int i = 0; i < choice.meanings().size(); i++) {
            Meaning meaning = choice.meanings().get(i);
            // one path may have several columns; the one with something in it is meant
            if (row != null
                    && meaning.path().equals(problem.path())
                    && !row.cell(i).isBlank()) {
                return new CellTrouble(number, table.header().get(i), CellReader.shown(row.cell(i)), problem);
            }
        }
        return new CellTrouble(number, "", "", problem);
    }
}
