package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lyewright.formula.FormulaFile;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.web.TestWorkshop;
import lyewright.words.Dates;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What of the cupboard is old, where recipes stand. */
class StockAgesTest {

    private final LocalDate today = LocalDate.now(ZoneOffset.UTC);

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private TestWorkshop workshop;

    private String recipe = "";

    @BeforeEach
    void a_recipe_of_two_oils() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new RecipePages(shop)));
        recipe = records()
                .recipes()
                .add(FormulaFile.read("""
                                recipe: Harbour Plain
                                oils: {olive-virgin: 750 g, coconut: 250 g}
                                alkali: sodium
                                superfat: 5 %
                                water: 33 % lye
                                """).formula().orElseThrow())
                .orThrow()
                .recipeId();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private KeptLot came(String key, LocalDate bestBefore) {
        LotSaid said = LotSaid.of(today.minusDays(90)).withBestBefore(Optional.of(bestBefore));
        ItemSaid item = ItemSaid.of(key, ItemKind.OIL, Identity.ofKey(key));
        return records()
                .lots()
                .receive(records().author(), "", new Delivery("", List.of(Arrival.of(item, said, 900_000))))
                .orThrow()
                .get(0);
    }

    private String page(String path) throws Exception {
        return workshop.get(path).body();
    }

    @Test
    void a_recipe_of_fresh_oils_says_nothing() throws Exception {
        came("coconut", today.plusDays(43));
        came("castor", today.minusDays(1));
        assertThat(page("/recipes/" + recipe)).doesNotContain("Old in the cupboard");
        assertThat(page("/recipes")).contains("Harbour Plain").doesNotContain("best before");
    }

    @Test
    void what_is_over_and_what_will_be_before_the_batch_is_cured_is_said_and_led_to() throws Exception {
        KeptLot over = came("coconut", today.minusDays(1));
        KeptLot soon = came("olive-virgin", today.plusDays(30));
        assertThat(page("/recipes/" + recipe))
                .contains("Old in the cupboard")
                .contains("href=\"/stores/lots/" + over.id() + "\"")
                .contains("href=\"/stores/lots/" + soon.id() + "\"")
                .contains("was best before " + Dates.day(today.minusDays(1)))
                .contains("is best before " + Dates.day(today.plusDays(30)) + ", sooner than a batch")
                .contains("6 weeks. Soap of old oil")
                .doesNotContain("There is other of it");
        assertThat(page("/recipes"))
                .contains("href=\"/stores/lots/" + over.id() + "\"", "1 more")
                .doesNotContain("/stores/lots/" + soon.id());
    }

    @Test
    void it_is_said_that_there_is_other_of_it() throws Exception {
        came("coconut", today.minusDays(1));
        came("coconut", today.plusDays(300));
        assertThat(page("/recipes/" + recipe)).contains("There is other of it that is good for longer.");
    }

    @Test
    void an_old_version_is_not_spoken_of() throws Exception {
        came("coconut", today.minusDays(1));
        var newer = FormulaFile.read("""
                        recipe: Harbour Plain
                        oils: {olive-virgin: 1000 g}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        """).formula().orElseThrow();
        records().recipes().markMade(recipe, 1).orThrow();
        records().recipes().save(recipe, 1, newer, true, "").orThrow();
        assertThat(page("/recipes/" + recipe)).doesNotContain("Old in the cupboard");
        assertThat(page("/recipes/" + recipe + "/versions/1")).doesNotContain("Old in the cupboard");
    }
}
