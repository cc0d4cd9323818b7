package lyewright.records.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import lyewright.records.Formulas;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.Place;
import lyewright.records.RecordsTrouble;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.Test;

/** What lies outside the application and goes wrong while it runs. */
@OnBoth
class FaultsTest extends Workbench {

    private static final int PATIENCE_MS = 100;

    /** The same database, with a writer of its own that has little patience. */
    private Database impatient() {
        Dialect dialect = place instanceof Place.Folder folder
                ? new SqliteDialect(folder.database(), PATIENCE_MS)
                : new PostgresDialect((Place.Server) place, PATIENCE_MS);
        return new Database(dialect, clock, null, true);
    }

    private long recipes() {
        return records.recipes().list(Search.all(1, 1)).total();
    }

    @Test
    void a_database_that_somebody_else_holds_is_said_to_be_locked_and_works_again_after() throws SQLException {
        try (Database database = impatient()) {
            RecipeBook book = new RecipeBook(database);
            try (Connection other = Tinkering.connect(place);
                    Statement statement = other.createStatement()) {
                hold(statement);
                assertThatThrownBy(() -> book.add(Formulas.named("Tideline")))
                        .isInstanceOfSatisfying(
                                RecordsTrouble.class,
                                trouble -> assertThat(trouble.sentence())
                                        .contains("locked")
                                        .endsWith("close that program and try again"));
                statement.execute("ROLLBACK");
            }
            assertThat(recipes()).isZero();
            book.add(Formulas.named("Tideline")).orThrow();
            assertThat(recipes()).isEqualTo(1);
        }
    }

    private void hold(Statement statement) throws SQLException {
        if (kind == Kind.SQLITE) {
            statement.execute("BEGIN IMMEDIATE");
        } else {
            statement.execute("BEGIN");
            statement.execute("LOCK TABLE recipe IN EXCLUSIVE MODE");
        }
    }

    @Test
    void without_room_on_the_disk_nothing_is_half_written_and_the_rest_is_unharmed() {
        records.recipes().add(Formulas.named("Plain Castile")).orThrow();
        try (Database database = impatient()) {
            takeTheRoomAway(database);
            RecipeBook book = new RecipeBook(database);

            assertThatThrownBy(() -> book.add(Formulas.of("Tideline", 1, "5 %", "x".repeat(19_000))))
                    .isInstanceOfSatisfying(
                            RecordsTrouble.class,
                            trouble -> assertThat(trouble.sentence())
                                    .contains("no room left")
                                    .contains("make room"));

            assertThat(recipes()).isEqualTo(1);
            assertThat(Tinkering.texts(place, "SELECT count(*) FROM recipe_version"))
                    .containsExactly("1");
        } finally {
            giveTheRoomBack();
        }
        records.recipes().add(Formulas.named("Tideline")).orThrow();
        assertThat(recipes()).isEqualTo(2);
    }

    /** SQLite may not grow any more; the server says what it says when its disk is full, at the second of two rows. */
    private void takeTheRoomAway(Database database) {
        if (kind == Kind.SQLITE) {
            database.write(handle -> handle.execute("SELECT 1"));
            database.write(handle -> handle.execute("PRAGMA max_page_count = 1"));
        } else {
            Tinkering.with(place, """
                    CREATE FUNCTION no_room() RETURNS trigger LANGUAGE plpgsql AS
                    $$ BEGIN RAISE EXCEPTION 'could not extend file' USING ERRCODE = 'disk_full'; END $$;
                    CREATE TRIGGER no_room BEFORE INSERT ON recipe_version FOR EACH ROW EXECUTE FUNCTION no_room();
                    """);
        }
    }

    private void giveTheRoomBack() {
        if (kind == Kind.POSTGRESQL) {
            Tinkering.with(place, "DROP TRIGGER no_room ON recipe_version; DROP FUNCTION no_room()");
        }
    }

    /** A server keeps its files itself. */
    @Test
    void records_whose_file_was_taken_away_take_nothing_more() throws IOException {
        assumeTrue(place instanceof Place.Folder);
        Path file = ((Place.Folder) place).database();
        records.recipes().add(Formulas.named("Tideline")).orThrow();
        Files.move(file, folder.resolve("elsewhere.db"));

        for (int i = 0; i < 2; i++) {
            assertThatThrownBy(() -> records.recipes().add(Formulas.named("Plain Castile")))
                    .isInstanceOfSatisfying(
                            RecordsTrouble.class,
                            trouble -> assertThat(trouble.sentence()).contains("not there any more"));
        }
        assertThat(file).doesNotExist();

        Files.move(folder.resolve("elsewhere.db"), file);
        records.recipes().add(Formulas.named("Plain Castile")).orThrow();
        assertThat(recipes()).isEqualTo(2);
    }

