package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.why.Why;
import org.junit.jupiter.api.Test;

class WeighPlanTest {

    private static final MakingSheet FADE = WordsSheets.of(WordsSheets.FADE, WordsSheets.OUNCES);

    private static List<WeighRow> rows(MakingSheet sheet) {
        return WeighPlan.of(sheet).vessels().stream()
                .flatMap(vessel -> vessel.rows().stream())
                .toList();
    }

    @Test
    void everything_on_the_balances_is_in_the_plan_once_and_in_order() {
        assertThat(rows(FADE).stream().map(WeighRow::weighing))
                .isEqualTo(new SheetView(FADE).all())
                .hasSizeGreaterThan(8);
    }

    @Test
    void a_mass_is_shown_as_its_own_balance_shows_it_and_in_grams_too() {
        WeighRow coconut = row("Coconut oil");
        assertThat(coconut.balance()).isEqualTo("counter");
        assertThat(coconut.weigh().shown()).matches("\\d+\\.\\d\\d oz");
        double ounces = Double.parseDouble(coconut.weigh().shown().replace(" oz", ""));
        double grams = Double.parseDouble(coconut.weigh().also().get(0).replace(" g", ""));
        // the avoirdupois ounce is 28.349523125 g by definition
        assertThat(grams).isCloseTo(ounces * 28.349523125, within(0.06));
        assertThat(coconut.weigh().text())
                .isEqualTo(
                        coconut.weigh().shown() + " (" + coconut.weigh().also().get(0) + ")");
    }

    @Test
    void an_oil_typed_in_ounces_is_told_in_ounces_beside_the_grams_of_its_balance() {
        WeighRow coconut = rows(WordsSheets.of(WordsSheets.FADE, Equipment.USUAL)).stream()
                .filter(row -> row.name().equals("Coconut oil"))
                .findFirst()
                .orElseThrow();
        assertThat(coconut.weigh().shown()).isEqualTo("454 g");
        assertThat(coconut.weigh().also()).containsExactly("16.01 oz");
    }

    @Test
    void a_row_says_what_it_would_be_exactly_and_how_far_off_it_may_really_be() {
        WeighRow salt = row("Sea salt, fine");
        assertThat(salt.exact()).matches("\\d+\\.\\d{3} g");
        double exact = Double.parseDouble(salt.exact().replace(" g", ""));
        assertThat(exact).isCloseTo(salt.weighing().exactGrams(), within(0.0005));
        // half a step of 0.01 g, and one step in service up to 5000 steps of class II, or 20000 (OIML R 76-1, table 6)
        assertThat(salt.balance()).isEqualTo("fine");
        assertThat(salt.tolerance()).matches("± 0\\.0[12]\\d g");
    }

    @Test
    void the_path_of_a_row_leads_to_why() {
        Why why = Why.of(FADE);
        assertThat(rows(FADE)).allSatisfy(row -> {
            for (String figure : List.of("weighGrams", "readingGrams", "exactGrams")) {
                assertThat(why.reason(row.path() + "." + figure)).isInstanceOf(Outcome.Ok.class);
            }
            double weighed =
                    why.reason(row.path() + ".weighGrams").orThrow().value().orElseThrow();
            assertThat(weighed).isEqualTo(row.weighing().weigh().grams());
        });
    }

    @Test
    void a_vessel_that_is_not_tared_says_what_it_weighs_and_wetted_powder_what_to_do_with_it() {
        List<WeighVessel> vessels = WeighPlan.of(FADE).vessels();
        WeighVessel jug = vessels.stream()
                .filter(v -> v.name().equals("Lye jug"))
                .findFirst()
                .orElseThrow();
        assertThat(jug.empty().orElseThrow().text()).contains("312");
        assertThat(jug.heading()).contains("empty, not tared");
        WeighVessel clay = vessels.stream()
                .filter(v -> v.name().startsWith("Cup: green clay (French green, illite) for kelp"))
                .findFirst()
                .orElseThrow();
        assertThat(clay.hint()).contains("stir together 1 h ahead");
        assertThat(clay.rows()).extracting(WeighRow::portion).containsOnly("kelp");
    }

    @Test
    void cups_of_one_thing_each_stand_together() {
        assertThat(WeighPlan.of(FADE).vessels().stream().filter(WeighVessel::cups))
                .singleElement()
                .satisfies(cups -> assertThat(cups.rows()).hasSize(4));
    }

    @Test
    void a_usual_jug_is_reckoned_where_its_weight_is_not_given_and_the_sheet_says_so() {
        MakingSheet sheet = WordsSheets.of(WordsSheets.PLAIN, Equipment.USUAL);
        assertThat(WeighPlan.of(sheet).room()).isEmpty();
        assertThat(WeighPlan.of(sheet).taring())
                .contains("the usual one is reckoned (lye jug 300 g, oil pot 500 g, cup 20 g; common practice).");
        assertThat(WeighPlan.of(FADE).taring()).contains("(oil pot 500 g, cup 20 g; common practice)");
    }

    @Test
    void a_jug_is_looked_at_only_where_no_balance_carries_it_as_it_usually_is() {
        // oils of 1000 g, a lye of some 440 g
        MakingSheet sheet = WordsSheets.of(
                WordsSheets.PLAIN, Equipment.parseBalances("kitchen:1200g:1g").orThrow());
        assertThat(WeighPlan.of(sheet).room())
                .singleElement()
                .satisfies(look -> assertThat(look.text())
                        .startsWith("Look: the oil pot may itself weigh no more than 200 g, or balance kitchen"));
    }

    @Test
    void alkali_in_a_cup_waits_there_dry() {
        MakingSheet sheet = WordsSheets.of(WordsSheets.PLAIN, Equipment.USUAL);
        assertThat(WeighPlan.of(sheet).vessels())
                .filteredOn(vessel -> vessel.name().equals("Cup: alkali"))
                .singleElement()
                .satisfies(cup -> assertThat(cup.hint()).contains("dry, and into the jug's water later"));
    }

    private static WeighRow row(String name) {
        return rows(FADE).stream()
                .filter(row -> row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
