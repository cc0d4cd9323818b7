package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Said;
import lyewright.measure.WrittenMass;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.StockItem;
import lyewright.stock.SaidAmount;
import lyewright.words.Figures;

/**
 * A stocked material as typed.
 *
 * @param name what it is called
 * @param kind what sort of thing
 * @param material what recipes call it
 * @param inci INCI name
 * @param cas CAS number
 * @param species the plant
 * @param part of it
 * @param productCode of who sells it
 * @param certificateVersion of its certificate
 * @param reorder when to buy more
 * @param spoons what spoons hold, one on a line
 * @param notes the maker's own
 * @param sure whether the spoons are as large as they are said to be
 */
record ItemForm(
        String name,
        String kind,
        String material,
        String inci,
        String cas,
        String species,
        String part,
        String productCode,
        String certificateVersion,
        String reorder,
        String spoons,
        String notes,
        boolean sure) {

    /** Of the tick by which a large spoon is confirmed. */
    static final String SURE = "sure";

    private static final double MILLIGRAMS = 1000;

    static ItemForm empty() {
        return new ItemForm("", "oil", "", "", "", "", "", "", "", "", "", "", false);
    }

    static ItemForm sent(Context ctx) {
        return new ItemForm(
                Typed.line(ctx, "name"),
                Typed.line(ctx, "kind"),
                Typed.line(ctx, "material"),
                Typed.line(ctx, "inci"),
                Typed.line(ctx, "cas"),
                Typed.line(ctx, "species"),
                Typed.line(ctx, "part"),
                Typed.line(ctx, "productCode"),
                Typed.line(ctx, "certificateVersion"),
                Typed.line(ctx, "reorder"),
                Typed.text(ctx, "spoons"),
                Typed.text(ctx, "notes"),
                Typed.ticked(ctx, SURE));
    }

    static ItemForm of(StockItem item) {
        ItemSaid said = item.said();
        Identity identity = said.identity();
        List<String> spoons = new ArrayList<>();
        said.spoons()
                .forEach((name, milligrams) ->
                        spoons.add(name + ": " + Figures.upTo(milligrams / MILLIGRAMS, 3) + " g"));
        return new ItemForm(
                said.name(),
                said.kind().word(),
                identity.materialKey().orElse(""),
                identity.inci(),
                identity.cas(),
                identity.species(),
                identity.part(),
                identity.productCode(),
                identity.certificateVersion(),
                said.reorderMass()
                        .map(WrittenMass::toString)
                        .or(() -> said.reorderPieces().map(String::valueOf))
                        .orElse(""),
                String.join("\n", spoons),
                said.notes(),
                false);
    }

    /** Read; problems name the fields. */
    Outcome<ItemSaid> read() {
        List<Problem> problems = new ArrayList<>();
        Optional<ItemKind> sort = ItemKind.ofWord(kind);
        if (sort.isEmpty()) {
            problems.add(new Problem("kind", "nothing says what sort of thing it is", "choose one"));
        }
        if (name.isBlank()) {
            problems.add(new Problem("name", "its name is empty", "write a name"));
        }
        boolean counted = sort.filter(ItemKind.PACKAGING::equals).isPresent();
        Optional<WrittenMass> mass = Optional.empty();
        Optional<Long> pieces = Optional.empty();
        if (!reorder.isBlank() && counted) {
            pieces = Typed.ok("reorder", SaidAmount.pieces(reorder), problems).map(SaidAmount::amount);
        } else if (!reorder.isBlank()) {
            mass = Typed.ok("reorder", WrittenMass.parse(Said.measure(reorder)), problems);
        }
        Map<String, Long> held = spoons(problems);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        Identity identity = new Identity(
                material.isBlank() ? Optional.empty() : Optional.of(material.strip()),
                inci.strip(),
                cas.strip(),
                species.strip(),
                part.strip(),
                Optional.empty(),
                productCode.strip(),
                certificateVersion.strip());
        return Outcome.ok(new ItemSaid(
                name.strip(),
                sort.orElseThrow(),
                counted ? Counting.PIECES : Counting.MASS,
                identity,
                mass,
                pieces,
                held,
                notes));
    }

    /** Once: whoever ticks that it is so has such a spoon. */
    private Optional<Problem> ask(String line, String spoon, long holds) {
        return !sure && SaidAmount.isTooMuch(spoon, holds)
                ? Optional.of(new Problem(
                        "spoons",
                        "'" + line.strip() + "' is more than such a spoon holds",
                        "look at the number and its unit, or tick below that it is right"))
                : Optional.empty();
    }

    private Map<String, Long> spoons(List<Problem> problems) {
        Map<String, Long> held = new LinkedHashMap<>();
        for (String line : spoons.lines().filter(l -> !l.isBlank()).toList()) {
            int colon = line.lastIndexOf(':');
            if (colon <= 0) {
                problems.add(new Problem(
                        "spoons",
                        "'" + line.strip() + "' does not say what it holds",
                        "write it as in teaspoon: 2.1 g"));
            } else {
                Typed.ok("spoons", SaidAmount.mass(line.substring(colon + 1), SaidAmount.Known.NOTHING), problems)
                        .ifPresent(holds -> {
                            held.put(line.substring(0, colon).strip(), holds.amount());
                            ask(line, line.substring(0, colon), holds.amount()).ifPresent(problems::add);
                        });
            }
        }
        return held;
    }
}