    @Test
    void records_that_cannot_be_reached_for_writing_say_so() {
        Dialect unreachable = kind == Kind.SQLITE
                ? new SqliteDialect(folder.resolve("nowhere.db"))
                : new PostgresDialect(
                        new Place.Server("jdbc:postgresql://127.0.0.1:1/postgres", "postgres", "", "workshop", folder));
        try (Writer writer = new Writer(unreachable)) {
            assertThatThrownBy(() -> writer.write(handle -> true, kept -> true))
                    .isInstanceOfSatisfying(
                            RecordsTrouble.class,
                            trouble -> assertThat(trouble.sentence()).containsAnyOf("not there", "does not answer"));
        }
    }

    /** A file has no connection that dies. */
    @Test
    void a_connection_that_died_while_nobody_wrote_is_taken_anew() {
        assumeTrue(kind == Kind.POSTGRESQL);
        records.recipes().add(Formulas.named("Tideline")).orThrow();
        Tinkering.with(
                place,
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'lyewright' AND pid <> pg_backend_pid()");

        records.recipes().add(Formulas.named("Plain Castile")).orThrow();

        assertThat(Tinkering.texts(place, "SELECT count(*) FROM recipe")).containsExactly("2");
    }

    @Test
    void records_that_become_read_only_say_so() {
        try (Database database = impatient()) {
            database.write(handle -> true);
            RecipeBook book = new RecipeBook(database);
            makeReadOnly(database);

            assertThatThrownBy(() -> book.add(Formulas.named("Tideline")))
                    .isInstanceOfSatisfying(
                            RecordsTrouble.class,
                            trouble -> assertThat(trouble.sentence()).contains("may only be read"));
        }
        assertThat(recipes()).isZero();
    }

    private void makeReadOnly(Database database) {
        String words =
                kind == Kind.SQLITE ? "PRAGMA query_only = ON" : "SET SESSION CHARACTERISTICS AS TRANSACTION READ ONLY";
        database.write(handle -> handle.execute(words));
    }

    @Test
    void a_fault_of_ours_is_no_trouble_of_the_outside_and_undoes_all_of_its_action() {
        try (Database database = impatient()) {
            RecipeBook book = new RecipeBook(database);
            assertThatThrownBy(() -> database.write(handle -> {
                        handle.execute("INSERT INTO photograph VALUES ('" + "0".repeat(64) + "', 5, 5)");
                        return handle.execute("INSERT INTO photograph VALUES ('too short', 5, 5)");
                    }))
                    .isNotInstanceOf(RecordsTrouble.class);

            assertThat(Tinkering.texts(place, "SELECT sha256 FROM photograph")).isEmpty();
            book.add(Formulas.named("Tideline")).orThrow();
        }
    }

    @Test
    void a_write_within_a_write_is_refused_at_once() {
        assertThatThrownBy(() -> {
                    try (Database database = impatient()) {
                        database.write(outer -> database.write(inner -> true));
                    }
                })
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("two transactions");
    }

    @Test
    void the_database_refuses_what_the_records_would_never_write() {
        for (String row : new String[] {
            "INSERT INTO recipe_version VALUES ('" + "0".repeat(36) + "', 1, 'own', 'text', '', 1, NULL)",
            "INSERT INTO workshop VALUES (2, 'second', 'grams', 'celsius', 'EUR', 'eu', 'a4', NULL, NULL, '1 %', 1)",
            "INSERT INTO jug VALUES ('" + "0".repeat(36) + "', 'jug', 'x', -1, 'g', 'lye jug', 1, NULL)",
            "INSERT INTO draft VALUES ('" + "0".repeat(36) + "', NULL, 0, '{}', 0, 1, NULL, NULL)"
        }) {
            assertThatThrownBy(() -> {
                        try (Database database = impatient()) {
                            database.write(handle -> handle.execute(row));
                        }
                    })
                    .as(row)
                    .hasMessageContaining("onstraint");
        }
    }
}
