package lyewright.records.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lyewright.measure.Problem;

/** Rows that were left out, as they stood, with what is wrong beside each. Sent again once mended, that last column is left out. */
final class LeftOutFile {

    static final String WRONG = "what is wrong";

    private LeftOutFile() {}

    static byte[] write(CsvTable table, CsvImport.Result result) {
        int columns = table.header().size();
        int said = table.header().indexOf(WRONG);
        Map<Integer, List<CellTrouble>> troubles =
                result.troubles().stream().collect(Collectors.groupingBy(CellTrouble::row));
        List<List<Object>> rows = new ArrayList<>();
        rows.add(with(cells(table.header(), columns, said), WRONG));
        for (CsvTable.Row row : table.rows()) {
            List<CellTrouble> wrong = troubles.get(row.number());
            if (wrong != null) {
                rows.add(with(cells(row.cells(), Math.max(columns, row.cells().size()), said), sentences(wrong)));
            }
        }
        return CsvText.bytes(rows, table.separator().sign(), true);
    }

    private static List<Object> with(List<Object> cells, String last) {
        cells.add(last);
        return cells;
    }

    private static List<Object> cells(List<String> written, int columns, int without) {
        List<Object> cells = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            if (i != without) {
                cells.add(i < written.size() ? FormulaGuard.bare(written.get(i)) : "");
            }
        }
        return cells;
    }

    private static String sentences(List<CellTrouble> wrong) {
        return wrong.stream()
                .map(trouble ->
                        (trouble.column().isEmpty() ? "" : trouble.column() + ": ") + sentence(trouble.problem()))
                .collect(Collectors.joining(" "));
    }

    private static String sentence(Problem problem) {
        return problem.sentence() + ".";
    }
}
