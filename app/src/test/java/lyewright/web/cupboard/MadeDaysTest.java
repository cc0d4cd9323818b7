package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a mix of oils keeps, and where it is said to be from. */
class MadeDaysTest extends AtTheCupboard {

    private static final LocalDate SOONER = LocalDate.of(2028, 3, 31);

    @BeforeEach
    void oils() throws Exception {
        deliver("", "coconut|1 kg||2029-06-30|", "castor|1 kg||" + SOONER + "|", "Olive oil (virgin)|1 kg|||");
    }

    private HttpResponse<String> mix(String bestBefore, String ticked) throws Exception {
        return workshop.post(
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
                "200 g",
                "from.2.lot",
                lot("Olive oil (virgin)").id(),
                "from.2.amount",
                "50 g",
                "day",
                today.toString(),
                "bestBefore",
                bestBefore,
                ticked,
                "yes");
    }

    @Test
    void it_keeps_as_long_as_the_first_of_its_parts_and_is_made_here() throws Exception {
        String page = workshop.get(TestWorkshop.wayOn(mix("", "no"))).body();
        assertThat(lot("house-blend").said().bestBefore()).contains(SOONER);
        assertThat(page)
                .contains("Best before 31 Mar 2028.")
                .contains("<dt>Where it is from</dt><dd>made here</dd>")
                .contains("<dt>Made</dt>");
    }

    @Test
    void a_day_that_was_typed_is_kept() throws Exception {
        mix("2028-01-31", "no");
        assertThat(lot("house-blend").said().bestBefore()).contains(LocalDate.of(2028, 1, 31));
    }

    @ParameterizedTest
    @CsvSource({
        "2062-06-30, no, more than ten years after",
        "2207-01-01, far, more than a hundred years after",
    })
    void a_day_that_is_hardly_meant_is_asked_about_here_too(String day, String ticked, String asked) throws Exception {
        assertThat(mix(day, ticked).body()).contains(asked);
        assertThat(mix("2062-06-30", "far").statusCode()).isEqualTo(303);
    }
}
