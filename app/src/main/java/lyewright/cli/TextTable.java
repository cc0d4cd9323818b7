package lyewright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows of cells in columns. Where they do not fit the page, the widest columns of words are made narrower and broken. */
final class TextTable {

    private static final int GAP = 2;
    private static final int NARROWEST = 8;

    private final int indent;
    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();
    private boolean titled = true;

    TextTable(int indent, Column... columns) {
        this.indent = indent;
        this.columns = List.of(columns);
    }

    /** A column of words, of words that are never broken, or of figures. */
    record Column(String title, Kind kind) {}

    private enum Kind {
        WORDS,
        KEYS,
        FIGURES
    }

    private sealed interface Row {}

    private record Cells(List<String> cells) implements Row {}

    private record Across(String text) implements Row {}

    static Column words(String title) {
        return new Column(title, Kind.WORDS);
    }

    static Column keys(String title) {
        return new Column(title, Kind.KEYS);
    }

    static Column figures(String title) {
        return new Column(title, Kind.FIGURES);
    }

    TextTable untitled() {
        titled = false;
        return this;
    }

    TextTable row(String... cells) {
        rows.add(new Cells(List.of(cells)));
        return this;
    }

    /** A line across all columns. */
    TextTable across(String text) {
        rows.add(new Across(text));
        return this;
    }

    /** The table's lines, none wider than a page. */
    List<String> lines(int width) {
        int[] widths = widths(width);
        List<String> lines = new ArrayList<>();
        if (titled) {
            lines.addAll(lines(columns.stream().map(Column::title).toList(), widths));
        }
        for (Row row : rows) {
            if (row instanceof Cells cells) {
                lines.addAll(lines(cells.cells(), widths));
            } else {
                String text = ((Across) row).text();
                Widths.wrap(text, width - indent).forEach(line -> lines.add(" ".repeat(indent) + line));
            }
        }
        return lines;
    }

    private int[] widths(int width) {
        int[] widths = new int[columns.size()];
        for (int c = 0; c < widths.length; c++) {
            widths[c] = titled ? Widths.of(columns.get(c).title()) : 0;
        }
        for (Row row : rows) {
            if (row instanceof Cells cells) {
                for (int c = 0; c < widths.length; c++) {
                    widths[c] = Math.max(widths[c], Widths.of(cells.cells().get(c)));
                }
            }
        }
        int room = width - indent;
        for (int c = 1; c < widths.length; c++) {
            room -= gap(c);
        }
        while (Arrays.stream(widths).sum() > room) {
            int widest = widestOfWords(widths);
            if (widths[widest] <= NARROWEST) {
                break;
            }
            widths[widest]--;
        }
        return widths;
    }

    private int gap(int column) {
        return titled && columns.get(column).title().isEmpty() ? 1 : GAP;
    }

    private int widestOfWords(int[] widths) {
        int widest = -1;
        for (int c = 0; c < widths.length; c++) {
            if (columns.get(c).kind() == Kind.WORDS && (widest < 0 || widths[c] > widths[widest])) {
                widest = c;
            }
        }
        return Math.max(0, widest);
    }

    private List<String> lines(List<String> cells, int[] widths) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int c = 0; c < widths.length; c++) {
            List<String> cell = Widths.wrap(cells.get(c), Math.max(1, widths[c]));
            broken.add(cell);
            height = Math.max(height, cell.size());
        }
        List<String> lines = new ArrayList<>();
        for (int l = 0; l < height; l++) {
            StringBuilder line = new StringBuilder(" ".repeat(indent));
            for (int c = 0; c < widths.length; c++) {
                String part = l < broken.get(c).size() ? broken.get(c).get(l) : "";
                // a column without a title is a mark of the one before it, and stands close to it
                line.append(c == 0 ? "" : " ".repeat(gap(c)))
                        .append(
                                columns.get(c).kind() == Kind.FIGURES
                                        ? Widths.right(part, widths[c])
                                        : Widths.left(part, widths[c]));
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
