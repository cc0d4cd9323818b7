package lyewright.records.equipment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.measure.Length;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.equipment.MouldMeasures.Cavities;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.equipment.MouldMeasures.Loaf;
import lyewright.records.equipment.MouldMeasures.Slab;
import lyewright.records.equipment.MouldMeasures.Tube;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Typing;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/** Moulds as they lie in their table. */
final class MouldRows {

    private static final String WITH_USUAL = """
            SELECT m.*, v.formula_text FROM mould m
            LEFT JOIN recipe_version v ON v.recipe_id = m.usual_recipe_id AND v.number = m.usual_version
            """;

    private static final List<String> LENGTHS =
            List.of("length", "width", "height", "diameter", "thickness", "across", "blade", "ends", "trim");

    /** Every column that a change writes; each is bound by its own name. */
    private static final List<String> COLUMNS = Stream.of(
                    Stream.of("name", "name_sort", "kind", "cavity_count", "cavity_microlitres", "cavity_unit"),
                    Stream.of("water_fill_milligrams", "water_fill_unit", "usual_milligrams", "usual_unit"),
                    Stream.of("usual_recipe_id", "usual_version", "changed_epoch_ms"),
                    LENGTHS.stream().flatMap(name -> Stream.of(name + "_micrometres", name + "_unit")))
            .flatMap(names -> names)
            .toList();

    private static final String INSERT = "INSERT INTO mould (id, " + String.join(", ", COLUMNS) + ") VALUES (:id, "
            + COLUMNS.stream().map(column -> ":" + column).collect(Collectors.joining(", ")) + ")";

    private static final String UPDATE = "UPDATE mould SET "
            + COLUMNS.stream().map(column -> column + " = :" + column).collect(Collectors.joining(", "))
            + " WHERE id = :id";

    private final Handle handle;

    MouldRows(Handle handle) {
        this.handle = handle;
    }

    List<KeptMould> list() {
        return handle.createQuery(WITH_USUAL + " WHERE m.removed_epoch_ms IS NULL ORDER BY m.name_sort, m.id")
                .map((row, context) -> mould(row))
                .list();
    }

    Optional<KeptMould> find(String id) {
        return handle.createQuery(WITH_USUAL + " WHERE m.id = :id")
                .bind("id", id)
                .map((row, context) -> mould(row))
                .findOne();
    }

    Outcome<KeptMould> put(String id, String name, MouldMeasures measures, long now, boolean isNew) {
        if (measures.usual().isPresent() && !exists(measures.usual().get())) {
            return Outcome.refused(
                    new Problem("usual", "the recipe it was measured with is not there", "choose one of the recipes"));
        }
        Update update = handle.createUpdate(isNew ? INSERT : UPDATE)
                .bind("id", id)
                .bind("name", name)
                .bind("name_sort", NameOrder.key(name))
                .bind("changed_epoch_ms", now);
        bindInside(update, measures.inside());
        bindCut(update, measures.cut());
        Typing.bindMass(update, "water_fill", measures.waterFill());
        Typing.bindMass(update, "usual", measures.usual().map(UsualMass::mass));
        update.bind("usual_recipe_id", measures.usual().map(UsualMass::recipeId).orElse(null))
                .bind("usual_version", measures.usual().map(UsualMass::version).orElse(null));
        return Shelf.MOULD.done(update.execute()).then(done -> Shelf.MOULD.found(find(id)));
    }

    private boolean exists(UsualMass usual) {
        return handle.createQuery("SELECT count(*) FROM recipe_version WHERE recipe_id = :recipe AND number = :number")
                        .bind("recipe", usual.recipeId())
                        .bind("number", usual.version())
                        .mapTo(Integer.class)
                        .one()
                == 1;
    }

    private static void bindInside(Update update, Optional<Inside> measured) {
        Inside inside = measured.orElse(null);
        Loaf loaf = inside instanceof Loaf it ? it : null;
        Slab slab = inside instanceof Slab it ? it : null;
        Tube tube = inside instanceof Tube it ? it : null;
        Optional<Cavities> cavities = inside instanceof Cavities it ? Optional.of(it) : Optional.empty();
        Optional<Loaf> box =
                Optional.ofNullable(slab != null ? new Loaf(slab.length(), slab.width(), slab.height()) : loaf);
        Optional<Tube> round = Optional.ofNullable(tube);
        update.bind("kind", kind(inside));
        Typing.bindLength(update, "length", box.map(Loaf::length).or(() -> round.map(Tube::length)));
        Typing.bindLength(update, "width", box.map(Loaf::width));
        Typing.bindLength(update, "height", box.map(Loaf::height));
        Typing.bindLength(update, "diameter", round.map(Tube::diameter));
        Typing.bindVolume(update, "cavity", cavities.map(Cavities::each));
        update.bind("cavity_count", cavities.map(Cavities::count).orElse(null));
    }

    private static String kind(@Nullable Inside inside) {
        if (inside instanceof Loaf) {
            return "loaf";
        }
        if (inside instanceof Slab) {
            return "slab";
        }
        if (inside instanceof Tube) {
            return "tube";
        }
        return inside instanceof Cavities ? "cavities" : "unmeasured";
    }

    private static void bindCut(Update update, Optional<Cut> cut) {
        Typing.bindLength(update, "thickness", cut.map(Cut::thickness));
        Typing.bindLength(update, "across", cut.flatMap(Cut::across));
        Typing.bindLength(update, "blade", cut.flatMap(Cut::blade));
        Typing.bindLength(update, "ends", cut.flatMap(Cut::ends));
        Typing.bindLength(update, "trim", cut.flatMap(Cut::trim));
    }

    private static KeptMould mould(ResultSet row) throws SQLException {
        MouldMeasures measures = new MouldMeasures(inside(row), Typing.mass(row, "water_fill"), usual(row), cut(row));
        return new KeptMould(
                row.getString("id"),
                row.getString("name"),
                measures,
                Optional.ofNullable(row.getString("formula_text")));
    }

    private static Optional<Inside> inside(ResultSet row) throws SQLException {
        return switch (row.getString("kind")) {
            case "loaf" ->
                Optional.of(new Loaf(
                        Typing.length(row, "length").orElseThrow(),
                        Typing.length(row, "width").orElseThrow(),
                        Typing.length(row, "height").orElseThrow()));
            case "slab" ->
                Optional.of(new Slab(
                        Typing.length(row, "length").orElseThrow(),
                        Typing.length(row, "width").orElseThrow(),
                        Typing.length(row, "height").orElseThrow()));
            case "tube" ->
                Optional.of(new Tube(
                        Typing.length(row, "length").orElseThrow(),
                        Typing.length(row, "diameter").orElseThrow()));
            case "cavities" ->
                Optional.of(new Cavities(
                        row.getInt("cavity_count"), Typing.volume(row, "cavity").orElseThrow()));
            default -> Optional.empty();
        };
    }

    private static Optional<UsualMass> usual(ResultSet row) throws SQLException {
        String recipe = row.getString("usual_recipe_id");
        int version = row.getInt("usual_version");
        return Typing.mass(row, "usual").map(mass -> new UsualMass(mass, recipe, version));
    }

    private static Optional<Cut> cut(ResultSet row) throws SQLException {
        Optional<Length> thickness = Typing.length(row, "thickness");
        if (thickness.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Cut(
                thickness.get(),
                Typing.length(row, "across"),
                Typing.length(row, "blade"),
                Typing.length(row, "ends"),
                Typing.length(row, "trim")));
    }
}
