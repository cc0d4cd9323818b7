package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lyewright.records.setting.Units;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.StockItem;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is easily taken for something else, in the cupboard. */
class AlikePagesTest {

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private TestWorkshop workshop;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CupboardPages(shop)));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private StockItem keep(String name, Identity identity) {
        return workshop.shop()
                .records()
                .items()
                .add(ItemSaid.of(name, ItemKind.FRAGRANCE, identity))
                .orThrow();
    }

    private String line(String typed) throws Exception {
        return workshop.get("/stores/alike?of=lines.0.material&lines.0.material=" + typed)
                .body();
    }

    @Test
    void a_delivery_line_says_what_is_here_and_not_the_same() throws Exception {
        StockItem lavandin = keep("My lavandin", Identity.ofKey("lavandin-grosso-oil"));
        assertThat(line("lavender"))
                .contains("You have also:", "My lavandin", "/stores/cupboard/" + lavandin.id(), "Not the same.")
                .doesNotContain("Not to be taken for");
        assertThat(line("lavandin")).isBlank();
        assertThat(line("kaolin")).isBlank();
        assertThat(line("")).isBlank();
        assertThat(line("Chamomile")).contains("Chamomile may be Roman chamomile");
        assertThat(workshop.post(
                                "/stores/deliveries",
                                "do",
                                "more",
                                "token",
                                "token-0001",
                                "lines.0.material",
                                "lavender")
                        .body())
                .contains("You have also:", "My lavandin");
    }

    @Test
    void a_material_s_page_says_what_it_must_not_be_taken_for() throws Exception {
        StockItem palm = keep("Palm oil", Identity.ofKey("palm"));
        keep("Palm kernel oil", Identity.ofKey("palm-kernel"));
        StockItem clay = keep("Kaolin", Identity.ofKey("kaolin"));
        assertThat(workshop.get("/stores/cupboard/" + palm.id()).body())
                .contains(
                        "You have also:", "Palm kernel oil</a>. Not the same.", "Not to be taken for Palm kernel oil");
        assertThat(workshop.get("/stores/cupboard/" + clay.id()).body()).doesNotContain("class=\"alike");
    }

    @Test
    void a_material_of_another_plant_than_recipes_mean_is_told_of_and_kept_all_the_same() throws Exception {
        Identity other = new Identity(
                Optional.of("lavender-oil"), "", "", "Lavandula x intermedia", "", Optional.empty(), "", "");
        StockItem item = keep("Lavender", other);
        assertThat(workshop.get("/stores/cupboard/" + item.id()).body())
                .contains("Recipes mean Lavandula angustifolia", "said to be Lavandula × intermedia.");
        assertThat(workshop.get("/stores/alike?of=name&name=Lavender&material=lavender-oil&species=Lavandula+latifolia"
                                + "&id=" + item.id())
                        .body())
                .contains("said to be Lavandula latifolia")
                .doesNotContain("You have also");
    }
}
