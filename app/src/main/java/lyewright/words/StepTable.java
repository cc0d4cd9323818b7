package lyewright.words;

import java.util.List;

/**
 * What a step takes, as a table.
 *
 * @param columns of each row, left to right
 * @param groups rows, some under a heading of their own
 */
public record StepTable(List<Column> columns, List<Group> groups) {

    /** Copies its lists. */
    public StepTable {
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
    }

    /**
     * A column.
     *
     * @param title empty where the cells speak for themselves
     * @param figures whether numbers stand in it
     */
    public record Column(String title, boolean figures) {}

    /**
     * Rows that belong together.
     *
     * @param heading empty where they have none
     * @param rows a cell for each column
     */
    public record Group(String heading, List<List<String>> rows) {

        /** Copies its lists. */
        public Group {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Whether any column has a title. */
    public boolean titled() {
        return columns.stream().anyMatch(column -> !column.title().isEmpty());
    }

    static Column words(String title) {
        return new Column(title, false);
    }

    static Column figures(String title) {
        return new Column(title, true);
    }

    static StepTable of(List<Column> columns, List<List<String>> rows) {
        return new StepTable(columns, List.of(new Group("", rows)));
    }
}
