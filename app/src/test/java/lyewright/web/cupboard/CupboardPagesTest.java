package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;

/** The cupboard, what is in it, counts and suppliers. */
class CupboardPagesTest extends AtTheCupboard {

    @Test
    void an_empty_cupboard_says_how_to_begin() throws Exception {
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("Nothing is in it yet")
                .contains("/stores/deliveries/new");
        assertThat(workshop.get("/stores/count").body()).contains("There is nothing to count");
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
    void a_count_sent_empty_says_that_nothing_was_counted() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        HttpResponse<String> empty = workshop.post(
                "/stores/count", "opened-in", "mine", lot("Coconut oil").id() + ".counted", " ");
        assertThat(empty.statusCode()).isEqualTo(422);
        assertThat(empty.body()).contains("othing was counted");
    }

    @Test
    void what_may_not_be_used_is_shown_to_lie_there_all_the_same() throws Exception {
        deliver("", List.of("lines.0.past", "keep"), "castor|3 kg||" + today.minusDays(3) + "|");
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("<span class=\"thing-left\">3 kg")
                .contains("1 lot, and none of it may be used")
                .doesNotContain("0 g");
        deliver("", "castor|1 kg|||");
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("<span class=\"thing-left\">1 kg")
                .contains("2 lots, with 3 kg more that may not be used; first");
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
    void a_disk_in_the_way_costs_nothing_that_was_typed() throws Exception {
        deliver("token-0001", "coconut|5 kg|NQ-1||");
        String lot = lot("Coconut oil").id();
        Path mine = home.resolve("mine");
        Files.move(mine.resolve("lyewright.db"), mine.resolve("elsewhere.db"));

        for (HttpResponse<String> answer : List.of(
                deliver("token-0002", "castor|1 kg|typed with care||"),
                workshop.post(
                        "/stores/cupboard",
                        "opened-in",
                        "mine",
                        "name",
                        "Card box",
                        "kind",
                        "packaging",
                        "notes",
                        "typed with care"),
                workshop.post("/stores/suppliers", "opened-in", "mine", "name", "typed with care"),
                workshop.post(
                        "/stores/count",
                        "opened-in",
                        "mine",
                        "token",
                        "t",
                        lot + ".counted",
                        "4 kg",
                        lot + ".why",
                        "typed with care"))) {
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("so nothing was kept").contains("typed with care");
        }
    }

    @Test
    void what_is_nowhere_is_said_plainly() throws Exception {
        for (String path : List.of("/stores/cupboard/none", "/stores/lots/none", "/stores/suppliers/none")) {
            assertThat(workshop.get(path).statusCode()).as(path).isEqualTo(404);
        }
        assertThat(Optional.of(workshop.get("/stores/cupboard?received=x").statusCode()))
                .contains(200);
    }

    @Test
    void a_spoon_that_nobody_has_is_asked_about_once() throws Exception {
        String[] form = {"opened-in", "mine", "name", "Kaolin", "kind", "colourant", "spoons", "teaspoon: 45 g"};
        HttpResponse<String> asked = workshop.post("/stores/cupboard", form);
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("is more than such a spoon holds", "My spoon is so large");
        List<String> sure = new ArrayList<>(List.of(form));
        sure.addAll(List.of("sure", "yes"));
        assertThat(workshop.post("/stores/cupboard", sure.toArray(String[]::new))
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void what_was_used_up_is_found_again_and_counted() throws Exception {
        deliver("", "Sea Breeze|500 g||||fragrance");
        KeptLot lot = lot("Sea Breeze");
        String count = "/stores/count";
        workshop.post(
                count,
                "opened-in",
                "mine",
                "token",
                "count-0001",
                lot.id() + ".counted",
                "0 g",
                lot.id() + ".why",
                "all gone");
        assertThat(workshop.get(count).body())
                .contains("Found something that is not listed?")
                .doesNotContain(lot.id());
        assertThat(workshop.get(count + "?found=sea+br").body()).contains(lot.id() + ".counted");
        assertThat(workshop.get(count + "?found=moon").body()).contains("is used up");
        HttpResponse<String> kept = workshop.post(
                count,
                "opened-in",
                "mine",
                "token",
                "count-0002",
                "found",
                "sea br",
                lot.id() + ".counted",
                "120 g",
                lot.id() + ".why",
                "behind the boxes");
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(lot("Sea Breeze").left()).isEqualTo(120_000);
    }
}
