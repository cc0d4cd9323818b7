package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import org.junit.jupiter.api.Test;

/** A best before or a day of coming that is hardly meant: 2062 for 2026. */
class DayMeantTest extends AtTheCupboard {

    @Test
    void a_best_before_far_off_is_asked_about_once_when_it_comes() throws Exception {
        LocalDate far = today.plusYears(10).plusDays(1);
        String line = "coconut|5 kg||" + far + "|";
        HttpResponse<String> asked = deliver("", line);
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body())
                .contains("hat is more than ten years after it came")
                .contains("name=\"lines.0.far\"");
        assertThat(records().lots().held()).isEmpty();
        assertThat(deliver("", List.of("lines.0.far", "yes"), line).statusCode())
                .isEqualTo(303);
        assertThat(lot("Coconut oil").said().bestBefore()).contains(far);
    }

    @Test
    void one_that_nobody_lives_to_see_is_refused_whatever_is_ticked() throws Exception {
        HttpResponse<String> refused = deliver("", List.of("lines.0.far", "yes"), "coconut|5 kg||2206-06-30|");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("hat is more than a hundred years after it came");
        assertThat(deliver("", "coconut|5 kg||" + today.plusYears(10) + "|").statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_lot_is_asked_and_refused_alike() throws Exception {
        deliver("", "coconut|5 kg||");
        String at = "/stores/lots/" + lot("Coconut oil").id();
        String code = lot("Coconut oil").said().ownCode();
        HttpResponse<String> asked = workshop.post(at, "ownCode", code, "bestBefore", "2062-06-30");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("more than ten years after it came").contains("name=\"far\"");
        assertThat(workshop.post(at, "ownCode", code, "bestBefore", "2062-06-30", "far", "yes")
                        .statusCode())
                .isEqualTo(303);
        assertThat(workshop.post(at, "ownCode", code, "bestBefore", "2062-06-30", "notes", "of salt")
                        .statusCode())
                .as("what stays as it was is not asked again")
                .isEqualTo(303);
        HttpResponse<String> refused = workshop.post(at, "ownCode", code, "bestBefore", "2207-01-01", "far", "yes");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("more than a hundred years after it came");
    }

    @Test
    void a_day_that_was_kept_before_anybody_asked_is_pointed_out() throws Exception {
        LotSaid said = LotSaid.of(today).withBestBefore(Optional.of(LocalDate.of(2207, 1, 1)));
        ItemSaid castor = ItemSaid.of("Castor oil", ItemKind.OIL, Identity.ofKey("castor"));
        records()
                .lots()
                .receive(records().author(), "", List.of(Arrival.of(castor, said, 1_000_000)))
                .orThrow();
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("is best before 1 Jan 2207, which is hardly meant: correct it");
        String at = "/stores/lots/" + lot("Castor oil").id();
        assertThat(workshop.post(at + "/status", "status", "refused").statusCode())
                .as("it can be judged all the same")
                .isEqualTo(303);
    }

    @Test
    void a_delivery_that_came_long_ago_is_asked_about_once() throws Exception {
        assertThat(came("2006-11-28", "no").statusCode()).isEqualTo(422);
        assertThat(came("2006-11-28", "no").body())
                .contains("hat day is more than ten years ago")
                .contains("name=\"longAgo\"");
        assertThat(came("2006-11-28", "longAgo").statusCode()).isEqualTo(303);
        assertThat(came("1902-11-28", "longAgo").body()).contains("hat day is more than a hundred years ago");
    }

    private HttpResponse<String> came(String day, String ticked) throws Exception {
        return workshop.post(
                "/stores/deliveries",
                "opened-in",
                "mine",
                "day",
                day,
                ticked,
                "yes",
                "lines.0.material",
                "coconut",
                "lines.0.amount",
                "5 kg");
    }
}
