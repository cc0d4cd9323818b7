package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Deliveries, as they are typed and received. */
class DeliveryPagesTest extends AtTheCupboard {

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
        "coconut|9999999999999 kg|||, more than anybody has",
        "coconut|100001 kg|||, more than anybody has",
        "Card box|250.5||||packaging, is not a number of pieces",
    })
    void a_line_that_cannot_be_says_why(String line, String why) throws Exception {
        HttpResponse<String> answer = deliver("", line);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"250", "250,5", "250.5"})
    void a_bare_number_of_something_unknown_waits_until_it_is_said_what_it_is(String amount) throws Exception {
        HttpResponse<String> answer = deliver("", "card boxes|" + amount + "|||");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("One thing to check")
                .contains("What sort of thing is it?")
                .contains("value=\"" + amount + "\"")
                .doesNotContain("has no unit");
    }

    @ParameterizedTest
    @CsvSource({"1, 303", "2, 422", "400, 422"})
    void a_day_that_has_not_come_is_refused(int days, int status) throws Exception {
        HttpResponse<String> answer = workshop.post(
                "/stores/deliveries",
                "opened-in",
                "mine",
                "day",
                today.plusDays(days).toString(),
                "lines.0.material",
                "coconut",
                "lines.0.amount",
                "5 kg");
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.body().contains("hat day has not come yet")).isEqualTo(status == 422);
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
    void an_alkali_does_not_come_under_the_name_of_an_oil() throws Exception {
        for (int i = 0; i < 2; i++) {
            var refused = deliver("", "coconut|1 kg||||alkali");
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("Coconut oil' is no alkali");
            assertThat(deliver("", "coconut|1 kg||||oil").statusCode()).isEqualTo(303);
        }
        assertThat(deliver("", "caustic soda|1 kg||||oil").statusCode()).isEqualTo(422);
        assertThat(records().lots().held()).hasSize(2);
    }
}
