package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.stock.LotStatus;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cupboard over HTTP, by whole pages, as it is without scripts. */
class CupboardPagesTest {

    private final LocalDate today = LocalDate.now(ZoneOffset.UTC);

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

    private Records records() {
        return workshop.shop().records();
    }

    private HttpResponse<String> deliver(String token, String... lines) throws Exception {
        List<String> form = new ArrayList<>(List.of(
                "opened-in",
                "mine",
                "token",
                token,
                "supplier",
                "Northquay Oils",
                "day",
                today.toString(),
                "do",
                "receive"));
        for (int i = 0; i < lines.length; i++) {
            String[] cells = lines[i].split("\\|", -1);
            String[] names = {"material", "amount", "lot", "bestBefore", "price", "kind"};
            for (int n = 0; n < names.length; n++) {
                form.add("lines." + i + "." + names[n]);
                form.add(n < cells.length ? cells[n] : "");
            }
        }
        return workshop.post("/stores/deliveries", form.toArray(String[]::new));
    }

    private KeptLot lot(String item) {
        StockItem found = records().items().list().stream()
                .filter(it -> it.name().equals(item))
                .findFirst()
                .orElseThrow();
        return records().lots().of(found.id()).get(0);
    }

    @Test
    void an_empty_cupboard_says_how_to_begin() throws Exception {
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("Nothing is in it yet")
                .contains("/stores/deliveries/new");
        assertThat(workshop.get("/stores/count").body()).contains("There is nothing to count");
    }

    @Test
    void a_delivery_brings_supplier_materials_and_lots_at_once() throws Exception {
        HttpResponse<String> answer = deliver(
                "token-0001",
                "coconut|5 kg|NQ-1|2027-12-31|25.60",
                "caustic soda|2 kg||2028-01-31|",
                "",
                "Card box|250||||packaging");
        assertThat(answer.statusCode()).isEqualTo(303);
        String told = workshop.get(TestWorkshop.wayOn(answer)).body();
        assertThat(told)
                .contains("3 lots were received.")
                .contains("Coconut oil")
                .contains("5 kg")
                .contains("Sodium hydroxide")
                .contains("250 pieces");
        assertThat(lot("Coconut oil").said().price().orElseThrow().minor()).isEqualTo(2_560);
        assertThat(records().suppliers().list()).hasSize(1);
        assertThat(records().items().findKey("coconut")).isPresent();
    }

    @Test
    void the_same_delivery_sent_twice_comes_once() throws Exception {
        deliver("token-0002", "coconut|5 kg|NQ-1||");
        HttpResponse<String> again = deliver("token-0002", "coconut|5 kg|NQ-1||");
        assertThat(workshop.get(TestWorkshop.wayOn(again)).body()).contains("nothing came twice");
        assertThat(records().lots().held()).hasSize(1);
    }

    @Test
    void all_that_is_wrong_with_a_delivery_is_said_at_once_and_nothing_typed_is_lost() throws Exception {
        HttpResponse<String> answer = deliver(
                "token-0003",
                "coconut|5 kg|NQ-1||",
                "moon dust|2 kg|LOT<script>||",
                "castor|some|NQ-3|2027-02-30|twelve");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("4 things to check")
                .contains("is new here, and no table knows it")
                .contains("What sort of thing is it?")
                .contains("that is not a day")
                .contains("that is not a price in")
                .contains("value=\"NQ-1\"")
                .contains("LOT&lt;script>")
                .contains("value=\"2027-02-30\"")
                .contains("value=\"twelve\"");
        assertThat(records().lots().held()).isEmpty();
        assertThat(records().items().list()).isEmpty();
        assertThat(records().suppliers().list()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "coconut|0 g|||, that is nothing",
        "coconut|2 cups|||, nobody said yet what",
        "coconut|5|||, has no unit",
        "|5 kg|||, nothing says what it is",
        "coconut|5 kg||2020-01-01|, past its day when it came",
        "coconut|9999999999999 kg|||, more than anybody has",
    })
    void a_line_that_cannot_be_says_why(String line, String why) throws Exception {
        HttpResponse<String> answer = deliver("", line);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(why);
    }

