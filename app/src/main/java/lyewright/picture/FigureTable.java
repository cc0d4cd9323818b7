package lyewright.picture;

import java.util.List;

/**
 * The figures of a picture as a table.
 *
 * @param caption what it is of
 * @param heads its columns; the first names the rows
 * @param rows a cell for each column
 */
public record FigureTable(String caption, List<Head> heads, List<List<String>> rows) {

    /** Copies its lists. */
    public FigureTable {
        caption = Drawing.clean(caption);
        heads = List.copyOf(heads);
        rows = rows.stream()
                .map(row -> row.stream().map(Drawing::clean).toList())
                .toList();
    }

    /**
     * The head of a column.
     *
     * @param text what it says
     * @param figures whether figures stand below it
     */
    public record Head(String text, boolean figures) {}

    static Head words(String text) {
        return new Head(text, false);
    }

    static Head figures(String text) {
        return new Head(text, true);
    }
}
