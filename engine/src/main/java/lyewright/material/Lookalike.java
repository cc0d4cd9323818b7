package lyewright.material;

import java.util.Arrays;
import java.util.List;
import lyewright.material.CsvTable.Row;

/**
 * One of several materials that everyday names do not keep apart: another plant, another part of it, or another make of the same.
 *
 * @param group what they have in common, in one word
 * @param everyday names that may mean any of the group
 * @param key what recipes call it; empty where no table has it
 * @param name what it is called
 * @param also other names that mean this one alone
 * @param species botanical names, the usual one first; empty where it is of no plant, or that does not matter
 * @param part which part of the plant; empty where that does not matter
 * @param apart why the group is to be kept apart, a clause
 * @param source where names, species and part are from
 */
public record Lookalike(
        String group,
        List<String> everyday,
        String key,
        String name,
        List<String> also,
        List<String> species,
        String part,
        String apart,
        String source) {

    private static final List<Lookalike> ALL =
            CsvTable.rows("lookalikes.csv").stream().map(Lookalike::of).toList();

    /** Copies its lists. */
    public Lookalike {
        everyday = List.copyOf(everyday);
        also = List.copyOf(also);
        species = List.copyOf(species);
    }

    /**
     * The bundled table.
     *
     * @return its rows; a material may stand in more than one group
     */
    public static List<Lookalike> all() {
        return ALL;
    }

    private static Lookalike of(Row row) {
        return new Lookalike(
                row.text("group"),
                list(row.text("everyday")),
                row.text("key"),
                row.text("name"),
                list(row.text("also")),
                list(row.text("species")),
                row.text("part"),
                row.text("apart"),
                row.text("source"));
    }

    private static List<String> list(String cell) {
        return Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
