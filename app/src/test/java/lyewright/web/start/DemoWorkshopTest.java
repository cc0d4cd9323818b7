package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.formula.Formula;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.KeptMould;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.file.DocumentKind;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.recipe.Search;
import lyewright.records.recipe.VersionHeader;
import lyewright.records.stock.LotDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo workshop, as it is kept. */
class DemoWorkshopTest {

    @TempDir
    private Path folder;

    private Records records;

    @BeforeEach
    void open() {
        records = Records.open(new Place.Folder(folder), Clock.systemUTC()).orThrow();
    }

    @AfterEach
    void close() {
        records.close();
    }

    @Test
    void it_has_five_recipes_with_their_versions_and_why_they_changed() {
        DemoWorkshop.fill(records);
        assertThat(recipes())
                .extracting(RecipeSummary::name, RecipeSummary::newestVersion)
                .containsExactlyInAnyOrder(
                        tuple("Tideline", 3),
                        tuple("Oat & Linden", 2),
                        tuple("Rope Walk Charcoal", 2),
                        tuple("Plain Castile", 1),
                        tuple("Harbour Shave", 3));
        for (RecipeSummary recipe : recipes()) {
            for (VersionHeader version : records.recipes().versions(recipe.id())) {
                assertThat(version.why().isEmpty()).as(recipe.name()).isEqualTo(version.number() == 1);
                assertThat(version.madeAt().isPresent()).isEqualTo(version.number() < recipe.newestVersion());
            }
        }
    }

    @Test
    void two_of_its_lots_have_a_document_and_both_say_that_they_are_invented() throws IOException {
        DemoWorkshop.fill(records);
        List<LotDocument> documents = records.lots().held().stream()
                .flatMap(lot -> records.documents().of(lot.id()).stream())
                .toList();
        assertThat(documents)
                .extracting(LotDocument::kind)
                .containsExactlyInAnyOrder(DocumentKind.PDF, DocumentKind.TEXT);
        for (LotDocument document : documents) {
            byte[] content =
                    Files.readAllBytes(records.documents().file(document).orElseThrow());
            assertThat(new String(content, StandardCharsets.ISO_8859_1)).contains("Demo data: invented.");
        }
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
    }

    @Test
    void every_version_says_that_it_is_demo_data() {
        DemoWorkshop.fill(records);
        assertThat(versions())
                .hasSize(11)
                .allSatisfy(version -> assertThat(version.formula().notes()).startsWith("Demo data: invented."));
    }

    @Test
    void every_version_fills_every_mould_and_none_is_stopped() {
        DemoWorkshop.fill(records);
        int made = 0;
        for (RecipeVersion version : versions()) {
            for (KeptMould kept : records.equipment().moulds()) {
                Mould mould = kept.mould(Tables.bundled(), Purities.ASSUMED).orThrow();
                Fill fill = new Fill(new Fill.FullMould(), mould, kept.cutPlan(), 0.01);
                MakingSheet sheet = sheet(version.formula(), fill);
                assertThat(sheet.stopped())
                        .as("%s in %s", version.formula().recipe(), kept.name())
                        .isFalse();
                made++;
            }
        }
        assertThat(made).isEqualTo(66);
    }

    @Test
    void an_ordinary_bar_of_it_shows_no_caution_of_care() {
        DemoWorkshop.fill(records);
        Formula castile = versions().stream()
                .map(RecipeVersion::formula)
                .filter(formula -> formula.recipe().equals("Plain Castile"))
                .findFirst()
                .orElseThrow();
        assertThat(sheet(castile, Fill.mouldMass(1500)).cautions())
                .extracting(Caution::level)
                .doesNotContain(Caution.Level.CARE, Caution.Level.STOP);
    }

    private MakingSheet sheet(Formula formula, Fill fill) {
        return ResolvedFormula.of(
                        formula,
                        Tables.bundled(),
                        Purities.parse("naoh=98.6±0.4,koh=90±1").orThrow())
                .then(resolved ->
                        MakingSheet.of(resolved, fill, records.equipment().equipment()))
                .orThrow();
    }

    @Test
    void it_has_a_mould_of_every_kind_balances_and_jugs() {
        DemoWorkshop.fill(records);
        List<MouldMeasures> moulds =
                records.equipment().moulds().stream().map(KeptMould::measures).toList();
        assertThat(moulds.stream().flatMap(mould -> mould.inside().stream()).map(Object::getClass))
                .containsExactlyInAnyOrder(
                        MouldMeasures.Loaf.class,
                        MouldMeasures.Slab.class,
                        MouldMeasures.Tube.class,
                        MouldMeasures.Cavities.class);
        assertThat(moulds).anyMatch(mould -> mould.waterFill().isPresent());
        assertThat(moulds).anyMatch(mould -> mould.usual().isPresent());
        assertThat(records.equipment().balances()).hasSize(3);
        assertThat(records.equipment().jugs()).extracting(jug -> jug.use()).contains(JugUse.values());
        assertThat(records.equipment().equipment().vesselGrams())
                .containsEntry("lye jug", 182.0)
                .containsEntry("oil pot", 1480.0);
    }

    @Test
    void its_own_olive_oil_has_an_invented_certificate() {
        DemoWorkshop.fill(records);
        var olive = records.materials().findKey("house-olive").orElseThrow().material();
        assertThat(olive.source()).contains("invented");
        assertThat(olive.supplier()).contains("invented");
        assertThat(olive.saponificationValue()).isPresent();
    }

    @Test
    void what_was_left_half_filled_is_filled_up_and_nothing_twice() {
        DemoRecipes.PLAIN_CASTILE.keep(records.recipes());
        DemoWorkshop.fill(records);
        DemoWorkshop.fill(records);
        assertThat(recipes().stream().map(RecipeSummary::name))
                .doesNotHaveDuplicates()
                .hasSize(5);
        assertThat(records.equipment().moulds()).hasSize(6);
        assertThat(records.materials().list()).extracting(m -> m.key()).doesNotHaveDuplicates();
        assertThat(records.settings().workshop())
                .map(workshop -> workshop.name())
                .contains("Gannet Stair Soap");
    }

    /** A second or less on an idle machine; five times that says that something is wrong even on a busy one. */
    @Test
    void it_is_there_in_a_moment() {
        Instant before = Instant.now();
        DemoWorkshop.fill(records);
        Duration took = Duration.between(before, Instant.now());
        System.out.println("the demo workshop took " + took.toMillis() + " ms");
        assertThat(took).isLessThan(Duration.ofSeconds(5));
    }

    private List<RecipeSummary> recipes() {
        return records.recipes().list(Search.all(1, 100)).items();
    }

    private List<RecipeVersion> versions() {
        return recipes().stream()
                .flatMap(recipe -> Stream.iterate(1, n -> n <= recipe.newestVersion(), n -> n + 1)
                        .map(number -> records.recipes().version(recipe.id(), number)))
                .flatMap(Optional::stream)
                .toList();
    }
}
