package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Optional;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.stock.LotStatus;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;

/** A lot: taken from, judged, certified. */
class LotPagesTest extends AtTheCupboard {

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
                .contains("holds less than that by now, 500 g")
                .contains("value=\"2 kg\"")
                .contains("&lt;b>flood");
        assertThat(workshop.post(at + "/take", "kind", "use", "amount", "1 teaspoon")
                        .body())
                .contains("nobody said yet what");
    }

    @Test
    void what_was_taken_and_what_is_left_is_told_and_that_nothing_went_twice() throws Exception {
        deliver("", "green-clay|1 kg|FF-31||", "Card box|250||||packaging");
        String clay = "/stores/lots/" + lot("Green clay (French green, illite)").id() + "/take";
        String[] form = {"kind", "use", "amount", "250 g", "token", "token-0007"};
        assertThat(told(workshop.post(clay, form))).contains("250 g taken; 750 g left.");
        assertThat(told(workshop.post(clay, form))).contains("taken before, and not twice; 750 g left.");
        assertThat(told(workshop.post(clay, "kind", "loss", "amount", "50 g"))).contains("50 g lost; 700 g left.");
        String boxes = "/stores/lots/" + lot("Card box").id() + "/take";
        assertThat(told(workshop.post(boxes, "kind", "return", "amount", "249")))
                .contains("249 pieces sent back; 1 piece left.");
    }

    private String told(HttpResponse<String> answer) throws Exception {
        return workshop.get(TestWorkshop.wayOn(answer)).body();
    }

    @Test
    void a_certificate_without_a_figure_is_refused_and_what_became_of_one_is_told() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        String at = "/stores/lots/" + lot("Coconut oil").id() + "/certificate";
        HttpResponse<String> nothing = workshop.post(at, "saponification value", " ", "source", "NQ-7");
        assertThat(nothing.statusCode()).isEqualTo(422);
        assertThat(nothing.body()).contains("o figure was typed").contains("value=\"NQ-7\"");
        assertThat(told(workshop.post(at, "saponification value", "257.3 +- 1.0", "source", "NQ-7")))
                .contains("The certificate is kept: NQ-7.")
                .contains("257.3 ± 1.0");
        assertThat(told(workshop.post(at, "saponification value", ""))).contains("no certificate any more");
    }

    @Test
    void the_figures_of_a_certificate_are_read_on_the_page_and_changed_there() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||", "caustic soda|1 kg|||");
        String at = "/stores/lots/" + lot("Coconut oil").id();
        assertThat(workshop.get(at).body()).contains("Type what it says").doesNotContain("what was published");
        String kept = told(workshop.post(
                at + "/certificate",
                "saponification value",
                "257.3 +- 1.0",
                "iodine value",
                "20 to 22",
                "water",
                "0.1",
                "sure",
                "yes",
                "source",
                "NQ-7"));
        assertThat(kept.replaceAll("<[^>]+>", " ").replaceAll(" +", " "))
                .contains(
                        "Saponification value 257.3 ± 1.0 mg KOH/g (right in 19 cases of 20); within what was published, 24")
                .contains("Iodine value 20 to 22 g/100 g (anywhere between the two); outside what was published, ")
                .contains("Water 0.1 % (no doubt is stated)")
                .doesNotContain("Acid value 0")
                .contains("Change its figures");
        assertThat(kept).contains("value=\"257.3 ± 1.0\"");
        assertThat(told(workshop.post(at + "/certificate", "saponification value", "258", "source", "NQ-7")))
                .contains("258 mg KOH/g (no doubt is stated)")
                .doesNotContain("20 to 22 g/100 g");
        String soda = "/stores/lots/" + lot("Sodium hydroxide").id();
        assertThat(told(workshop.post(soda + "/certificate", "purity", "98.6 ± 0.4")))
                .contains("98.6 ± 0.4 % (right in 19 cases of 20); within what was published, ");
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
}