    @Test
    void more_lines_keep_what_is_typed() throws Exception {
        HttpResponse<String> more = workshop.post(
                "/stores/deliveries",
                "do",
                "more",
                "token",
                "t",
                "lines.0.material",
                "coconut",
                "lines.0.amount",
                "5 kg");
        assertThat(more.statusCode()).isEqualTo(200);
        assertThat(more.body()).contains("value=\"coconut\"").contains("lines.6.material");
    }

    @Test
    void taking_from_a_lot_is_told_on_its_page_and_taken_back_by_name() throws Exception {
        deliver("", "green-clay|500 g|FF-31||");
        KeptLot lot = lot("Green clay (French green, illite)");
        String at = "/stores/lots/" + lot.id();
        assertThat(workshop.post(
                                at + "/take",
                                "kind",
                                "use",
                                "amount",
                                "120 g",
                                "why",
                                "Tideline",
                                "token",
                                "token-0004")
                        .statusCode())
                .isEqualTo(303);
        assertThat(workshop.post(
                                at + "/take",
                                "kind",
                                "use",
                                "amount",
                                "120 g",
                                "why",
                                "Tideline",
                                "token",
                                "token-0004")
                        .statusCode())
                .isEqualTo(303);
        String page = workshop.get(at).body();
        assertThat(page).contains("380 g").contains("Used, Tideline").contains("−120 g");
        long number = records().lots().moves(lot.id()).get(0).number();
        assertThat(workshop.post(at + "/take-back/" + number, "why", "wrong tub")
                        .statusCode())
                .isEqualTo(303);
        assertThat(workshop.get(at).body()).contains("Takes back no. " + number).contains("wrong tub");
        assertThat(workshop.post(at + "/take-back/" + number, "why", "again").statusCode())
                .isEqualTo(409);
    }

    @Test
    void what_cannot_be_taken_comes_back_as_typed() throws Exception {
        deliver("", "green-clay|500 g|FF-31||");
        String at = "/stores/lots/" + lot("Green clay (French green, illite)").id();
        HttpResponse<String> tooMuch =
                workshop.post(at + "/take", "kind", "loss", "amount", "2 kg", "why", "<b>flood</b>");
        assertThat(tooMuch.statusCode()).isEqualTo(422);
        assertThat(tooMuch.body())
                .contains("holds less than that by now")
                .contains("value=\"2 kg\"")
                .contains("&lt;b>flood");
        assertThat(workshop.post(at + "/take", "kind", "use", "amount", "1 teaspoon")
                        .body())
                .contains("nobody said yet what");
    }

    @Test
    void the_makers_own_teaspoon_is_kept_as_grams_with_the_words() throws Exception {
        deliver("", "kaolin|500 g|FF-31||");
        StockItem clay = records().items().findKey("kaolin").orElseThrow();
        workshop.post(
                "/stores/cupboard/" + clay.id(),
                "name",
                clay.name(),
                "kind",
                "colourant",
                "material",
                "kaolin",
                "spoons",
                "teaspoon: 2.1 g\nblue scoop: 31 g");
        KeptLot lot = lot(clay.name());
        workshop.post("/stores/lots/" + lot.id() + "/take", "kind", "use", "amount", "2 teaspoons", "why", "Tideline");
        assertThat(records().lots().find(lot.id()).orElseThrow().left()).isEqualTo(495_800);
        assertThat(workshop.get("/stores/lots/" + lot.id()).body()).contains("Used, Tideline, 2 teaspoons");
    }

