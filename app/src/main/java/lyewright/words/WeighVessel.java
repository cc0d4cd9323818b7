package lyewright.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.makingsheet.Vessel;

/**
 * A vessel and what is weighed into it, or small cups after each other, a row for each.
 *
 * @param kind what it is
 * @param name what it is called, first letter large
 * @param cups whether each row has a cup of its own
 * @param empty what it weighs by itself, where it is not tared
 * @param hint what to do with what is in it, where that is not plain; no capital, no full stop
 * @param rows in the order of weighing
 */
public record WeighVessel(
        Vessel.Kind kind,
        String name,
        boolean cups,
        Optional<ShownMass> empty,
        Optional<String> hint,
        List<WeighRow> rows) {

    /** Copies its list. */
    public WeighVessel {
        rows = List.copyOf(rows);
    }

    /** All about it on one line: {@code Lye jug, 312.0 g empty, not tared}. */
    public String heading() {
        String tare =
                empty.map(mass -> ", " + mass.text() + " empty, not tared").orElse("");
        return name + tare + hint.map(text -> "; " + text).stream().collect(Collectors.joining());
    }
}
