package lyewright.records.recipe;

import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.formula.Use;
import lyewright.records.store.NameOrder;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.MetaData;
import org.jdbi.v3.core.statement.Query;

/** Recipes and versions as they lie in the tables, read within one transaction. */
final class RecipeRows {

    private static final String NAMESAKE = """
            CASE WHEN EXISTS (SELECT 1 FROM recipe o WHERE o.name = r.name AND o.id <> r.id AND o.deleted_epoch_ms IS NULL)
            THEN 1 ELSE 0 END AS has_namesake
            """;

    private static final String WITH_NEWEST = columns("") + joins("recipe r");

    /**
     * The page is chosen from the index or in one scan, so that the pages before it cost next to nothing; how many there are in
     * all comes with each row of it.
     */
    private static final String PAGE =
            "WITH found AS (SELECT r.id, %s AS total FROM recipe r%s ORDER BY %s, r.id LIMIT ? OFFSET ?) "
                    + columns(", f.total") + joins("found f JOIN recipe r ON r.id = f.id")
                    + " ORDER BY r.name_sort, r.id";

    private static final String LIVING = " WHERE r.deleted_epoch_ms IS NULL";

    /** Counted from an index when all are listed, in the same scan when some are looked for. */
    private static final String ALL_OF_THEM = "(SELECT count(*) FROM recipe r" + LIVING + ")";

    /** The same order, sorted after the search: along the index each row would be fetched by itself. */
    private static final String FOUND_FIRST = "r.name_sort || ''";

    private static final String ALL_FOUND = "count(*) OVER ()";

    private static final MetaData.MetaDataValueProvider<String> PRODUCT = DatabaseMetaData::getDatabaseProductName;

    private final Handle handle;

    RecipeRows(Handle handle) {
        this.handle = handle;
    }

    private static String columns(String more) {
        return "SELECT r.*, v.recipe_id, v.number, v.made_for, v.formula_text, v.why, v.saved_epoch_ms, v.made_epoch_ms,"
                + " d.id AS draft_id, " + NAMESAKE + more;
    }

    private static String joins(String from) {
        return " FROM " + from + """
                 JOIN recipe_version v ON v.recipe_id = r.id AND v.number = r.newest_version
                LEFT JOIN draft d ON d.recipe_id = r.id
                """;
    }

    Page<RecipeSummary> list(Search search) {
        List<String> words = search.folded();
        String where = words.isEmpty() ? LIVING : LIVING + has().repeat(words.size());
        List<Listed> page = bound(
                        handle.createQuery(
                                words.isEmpty()
                                        ? PAGE.formatted(ALL_OF_THEM, where, "r.name_sort")
                                        : PAGE.formatted(ALL_FOUND, where, FOUND_FIRST)),
                        words)
                .bind(words.size(), search.size())
                .bind(words.size() + 1, search.before())
                .map((row, context) -> new Listed(summary(row), row.getLong("total")))
                .list();
        long total = page.isEmpty() ? count(where, words) : page.get(0).total();
        return new Page<>(page.stream().map(Listed::recipe).toList(), search.page(), search.size(), total);
    }

    /** A word anywhere in what is looked through. LIKE would fold each letter once more. */
    private String has() {
        boolean lite = handle.queryMetadata(PRODUCT).equals("SQLite");
        return " AND " + (lite ? "instr" : "strpos") + "(r.search_text, ?) > 0";
    }

    private record Listed(RecipeSummary recipe, long total) {}

    /** For a page beyond the last one, which has no row to tell it. */
    private long count(String where, List<String> words) {
        return bound(handle.createQuery("SELECT count(*) FROM recipe r" + where), words)
                .mapTo(Long.class)
                .one();
    }

