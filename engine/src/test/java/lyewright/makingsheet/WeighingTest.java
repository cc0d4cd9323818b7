package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.formula.AcidRule;
import lyewright.formula.AlkaliChoice;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which vessel, which balance, in which order. */
class WeighingTest {

    private static AFormula house() {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("6 %");
    }

    private static Equipment register(String text) {
        return Equipment.parseBalances(text).orThrow();
    }

    private static List<String> vessels(MakingSheet sheet) {
        return sheet.vessels().stream().map(Vessel::name).toList();
    }

    private static List<String> keysIn(MakingSheet sheet, String vessel) {
        return sheet.vessels().stream()
                .filter(v -> v.name().equals(vessel))
                .flatMap(v -> v.weighings().stream())
                .map(w -> w.line().key())
                .toList();
    }

    private static List<String> balances(MakingSheet sheet, String vessel) {
        return sheet.vessels().stream()
                .filter(v -> v.name().equals(vessel))
                .flatMap(v -> v.weighings().stream())
                .map(w -> w.balance().name())
                .distinct()
                .toList();
    }

    @Test
    void what_is_wetted_out_comes_first_and_the_lye_last() {
        MakingSheet sheet = house().add("lavender-oil", "2.5 % of oils", "trace")
                .add("green-clay", "12 g per kg portion oils", "portion kelp")
                .dispersed("water", "3 to 1")
                .add("sugar", "10 g per kg oils", "lye")
                .add("rose-petals", "2 g per kg oils", "top")
                .portions("plain", "60 %", "kelp", "rest")
                .sheet(Fill.oilMass(1500));

        assertThat(vessels(sheet))
                .containsExactly(
                        "cup: green-clay for kelp",
                        "oil pot",
                        "cup: lavender-oil",
                        "cup: sugar",
                        "cup: rose-petals",
                        "lye jug");
        assertThat(keysIn(sheet, "cup: green-clay for kelp")).containsExactly("green-clay", "water");
        assertThat(keysIn(sheet, "lye jug")).containsExactly("water", "naoh");
    }

    @Test
    void what_dissolves_with_the_water_goes_into_its_jug_where_the_balance_is_fine_enough() {
        // 1000 g of oils: jug of 188 + 381.7 + 30 g, over 500 g, so in 1 g; 30 g of sugar have 30 steps of 20 needed
        MakingSheet sheet = house().add("sugar", "30 g per kg oils", "lye").sheet(Fill.oilMass(1000));

        assertThat(keysIn(sheet, "lye jug")).containsExactly("water", "sugar");
        assertThat(sheet.lye().dissolvesIn()).containsExactly("water", "sugar");
    }

    @Test
    void alkali_too_light_for_the_jugs_balance_goes_into_a_cup_at_the_very_end() {
        // 187.98 g are 187 steps of 1 g
        MakingSheet sheet = house().sheet(Fill.oilMass(1000));

        assertThat(vessels(sheet)).containsExactly("oil pot", "lye jug", "cup: alkali");
        assertThat(Sheets.weighed(sheet, "naoh")).isEqualTo(187.9);
    }

    @Test
    void a_jug_that_may_weigh_300_g_stays_off_the_balance_that_only_carries_what_is_in_it() {
        // water 305.3 g and alkali 150.4 g of 800 g of oils are under 500 g; with a jug they are not
        MakingSheet sheet = house().sheet(Fill.oilMass(800));

        assertThat(balances(sheet, "lye jug")).containsExactly("kitchen");
        assertThat(vessels(sheet)).containsExactly("oil pot", "lye jug", "cup: alkali");
        assertThat(balances(sheet, "cup: alkali")).containsExactly("fine");
        assertThat(Sheets.weighed(sheet, "naoh")).isEqualTo(150.3);
    }