    @Test
    void a_lot_is_judged_and_the_cupboard_says_so() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        KeptLot lot = lot("Coconut oil");
        workshop.post("/stores/lots/" + lot.id() + "/status", "status", "refused");
        assertThat(records().lots().find(lot.id()).orElseThrow().said().status())
                .isEqualTo(LotStatus.REFUSED);
        assertThat(workshop.get("/stores/cupboard").body()).contains("is refused; 5 kg to send back or throw away");
        assertThat(workshop.post("/stores/lots/" + lot.id() + "/take", "kind", "use", "amount", "1 g")
                        .statusCode())
                .isEqualTo(422);
        assertThat(workshop.post("/stores/lots/" + lot.id() + "/take", "kind", "return", "amount", "5 kg")
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_certificate_is_kept_with_its_lot_and_an_odd_figure_is_asked_about_once() throws Exception {
        deliver("", "olive-virgin|5 kg|NQ-1||", "caustic soda|1 kg|||");
        String at = "/stores/lots/" + lot("Olive oil (virgin)").id();
        HttpResponse<String> odd =
                workshop.post(at + "/certificate", "saponification value", "250 ± 1", "source", "NQ-7");
        assertThat(odd.statusCode()).isEqualTo(422);
        assertThat(odd.body())
                .contains("outside what was published")
                .contains("value=\"250 ± 1\"")
                .contains("name=\"sure\"");
        assertThat(workshop.post(
                                at + "/certificate", "saponification value", "250 ± 1", "source", "NQ-7", "sure", "yes")
                        .statusCode())
                .isEqualTo(303);
        workshop.post(at + "/certificate", "saponification value", "189.5 ± 1.0", "source", "NQ-7");
        assertThat(lot("Olive oil (virgin)")
                        .said()
                        .certificate()
                        .orElseThrow()
                        .saponificationValue()
                        .orElseThrow()
                        .toString())
                .isEqualTo("189.5 ± 1.0");
        assertThat(workshop.get(at).body()).contains("Sheets may reckon with it: NQ-7.");
        assertThat(workshop.post(at + "/certificate", "saponification value", "0.1895")
                        .statusCode())
                .isEqualTo(422);
        String soda = "/stores/lots/" + lot("Sodium hydroxide").id();
        assertThat(workshop.post(soda + "/certificate", "purity", "98.6 ± 0.4").statusCode())
                .isEqualTo(303);
        assertThat(lot("Sodium hydroxide").said().certificate().orElseThrow().strength())
                .isPresent();
        workshop.post(soda + "/certificate", "purity", "");
        assertThat(lot("Sodium hydroxide").said().certificate()).isEmpty();
        assertThat(records().ledger().verify(Optional.empty()).isWhole()).isTrue();
    }

    @Test
    void stock_lye_is_made_of_a_lot_and_has_its_strength() throws Exception {
        deliver("", "caustic soda|1 kg|||");
        KeptLot soda = lot("Sodium hydroxide");
        workshop.post("/stores/lots/" + soda.id() + "/certificate", "purity", "98");
        String[] form = {
            "opened-in",
            "mine",
            "token",
            "token-0009",
            "name",
            "stock-lye",
            "from.0.lot",
            soda.id(),
            "from.0.amount",
            "500 g",
            "water",
            "500 ml",
            "day",
            today.toString()
        };
        HttpResponse<String> made = workshop.post("/stores/made", form);
        assertThat(made.statusCode()).isEqualTo(303);
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("1 kg")
                .contains("made here");
        assertThat(lot("stock-lye")
                        .said()
                        .certificate()
                        .orElseThrow()
                        .strength()
                        .orElseThrow()
                        .pure()
                        .toString())
                .isEqualTo("49");
        assertThat(records().materials().findKey("stock-lye")).isPresent();
        assertThat(records().lots().find(soda.id()).orElseThrow().left()).isEqualTo(500_000);
        workshop.post("/stores/made", form);
        assertThat(records().lots().find(soda.id()).orElseThrow().left()).isEqualTo(500_000);
    }

    @Test
    void oils_are_mixed_beforehand_with_the_shares_of_their_masses() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||");
        workshop.post(
                "/stores/made",
                "opened-in",
                "mine",
                "name",
                "house-blend",
                "from.0.lot",
                lot("Coconut oil").id(),
                "from.0.amount",
                "750 g",
                "from.1.lot",
                lot("Castor oil").id(),
                "from.1.amount",
                "250 g",
                "day",
                today.toString());
        assertThat(lot("house-blend").left()).isEqualTo(1_000_000);
        assertThat(lot("house-blend").said().certificate().orElseThrow().oils())
                .extracting(part -> part.key() + " " + part.share())
                .containsExactly("coconut 75 %", "castor 25 %");
    }

