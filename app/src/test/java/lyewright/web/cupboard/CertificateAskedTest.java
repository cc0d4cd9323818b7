package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of a certificate that are hardly meant. */
class CertificateAskedTest extends AtTheCupboard {

    private String certificate(String material, String lotOf) throws Exception {
        deliver("", material + "|5 kg|||");
        return "/stores/lots/" + lot(lotOf).id() + "/certificate";
    }

    @ParameterizedTest
    @CsvSource({
        "water, 19, that is more than 1 %",
        "water, 1.1, that is more than 1 %",
        "acid value, 189, that is more free acid than an oil has",
        "acid value, 20.1, that is more free acid than an oil has",
        "saponification value, 180.4 ± 100, the doubt after ± is wider than a tenth",
        "iodine value, 85 ± 9, the doubt after ± is wider than a tenth",
        "acid value, 4 ± 2, the doubt after ± is wider than a tenth",
    })
    void a_slip_of_the_finger_is_asked_about_once(String field, String typed, String asked) throws Exception {
        String at = certificate("castor", "Castor oil");
        HttpResponse<String> answer = workshop.post(at, field, typed);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).containsIgnoringCase(asked).contains("name=\"sure\"");
        assertThat(lot("Castor oil").said().certificate()).isEmpty();
        assertThat(workshop.post(at, field, typed, "sure", "yes").statusCode()).isEqualTo(303);
        assertThat(lot("Castor oil").said().certificate()).isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "castor, Castor oil, water, 1",
        "castor, Castor oil, water, 0.05 ± 0.02",
        "castor, Castor oil, acid value, 0.4 ± 0.1",
        "castor, Castor oil, saponification value, 180.4 ± 1.0",
        "Lauric acid, Lauric acid, acid value, 280",
        "beeswax, Beeswax (white), acid value, 23.5",
    })
    void what_papers_say_is_taken_as_it_is(String typed, String material, String field, String figure)
            throws Exception {
        assertThat(workshop.post(certificate(typed, material), field, figure).statusCode())
                .isEqualTo(303);
    }

    @Test
    void what_is_half_water_is_no_oil_whatever_is_ticked() throws Exception {
        HttpResponse<String> answer = workshop.post(certificate("castor", "Castor oil"), "water", "50", "sure", "yes");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("more than a fifth water is no oil");
    }

    @Test
    void a_wax_has_the_free_acid_that_was_published() throws Exception {
        assertThat(workshop.post(certificate("beeswax", "Beeswax (white)"), "acid value", "30")
                        .body())
                .contains("more free acid than was published, at most 24");
    }

    @ParameterizedTest
    @CsvSource({
        "caustic soda, Sodium hydroxide, 33, 422",
        "caustic soda, Sodium hydroxide, 69.9, 422",
        "caustic potash, Potassium hydroxide, 50, 422",
        "caustic potash, Potassium hydroxide, 77, 303",
    })
    void what_is_no_dry_alkali_is_refused_whatever_is_ticked(String typed, String material, String purity, int status)
            throws Exception {
        HttpResponse<String> answer = workshop.post(certificate(typed, material), "purity", purity, "sure", "yes");
        assertThat(answer.statusCode()).isEqualTo(status);
        if (status == 422) {
            assertThat(answer.body()).contains("a solution is a stock lye: make or receive it under a name of its own");
        }
    }

    @Test
    void each_figure_has_an_example_of_its_own() throws Exception {
        certificate("castor", "Castor oil");
        String page = workshop.get("/stores/lots/" + lot("Castor oil").id()).body();
        assertThat(page.split("as in 189.5", -1)).hasSize(2);
        assertThat(page).contains("as in 0.4 or 0.4 ± 0.1").contains("percent, as in 0.1");
    }
}
