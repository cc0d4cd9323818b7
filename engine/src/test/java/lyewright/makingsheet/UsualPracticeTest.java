package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;

/** Common practice of the design: each kind of bar has its own temperatures, windows and cure. */
class UsualPracticeTest {

    private static AFormula plain() {
        return AFormula.ofOils("coconut", "30 %", "sunflower", "rest").superfat("6 %");
    }

    private static UsualPractice of(AFormula formula) {
        return formula.sheet(Fill.mouldMass(1000)).practice();
    }

    @Test
    void a_plain_bar_is_cut_within_two_days_and_cures_a_month() {
        assertThat(of(plain()))
                .isEqualTo(new UsualPractice("blend-plain", "window-plain", "cut-plain-ungelled", "cure-plain"));
    }

    @Test
    void a_salt_bar_in_the_oven_is_cut_the_sooner_the_more_salt_is_in_it() {
        assertThat(of(plain().add("sea-salt", "30 % of oils", "trace").oven("55 C"))
                        .cut())
                .isEqualTo("cut-salt-25-50");
        assertThat(of(plain().add("sea-salt", "60 % of oils", "trace").oven("55 C"))
                        .cut())
                .isEqualTo("cut-salt-50-80");
        assertThat(of(plain().add("sea-salt", "100 % of oils", "trace").oven("55 C")))
                .isEqualTo(new UsualPractice("blend-salt", "window-salt", "cut-salt-100", "cure-salt"));
        assertThat(of(plain().add("sea-salt", "60 % of oils", "trace")).cut()).isEqualTo("cut-salt-ungelled");
    }

    @Test
    void milk_beeswax_and_hard_acid_are_blended_at_their_own_temperatures() {
        assertThat(of(plain().add("goat-milk", "10 % of oils", "trace")).blend())
                .isEqualTo("blend-milk");
        assertThat(of(plain().add("goat-milk", "10 % of oils", "trace").oven("55 C"))
                        .cut())
                .as("milk is kept from gelling")
                .isEqualTo("cut-plain-ungelled");
        assertThat(of(AFormula.ofOils("beeswax", "2 %", "coconut", "rest").superfat("6 %"))
                        .blend())
                .isEqualTo("blend-beeswax");
        assertThat(of(AFormula.ofOils("stearic-acid-50", "40 %", "coconut", "rest")
                                .superfat("4 %"))
                        .blend())
                .isEqualTo("blend-shaving");
    }

    @Test
    void olive_bars_cure_longest_whoever_pressed_the_oil() {
        assertThat(of(AFormula.ofOils("olive-pomace", "100 %").superfat("5 %")).cure())
                .isEqualTo("cure-olive");
        assertThat(of(AFormula.ofOils("house-olive", "75 %", "coconut", "rest")
                                .own(HouseMaterials.oil("house-olive", "189.5", "0.913"))
                                .superfat("5 %"))
                        .cure())
                .isEqualTo("cure-olive");
        assertThat(of(AFormula.ofOils("olive-pomace", "60 %", "coconut", "rest").superfat("5 %"))
                        .cure())
                .isEqualTo("cure-plain");
    }

    @Test
    void bars_in_cavities_are_taken_out_not_cut() {
        Mould twelve = new Mould(Optional.of(new Shape.Cavities(12, 95)), Optional.empty(), Optional.empty());
        Fill full = new Fill(new Fill.FullMould(), twelve, Optional.empty(), 0);

        assertThat(plain().sheet(full).practice().cut()).isEqualTo("out-of-cavities-plain");
        assertThat(plain().add("sea-salt", "50 % of oils", "trace")
                        .sheet(full)
                        .practice()
                        .cut())
                .isEqualTo("out-of-cavities-salt");
    }

    @Test
    void every_figure_it_names_is_in_the_table() {
        for (UsualPractice practice : List.of(
                of(plain()), of(plain().add("sea-salt", "60 % of oils", "trace").oven("55 C")))) {
            assertThat(Tables.bundled().practice(practice.blend()).low()).isPositive();
            assertThat(Tables.bundled().practice(practice.window()).low()).isPositive();
            assertThat(Tables.bundled().practice(practice.cut()).low()).isPositive();
            assertThat(Tables.bundled().practice(practice.cure()).low()).isPositive();
        }
    }
}
