package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;

/** Who sells materials: taken out of the list, and put back. */
class SupplierPagesTest extends AtTheCupboard {

    private String sent(String address, String... form) throws Exception {
        HttpResponse<String> answer = workshop.post("/stores/suppliers" + address, form);
        assertThat(answer.statusCode()).isEqualTo(303);
        return workshop.get(TestWorkshop.wayOn(answer)).body();
    }

    @Test
    void what_becomes_of_one_that_is_put_back_is_told_also_where_the_name_is_anothers_by_now() throws Exception {
        String id = records().suppliers().add("Northquay", "", "").orThrow().id();
        assertThat(sent("/" + id + "/remove")).contains("Northquay is out of the list");
        assertThat(sent("/" + id + "/put-back")).contains("Northquay is in the list again.");
        sent("/" + id + "/remove");
        String other = records().suppliers().add("northquay", "", "").orThrow().id();
        assertThat(sent("/" + id + "/put-back"))
                .contains("Northquay stays out of the list: another is called so by now.")
                .contains("/stores/suppliers/" + id + "/put-back");
        assertThat(records().suppliers().list()).extracting(one -> one.id()).containsExactly(other);
        sent("/" + other, "name", "Southquay");
        assertThat(sent("/" + id + "/put-back")).contains("Northquay is in the list again.");
    }
}