    @Test
    void a_premix_has_the_saponification_value_of_its_lots_certificates() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||");
        for (String[] said : new String[][] {{"Coconut oil", "257.0 ± 0.8"}, {"Castor oil", "180.0 ± 0.4"}}) {
            workshop.post(
                    "/stores/lots/" + lot(said[0]).id() + "/certificate",
                    "saponification value",
                    said[1],
                    "source",
                    "NQ");
        }
        HttpResponse<String> made = workshop.post(
                "/stores/made",
                "opened-in",
                "mine",
                "name",
                "house-blend",
                "from.0.lot",
                lot("Coconut oil").id(),
                "from.0.amount",
                "750 g",
                "from.1.lot",
                lot("Castor oil").id(),
                "from.1.amount",
                "250 g",
                "day",
                today.toString());
        // 0.75 x 257 + 0.25 x 180 = 237.75; sqrt((0.75 x 0.8)^2 + (0.25 x 0.4)^2) = 0.61
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("Its saponification value comes to 237.8 ± 0.6 mg KOH/g");
        assertThat(lot("house-blend").said().certificate().orElseThrow().oils())
                .extracting(part -> part.key() + " " + part.amount())
                .containsExactly("coconut 75 % of 257 ± 0.8 mg KOH/g", "castor 25 % of 180 ± 0.4 mg KOH/g");
        assertThat(records()
                        .materials()
                        .findKey("house-blend")
                        .orElseThrow()
                        .material()
                        .oils())
                .extracting(part -> part.key() + " " + part.amount())
                .containsExactly("coconut 75 %", "castor 25 %");
    }

    @Test
    void what_cannot_be_made_comes_back_as_typed() throws Exception {
        deliver("", "coconut|1 kg|||", "caustic soda|1 kg|||");
        String oil = lot("Coconut oil").id();
        String soda = lot("Sodium hydroxide").id();
        HttpResponse<String> both = workshop.post(
                "/stores/made",
                "opened-in",
                "mine",
                "name",
                "odd",
                "from.0.lot",
                oil,
                "from.0.amount",
                "100 g",
                "from.1.lot",
                soda,
                "from.1.amount",
                "100 g",
                "day",
                today.toString());
        assertThat(both.statusCode()).isEqualTo(422);
        assertThat(both.body()).contains("this is neither").contains("value=\"odd\"");
        for (String[] wrong : List.of(
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "lye",
                    "from.0.lot",
                    soda,
                    "from.0.amount",
                    "100 g",
                    "day",
                    today.toString()
                },
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "",
                    "from.0.lot",
                    soda,
                    "from.0.amount",
                    "100 g",
                    "water",
                    "1 kg",
                    "day",
                    "x"
                },
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "b",
                    "from.0.lot",
                    oil,
                    "from.0.amount",
                    "100 g",
                    "water",
                    "1 kg",
                    "day",
                    today.toString()
                },
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "b",
                    "from.0.lot",
                    oil,
                    "from.0.amount",
                    "5 kg",
                    "day",
                    today.toString()
                },
                new String[] {"opened-in", "mine", "name", "b", "day", today.toString()})) {
            assertThat(workshop.post("/stores/made", wrong).statusCode())
                    .as(List.of(wrong).toString())
                    .isEqualTo(422);
        }
        assertThat(records().lots().held()).hasSize(2);
    }

    @Test
    void a_count_asks_what_explains_a_difference() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||", "castor|1 kg|NQ-2||");
        String coconut = lot("Coconut oil").id();
        String castor = lot("Castor oil").id();
        HttpResponse<String> asked = workshop.post(
                "/stores/count", "opened-in", "mine", coconut + ".counted", "4.2 kg", castor + ".counted", "990 g");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body())
                .contains("nothing explains it")
                .contains("value=\"4.2 kg\"")
                .contains("value=\"990 g\"");
        HttpResponse<String> kept = workshop.post(
                "/stores/count",
                "opened-in",
                "mine",
                coconut + ".counted",
                "4.2 kg",
                coconut + ".why",
                "do not know",
                castor + ".counted",
                "990 g");
        assertThat(workshop.get(TestWorkshop.wayOn(kept)).body()).contains("2 lots were counted.");
        assertThat(lot("Coconut oil").left()).isEqualTo(4_200_000);
        assertThat(lot("Castor oil").left()).isEqualTo(990_000);
    }

    @Test
    void what_is_past_its_day_or_low_asks_for_attention() throws Exception {
        deliver("", "coconut|5 kg|NQ-1|" + today.plusDays(20) + "|");
        StockItem coconut = records().items().findKey("coconut").orElseThrow();
        workshop.post(
                "/stores/cupboard/" + coconut.id(),
                "name",
                "Coconut oil",
                "kind",
                "oil",
                "material",
                "coconut",
                "reorder",
                "6 kg");
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("is best before")
                .contains("is down to 5 kg: buy more");
    }

    @Test
    void a_name_of_recipes_belongs_to_one_material() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        HttpResponse<String> taken = workshop.post(
                "/stores/cupboard", "opened-in", "mine", "name", "Other coconut", "kind", "oil", "material", "coconut");
        assertThat(taken.statusCode()).isEqualTo(422);
        assertThat(taken.body()).contains("is what recipes call").contains("value=\"Other coconut\"");
    }

    @Test
    void a_material_leaves_the_cupboard_only_when_nothing_is_left() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        KeptLot lot = lot("Coconut oil");
        String at = "/stores/cupboard/" + lot.itemId();
        assertThat(workshop.post(at + "/remove").statusCode()).isEqualTo(409);
        workshop.post("/stores/lots/" + lot.id() + "/take", "kind", "use", "amount", "5 kg");
        HttpResponse<String> removed = workshop.post(at + "/remove");
        assertThat(workshop.get(TestWorkshop.wayOn(removed)).body()).contains("is out of the cupboard");
        assertThat(records().items().findKey("coconut")).isEmpty();
        workshop.post(at + "/put-back");
        assertThat(records().items().findKey("coconut")).isPresent();
    }

    @Test
    void suppliers_are_added_changed_and_put_back() throws Exception {
        workshop.post("/stores/suppliers", "opened-in", "mine", "name", "Fell & Fen", "contact", "Mill Lane");
        String id = records().suppliers().list().get(0).id();
        assertThat(workshop.post("/stores/suppliers", "opened-in", "mine", "name", "fell & fen")
                        .statusCode())
                .isEqualTo(422);
        workshop.post("/stores/suppliers/" + id, "name", "Fell & Fen Botanicals", "contact", "Mill Lane");
        assertThat(workshop.get("/stores/suppliers").body()).contains("Fell &amp; Fen Botanicals");
        HttpResponse<String> removed = workshop.post("/stores/suppliers/" + id + "/remove");
        assertThat(workshop.get(TestWorkshop.wayOn(removed)).body()).contains("Put it back");
        assertThat(records().suppliers().list()).isEmpty();
    }

    @Test
    void what_is_nowhere_is_said_plainly() throws Exception {
        for (String path : List.of("/stores/cupboard/none", "/stores/lots/none", "/stores/suppliers/none")) {
            assertThat(workshop.get(path).statusCode()).as(path).isEqualTo(404);
        }
        assertThat(Optional.of(workshop.get("/stores/cupboard?received=x").statusCode()))
                .contains(200);
    }
}
