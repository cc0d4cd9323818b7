package lyewright.records.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Problem;
import lyewright.records.stock.StockRow.MaterialSaid;

/** Which material a row of a file means: one that is there, one that recipes know by its name, or a new one. */
final class RowMaterials {

    private final KnownStock known;
    private final NamedMaterials names;
    private final java.util.function.Supplier<String> ids;
    private final Map<String, NamedMaterials.Meant> read = new HashMap<>();

    RowMaterials(KnownStock known, NamedMaterials names, java.util.function.Supplier<String> ids) {
        this.known = known;
        this.names = names;
        this.ids = ids;
    }

    /**
     * A material that a row means.
     *
     * @param item it
     * @param isNew whether the cupboard has none of it yet
     * @param found whether what recipes call it was found by its name
     * @param notes what is worth a look
     */
    record Meant(StockItem item, boolean isNew, boolean found, List<Problem> notes) {

        StockVerdict.Material told() {
            return StockVerdict.Material.of(item, found);
        }
    }

    /** One that is there, by its own name or what recipes call it. */
    Optional<StockItem> there(MaterialSaid said, List<Problem> problems) {
        Optional<StockItem> named = known.named(said.name());
        Optional<StockItem> keyed = said.identity().materialKey().flatMap(known::keyed);
        if (named.isPresent()
                && keyed.isPresent()
                && !named.get().id().equals(keyed.get().id())) {
            problems.add(new Problem(
                    "material",
                    "'" + said.identity().materialKey().orElse("") + "' is what recipes call '"
                            + keyed.get().name() + "', which is another material than '"
                            + named.get().name() + "'",
                    "leave one of the two out"));
        }
        Optional<StockItem> there = named.or(() -> keyed).or(() -> known.keyed(said.name()));
        there.flatMap(item -> said.kind().flatMap(kind -> LotFits.sameKind(item.said(), kind)))
                .ifPresent(problem -> problems.add(new Problem("kind", problem.what(), problem.remedy())));
        return there;
    }

    /** Of a row that lists materials: what it calls otherwise than the cupboard does is another one. */
    Optional<Meant> listed(MaterialSaid said, Optional<Supplier> seller, List<Problem> problems) {
        return meant(said, seller, problems, false);
    }

    /** Of a lot: of what is there, under whichever name that recipes know, or of something new. */
    Optional<Meant> ofLot(MaterialSaid said, List<Problem> problems) {
        Optional<StockItem> there = there(said, problems);
        return there.isPresent()
                ? there.map(item -> new Meant(item, false, false, List.of()))
                : meant(said, Optional.empty(), problems, true);
    }

    private Optional<Meant> meant(MaterialSaid said, Optional<Supplier> seller, List<Problem> problems, boolean ofLot) {
        if (said.name().isBlank()) {
            problems.add(new Problem("name", "no material is named", "write what it is called in the cupboard"));
            return Optional.empty();
        }
        if (said.identity().materialKey().isPresent()) {
            return made(said, seller, problems, false, List.of());
        }
        Optional<Problem> unclear = names.unclear(said.name());
        if (unclear.isPresent()) {
            problems.add(new Problem("name", unclear.get().what(), unclear.get().remedy()));
            return Optional.empty();
        }
        NamedMaterials.Meant meant =
                read.computeIfAbsent(StockImport.read(said.name()), name -> names.inWords(said.name()));
        List<ItemSaid> fitting = meant.all().stream()
                .filter(item ->
                        said.kind().filter(kind -> !fits(kind, item.kind())).isEmpty())
                .toList();
        if (fitting.size() == 1) {
            return found(said, fitting.get(0), seller, problems, ofLot);
        }
        if (!meant.all().isEmpty() && said.kind().isEmpty()) {
            problems.add(new Problem(
                    "name",
                    "'" + said.name() + "' may be " + meant.either(),
                    "write which; if it is none of them, say what kind of thing it is"));
            return Optional.empty();
        }
        anotherKind(said, meant).ifPresent(problems::add);
        return made(said, seller, problems, false, fitting.isEmpty() ? List.of() : List.of(unclear(said, meant)));
    }

