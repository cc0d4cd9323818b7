package lyewright.records.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.formula.Purities;
import lyewright.material.Tables;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.recipe.Search;
import lyewright.records.stock.KeptLot;
import lyewright.records.store.Migrating;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every schema that was ever released is opened, brought up to date, and nothing in it is lost. */
@OnBoth
class ReleasedTest {

    private static final Clock CLOCK = Clock.systemUTC();

    @Parameter
    private Kind kind = Kind.SQLITE;

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"schema-2", "schema-4", "schema-5"})
    void what_a_release_left_behind_is_all_there(String release) throws Exception {
        Place place = left(release);

        try (Records records = Records.open(place, CLOCK).orThrow()) {
            isAllThere(records);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"schema-2", "schema-4", "schema-5"})
    void no_migration_was_altered_after_its_release(String release) throws Exception {
        Place place = left(release);

        // Flyway holds each migration against the digest that was noted when it ran, and throws
        Migrating.toNewest(place);

        assertThat(Tinkering.texts(place, "SELECT count(*) FROM flyway_schema_history WHERE NOT success"))
                .containsExactly("0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"schema-2", "schema-4", "schema-5"})
    void a_backup_that_a_release_made_is_restored(String release) throws Exception {
        Place place = kind.place(folder);

        try (Records records = Records.open(place, CLOCK).orThrow()) {
            Restored restored = records.backups()
                    .restore(at(release).resolve("backup.lyewright"))
                    .orThrow();

            assertThat(restored.contents().workshop()).contains("Gannet Stair Soap");
            isAllThere(records);
            assertThat(records.photographs()
                            .open(records.recipes()
                                    .list(Search.all(1, 9))
                                    .items()
                                    .get(0)
                                    .photograph()
                                    .orElseThrow()))
                    .isPresent();
        }
    }

    /** Schema 4 was the first with a cupboard and a ledger. */
    @Test
    void the_cupboard_that_schema_4_left_behind_is_all_there_and_its_ledger_is_whole() throws Exception {
        Place place = left("schema-4");

        try (Records records = Records.open(place, CLOCK).orThrow()) {
            assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
            assertThat(records.ledger().head().number()).isPositive();
            assertThat(records.lots().held())
                    .extracting(KeptLot::left)
                    .hasSize(2)
                    .doesNotContain(0L);
        }
    }

    /** Schema 5 was the first with devices, and kept of what was being typed not who did. */
    @Test
    void who_was_let_in_under_schema_5_is_let_in_still_and_nobody_is_said_to_have_typed() throws Exception {
        Place place = left("schema-5");

        try (Records records = Records.open(place, CLOCK).orThrow()) {
            assertThat(records.devices().list())
                    .singleElement()
                    .matches(device -> device.name().equals("telephone")
                            && device.person().name().equals("Wenna"));
            assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
            assertThat(records.drafts().all())
                    .allMatch(draft -> draft.by().isEmpty())
                    .isNotEmpty();
        }
    }

    private static void isAllThere(Records records) {
        Recipe tideline = records.recipes()
                .find(records.recipes().list(Search.all(1, 9)).items().get(0).id())
                .orElseThrow();
        assertThat(tideline.name()).isEqualTo("Tideline");
        assertThat(tideline.newest().number()).isEqualTo(2);
        assertThat(tideline.newest().formula().superfat().orElseThrow()).hasToString("6 %");
        RecipeVersion made = records.recipes().version(tideline.id(), 1).orElseThrow();
        assertThat(made.madeAt()).isPresent();
        assertThat(made.formula().notes()).startsWith("Sea-salt bar.\n'; DROP TABLE recipe; -- 石鹸");
        assertThat(records.recipes().deleted(1, 9).items()).hasSize(1);
        assertThat(records.drafts().all()).hasSize(2);
        assertThat(records.drafts().forRecipe(tideline.id()).orElseThrow().form())
                .contains("\"superfat\":\"7,5\"");
        assertThat(records.settings().workshop().orElseThrow().sodiumPurity()).contains("98.5 ± 0.5");
        assertThat(records.equipment()
                        .moulds()
                        .get(0)
                        .mould(Tables.bundled(), Purities.ASSUMED)
                        .orThrow()
                        .usual())
                .isPresent();
        assertThat(records.equipment().equipment().vesselGrams()).containsOnlyKeys("lye jug");
        assertThat(records.equipment().balances()).hasSize(1);
        assertThat(records.materials().findKey("house-olive")).isPresent();
    }

    private static Path at(String release) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(ReleasedTest.class.getResource("/released/" + release))
                .toURI());
    }

    /** A place as the release left it. */
    private Place left(String release) throws IOException, URISyntaxException {
        Place place = kind.place(folder);
        if (place instanceof Place.Folder it) {
            copy(at(release).resolve("home"), it.home());
        } else {
            Tinkering.with(place, "CREATE SCHEMA " + ((Place.Server) place).schema());
            Tinkering.with(place, Files.readString(at(release).resolve("postgresql.sql")));
        }
        return place;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }
}
