package lyewright.records.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lyewright.measure.Problem;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

@OnBoth
class WorkshopSettingsTest extends Workbench {

    private static final Workshop GANNET_STAIR = new Workshop(
            "Gannet Stair Soap",
            Units.GRAMS,
            Degrees.CELSIUS,
            "GBP",
            Market.GB,
            Paper.A4,
            Optional.of("98.5 ± 0.5"),
            Optional.empty(),
            "1.5 %");

    @Test
    void before_the_first_start_there_is_no_workshop() {
        assertThat(records.settings().workshop()).isEmpty();
    }

    @Test
    void what_was_set_is_there_after_a_restart() {
        records.settings().save(GANNET_STAIR).orThrow();
        restart();
        assertThat(records.settings().workshop()).contains(GANNET_STAIR);
    }

    @Test
    void what_is_set_again_takes_the_place_of_what_was() {
        Workshop moved = new Workshop(
                "Gannet Stair, across the water",
                Units.OUNCES,
                Degrees.FAHRENHEIT,
                "USD",
                Market.US,
                Paper.LETTER,
                Optional.empty(),
                Optional.of("90"),
                "0 %");
        records.settings().save(GANNET_STAIR).orThrow();

        records.settings().save(moved).orThrow();

        assertThat(records.settings().workshop()).contains(moved);
    }

    @Test
    void figures_that_do_not_read_are_refused_field_by_field() {
        Workshop wrong = new Workshop(
                " ",
                Units.GRAMS,
                Degrees.CELSIUS,
                "gold",
                Market.EU,
                Paper.A4,
                Optional.of("98,5"),
                Optional.of("9.8"),
                "a bit");

        assertThat(records.settings().save(wrong).problems())
                .extracting(Problem::path)
                .containsExactly("name", "currency", "sodiumPurity", "potassiumPurity", "holdBack");
        assertThat(records.settings().workshop()).isEmpty();
    }
}
