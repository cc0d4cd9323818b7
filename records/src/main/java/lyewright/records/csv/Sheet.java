package lyewright.records.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One file to be written: things in rows, and the columns that tell of them.
 *
 * @param name of the file
 * @param things a row each
 * @param columns what is told of each
 */
record Sheet<T>(String name, List<T> things, List<Column<T>> columns) {

    /** One column: its name, what it means, its unit, an invented example, and what stands in it. */
    record Column<T>(String name, String meaning, String unit, String example, Function<T, Object> cell) {}

    List<List<Object>> rows() {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(columns.stream().<Object>map(Column::name).toList());
        things.forEach(thing -> rows.add(
                columns.stream().map(column -> column.cell().apply(thing)).toList()));
        return rows;
    }

    /** A column of texts. */
    static <T> Column<T> of(String name, String meaning, String example, Function<T, String> cell) {
        return new Column<>(name, meaning, "", example, cell::apply);
    }

    /** Numbers and days, which stand there bare; nothing where there is none. */
    static <T> Column<T> in(String name, String meaning, String unit, String example, Function<T, Optional<?>> cell) {
        return new Column<>(name, meaning, unit, example, thing -> bare(cell.apply(thing)));
    }

    private static Object bare(Optional<?> value) {
        Object some = value.isPresent() ? value.get() : "";
        return some instanceof Number ? some : some.toString();
    }
}
