package lyewright.web.cupboard;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.formula.MaterialNames;
import lyewright.formula.NameRules;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;

/**
 * Whether something made here may have its name. Lye under an oil's name would be weighed for that oil, so a name that means anything
 * else is refused; the very same kind of thing made again has its name again.
 *
 * @param items the cupboard
 * @param own the maker's own materials
 * @param lots that hold something
 */
record MadeName(List<StockItem> items, List<OwnMaterial> own, Collection<KeptLot> lots) {

    private static final String REMEDY =
            "give what is made here a name of its own, as in stock-lye or house-blend, with a number if need be";

    /** What the name means already, if that is something else. */
    Optional<Problem> taken(OwnMaterial made) {
        return (isOwnAlready(made) ? Optional.<String>empty() : byTables(made))
                .or(() -> byOwn(made))
                .or(() -> byCupboard(made))
                .map(what -> new Problem("name", what, REMEDY));
    }

    /** A name that only resembles one of the tables', and that recipes know for this very thing, goes on. */
    private boolean isOwnAlready(OwnMaterial made) {
        return !Tables.bundled().has(made.key())
                && Alkali.ofKey(made.key()).isEmpty()
                && own.stream().anyMatch(known -> known.key().equals(made.key()) && areAlike(known, made));
    }

    /** What something of the tables is called, so that what is made here would be taken for that. */
    static Optional<String> byTables(OwnMaterial made) {
        String name = made.key();
        Optional<Alkali> alkali = Alkali.ofKey(name).or(() -> MaterialNames.alkali(name));
        if (alkali.isPresent()) {
            return Optional.of("'" + name + "' means " + name(alkali.get()) + " as it is bought");
        }
        MaterialNames.Reading reading = MaterialNames.of(Tables.bundled()).reading(name);
        return reading.materials().stream()
                .findFirst()
                .filter(named -> reading.called() || mustNotBe(made, reading.materials()))
                .map(named ->
                        "'" + name + "' " + (reading.one() ? "means " : "may mean ") + named.name() + " in recipes");
    }

    /** Lye is not called what may be something else at all; oils may have a name that other oils only might have. */
    private static boolean mustNotBe(OwnMaterial made, List<MaterialNames.Named> materials) {
        return made.kind().equals(OwnMaterial.LYE)
                || materials.stream()
                        .noneMatch(named -> Tables.bundled().oil(named.key()).isPresent());
    }

    private Optional<String> byCupboard(OwnMaterial made) {
        return items.stream()
                .filter(item -> goesBy(item, made.key()))
                .filter(item -> !isAgain(item, made))
                .findFirst()
                .map(item -> "'" + item.name() + "' is in the cupboard and is something else");
    }

    private static boolean goesBy(StockItem item, String name) {
        return Stream.concat(Stream.of(item.name()), item.said().identity().materialKey().stream())
                .anyMatch(known -> NameRules.areSame(known, name));
    }

    /** Whether it is the same made again: by its name of recipes, its kind, and every lot that is left of it. */
    private boolean isAgain(StockItem item, OwnMaterial made) {
        return item.said().identity().materialKey().filter(made.key()::equals).isPresent()
                && item.said().kind() == MadeForm.kind(made)
                && lots.stream()
                        .filter(lot -> lot.itemId().equals(item.id()))
                        .flatMap(lot -> lot.said().certificate().stream())
                        .allMatch(lot -> areAlike(lot, made));
    }

    private Optional<String> byOwn(OwnMaterial made) {
        return own.stream()
                .filter(known -> NameRules.areSame(known.key(), made.key()))
                .filter(known -> !known.key().equals(made.key()) || !areAlike(known, made))
                .findFirst()
                .map(known -> "'" + known.key() + "' is among your own materials as " + what(known));
    }

    private static boolean areAlike(OwnMaterial one, OwnMaterial other) {
        return one.kind().equals(other.kind())
                && one.strength().map(Strength::alkali).equals(other.strength().map(Strength::alkali));
    }

    private static String what(OwnMaterial own) {
        return own.strength()
                .map(strength -> "stock lye of " + name(strength.alkali()))
                .orElse(own.kind().equals(OwnMaterial.OILS) ? "a premix of oils" : "something else");
    }

    static String name(Alkali alkali) {
        return alkali == Alkali.SODIUM ? "sodium hydroxide" : "potassium hydroxide";
    }
}