    @Test
    void a_cup_counts_towards_what_its_balance_carries() {
        // 490 g with a cup of 20 g are over 500 g
        MakingSheet sheet = house().add("sea-salt", "49 % of oils", "trace").sheet(Fill.oilMass(1000));

        assertThat(balances(sheet, "cup: sea-salt")).containsExactly("kitchen");
    }

    @Test
    void where_no_balance_carries_the_usual_vessel_too_the_strongest_is_taken() {
        MakingSheet sheet = house().sheet(Fill.oilMass(4800));

        assertThat(balances(sheet, "oil pot")).containsExactly("kitchen");
        assertThat(Sheets.ids(sheet)).doesNotContain("balance-overload");
    }

    @Test
    void both_alkalis_keep_together() {
        // 20 % of 5 × 0.94 mol as KOH: 52.7 g, under 200 steps; NaOH 150.4 g with it, though it alone is under too
        MakingSheet sheet =
                house().mixed("80 %", "20 %", AlkaliChoice.Basis.MOLES).sheet(Fill.oilMass(1000));

        assertThat(keysIn(sheet, "cup: alkali")).containsExactly("naoh", "koh");
    }

    @Test
    void alkalis_too_heavy_for_one_cup_on_the_finer_balance_have_a_cup_each() {
        AFormula soft = house().mixed("35 %", "65 %", AlkaliChoice.Basis.MOLES).purities("naoh=98,koh=90");

        // 1000 g of oils take 5 × 0.94 mol: NaOH 0.35 of it × 39.997 / 0.98 = 67.1 g, KOH 0.65 × 56.105 / 0.90 = 190.4
        // g
        assertThat(vessels(soft.sheet(Fill.oilMass(1000)))).containsExactly("oil pot", "lye jug", "cup: alkali");
        assertThat(vessels(soft.sheet(Fill.oilMass(1000), register("kitchen:5kg:1g,fine:250g:0.1g"))))
                .containsExactly("oil pot", "lye jug", "cup: naoh", "cup: koh");

        // 134.3 g and 380.9 g are too much for one cup, and 380 steps of 1 g are enough
        MakingSheet more = soft.sheet(Fill.oilMass(2000));
        assertThat(vessels(more)).containsExactly("oil pot", "lye jug", "cup: naoh");
        assertThat(keysIn(more, "lye jug")).containsExactly("water", "koh");
        assertThat(balances(more, "cup: naoh")).containsExactly("fine");
        assertThat(Sheets.ids(more)).doesNotContain("balance-coarse");
    }

    @Test
    void alkali_stays_in_the_jug_where_no_finer_balance_carries_it() {
        MakingSheet sheet = house().sheet(Fill.oilMass(1000), register("kitchen:5kg:1g,gem:50g:0.01g"));

        assertThat(vessels(sheet)).containsExactly("oil pot", "lye jug");
        assertThat(Sheets.ids(sheet)).contains("balance-coarse");
    }

    @Test
    void an_oil_too_light_for_the_pots_balance_goes_into_a_cup() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "99 %", "castor", "1 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("6 %")
                .sheet(Fill.oilMass(1500));

