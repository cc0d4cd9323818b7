package lyewright.cli;

import java.util.List;
import lyewright.chemistry.BatchComposition;
import lyewright.material.Tables;
import lyewright.words.BarBecomes;
import lyewright.words.BarRow;
import lyewright.words.PortionsApart;

/** The part of a sheet that says what the bar will be made of. */
final class CompositionText {

    private static final int LABEL = 21;

    /** Spaces that a table does not strip; they leave it as common ones. */
    private static final String SET_IN = "\u00a0\u00a0";

    private CompositionText() {}

    static void write(BatchComposition batch, Tables tables, Page page) {
        BarBecomes bar = BarBecomes.of(batch, tables);
        page.heading("What the bar becomes");
        rows(bar, page);
        bar.footnote().ifPresent(page::line);
        page.blank();
        bar.lines().forEach(line -> page.pair(line.label(), line.text(), LABEL));
        bar.portions().ifPresent(portions -> portions(portions, page));
    }

    private static void rows(BarBecomes bar, Page page) {
        TextTable table = new TextTable(
                0,
                TextTable.words("Once cured"),
                TextTable.words("INCI"),
                TextTable.figures("g"),
                TextTable.figures("%"));
        bar.rows().forEach(row -> row(row, table));
        row(bar.total(), table);
        table.lines(Page.WIDTH).forEach(line -> page.line(line.replace('\u00a0', ' ')));
    }

    private static void row(BarRow row, TextTable table) {
        table.row((row.setIn() ? SET_IN : "") + row.name(), row.inci(), row.grams(), row.percent());
    }

    private static void portions(PortionsApart portions, Page page) {
        page.blank();
        page.line(portions.intro());
        if (portions.heads().isEmpty()) {
            return;
        }
        TextTable.Column[] columns = new TextTable.Column[portions.heads().size()];
        for (int c = 0; c < columns.length; c++) {
            String head = portions.heads().get(c);
            columns[c] = c == 0 ? TextTable.words(head) : TextTable.figures(head);
        }
        TextTable table = new TextTable(0, columns);
        for (List<String> row : portions.rows()) {
            table.row(row.toArray(String[]::new));
        }
        page.table(table);
        portions.mostInOneBar().ifPresent(most -> {
            page.blank();
            page.pair("Most in one bar", most, LABEL);
        });
    }
}