    private static Query bound(Query query, List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            query.bind(i, words.get(i));
        }
        return query;
    }

    Page<DeletedRecipe> deleted(Search page) {
        long total = handle.createQuery("SELECT count(*) FROM recipe WHERE deleted_epoch_ms IS NOT NULL")
                .mapTo(Long.class)
                .one();
        List<DeletedRecipe> items = handle.createQuery("""
                        SELECT id, name, newest_version, deleted_epoch_ms FROM recipe WHERE deleted_epoch_ms IS NOT NULL
                        ORDER BY deleted_epoch_ms DESC, id DESC LIMIT :size OFFSET :before
                        """)
                .bind("size", page.size())
                .bind("before", page.before())
                .map((row, context) -> new DeletedRecipe(
                        row.getString("id"),
                        row.getString("name"),
                        row.getInt("newest_version"),
                        Instant.ofEpochMilli(row.getLong("deleted_epoch_ms"))))
                .list();
        return new Page<>(items, page.page(), page.size(), total);
    }

    Optional<Recipe> find(String id) {
        return handle.createQuery(WITH_NEWEST + " WHERE r.id = :id")
                .bind("id", id)
                .map((row, context) -> recipe(row))
                .findOne();
    }

    Optional<RecipeVersion> version(String recipeId, int number) {
        return handle.createQuery("SELECT * FROM recipe_version WHERE recipe_id = :recipe AND number = :number")
                .bind("recipe", recipeId)
                .bind("number", number)
                .map((row, context) -> version(row))
                .findOne();
    }

    List<VersionHeader> versions(String recipeId) {
        return handle.createQuery("""
                        SELECT number, made_for, why, saved_epoch_ms, made_epoch_ms FROM recipe_version
                        WHERE recipe_id = :recipe ORDER BY number DESC
                        """)
                .bind("recipe", recipeId)
                .map((row, context) -> new VersionHeader(
                        row.getInt("number"),
                        use(row),
                        row.getString("why"),
                        Instant.ofEpochMilli(row.getLong("saved_epoch_ms")),
                        moment(row, "made_epoch_ms")))
                .list();
    }

    Map<String, String> names(Collection<String> ids) {
        return handle.createQuery("SELECT id, name FROM recipe WHERE id IN (<ids>)")
                .bindList("ids", List.copyOf(Set.copyOf(ids)))
                .map((row, context) -> Map.entry(row.getString("id"), row.getString("name")))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** Living recipes in which a word is found, the ones changed last first. */
    List<RecipeSummary> lastChanged(String word, int most) {
        return handle.createQuery(
                        WITH_NEWEST + LIVING + has() + " ORDER BY r.changed_epoch_ms DESC, r.id LIMIT " + most)
                .bind(0, NameOrder.folded(word).strip())
                .map((row, context) -> summary(row))
                .list();
    }

    /** Living recipes of exactly this name, the one changed last first. */
    List<String> named(String name) {
        return handle.createQuery("""
                        SELECT id FROM recipe WHERE name = :name AND deleted_epoch_ms IS NULL
                        ORDER BY changed_epoch_ms DESC, id
                        """).bind("name", name).mapTo(String.class).list();
    }

    /** The version of a living recipe of a name that holds exactly this, number and all. */
    Optional<RecipeVersion> same(String name, FormulaText text) {
        return handle.createQuery("""
                        SELECT v.* FROM recipe r JOIN recipe_version v ON v.recipe_id = r.id
                        WHERE r.name = :name AND r.deleted_epoch_ms IS NULL AND v.number = :number AND v.formula_text = :text
                        ORDER BY r.changed_epoch_ms DESC, r.id LIMIT 1
                        """)
                .bind("name", name)
                .bind("number", text.formula().version())
                .bind("text", text.text())
                .map((row, context) -> version(row))
                .findOne();
    }

    private static RecipeSummary summary(ResultSet row) throws SQLException {
        return new RecipeSummary(
                row.getString("id"),
                row.getString("name"),
                row.getInt("has_namesake") == 1,
                use(row),
                row.getInt("newest_version"),
                row.getString("formula_text"),
                Instant.ofEpochMilli(row.getLong("added_epoch_ms")),
                Instant.ofEpochMilli(row.getLong("changed_epoch_ms")),
                Optional.ofNullable(row.getString("photograph_sha256")),
                Optional.ofNullable(row.getString("draft_id")));
    }

    private static Recipe recipe(ResultSet row) throws SQLException {
        return new Recipe(
                row.getString("id"),
                row.getString("name"),
                row.getInt("has_namesake") == 1,
                version(row),
                Instant.ofEpochMilli(row.getLong("added_epoch_ms")),
                Instant.ofEpochMilli(row.getLong("changed_epoch_ms")),
                moment(row, "deleted_epoch_ms"),
                Optional.ofNullable(row.getString("photograph_sha256")),
                Optional.ofNullable(row.getString("draft_id")));
    }

    private static RecipeVersion version(ResultSet row) throws SQLException {
        return new RecipeVersion(
                row.getString("recipe_id"),
                row.getInt("number"),
                row.getString("formula_text"),
                row.getString("why"),
                Instant.ofEpochMilli(row.getLong("saved_epoch_ms")),
                moment(row, "made_epoch_ms"));
    }

    private static Use use(ResultSet row) throws SQLException {
        return row.getString("made_for").equals(Use.SALE.word()) ? Use.SALE : Use.OWN;
    }

    private static Optional<Instant> moment(ResultSet row, String column) throws SQLException {
        long millis = row.getLong(column);
        return row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(millis));
    }
}
