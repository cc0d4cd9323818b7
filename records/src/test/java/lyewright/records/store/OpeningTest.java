package lyewright.records.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import lyewright.measure.Outcome;
import lyewright.records.Formulas;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;

@OnBoth
class OpeningTest {

    private static final Clock CLOCK = Clock.systemUTC();

    @Parameter
    private Kind kind = Kind.SQLITE;

    @TempDir
    private Path folder = Path.of("");

    private Place place = new Place.Folder(Path.of(""));

    @BeforeEach
    void choose() {
        place = kind.place(folder);
    }

    private Dialect dialect() {
        return place instanceof Place.Folder it
                ? new SqliteDialect(it.database())
                : new PostgresDialect((Place.Server) place);
    }

    private static String sentence(Outcome<?> refused) {
        assertThat(refused.problems()).hasSize(1);
        return refused.problems().get(0).sentence();
    }

    private byte[] file() throws IOException {
        return Files.readAllBytes(((Place.Folder) place).database());
    }

    @Test
    void a_place_that_nobody_used_is_made_ready() {
        try (Records records = Records.open(place, CLOCK).orThrow()) {
            records.recipes().add(Formulas.named("Tideline")).orThrow();
        }
        try (Records records = Records.open(place, CLOCK).orThrow()) {
            assertThat(records.recipes().list(Search.all(1, 9)).total()).isEqualTo(1);
        }
    }

    @Test
    void what_an_interrupted_restore_left_is_taken_away_and_nothing_else() throws IOException {
        assumeTrue(place instanceof Place.Folder);
        Path home = ((Place.Folder) place).home();
        Files.createDirectories(home.resolve("restoring-123"));
        Files.writeString(home.resolve("restoring-123").resolve("rows.db"), "half of it");
        Files.writeString(home.resolve("before-restore-1.lyewright"), "a backup");

        Records.open(place, CLOCK).orThrow().close();

        assertThat(home.resolve("restoring-123")).doesNotExist();
        assertThat(home.resolve("before-restore-1.lyewright")).exists();
    }

    @Test
    void an_older_schema_is_brought_up_to_date_with_everything_in_it() throws IOException {
        if (place instanceof Place.Folder it) {
            Files.createDirectories(it.home());
        }
        Schema.migrate(dialect(), 1);
        // kept just now: one that no recipe has is taken away after an hour
        Tinkering.with(place, "INSERT INTO photograph VALUES ('" + "a".repeat(64) + "', 1, " + CLOCK.millis() + ")");
        assertThat(sentence(Records.openToRead(place, CLOCK))).contains("older Lyewright");

        Records.open(place, CLOCK).orThrow().close();

        assertThat(Tinkering.texts(place, "SELECT sha256 FROM photograph")).containsExactly("a".repeat(64));
        assertThat(Tinkering.texts(place, "SELECT version FROM flyway_schema_history WHERE version IS NOT NULL"))
                .containsExactly("1", "2", "3", "4", "5", "6");
    }

    @Test
    void a_newer_schema_is_refused_and_not_touched() throws IOException {
        Records.open(place, CLOCK).orThrow().close();
        Tinkering.with(place, "UPDATE flyway_schema_history SET version = '99' WHERE version = '2'");
        List<String> before =
                Tinkering.texts(place, "SELECT version FROM flyway_schema_history WHERE version IS NOT NULL");
        byte[] bytes = kind == Kind.SQLITE ? file() : new byte[0];

        for (Outcome<Records> refused : List.of(Records.open(place, CLOCK), Records.openToRead(place, CLOCK))) {
            assertThat(sentence(refused)).contains("newer Lyewright").contains("nothing in it was touched");
        }

        assertThat(Tinkering.texts(place, "SELECT version FROM flyway_schema_history WHERE version IS NOT NULL"))
                .isEqualTo(before);
        if (kind == Kind.SQLITE) {
            assertThat(file()).isEqualTo(bytes);
        }
    }

    @Test
    void somebody_elses_tables_are_refused_and_not_touched() throws IOException {
        if (place instanceof Place.Folder it) {
            Files.createDirectories(it.home());
        } else {
            Tinkering.with(place, "CREATE SCHEMA " + ((Place.Server) place).schema());
        }
        Tinkering.with(place, "CREATE TABLE bees (hive TEXT)");

        assertThat(sentence(Records.open(place, CLOCK))).contains("not a workshop's records");
        assertThat(sentence(Records.openToRead(place, CLOCK))).contains("not a workshop's records");

        Tinkering.with(place, "INSERT INTO bees VALUES ('one')");
    }

    @Test
    void records_that_may_only_be_read_are_refused_when_they_are_opened_to_write() throws Exception {
        Records.open(place, CLOCK).orThrow().close();
        if (place instanceof Place.Folder it) {
            try (ReadOnlyFile file = new ReadOnlyFile(it.database())) {
                assumeTrue(file.isSo());
                assertThat(sentence(Records.open(place, CLOCK))).contains("may only be read");
            }
        } else {
            Place.Server server = (Place.Server) place;
            String user = "reader_of_" + server.schema();
            Tinkering.with(
                    place,
                    "CREATE ROLE %s LOGIN PASSWORD 'x'; GRANT USAGE ON SCHEMA %s TO %s; GRANT SELECT ON ALL TABLES IN SCHEMA %s TO %s"
                            .formatted(user, server.schema(), user, server.schema(), user));
            Place reader = new Place.Server(server.jdbcUrl(), user, "x", server.schema(), server.files());
            assertThat(sentence(Records.open(reader, CLOCK))).contains("may only be read");
        }
        Records.open(place, CLOCK).orThrow().close();
    }

    @Test
    void what_is_no_database_is_refused_and_not_touched() throws IOException {
        if (place instanceof Place.Folder it) {
            Files.createDirectories(it.home());
            Files.writeString(it.database(), "Dear diary, today the lye was cloudy and I do not know why.");
            assertThat(sentence(Records.open(place, CLOCK))).contains("is not a database");
            assertThat(it.database()).hasContent("Dear diary, today the lye was cloudy and I do not know why.");
        } else {
            Place.Server server = (Place.Server) place;
            Place nowhere = new Place.Server(
                    server.jdbcUrl().replaceAll("/postgres\\?", "/nowhere?"),
                    server.user(),
                    server.password(),
                    server.schema(),
                    server.files());
            assertThat(sentence(Records.open(nowhere, CLOCK))).contains("no such database");
        }
    }

    @Test
    void a_place_that_cannot_be_reached_is_refused() throws IOException {
        if (place instanceof Place.Folder it) {
            Files.writeString(it.home(), "a file where the folder should be");
            assertThat(sentence(Records.open(place, CLOCK))).contains("is a file, not a folder");
        } else {
            Place unreachable = new Place.Server("jdbc:postgresql://127.0.0.1:1/x", "u", "p", "s", folder);
            assertThat(sentence(Records.open(unreachable, CLOCK))).contains("does not answer");
        }
    }

    @Test
    void records_opened_to_read_see_what_the_application_writes_beside_them() {
        try (Records writing = Records.open(place, CLOCK).orThrow();
                Records reading = Records.openToRead(place, CLOCK).orThrow()) {
            writing.recipes().add(Formulas.named("Tideline")).orThrow();

            assertThat(reading.recipes().list(Search.all(1, 9)).total()).isEqualTo(1);
        }
    }
}
