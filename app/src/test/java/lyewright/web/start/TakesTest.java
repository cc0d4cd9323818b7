package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.web.start.AskedMould.Called;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of a recipe a mould takes, as it is said. */
class TakesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.00 | It fills your loaf: 1567 g.",
                "0.98 | It fills your loaf: 1567 g.",
                "1.04 | Your loaf takes a little more than this recipe.",
                "1.067 | Your loaf takes 1.07 times this recipe.",
                "1.38 | Your loaf takes 1.4 times this recipe.",
                "1.50 | Your loaf takes one and a half times this recipe.",
                "2.01 | Your loaf takes twice this recipe.",
                "12.4 | Your loaf takes 12 times this recipe.",
                "0.95 | Your loaf takes nearly all of it.",
                "0.75 | Your loaf takes about three quarters of it.",
                "0.55 | Your loaf takes a little more than half of it.",
                "0.50 | Your loaf takes half of it.",
                "0.33 | Your loaf takes about a third of it.",
                "0.05 | Your loaf takes 5 % of it.",
                "0.001 | Your loaf takes 0.1 % of it."
            })
    void a_mould_is_said_to_take_so_much(double ratio, String said) {
        assertThat(Takes.times(Called.mould("your loaf"), ratio, "1567 g")).isEqualTo(said);
    }

    @Test
    void an_amount_is_no_mould() {
        assertThat(Takes.times(Called.amount("1500 g", false), 1, "1500 g")).isEqualTo("It makes 1500 g.");
        assertThat(Takes.times(Called.amount("1500 g", false), 2, "1500 g")).isEqualTo("1500 g is twice this recipe.");
        assertThat(Takes.times(Called.amount("12 such bars", true), 0.5, "900 g"))
                .isEqualTo("12 such bars are half of it.");
        assertThat(Takes.times(Called.moulds("your cavities"), 1.2, "900 g"))
                .isEqualTo("Your cavities take 1.2 times this recipe.");
    }

    @Test
    void a_recipe_in_shares_has_no_size_of_its_own() {
        assertThat(Takes.ofShares(Called.mould("your loaf"), "1567 g")).isEqualTo("Your loaf takes 1567 g of it.");
        assertThat(Takes.ofShares(Called.amount("1500 g", false), "1500 g")).isEqualTo("Worked out for 1500 g.");
        assertThat(Takes.ofShares(Called.amount("12 such bars", true), "1320 g"))
                .isEqualTo("Worked out for 12 such bars: 1320 g.");
    }
}
