package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.records.people.Role;
import org.junit.jupiter.api.Test;

/** What a helper at another device sees, and what they may send. */
class HelpersTest extends AtTheDoors {

    /** Every address there is: what is added later is a maker's until somebody says otherwise. */
    @Test
    void a_helper_may_send_what_is_weighed_ticked_or_counted_and_nothing_else() {
        TestDoors.Device telephone = doors.letIn(wenna);

        List<String> let = routes().stream()
                .filter(route -> route.startsWith("POST "))
                .filter(route -> !route.equals("POST /me/leave"))
                .filter(route -> telephone.post(path(route), "name", "x").statusCode() != 403)
                .collect(Collectors.toList());

        assertThat(let)
                .containsExactlyInAnyOrder(
                        "POST /make/sheet.pdf",
                        "POST /make/printed",
                        "POST /make/take",
                        "POST /stores/lots/{id}/take",
                        "POST /stores/count",
                        "POST /ledger/verify",
                        "POST /pair",
                        "POST /sign-in",
                        "POST /me/password");
    }

    @Test
    void a_helper_does_not_see_what_they_could_only_fill_in_in_vain() {
        TestDoors.Device telephone = doors.letIn(wenna);

        assertThat(List.of(
                        "/settings",
                        "/settings/people",
                        "/settings/backup",
                        "/recipes/new",
                        "/recipes/import",
                        "/notebook",
                        "/start",
                        "/stores/moulds/new",
                        "/stores/deliveries/new",
                        "/stores/csv",
                        "/stores/csv/out",
                        "/start/",
                        "/recipes/new/",
                        "/recipes/deleted/",
                        "/recipes/1/edit/",
                        "/stores/moulds/new/"))
                .allSatisfy(path ->
                        assertThat(telephone.get(path).statusCode()).as(path).isEqualTo(403));
        assertThat(List.of("/recipes", "/make", "/stores", "/stores/cupboard", "/stores/count", "/ledger", "/me"))
                .allSatisfy(path ->
                        assertThat(telephone.get(path).statusCode()).as(path).isEqualTo(200));
        assertThat(telephone.get("/recipes").body()).doesNotContain("href=\"/settings\"");
    }

    @Test
    void a_form_that_is_given_back_shows_what_was_typed_under_words_and_only_that() {
        String lot = lot();
        String[] counted = {
            "opened-in",
            "mine",
            "token",
            "token-0009",
            "f" + lot.substring(1) + ".counted",
            "",
            lot + ".counted",
            "900 g"
        };
        String page = doors.device().post("/stores/count", counted).body();
        assertThat(page)
                .contains("line 2 amount counted")
                .containsPattern("type=\"hidden\" name=\"token\" value=\"token-0009\"")
                .doesNotContain(">token<")
                .doesNotContain(lot.substring(0, 8) + " ")
                .contains("Send it again");
        String named = doors.device()
                .post(
                        "/stores/count",
                        "token",
                        "token-0011",
                        lot + ".called",
                        "Olive oil, lot 26-0001",
                        lot + ".counted",
                        "900 g")
                .body();
        assertThat(named).contains("Olive oil, lot 26-0001: amount counted").doesNotContain(">called<");
        String helpers = doors.letIn(wenna)
                .post("/stores/deliveries", "token", "token-0010", "lines.0.bestBefore", "2027-01-31")
                .body();
        assertThat(helpers)
                .contains("This is for a maker to do")
                .contains("line 1 best before")
                .contains("copy from here")
                .doesNotContain("Send it again")
                .doesNotContain(">token<");
        assertThat(doors.device()
                        .post("/stores/lots/" + lot + "/status", "status", "refused")
                        .body())
                .contains("Then do it again.")
                .doesNotContain("from here");
    }

    @Test
    void what_a_helper_takes_is_in_the_ledger_under_their_name() {
        String lot = lot();
        TestDoors.Device telephone = doors.letIn(wenna);
        String form = telephone.get("/stores/lots/" + lot).body();
        String token = form.replaceAll(
                "(?s).*action=\"/stores/lots/[^\"]*/take\".*?name=\"token\" value=\"([^\"]*)\".*", "$1");

        var taken = telephone.post(
                "/stores/lots/" + lot + "/take",
                "token",
                token,
                "amount",
                "250 g",
                "kind",
                "use",
                "purpose",
                "Tideline");

        assertThat(taken.statusCode()).isEqualTo(303);
        assertThat(doors.shop().records().lots().find(lot).orElseThrow().left()).isEqualTo(750_000);
        assertThat(doors.shop().records().lots().moves(lot).get(0).author().person())
                .isEqualTo(wenna);
        assertThat(doors.shop().records().lots().moves(lot).get(0).author().device())
                .isPresent();
        assertThat(doors.desk().get("/ledger").body()).contains("Wenna");
    }

    @Test
    void when_a_maker_becomes_a_helper_their_open_pages_write_nothing_more() {
        String ruth = doors.shop()
                .records()
                .people()
                .add("Ruth", Role.MAKER)
                .orThrow()
                .id();
        TestDoors.Device laptop = doors.letIn(ruth);
        doors.shop().records().people().change(ruth, "Ruth", Role.HELPER).orThrow();

        var tried = laptop.post("/stores/suppliers", "name", "North Quay Oils");

        assertThat(tried.statusCode()).isEqualTo(403);
        assertThat(tried.body()).contains("a helper weighs, ticks and counts").contains("North Quay Oils");
    }
}
