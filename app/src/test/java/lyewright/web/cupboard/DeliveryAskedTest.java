package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.stock.StockItem;
import lyewright.stock.LotStatus;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked about once when a delivery comes, and what becomes of one that is sent again. */
class DeliveryAskedTest extends AtTheCupboard {

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private static String token(HttpResponse<String> page) {
        Matcher token = TOKEN.matcher(page.body());
        assertThat(token.find()).isTrue();
        return token.group(1);
    }

    @Test
    void the_browser_may_keep_what_was_typed_for_its_way_back_and_nothing_else() throws Exception {
        HttpResponse<String> form = workshop.get("/stores/deliveries/new");
        HttpResponse<String> refused = deliver(token(form), "coconut|5|||");
        HttpResponse<String> more =
                workshop.post("/stores/deliveries", "do", "more", "token", "t", "lines.0.material", "coconut");
        assertThat(List.of(form, refused, more))
                .allSatisfy(answer ->
                        assertThat(answer.headers().allValues("Cache-Control")).containsExactly("private, no-cache"));
        assertThat(workshop.get("/stores/cupboard").headers().allValues("Cache-Control"))
                .containsExactly("no-store");
    }

    @Test
    void something_else_written_into_a_form_that_was_received_is_asked_about_and_not_lost() throws Exception {
        deliver("token-0001", "coconut|5 kg|||");
        HttpResponse<String> asked = deliver("token-0001", "coconut|6 kg|||");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body())
                .contains("was received already, as lot "
                        + lot("Coconut oil").said().ownCode())
                .contains("value=\"6 kg\"");
        assertThat(records().lots().held()).hasSize(1);
        assertThat(deliver(token(asked), "coconut|6 kg|||").statusCode()).isEqualTo(303);
        assertThat(records().lots().held()).extracting(lot -> lot.left()).containsExactly(5_000_000L, 6_000_000L);
    }

    @ParameterizedTest
    @CsvSource({
        "coconut|5 kg|NQ-1||25.60, coconut|5 kg|NQ-2||25.60, 422",
        "coconut|5 kg|NQ-1||25.60, coconut|5 kg|NQ-1||26.60, 422",
        "coconut|5 kg|NQ-1||25.60, castor|5 kg|NQ-1||25.60, 422",
        "coconut|5 kg|NQ-1||25.60, Coconut oil|5000 g|NQ-1||25.6, 303",
    })
    void whether_it_is_the_same_again_is_seen_by_what_it_says_not_by_how(String first, String then, int status)
            throws Exception {
        deliver("token-0002", first, "Blue boxes|10||||packaging");
        HttpResponse<String> again = deliver("token-0002", then, "Blue boxes|10||||packaging");
        assertThat(again.statusCode()).isEqualTo(status);
        assertThat(records().lots().held()).hasSize(2);
    }

    @Test
    void a_suppliers_lot_that_is_here_already_is_asked_about_once() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        HttpResponse<String> asked = deliver("", "castor|1 kg|NQ-1||", "coconut|5 kg|nq-1||");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body())
                .contains("lot nq-1 of Coconut oil is here already, as "
                        + lot("Coconut oil").said().ownCode())
                .contains("name=\"lines.1.again\"")
                .doesNotContain("name=\"lines.0.again\"");
        assertThat(records().lots().held()).hasSize(1);
        assertThat(deliver("", List.of("lines.1.again", "yes"), "castor|1 kg|NQ-1||", "coconut|5 kg|NQ-1||")
                        .statusCode())
                .isEqualTo(303);
        assertThat(records().lots().held()).hasSize(3);
    }

    @Test
    void the_same_lot_on_two_lines_is_asked_about_and_that_of_another_supplier_is_not() throws Exception {
        HttpResponse<String> asked = deliver("", "moon oil|5 kg|NQ-1|||oil", "moon oil|5 kg|NQ-1|||oil");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("stands on line 1 too");
        assertThat(deliver("", List.of("lines.1.again", "yes"), "moon oil|5 kg|NQ-1|||oil", "moon oil|5 kg|NQ-1|||oil")
                        .statusCode())
                .isEqualTo(303);
        assertThat(workshop.post(
                                "/stores/deliveries",
                                "opened-in",
                                "mine",
                                "supplier",
                                "Vane & Co",
                                "day",
                                today.toString(),
                                "lines.0.material",
                                "moon oil",
                                "lines.0.amount",
                                "5 kg",
                                "lines.0.lot",
                                "NQ-1")
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_lot_that_was_taken_back_may_come_anew() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        long number = records().lots().moves(lot("Coconut oil").id()).get(0).number();
        records().lots().correct(records().author(), number, "typed twice").orThrow();
        assertThat(deliver("", "coconut|5 kg|NQ-1||").statusCode()).isEqualTo(303);
    }

    @ParameterizedTest
    @CsvSource({"keep, USABLE", "quarantine, QUARANTINE"})
    void a_best_before_that_is_past_is_asked_about_once(String answer, LotStatus status) throws Exception {
        String line = "coconut|5 kg||" + today.minusDays(1) + "|";
        HttpResponse<String> asked = deliver("", line);
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("his day is past already").contains("name=\"lines.0.past\"");
        assertThat(deliver("", List.of("lines.0.past", answer), line).statusCode())
                .isEqualTo(303);
        assertThat(lot("Coconut oil").said().status()).isEqualTo(status);
        assertThat(lot("Coconut oil").said().bestBefore()).contains(today.minusDays(1));
        String at = "/stores/lots/" + lot("Coconut oil").id();
        assertThat(workshop.post(at + "/status", "status", "refused").statusCode())
                .isEqualTo(303);
    }

    @Test
    void what_is_good_today_or_waits_in_quarantine_anyway_is_not_asked_about() throws Exception {
        assertThat(deliver("", "coconut|5 kg||" + today + "|").statusCode()).isEqualTo(303);
        assertThat(deliver("", List.of("quarantine", "yes"), "castor|5 kg||2020-01-01|")
                        .statusCode())
                .isEqualTo(303);
        assertThat(lot("Castor oil").said().status()).isEqualTo(LotStatus.QUARANTINE);
    }

    @Test
    void more_of_a_material_is_received_with_its_name_and_its_last_supplier_on_the_form() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        StockItem coconut = records().items().findKey("coconut").orElseThrow();
        String page = workshop.get("/stores/cupboard/" + coconut.id()).body();
        assertThat(page).contains("href=\"/stores/deliveries/new?item=" + coconut.id() + "\"");
        String address = "/stores/deliveries/new?item=" + coconut.id();
        assertThat(workshop.get(address).body())
                .contains("name=\"lines.0.material\" value=\"Coconut oil\"")
                .contains("name=\"supplier\" value=\"Northquay Oils\"");
        records().suppliers().remove(records().suppliers().list().get(0).id()).orThrow();
        assertThat(workshop.get(address).body())
                .contains("value=\"Coconut oil\"")
                .contains("name=\"supplier\" value=\"\"");
        assertThat(workshop.get("/stores/deliveries/new?item=none").statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_lot_is_not_opened_before_it_came_nor_on_a_day_that_has_not_come() throws Exception {
        deliver("", "coconut|5 kg|NQ-1||");
        String at = "/stores/lots/" + lot("Coconut oil").id();
        String code = lot("Coconut oil").said().ownCode();
        for (String[] wrong : new String[][] {
            {today.plusDays(2).toString(), "hat day has not come yet"},
            {today.minusDays(1).toString(), "t was opened before it came"}
        }) {
            HttpResponse<String> refused = workshop.post(at, "ownCode", code, "opened", wrong[0]);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains(wrong[1]).contains("value=\"" + wrong[0] + "\"");
        }
        assertThat(workshop.post(at, "ownCode", code, "opened", today.toString())
                        .statusCode())
                .isEqualTo(303);
        HttpResponse<String> past = workshop.post(at, "ownCode", code, "bestBefore", "2020-01-01");
        assertThat(past.statusCode()).isEqualTo(422);
        assertThat(past.body()).contains("t was past its day when it came");
        assertThat(TestWorkshop.wayOn(workshop.post(at, "ownCode", code))).isEqualTo(at);
    }
}
