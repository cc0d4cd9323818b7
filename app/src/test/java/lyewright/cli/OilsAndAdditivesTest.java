package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.material.Additive;
import lyewright.material.Oil;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;

class OilsAndAdditivesTest {

    @Test
    void the_list_has_every_oil_and_fits_the_page() {
        Run run = Run.of("oils");

        assertThat(run.exit()).isZero();
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= 100);
        for (Oil oil : Tables.bundled().oils()) {
            assertThat(run.lines()).as(oil.key()).anyMatch(line -> line.startsWith(oil.key() + " "));
        }
    }

    @Test
    void the_list_has_every_additive_and_fits_the_page() {
        Run run = Run.of("additives");

        assertThat(run.exit()).isZero();
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= 100);
        for (Additive additive : Tables.bundled().additives()) {
            assertThat(run.lines()).as(additive.key()).anyMatch(line -> line.startsWith(additive.key() + " "));
        }
    }

    @Test
    void a_key_gives_a_card_on_which_every_figure_has_its_source() {
        Oil castor = Tables.bundled().oil("castor").orElseThrow();

        Run run = Run.of("oils", "castor");

        String card = unbroken(run.out());
        assertThat(run.exit()).isZero();
        assertThat(card)
                .contains(unbroken(
                        "176 to 187 mg KOH/g [" + castor.saponificationValue().source() + "]"))
                .contains(unbroken(castor.iodineValue().orElseThrow().source()))
                .contains(unbroken(castor.density().source()))
                .contains("c18:1-oh ricinoleic acid");
    }

    @Test
    void every_oils_card_prints_and_fits_the_page() {
        for (Oil oil : Tables.bundled().oils()) {
            Run run = Run.of("oils", oil.key());

            assertThat(run.exit()).as(oil.key()).isZero();
            assertThat(run.lines()).as(oil.key()).allMatch(line -> Widths.of(line) <= 100);
            assertThat(unbroken(run.out()))
                    .as(oil.key())
                    .contains(unbroken(oil.saponificationValue().source()));
        }
    }

    @Test
    void every_additives_card_prints_and_fits_the_page() {
        for (Additive additive : Tables.bundled().additives()) {
            Run run = Run.of("additives", additive.key());

            assertThat(run.exit()).as(additive.key()).isZero();
            assertThat(run.lines()).as(additive.key()).allMatch(line -> Widths.of(line) <= 100);
            assertThat(unbroken(run.out())).as(additive.key()).contains(unbroken(additive.sources()));
        }
    }

    @Test
    void part_of_a_name_gives_all_that_hold_it() {
        Run run = Run.of("oils", "olive");

        assertThat(run.exit()).isZero();
        assertThat(run.lines()).filteredOn(line -> line.startsWith("olive-")).hasSizeGreaterThan(1);
        assertThat(Run.of("oils", "Palm", "Kernel").out()).startsWith("palm-kernel ");
    }

    @Test
    void an_unknown_name_is_refused_with_the_nearest() {
        assertRefused(Run.of("oils", "olive-virgn"), "olive-virgin");
        assertRefused(Run.of("additives", "sea-slat"), "sea-salt");
        assertRefused(Run.of("oils", "qqqqqqqqqq"), "lyewright oils");
    }

    @Test
    void an_additive_among_oils_is_sent_to_its_own_command() {
        assertRefused(Run.of("oils", "sea-salt"), "lyewright additives sea-salt");
        assertRefused(Run.of("additives", "castor"), "lyewright oils castor");
    }

    private static void assertRefused(Run run, String remedy) {
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(1);
        assertThat(run.problems()).isEqualTo(List.of(run.err().strip()));
        assertThat(run.err()).contains(remedy);
    }

    /** Text as if it stood on one line, whatever its case. */
    private static String unbroken(String text) {
        return text.toLowerCase(java.util.Locale.ROOT).replaceAll("\\s+", " ");
    }
}
