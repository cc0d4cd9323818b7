package lyewright.why;

import java.util.List;
import java.util.function.Predicate;

/**
 * The whole batch, or one portion of it: its share of the base batter and what goes into it alone, toppings left out.
 *
 * @param path what stands before a figure's path, empty or such as {@code portions[0].}
 * @param name what stands before its name instead, empty or such as {@code portions.kelp.}
 * @param words what it is of, for titles
 * @param lines what is in it
 * @param reacting who takes alkali in it and who brings it
 */
record Scope(String path, String name, String words, List<Line> lines, Reacting reacting) {

    static Scope batch(Ledger ledger) {
        return new Scope("", "", "the batch", ledger.lines(), Reacting.asWeighed(ledger));
    }

    static Scope portion(Ledger ledger, int place) {
        String name = ledger.formula().portions().get(place).name();
        Term share = Shares.of(ledger.formula().formula(), place);
        return new Scope(
                "portions[" + place + "].",
                "portions." + name + ".",
                "portion " + name,
                ledger.where(line -> line.line().inBaseBatter() || line.line().portion() == place),
                new Reacting(
                        ledger,
                        line -> line.line().portion() == place
                                ? ledger.weighed(line)
                                : ledger.weighed(line).times(share),
                        ""));
    }

    Ledger ledger() {
        return reacting.ledger();
    }

    Term mass(Line line) {
        return reacting.mass().apply(line);
    }

    /** Water of some of its lines. */
    Term water(Predicate<Line> which) {
        return Ledger.sum(
                lines.stream()
                        .filter(which)
                        .filter(line -> line.line().water() > 0)
                        .toList(),
                this::waterOf);
    }

    Term waterOf(Line line) {
        return line.line().water() == 1 ? mass(line) : mass(line).times(Contents.water(ledger(), line));
    }

    boolean any(Predicate<Line> which) {
        return lines.stream().anyMatch(which);
    }
}
