package lyewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import lyewright.why.Term.Given;
import org.junit.jupiter.api.Test;

/** What is printed of a formula means what is computed of it. */
class TermTest {

    private static final Given A = given("a", 7);
    private static final Given B = given("b", 3);
    private static final Given C = given("c", 2);

    private static Given given(String name, double amount) {
        return new Given(name, amount, "g", "a " + name, "the test");
    }

    private static String text(Term term) {
        return term.text(new Labels());
    }

    private static double value(Term term) {
        return term.value(new Reckoning(Reckoning.ALL));
    }

    @Test
    void brackets_stand_only_where_reading_from_left_to_right_would_part_it() {
        assertThat(text(A.plus(B).plus(C))).isEqualTo("a + b + c");
        assertThat(text(A.minus(B.plus(C)))).isEqualTo("a − (b + c)");
        assertThat(text(A.minus(B).plus(C))).isEqualTo("a − b + c");
        assertThat(text(A.plus(B).times(C))).isEqualTo("(a + b) × c");
        assertThat(text(A.times(B).plus(C))).isEqualTo("a × b + c");
        assertThat(text(A.plus(B.times(C)))).isEqualTo("a + b × c");
        assertThat(text(A.over(B.times(C)))).isEqualTo("a ÷ (b × c)");
        assertThat(text(A.times(B).over(C))).isEqualTo("a × b ÷ c");
        assertThat(text(Term.percent(A.minus(B), C))).isEqualTo("100 × (a − b) ÷ c");
        assertThat(text(Term.call(Function.MAX, Term.number(0), A.minus(B)))).isEqualTo("max(0, a − b)");
    }

    @Test
    void whatever_is_put_together_is_read_back_as_what_it_is_worth() {
        Random random = new Random(20261125);
        for (int i = 0; i < 2000; i++) {
            Term term = some(random, 4);
            double read = Calculator.value(text(term), Map.of("a", 7.0, "b", 3.0, "c", 2.0));
            assertThat(read).as(text(term)).isCloseTo(value(term), within(1e-9 * Math.max(1, Math.abs(read))));
        }
    }

    private static Term some(Random random, int depth) {
        if (depth == 0 || random.nextInt(4) == 0) {
            return List.<Term>of(A, B, C, Term.number(1.5)).get(random.nextInt(4));
        }
        Term left = some(random, depth - 1);
        Term right = some(random, depth - 1);
        return switch (random.nextInt(6)) {
            case 0 -> left.plus(right);
            case 1 -> left.minus(right);
            case 2 -> left.times(right);
            // never over nothing
            case 3 -> left.over(Term.call(Function.MAX, Term.number(0.5), right));
            case 4 -> Term.call(Function.MIN, left, right);
            default -> Term.call(Function.MAX, left, right);
        };
    }

    @Test
    void nothing_added_up_is_nothing() {
        assertThat(text(Term.sum(List.of()))).isEqualTo("0");
        assertThat(value(Term.sum(List.of(A, B)))).isEqualTo(10);
    }

    @Test
    void steps_that_say_the_same_are_one() {
        Term one = A.plus(B).as("sum", "g", "both");
        Term same = A.plus(B).as("sum", "g", "both");

        assertThat(one).isEqualTo(same).hasSameHashCodeAs(same);
        assertThat(one)
                .isNotEqualTo(A.plus(C).as("sum", "g", "both"))
                .isNotEqualTo(A.plus(B).as("sum", "g", "all"))
                .isNotEqualTo(A.plus(B).as("sum", "kg", "both"))
                .isNotEqualTo(A.plus(B).as("all", "g", "both"))
                .isNotEqualTo(A);
    }

    @Test
    void other_things_are_put_in_everywhere() {
        Term term =
                Term.call(Function.MIN, A.as("step", "g", ""), Term.number(9)).over(B);

        assertThat(value(term.put(given -> given("other", 6)))).isEqualTo(1);
    }

    @Test
    void two_things_of_one_name_are_told_apart_and_odd_names_are_made_plain() {
        Labels names = new Labels();

        assertThat(names.of(given("salt", 1))).isEqualTo("salt");
        assertThat(names.of(given("salt", 2))).isEqualTo("salt 2");
        assertThat(names.of(given("salt", 1))).isEqualTo("salt");
        assertThat(names.of(given("max", 1))).as("no function's name").isEqualTo("max 2");
        assertThat(names.of(given("C18:1 of a, b (c) + d", 1))).isEqualTo("C18:1 of a b c d");
        assertThat(names.of(given("🌿 oil", 1))).isEqualTo("oil");
        assertThat(names.of(given("010", 1))).isEqualTo("item 010");
        assertThat(names.of(given("×÷", 1))).isEqualTo("item");
        assertThat(names.of(given("мыло", 1))).isEqualTo("мыло");
        assertThat(names.of(given("x".repeat(80), 1))).hasSize(40);
    }

    @Test
    void a_balance_rounds_to_whole_steps() {
        double ounces = 0.05 * 28.349523125;

        assertThat(Function.NEAREST.of(157.5, 1)).isEqualTo(158);
        assertThat(Function.NEAREST.of(157.49, 1)).isEqualTo(157);
        assertThat(Function.NEAREST.of(10, ounces))
                .as("7 steps of 1.41747615625 g")
                .isEqualTo(9.922);
        assertThat(Function.DOWN.of(141.499, 0.1)).isEqualTo(141.4);
        assertThat(Function.DOWN.of(141.4, 0.1)).isEqualTo(141.4);
        assertThat(Function.DOWN.of(Math.nextDown(141.4), 0.1)).as("arithmetic").isEqualTo(141.4);
        assertThat(Function.DOWN.of(2.8350, ounces))
                .as("2 steps are 2.83495 g, to the milligram 2.835, which is not over")
                .isEqualTo(2.835);
        assertThat(Function.DOWN.of(2.83496, ounces))
                .as("to the milligram it would lie over")
                .isEqualTo(1.417);
        assertThat(Function.WHOLE.of(11.9999999999)).isEqualTo(12);
        assertThat(Function.BETWEEN.of(25, 20, 1, 30, 2)).isEqualTo(1.5);
    }

    @Test
    void numbers_are_plain() {
        assertThat(Digits.significant(0.1 + 0.2, 12)).isEqualTo("0.3");
        assertThat(Digits.significant(123456789.12345678, 12)).isEqualTo("123456789.123");
        assertThat(Digits.significant(1e-7, 12)).isEqualTo("0.0000001");
        assertThat(Digits.figure(1500.0)).isEqualTo("1500");
        assertThat(Digits.figure(-0.0833333333)).isEqualTo("-0.083333");
        assertThat(Digits.step(0.00123456789)).isEqualTo("0.00123457");
        assertThat(Digits.step(0)).isEqualTo("0");
        assertThat(Digits.step(12.3456789)).isEqualTo("12.345679");
    }
}
