package lyewright.web.make;

import java.util.List;
import java.util.Optional;
import lyewright.web.Piece;
import lyewright.words.StepTable;

/**
 * One thing to do once everything is weighed.
 *
 * @param number from 1
 * @param text what to do
 * @param table what goes in, where that is a list
 */
public record StepShown(int number, List<Piece> text, Optional<Table> table) {

    /** Copies its list. */
    public StepShown {
        text = List.copyOf(text);
    }

    /**
     * What a step takes.
     *
     * @param columns of each row
     * @param titled whether any column has a title
     * @param groups rows, some under a heading
     */
    public record Table(List<StepTable.Column> columns, boolean titled, List<Group> groups) {

        /** Copies its lists. */
        public Table {
            columns = List.copyOf(columns);
            groups = List.copyOf(groups);
        }
    }

    /**
     * Rows that belong together.
     *
     * @param heading empty where they have none
     * @param rows a cell for each column
     */
    public record Group(List<Piece> heading, List<List<List<Piece>>> rows) {

        /** Copies its lists. */
        public Group {
            heading = List.copyOf(heading);
            rows = List.copyOf(rows);
        }
    }
}
