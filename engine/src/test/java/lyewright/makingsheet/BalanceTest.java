package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import lyewright.material.Tables;
import lyewright.measure.Mass;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BalanceTest {

    private static Balance balance(String text) {
        return Balance.parse(text).orThrow();
    }

    @Test
    void a_balance_is_a_name_a_capacity_and_a_step() {
        Balance balance = balance("kitchen:5kg:1g");

        assertThat(balance.name()).isEqualTo("kitchen");
        assertThat(balance.capacity()).isEqualTo(WrittenMass.parse("5 kg").orThrow());
        assertThat(balance.step()).isEqualTo(WrittenMass.ofGrams("1"));
        assertThat(balance.accuracyClass()).isEmpty();
    }

    @Test
    void a_class_may_follow() {
        assertThat(balance("fine:200g:0.01g:II").accuracyClass()).contains("II");
        assertThat(balance(" fine : 200 g : 10 mg : iiii ").accuracyClass()).contains("IIII");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"kitchen:5kg:1g", "fine:200g:0.01g:II", "counter:11lb:0.05oz", "весы:5kg:1g", "lab:200g:10mg:I"})
    void what_is_printed_is_read_back_the_same(String text) {
        Balance balance = balance(text);

        assertThat(balance).hasToString(text);
        assertThat(balance(balance.toString())).isEqualTo(balance).hasSameHashCodeAs(balance);
    }

    @Test
    void balances_differ_by_each_of_their_figures() {
        Balance balance = balance("fine:200g:0.01g:II");

        assertThat(balance).isEqualTo(balance("fine:200g:0.01g:II"));
        assertThat(balance).isNotEqualTo(balance("other:200g:0.01g:II"));
        assertThat(balance).isNotEqualTo(balance("fine:300g:0.01g:II"));
        assertThat(balance).isNotEqualTo(balance("fine:200g:0.1g:II"));
        assertThat(balance).isNotEqualTo(balance("fine:200g:0.01g"));
        assertThat(balance).isNotEqualTo("fine:200g:0.01g:II");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kitchen | is not a balance",
                "kitchen:5kg | is not a balance",
                "kitchen:5kg:1g:III:x | is not a balance",
                ":5kg:1g | is not a balance",
                "'  :5kg:1g' | is not a balance",
                "kitchen:5kg:1g:V | 'V' is not an accuracy class",
                "kitchen:5kg:1g: | '' is not an accuracy class",
                "kitchen:heavy:1g | does not begin with a number",
                "kitchen:5:1g | has no unit",
                "kitchen:5kg:1 | has no unit",
                "kitchen:5kg:-1g | is negative",
                "kitchen:5kg:0,1g | has a comma in its number",
                "kitchen:5l:1g | 'l' is not a unit",
                "kitchen:5kg:0g | has a step of 0 g",
                "kitchen:5kg:0.9mg | has a step of 0.9 mg",
                "kitchen:1g:5kg | carries 1 g in steps of 5 kg"
            })
    void what_is_no_balance_is_refused(String text, String reason) {
        Outcome<Balance> balance = Balance.parse(text);

        assertThat(balance.problems()).hasSize(1);
        assertThat(balance.problems().get(0).what()).contains(reason);
        assertThat(balance.problems().get(0).remedy()).isNotBlank();
    }

    @Test
    void a_balance_that_cannot_weigh_is_a_broken_promise() {
        WrittenMass gram = WrittenMass.ofGrams("1");
        WrittenMass nothing = WrittenMass.ofGrams("0");

        assertThatThrownBy(() -> new Balance("x", gram, nothing, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("balance x");
        assertThatThrownBy(() -> new Balance("x", nothing, gram, Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_nearest_step_has_half_steps_up() {
        assertThat(balance("kitchen:5kg:1g").nearest(142.49)).isEqualTo(Mass.ofGrams(142));
        assertThat(balance("kitchen:5kg:1g").nearest(142.5)).isEqualTo(Mass.ofGrams(143));
        assertThat(balance("shop:15kg:5g").nearest(142.5)).isEqualTo(Mass.ofGrams(145));
        assertThat(balance("fine:200g:0.01g").nearest(1.234)).isEqualTo(Mass.ofGrams(1.23));
    }

    @Test
    void a_twentieth_of_an_ounce_is_a_step() {
        // 0.05 oz = 0.05 × 28.349523125 = 1.41747615625 g; 10 g are 7.05 steps: 7 steps, 9.922 g to the milligram
        Balance balance = balance("counter:11lb:0.05oz");

        assertThat(balance.nearest(10)).isEqualTo(Mass.ofGrams(9.922));
        assertThat(balance.down(10)).isEqualTo(Mass.ofGrams(9.922));
        // 14.2 g are 10.02 steps, 14.175 g; 14.1 g are 9.95: 9 steps down, 12.757 g
        assertThat(balance.down(14.2)).isEqualTo(Mass.ofGrams(14.175));
        assertThat(balance.down(14.1)).isEqualTo(Mass.ofGrams(12.757));
    }

    @Test
    void down_keeps_what_is_a_whole_step_already() {
        // 0.3 / 0.1 falls a hair under 3 in binary
        assertThat(balance("fine:500g:0.1g").down(0.3)).isEqualTo(Mass.ofGrams(0.3));
        assertThat(balance("fine:500g:0.1g").down(177.26)).isEqualTo(Mass.ofGrams(177.2));
    }

    @Test
    void down_is_never_over() {
        Random random = new Random(5);
        for (String step : new String[] {"5g", "1g", "0.1g", "0.01g", "0.05oz", "0.1oz", "0.005oz", "1lb"}) {
            Balance balance = balance("b:100kg:" + step);
            for (int i = 0; i < 4000; i++) {
                double grams = random.nextDouble() * 2000;
                assertThat(balance.down(grams).grams())
                        .as("%s g on %s", grams, balance)
                        .isLessThanOrEqualTo(grams + 1e-7);
            }
        }
    }

    @Test
    void down_is_not_over_by_the_milligram_it_is_printed_to_either() {
        // ten steps of 0.05 oz are 14.17476 g, printed 14.175 g: more than 14.1748 g, so it must be nine
        assertThat(balance("counter:11lb:0.05oz").down(14.1748).grams()).isLessThanOrEqualTo(14.1748);
    }

    @Test
    void without_a_class_it_is_taken_by_its_number_of_steps() {
        // class III has at most 10 000 steps and class II 100 000: OIML R 76-1, table of classes (memory)
        assertThat(balance("kitchen:5kg:1g").classTaken()).isEqualTo("III");
        assertThat(balance("ten-thousand:10kg:1g").classTaken()).isEqualTo("III");
        assertThat(balance("over:10001g:1g").classTaken()).isEqualTo("II");
        assertThat(balance("hundred-thousand:1kg:10mg").classTaken()).isEqualTo("II");
        assertThat(balance("over:1000.01g:10mg").classTaken()).isEqualTo("I");
        assertThat(balance("written:5kg:1g:IIII").classTaken()).isEqualTo("IIII");
    }

    /** OIML R 76-1:2006, table 6, times two in service (3.5.2); figures from memory. */
    @ParameterizedTest
    @Tag("validation")
    @CsvSource({
        "I, 50000, 1",
        "I, 50001, 2",
        "I, 200000, 2",
        "I, 200001, 3",
        "II, 5000, 1",
        "II, 5001, 2",
        "II, 20000, 2",
        "II, 20001, 3",
        "II, 100000, 3",
        "III, 500, 1",
        "III, 501, 2",
        "III, 2000, 2",
        "III, 2001, 3",
        "III, 10000, 3",
        "IIII, 50, 1",
        "IIII, 51, 2",
        "IIII, 200, 2",
        "IIII, 201, 3",
        "IIII, 1000, 3"
    })
    void the_permitted_error_in_service_follows_oiml_r_76(String accuracyClass, int steps, double inSteps) {
        Balance balance = balance("b:1000kg:1g:" + accuracyClass);

        assertThat(balance.permittedErrorGrams(steps, Tables.bundled())).isEqualTo(inSteps);
    }

    @Test
    void the_permitted_error_is_in_the_balances_own_steps() {
        // 5 kg in 1 g, class III: 600 g are over 500 steps, 2 steps; 0.05 oz: 600 g are 423 steps, one step
        assertThat(balance("kitchen:5kg:1g").permittedErrorGrams(600, Tables.bundled()))
                .isEqualTo(2);
        assertThat(balance("counter:11lb:0.05oz").permittedErrorGrams(600, Tables.bundled()))
                .isEqualTo(1.41747615625, within(1e-9));
    }

    @Test
    void an_empty_balance_may_err_too() {
        assertThat(balance("kitchen:5kg:1g").permittedErrorGrams(0, Tables.bundled()))
                .isEqualTo(1);
    }

    @Test
    void beyond_a_classs_last_row_that_row_holds() {
        // class III ends at 10 000 steps, class IIII at 1000
        assertThat(balance("big:100kg:1g:III").permittedErrorGrams(50_000, Tables.bundled()))
                .isEqualTo(3);
        assertThat(balance("old:10kg:1g:IIII").permittedErrorGrams(5000, Tables.bundled()))
                .isEqualTo(3);
    }

    @Test
    void a_whole_number_of_steps_in_ounces_stays_that() {
        Balance balance = Balance.parse("big:11lb:0.05oz").orThrow();

        for (String ounces : new String[] {"4", "4.2", "4.5", "7.35", "12.05"}) {
            double grams = WrittenMass.parse(ounces + " oz").orThrow().grams();
            assertThat(balance.down(grams)).as(ounces).isEqualTo(Mass.ofGrams(grams));
        }
    }
}
