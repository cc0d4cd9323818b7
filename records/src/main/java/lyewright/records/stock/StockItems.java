package lyewright.records.stock;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Deed;
import lyewright.records.people.Signed;
import lyewright.records.store.Database;
import lyewright.records.store.Namesakes;
import org.jdbi.v3.core.Handle;

/** The materials that are stocked. A name of recipes belongs to one of them. What is removed leaves the lists; its lots stay. */
public final class StockItems {

    private final Database database;

    /** The stocked materials of a database; the records open it. */
    public StockItems(Database database) {
        this.database = database;
    }

    /** By name. */
    public List<StockItem> list() {
        return database.read(handle -> new ItemRows(handle).list());
    }

    /** Something that is the same as long as names and spoons are: what was made of these need not be made anew. */
    public String revision() {
        return database.read(handle -> String.join(
                        "\n",
                        handle.createQuery("""
                                SELECT name, kind, material_key FROM stock_item WHERE removed_epoch_ms IS NULL
                                ORDER BY name_sort, id
                                """)
                                .map((row, context) -> row.getString("kind") + "\t" + row.getString("name") + "\t"
                                        + row.getString("material_key"))
                                .list())
                + new ItemRows(handle).spoons());
    }

    /** One, removed or not. */
    public Optional<StockItem> find(String id) {
        return database.read(handle -> new ItemRows(handle).find(id));
    }

    /** The one that recipes call so. */
    public Optional<StockItem> findKey(String materialKey) {
        return database.read(handle -> new ItemRows(handle).findKey(materialKey));
    }

    /** Adds one. */
    public Outcome<StockItem> add(ItemSaid said) {
        StockItem item = new StockItem(database.newId(), said);
        return checked(item, handle -> {
            new ItemRows(handle).insert(item, database.now());
            return Outcome.ok(item);
        });
    }

    /** Changes one. Whether it is weighed or counted stays as it is once it has a lot. */
    public Outcome<StockItem> change(StockItem item) {
        return checked(item, handle -> {
            ItemRows rows = new ItemRows(handle);
            Optional<StockItem> before = rows.find(item.id());
            if (before.isEmpty()) {
                return none();
            }
            if (before.get().said().counting() != item.said().counting() && rows.hasLots(item.id())) {
                return Outcome.refused(new Problem(
                        "counting",
                        "there are lots of it already, which are "
                                + (before.get().said().counting() == Counting.MASS ? "weighed" : "counted"),
                        "add it as another material"));
            }
            rows.update(item, database.now());
            return Outcome.ok(item);
        });
    }

    /** Takes one out of the lists. */
    public Outcome<StockItem> remove(String id) {
        return Signed.decide(database, Deed.removed(Deed.Thing.STOCKED_MATERIAL), StockItems::subject, handle -> {
            ItemRows rows = new ItemRows(handle);
            rows.remove(id, database.now());
            return rows.find(id).map(Outcome::ok).orElseGet(StockItems::none);
        });
    }

    /** Puts one back. */
    public Outcome<StockItem> putBack(String id) {
        return Signed.decide(database, Deed.putBack(Deed.Thing.STOCKED_MATERIAL), StockItems::subject, handle -> {
            ItemRows rows = new ItemRows(handle);
            return rows.find(id)
                    .map(item -> taken(handle, item)
                            .<Outcome<StockItem>>map(Outcome::refused)
                            .orElseGet(() -> {
                                rows.putBack(id);
                                return Outcome.ok(item);
                            }))
                    .orElseGet(StockItems::none);
        });
    }

    private static Signed.Subject subject(StockItem item) {
        return Signed.Subject.of(item.id());
    }

    private static Outcome<StockItem> none() {
        return Outcome.refused("there is no such material", "go back to the cupboard");
    }

    private Outcome<StockItem> checked(StockItem item, Function<Handle, Outcome<StockItem>> work) {
        List<Problem> problems = ItemRules.check(item.said());
        return problems.isEmpty()
                ? Signed.decide(
                        database,
                        Deed.kept(Deed.Thing.STOCKED_MATERIAL),
                        StockItems::subject,
                        handle -> taken(handle, item)
                                .<Outcome<StockItem>>map(Outcome::refused)
                                .orElseGet(() -> work.apply(handle)))
                : new Outcome.Refused<>(problems);
    }

    /** Whether its name, or what recipes call it, is another's. */
    private static Optional<Problem> taken(Handle handle, StockItem item) {
        Optional<Problem> name = Namesakes.of(handle, "stock_item", "name", item.name(), item.id())
                .map(problem -> new Problem(
                        "name",
                        "there is a material '" + item.name() + "' in the cupboard already",
                        "give this one another name, or add a lot to that one"));
        return name.or(() -> item.said()
                .identity()
                .materialKey()
                .flatMap(key -> new ItemRows(handle)
                        .findKey(key)
                        .filter(other -> !other.id().equals(item.id()))
                        .map(other -> new Problem(
                                "material",
                                "'" + other.name() + "' is what recipes call '" + key + "' already",
                                "add a lot to that one, or choose another name of recipes"))));
    }
}