        // 15 g are 15 steps of 1 g, under 20
        assertThat(vessels(sheet)).contains("cup: castor");
        assertThat(keysIn(sheet, "oil pot")).containsExactly("house-oil");
    }

    @Test
    void an_addition_to_the_oils_goes_into_the_pot() {
        MakingSheet sheet = house().add("rosin", "5 % of oils", "oils")
                .acids(AcidRule.COMPENSATE)
                .sheet(Fill.oilMass(1000));

        assertThat(keysIn(sheet, "oil pot")).containsExactly("house-oil", "rosin");
    }

    @Test
    void things_are_called_by_their_names() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "90 %", "castor", "10 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("6 %")
                .mixed("50 %", "50 %", AlkaliChoice.Basis.MOLES)
                .add("activated-charcoal", "5 g per kg oils", "trace")
                .dispersed("castor", "4 to 1")
                .add("mica-white", "5 g per kg oils", "trace")
                .dispersed("glycerin", "2 to 1")
                .add("kaolin", "5 g per kg oils", "trace")
                .dispersed("water", "2 to 1")
                .sheet(Fill.oilMass(1000));

        assertThat(Sheets.weighings(sheet))
                .extracting(Weighing::name)
                .contains(
                        "Castor oil",
                        "Activated charcoal",
                        "Glycerin",
                        "Water",
                        "Sodium hydroxide (caustic soda)",
                        "Potassium hydroxide (potash)");
        assertThat(Sheets.weighings(sheet))
                .extracting(Weighing::name)
                .allSatisfy(n -> assertThat(n).isNotBlank());
    }

    @Test
    void stock_lye_is_called_by_its_key() {
        MakingSheet sheet = house().own(HouseMaterials.stockLye("stock-50", "50 %", Alkali.SODIUM))
                .stockLye("stock-50")
                .sheet(Fill.oilMass(1000));

        assertThat(Sheets.weighings(sheet)).extracting(Weighing::name).contains("stock-50");
    }

    @Test
    void percent_of_oils_counts_the_oils_that_wet_out_too() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "90 %", "castor", "10 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("6 %")
                .add("activated-charcoal", "10 g per kg oils", "trace")
                .dispersed("castor", "4 to 1")
                .sheet(Fill.oilMass(1000));

        double oils = 0;
        for (Weighing w : Sheets.weighings(sheet)) {
            if (w.line().key().equals("castor") || w.line().key().equals("house-oil")) {
                oils += w.percentOfOils();
            }
            if (w.line().key().equals("activated-charcoal")) {
                assertThat(w.percentOfOils()).isEqualTo(1, within(1e-9));
            }
        }
        assertThat(oils).isEqualTo(100, within(1e-9));
    }

    @Test
    void alkali_that_additions_take_wholly_leaves_all_the_oil() {
        // 2 g of NaOH are 0.05 mol; 10 g of citric acid take 0.156 mol
        MakingSheet sheet = AFormula.ofOils("house-oil", "1000 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .naohPure("2 g")
                .water("300 g")
                .add("citric-acid-anhydrous", "10 g", "lye")
                .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);

        assertThat(Sheets.weighed(sheet, "naoh")).isEqualTo(2);
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(100);
    }

    @Test
    void a_caustic_recipe_keeps_its_alkali_and_says_how_far_under_0_it_is() {
        // 210 g of NaOH for oil that takes 199.985 g: −5.0079 %
        MakingSheet sheet = AFormula.ofOils("house-oil", "1000 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .naohPure("210 g")
                .water("400 g")
                .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);

        assertThat(Sheets.weighed(sheet, "naoh")).isEqualTo(210);
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(-5.0079, within(5e-5));
    }

    @Test
    void the_strength_of_the_lye_is_of_the_masses_that_are_weighed() {
        MakingSheet sheet = house().purities("naoh=98").sheet(Fill.oilMass(1000), register("shop:15kg:5g"));

        // NaOH 5 × 0.94 × 39.997 / 0.98 = 191.82 g, down to 190 g, 186.2 g pure; water 187.986 × 67 / 33 = 381.67 g,
        // 380 g
        assertThat(sheet.totals().water()).isEqualTo(380);
        assertThat(sheet.lye().concentrationPercent()).isEqualTo(100 * 186.2 / 566.2, within(1e-6));
        assertThat(sheet.lye().pureStrengthPercent()).isEqualTo(100 * 186.2 / 566.2, within(1e-6));
        assertThat(sheet.lye().weighedStrengthPercent()).isEqualTo(100 * 190 / 570.0, within(1e-6));
    }

    @Test
    void water_left_is_what_the_alkali_does_not_need_to_dissolve() {
        MakingSheet sheet = house().water("2 to 1").sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // at 20 °C a saturated solution is 46 % NaOH (CRC Handbook, 98th edition): 187.98 g need 220.67 g of 375.97 g
        assertThat(sheet.lye().waterLeftGrams()).isEqualTo(375.97 - 187.98 * 54 / 46, within(0.02));
    }

    @Test
    void salt_that_the_batters_water_cannot_hold_is_told() {
        MakingSheet salty = house().add("sea-salt", "50 % of oils", "trace")
                .water("34 % lye")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // 490 g of salt (98 % of 500 g) for 364.9 g of water and 5 g of moisture: 132.5 g to 100 g
        assertThat(salty.lye().saltPerWaterPercent()).isEqualTo(132.5, within(0.1));
        assertThat(salty.lye().saltHeldPercent()).isBetween(1.0, 35.0);
        assertThat(salty.lye().saltUndissolvedPercent())
                .isEqualTo(
                        100 * (1 - salty.lye().saltHeldPercent() / salty.lye().saltPerWaterPercent()), within(1e-9));
        assertThat(house().sheet(Fill.oilMass(1000)).lye().saltUndissolvedPercent())
                .isZero();
    }

    @Test
    void salt_on_top_is_not_in_the_water() {
        MakingSheet sheet =
                house().add("sea-salt-coarse", "10 g per kg oils", "top").sheet(Fill.oilMass(1000));

        assertThat(sheet.lye().saltPerWaterPercent()).isZero();
    }

    @Test
    void a_batch_whose_lye_rounds_to_nothing_is_refused_or_has_numbers_all_the_same() {
        // on 1 g: oils 0.6 g are 1 g, water 0.18 g and alkali 0.11 g are none
        Outcome<MakingSheet> sheet =
                house().water("30 % of oils").trySheet(Fill.oilMass(0.6), register("kitchen:5kg:1g"));

        if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
            assertThat(ok.value().lye().concentrationPercent()).isNotNaN();
            assertThat(ok.value().lye().pureStrengthPercent()).isNotNaN();
            assertThat(ok.value().lye().weighedStrengthPercent()).isNotNaN();
        } else {
            assertThat(sheet.problems().get(0).what()).contains("too coarse");
        }
    }

    @Test
    void a_fade_is_planned_from_the_whole_portions() {
        MakingSheet sheet = house().portions("plain", "25 %", "kelp", "rest")
                .fade("plain", "kelp", 5)
                .sheet(Fill.mouldMass(1000), Sheets.LABORATORY);

        // the design's pour: 750 g and 250 g
        assertThat(sheet.fade())
                .extracting(layer -> Math.round(layer.colourPercent() * 10) / 10.0)
                .containsExactly(100.0, 89.8, 78.0, 63.5, 43.7);
        assertThat(house().sheet(Fill.mouldMass(1000)).fade()).isEmpty();
    }

    @Test
    void a_fade_that_runs_dry_is_left_out() {
        MakingSheet sheet = house().portions("plain", "75 %", "kelp", "rest")
                .fade("plain", "kelp", 3)
                .sheet(Fill.mouldMass(1000), Sheets.LABORATORY);

        assertThat(sheet.fade()).isEmpty();
        Optional<Caution> caution = Sheets.caution(sheet, "fade-runs-dry");
        assertThat(caution.orElseThrow().remedy()).startsWith("Pour in at least 4 layers");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2.9", "3.0", "3.1", "3.2", "3.3", "3.6", "3.7", "4.0", "4.1", "4.3", "4.5", "4.7", "4.9", "5.0", "5.1"
            })
    void an_ounce_notebook_is_weighed_as_it_stands_on_an_ounce_balance(String soda) {
        AFormula notebook = AFormula.ofOils("olive-virgin", "32 oz").naohAsWeighed(soda + " oz");

        MakingSheet sheet = notebook.sheet(Fill.AS_WRITTEN, register("kitchen:11lb:0.1oz"));

        assertThat(Sheets.weighed(sheet, "naoh"))
                .isCloseTo(WrittenMass.parse(soda + " oz").orThrow().grams(), within(0.0005));
    }
}