    private static Problem unclear(MaterialSaid said, NamedMaterials.Meant meant) {
        return new Problem(
                "name",
                "'" + said.name() + "' may be " + meant.either() + " to recipes, so no recipe knows it yet",
                "write which in a column recipe_name, or choose it on the material's page; if it is none of them, go on");
    }

    /** The tables know it: under that name the cupboard may have it already. */
    private Optional<Meant> found(
            MaterialSaid said, ItemSaid table, Optional<Supplier> seller, List<Problem> problems, boolean ofLot) {
        String key = table.identity().materialKey().orElseThrow();
        Optional<StockItem> keyed = known.keyed(key);
        if (keyed.isEmpty()) {
            return made(said.known(table.kind(), Optional.of(key)), seller, problems, true, List.of());
        }
        String there = keyed.get().name();
        return ofLot
                ? Optional.of(new Meant(
                        keyed.get(),
                        false,
                        false,
                        List.of(new Problem(
                                "name",
                                "'" + said.name() + "' is taken for '" + there + "', which the cupboard has",
                                "if it is another, add it as a material of its own first"))))
                : made(
                        said.known(table.kind(), Optional.empty()),
                        seller,
                        problems,
                        false,
                        List.of(new Problem(
                                "name",
                                "recipes call '" + there + "' " + key + " already, so '" + said.name()
                                        + "' is kept without a name in recipes",
                                "if the two are the same, leave this row out")));
    }

    /** An alkali under the name of an oil, or the other way, would be weighed for it. */
    private static Optional<Problem> anotherKind(MaterialSaid said, NamedMaterials.Meant meant) {
        boolean alkali = said.kind().filter(kind -> kind == ItemKind.ALKALI).isPresent();
        return meant.one()
                .filter(item -> (item.kind() == ItemKind.ALKALI) != alkali)
                .map(item -> new Problem(
                        "kind",
                        "'" + item.name() + "' is " + (alkali ? "no alkali" : "an alkali"),
                        "leave that empty, or write another name"));
    }

    /** Boxes are no oil, whatever they are called; clays, colours and scents are told apart by nobody but the maker. */
    private static boolean fits(ItemKind said, ItemKind table) {
        return said == table || (isAdded(said) && isAdded(table));
    }

    private static boolean isAdded(ItemKind kind) {
        return kind == ItemKind.ADDITIVE || kind == ItemKind.COLOURANT || kind == ItemKind.FRAGRANCE;
    }

    /** An oil or an alkali of which there are no figures; what else no table knows is named in recipes by its kind. */
    private static Optional<Problem> nameless(ItemSaid said) {
        boolean alkali = said.kind() == ItemKind.ALKALI;
        return alkali || said.kind() == ItemKind.OIL
                ? Optional.of(new Problem(
                        "name",
                        "no recipe will find '" + said.name() + "': no table knows it",
                        "write what recipes call it in a column recipe_name, or describe it as a material of your own with its "
                                + (alkali ? "strength" : "saponification value")))
                : Optional.empty();
    }

    private Optional<Meant> made(
            MaterialSaid said, Optional<Supplier> seller, List<Problem> problems, boolean found, List<Problem> notes) {
        if (said.kind().isEmpty()) {
            problems.add(new Problem(
                    "kind",
                    "there is no '" + said.name() + "' in the cupboard, and nothing says what kind of thing it is",
                    "write oil, alkali, additive, colourant, fragrance or packaging"));
            return Optional.empty();
        }
        ItemSaid whole = said.said(said.kind().get(), seller.map(Supplier::id));
        problems.addAll(ItemRules.check(whole));
        List<Problem> all = new ArrayList<>(notes);
        if (notes.isEmpty() && whole.identity().materialKey().isEmpty()) {
            nameless(whole).ifPresent(all::add);
        }
        return Optional.of(new Meant(new StockItem(ids.get(), whole), true, found, all));
    }
}
