package lyewright.makingsheet;

import static lyewright.makingsheet.Sheets.exact;
import static lyewright.makingsheet.Sheets.weighed;
import static lyewright.makingsheet.Sheets.weighs;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.formula.AcidRule;
import lyewright.formula.AlkaliChoice;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/**
 * Whole sheets reckoned by hand, the arithmetic beside each. M(NaOH) 39.997, M(KOH) 56.105 g/mol. {@code house-oil} is
 * invented: it takes 5 mmol of alkali a gram, so 1000 g take 5 mol, 199.985 g of NaOH.
 */
class WorkedSheetsTest {

    private static AFormula house() {
        return AFormula.ofOils("house-oil", "100 %").own(HouseMaterials.oilOfFive("house-oil"));
    }

    private static AFormula houseGrams(String grams) {
        return AFormula.ofOils("house-oil", grams).own(HouseMaterials.oilOfFive("house-oil"));
    }

    @Test
    void a_bar_of_1000_g_of_coconut_oil() {
        MakingSheet sheet = AFormula.ofOils("coconut", "100 %")
                .superfat("5 %")
                .water("33 % lye")
                .puritiesAssumed()
                .sheet(Fill.oilMass(1000));

        // coconut 248 to 265 mg KOH/g (CXS 210-1999 table 2), middle 256.5: 1000 × 256.5 / 56105 = 4.571785 mol
        // less 5 %: 4.343196 mol = 173.7148 g NaOH; of 98 % product 177.2600 g; water 173.7148 × 67 / 33 = 352.6937 g
        assertThat(exact(sheet, "coconut")).isEqualTo(1000);
        assertThat(exact(sheet, "naoh")).isEqualTo(177.2600, within(5e-5));
        assertThat(exact(sheet, "water")).isEqualTo(352.6937, within(5e-5));

        // jug 177 + 353 = 530 g: too much for the fine balance of 500 g. On the kitchen's 1 g the alkali would have 177
        // steps, under 200, so it goes into a cup on the fine one, 177.2 g; the water left in the jug would be no more
        // than
        // the fine one carries, but not with a jug of 300 g: 353 g
        assertThat(weighed(sheet, "naoh")).isEqualTo(177.2);
        assertThat(weighed(sheet, "water")).isEqualTo(353);
        assertThat(sheet.totals().batch()).isEqualTo(1530.2, within(1e-9));
        assertThat(sheet.totals().target()).isEmpty();
        assertThat(sheet.totals().offTarget()).isEmpty();

        // 177.2 × 0.98 = 173.656 g pure = 4.341726 mol, of 4.571785: superfat 5.0322 %
        assertThat(sheet.lye().naohPureGrams()).isEqualTo(173.656, within(1e-9));
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(5.0322, within(5e-5));
        assertThat(sheet.askedSuperfatPercent().orElseThrow()).isEqualTo(5, within(1e-12));
        // 173.656 / (173.656 + 353) = 32.9733 %
        assertThat(sheet.lye().concentrationPercent()).isEqualTo(32.9733, within(5e-5));
        assertThat(sheet.lye().waterInJugGrams()).isEqualTo(353);
        assertThat(sheet.lye().dissolvesIn()).containsExactly("water");
    }

    /** The example of the formula file's description, into 1500 g. */
    private static AFormula tideline() {
        return AFormula.ofOils("coconut", "80 %", "olive-virgin", "12 %", "castor", "rest")
                .superfat("18 %")
                .water("34 % lye")
                .curedWater("9 %")
                .forSale()
                .puritiesAssumed()
                .blendedAt("38 C", "38 C")
                .fade("plain", "kelp", 7)
                .add("green-clay", "12 g per kg portion oils", "portion kelp")
                .dispersed("water", "3 to 1", "1 h")
                .add("rosemary-oil", "2.2 % of oils", "every portion")
                .add("sea-salt", "60 % of oils", "every portion")
                .portions("plain", "60 %", "kelp", "rest");
    }

    @Test
    void tideline_into_1500_g() {
        MakingSheet sheet = tideline().sheet(Fill.mouldMass(1500));

        // saponification values: coconut 256.5 and castor 181.5 are middles (CXS 210 table 2; BP 1993), olive's 184 to
        // 196 is memory, so the lower of its middle 190 and what its fatty acids give, 193.0:
        // 0.80 × 256.5 + 0.12 × 190 + 0.08 × 181.5 = 242.52 mg KOH/g, 4.322609 mmol a gram; × 0.82 = 3.544540
        // NaOH pure 0.1417710 g a gram of oils, product / 0.98 = 0.1446642; water × 66 / 34 = 0.2752025
        // clay 0.4 × 0.012 = 0.0048 (its water is taken out of the water); rosemary 0.022; salt 0.6
        // sum 2.0466667, so the oils are 1500 / 2.0466667 = 732.899 g
        double oils = 732.899;
        assertThat(exact(sheet, "coconut")).isEqualTo(0.80 * oils, within(5e-3));
        assertThat(exact(sheet, "olive-virgin")).isEqualTo(0.12 * oils, within(5e-3));
        assertThat(exact(sheet, "castor")).isEqualTo(0.08 * oils, within(5e-3));
        assertThat(exact(sheet, "naoh")).isEqualTo(106.024, within(1e-3));
        assertThat(exact(sheet, "green-clay")).isEqualTo(3.5179, within(1e-4));
        assertThat(exact(sheet, "water", BatchLine.Kind.DISPERSING_LIQUID)).isEqualTo(10.5537, within(1e-4));
        assertThat(exact(sheet, "water", BatchLine.Kind.WATER)).isEqualTo(201.6956 - 10.5537, within(1e-3));
        assertThat(exact(sheet, "rosemary-oil")).isEqualTo(16.1238, within(1e-4));
        assertThat(exact(sheet, "sea-salt")).isEqualTo(439.739, within(1e-3));

        assertThat(sheet.totals().target()).contains(1500.0);
        assertThat(Math.abs(sheet.totals().offTarget().orElseThrow())).isLessThan(1);
        assertThat(sheet.sheetSuperfatPercent()).isBetween(18.0, 18.2);
    }

    @Test
    void tidelines_portions_and_fade() {
        MakingSheet sheet = tideline().sheet(Fill.mouldMass(1500), Sheets.LABORATORY);

        // base batter 732.899 × (1 + 0.1446642 + 0.2752025 − 0.0144) = 1030.065 g: plain 618.04 g, kelp 412.03 g
        PortionSheet plain = sheet.portions().get(0);
        PortionSheet kelp = sheet.portions().get(1);
        assertThat(plain.baseBatterGrams()).isEqualTo(618.04, within(0.02));
        assertThat(kelp.baseBatterGrams()).isEqualTo(412.03, within(0.02));
        // and 0.622 × 732.899 = 455.863 g of rosemary and salt, split 6 to 4, and clay with water, 14.07 g, in kelp
        assertThat(plain.totalGrams()).isEqualTo(618.04 + 273.52, within(0.04));
        assertThat(kelp.totalGrams()).isEqualTo(412.03 + 182.35 + 14.07, within(0.04));

        PortionSheet.PortionAddition clay = kelp.additions().get(0);
        assertThat(clay.of()).isEqualTo("green-clay");
        assertThat(clay.gramsPerKilogramPortionOils()).isEqualTo(12, within(0.02));
        assertThat(clay.gramsPerKilogramOils()).isEqualTo(4.8, within(0.01));
        assertThat(kelp.additions())
                .extracting(PortionSheet.PortionAddition::of)
                .containsExactly("green-clay", "rosemary-oil", "sea-salt");

        // the pour: 608.45 g of kelp and 891.56 g of plain in seven layers of 214.29 g
        assertThat(sheet.fade()).hasSize(7);
        assertThat(sheet.fade().get(0).pourGrams()).isEqualTo(1500 / 7.0, within(0.02));
        assertThat(sheet.fade().get(0).addPlainGrams()).isEqualTo(891.56 / 6, within(0.02));
        // second layer: (608.45 − 214.29) / (608.45 − 214.29 + 148.59) = 72.6 %
        assertThat(sheet.fade().get(1).colourPercent()).isEqualTo(72.62, within(0.02));
    }

    @Test
    void a_recipe_in_masses_is_made_as_it_is_written() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "750 g", "second-oil", "0.25 kg")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .own(HouseMaterials.oilOfFive("second-oil"))
                .superfat("5 %")
                .water("300 g")
                .add("sea-salt", "250 g", "trace")
                .add("kaolin", "12 g fixed", "trace")
                .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);

        assertThat(weighed(sheet, "house-oil")).isEqualTo(750);
        assertThat(weighed(sheet, "second-oil")).isEqualTo(250);
        assertThat(weighed(sheet, "water")).isEqualTo(300);
        assertThat(weighed(sheet, "sea-salt")).isEqualTo(250);
        assertThat(weighed(sheet, "kaolin")).isEqualTo(12);
        // 5 mol × 0.95 × 39.997 = 189.98575 g, down to 189.98
        assertThat(weighed(sheet, "naoh")).isEqualTo(189.98);
        assertThat(sheet.totals().batch()).isEqualTo(1751.98, within(1e-9));
    }

    @Test
    void a_table_in_grams_of_100_g_is_scaled_to_the_mould() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "38 g", "second-oil", "12 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .own(HouseMaterials.oilOfFive("second-oil"))
                .naohAsWeighed("9.5 g")
                .water("17.5 g")
                .add("sea-salt", "22 g", "trace")
                .add("lavender-oil", "1 g", "trace")
                .sheet(Fill.mouldMass(1500), Sheets.LABORATORY);

        // 38 + 12 + 9.5 + 17.5 + 22 + 1 = 100 g, so all is × 15
        assertThat(exact(sheet, "house-oil")).isEqualTo(570, within(1e-9));
        assertThat(exact(sheet, "second-oil")).isEqualTo(180, within(1e-9));
        assertThat(exact(sheet, "naoh")).isEqualTo(142.5, within(1e-9));
        assertThat(exact(sheet, "water")).isEqualTo(262.5, within(1e-9));
        assertThat(exact(sheet, "sea-salt")).isEqualTo(330, within(1e-9));
        assertThat(exact(sheet, "lavender-oil")).isEqualTo(15, within(1e-9));
        // 50 g of oil take 0.25 mol; 9.5 / 39.997 = 0.237518 mol: superfat 4.9929 %
        assertThat(sheet.askedSuperfatPercent()).isEmpty();
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(4.9929, within(0.005));
    }

    @Test
    void a_fixed_mass_of_a_recipe_in_masses_is_not_scaled() {
        MakingSheet sheet = houseGrams("500 g")
                .superfat("0 %")
                .water("200 g fixed")
                .add("kaolin", "10 g fixed", "trace")
                .add("rose-clay", "10 g", "trace")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(weighed(sheet, "kaolin")).isEqualTo(10);
        assertThat(weighed(sheet, "rose-clay")).isEqualTo(20);
        assertThat(weighed(sheet, "water")).isEqualTo(200);
    }

    @Test
    void alkali_given_as_weighed_makes_the_superfat() {
        MakingSheet sheet = houseGrams("1000 g")
                .naohAsWeighed("190 g")
                .purities("naoh=98")
                .water("300 g")
                .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);

        // 190 × 0.98 = 186.2 g = 4.655349 mol of 5: 6.8930 %
        assertThat(weighed(sheet, "naoh")).isEqualTo(190);
        assertThat(sheet.lye().naohPureGrams()).isEqualTo(186.2, within(1e-9));
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(6.8930, within(5e-5));
        assertThat(sheet.askedSuperfatPercent()).isEmpty();
    }

    @Test
    void alkali_given_as_pure_is_weighed_as_the_product() {
        MakingSheet sheet = houseGrams("1000 g")
                .naohPure("186.2 g")
                .purities("naoh=98")
                .water("300 g")
                .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);

        assertThat(weighed(sheet, "naoh")).isEqualTo(190);
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(6.8930, within(5e-5));
    }

    @Test
    void alkali_and_superfat_both_given_and_at_odds_are_refused() {
        Outcome<MakingSheet> sheet = houseGrams("1000 g")
                .superfat("8 %")
                .naohPure("186.2 g")
                .water("300 g")
                .trySheet(Fill.AS_WRITTEN, Equipment.USUAL);

        assertThat(sheet.problems()).hasSize(1);
        assertThat(sheet.problems().get(0).path()).isEqualTo("superfat");
        assertThat(sheet.problems().get(0).sentence())
                .isEqualTo("the alkali given makes a superfat of 6.89 %, not 8 %; leave one of the two out, or write"
                        + " 6.89 %");
    }

    @Test
    void alkali_and_superfat_both_given_agree_when_one_rounds_to_the_other() {
        // 186.2 g pure makes 6.8930 %
        for (String agreeing : List.of("7 %", "6.9 %", "6.89 %", "6.85 %")) {
            MakingSheet sheet = houseGrams("1000 g")
                    .superfat(agreeing)
                    .naohPure("186.2 g")
                    .water("300 g")
                    .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);
            assertThat(weighed(sheet, "naoh")).as(agreeing).isEqualTo(186.2);
            assertThat(sheet.askedSuperfatPercent()).as(agreeing).isEmpty();
        }
        for (String atOdds : List.of("6 %", "7.0 %", "6.8 %", "6.95 %")) {
            Outcome<MakingSheet> sheet = houseGrams("1000 g")
                    .superfat(atOdds)
                    .naohPure("186.2 g")
                    .water("300 g")
                    .trySheet(Fill.AS_WRITTEN, Sheets.LABORATORY);
            assertThat(sheet.problems()).as(atOdds).hasSize(1);
        }
    }

    @Test
    void stock_lye_brings_its_own_water() {
        MakingSheet sheet = house().own(HouseMaterials.stockLye("stock-50", "50 %", Alkali.SODIUM))
                .stockLye("stock-50")
                .superfat("5 %")
                .water("33 % lye")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // 5 × 0.95 mol = 189.98575 g pure, in 379.9715 g of stock; the rule asks 189.98575 × 67 / 33 = 385.7286 g of
        // water, the stock holds 189.98575 g: 195.7429 g of plain water
        assertThat(exact(sheet, "stock-50")).isEqualTo(379.9715, within(1e-6));
        assertThat(exact(sheet, "water")).isEqualTo(195.7429, within(1e-4));
        assertThat(weighs(sheet, "naoh")).isFalse();
        assertThat(sheet.lye().naohGrams()).isEqualTo(379.97);
        assertThat(sheet.lye().naohPureGrams()).isEqualTo(189.985, within(1e-9));
        assertThat(sheet.totals().water()).isEqualTo(189.985 + 195.74, within(1e-9));
        assertThat(sheet.totals().waterBrought()).isZero();
        assertThat(sheet.lye().concentrationPercent()).isEqualTo(33, within(0.001));
    }

    @Test
    void stock_lye_weaker_than_the_rule_brings_too_much_water() {
        Outcome<MakingSheet> sheet = house().own(HouseMaterials.stockLye("stock-30", "30 %", Alkali.SODIUM))
                .stockLye("stock-30")
                .superfat("5 %")
                .water("33 % lye")
                .trySheet(Fill.oilMass(1000), Equipment.USUAL);

        // 189.98575 × (70 / 30 − 67 / 33) = 57.6 g too much
        assertThat(sheet.problems()).hasSize(1);
        assertThat(sheet.problems().get(0).path()).isEqualTo("water");
        assertThat(sheet.problems().get(0).what()).contains("57.6 g");
    }

    @Test
    void a_given_mass_of_stock_lye_makes_the_superfat() {
        MakingSheet sheet = houseGrams("1000 g")
                .own(HouseMaterials.stockLye("potash-lye", "45 %", Alkali.POTASSIUM))
                .stockLye("potash-lye", "600 g")
                .water("500 g")
                .sheet(Fill.AS_WRITTEN, Sheets.LABORATORY);

        // 600 × 0.45 = 270 g KOH = 4.812405 mol of 5: 3.7519 %; its water 330 g, so 170 g of plain
        assertThat(weighed(sheet, "potash-lye")).isEqualTo(600);
        assertThat(weighed(sheet, "water")).isEqualTo(170);
        assertThat(sheet.lye().kohGrams()).isEqualTo(600);
        assertThat(sheet.lye().kohPureGrams()).isEqualTo(270, within(1e-9));
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(3.7519, within(5e-5));
    }

    @Test
    void mixed_alkali_as_weighed_shows_all_three_shares() {
        MakingSheet sheet = house().superfat("4 %")
                .mixed("40 %", "60 %", AlkaliChoice.Basis.AS_WEIGHED)
                .purities("naoh=98,koh=90")
                .water("30 % of oils")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // of 100 g as weighed: 39.2 g NaOH = 0.9800735 mol, 54 g KOH = 0.9624811 mol; 1.9425546 mol
        // needed 5 × 0.96 = 4.8 mol: × 2.4709730, so 98.83892 g NaOH product and 148.25838 g KOH product
        assertThat(exact(sheet, "naoh")).isEqualTo(98.8389, within(1e-3));
        assertThat(exact(sheet, "koh")).isEqualTo(148.2584, within(1e-3));
        LyeSheet lye = sheet.lye();
        assertThat(lye.potassiumWeighedPercent()).isEqualTo(60, within(0.01));
        // pure 54 / 93.2 = 57.940 %; moles 0.9624811 / 1.9425546 = 49.547 %
        assertThat(lye.potassiumPurePercent()).isEqualTo(57.940, within(0.01));
        assertThat(lye.potassiumMolesPercent()).isEqualTo(49.547, within(0.01));
        // what potash lacks is water: 14.826 g, beside the rule's 300 g
        assertThat(sheet.totals().waterBrought()).isEqualTo(14.825, within(0.002));
        assertThat(sheet.totals().water()).isEqualTo(300);
        assertThat(lye.waterInJugGrams()).isEqualTo(314.825, within(0.002));
    }

    @Test
    void goat_milk_may_replace_all_the_water() {
        MakingSheet sheet = house().superfat("5 %")
                .water("30 % of oils")
                .acids(AcidRule.AS_WRITTEN)
                .add("goat-milk", "30 % of oils", "lye")
                .replacingWater()
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // 300 g of milk for 300 g of water: no plain water; its 87.03 % water (USDA SR28) is what the alkali dissolves
        // in
        assertThat(weighs(sheet, "water")).isFalse();
        assertThat(weighed(sheet, "goat-milk")).isEqualTo(300);
        assertThat(sheet.totals().water()).isEqualTo(300);
        assertThat(sheet.totals().waterBrought()).isZero();
        assertThat(sheet.lye().waterInJugGrams()).isEqualTo(261.09, within(1e-9));
        // 189.98 / (189.98 + 261.09) = 42.118 %
        assertThat(sheet.lye().concentrationPercent()).isEqualTo(42.118, within(1e-3));
        assertThat(sheet.lye().dissolvesIn()).containsExactly("goat-milk");
        // its fat, 300 × 0.0414 = 12.42 g of 232 mg KOH/g (memory), takes 0.051358 mol that no alkali was weighed for:
        // 1 − 189.98 / 39.997 / 5.051358 = 5.968 %
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(5.968, within(1e-3));
    }

    @Test
    void the_fat_of_milk_is_compensated_where_acids_are() {
        MakingSheet sheet = house().superfat("5 %")
                .water("30 % of oils")
                .acids(AcidRule.COMPENSATE)
                .add("goat-milk", "30 % of oils", "lye")
                .replacingWater()
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // (5 + 0.051358) × 0.95 = 4.798790 mol = 191.9372 g
        assertThat(exact(sheet, "naoh")).isEqualTo(191.937, within(1e-3));
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(5, within(0.005));
    }

    @Test
    void vinegar_that_does_not_replace_water_brings_its_own() {
        MakingSheet sheet = house().superfat("5 %")
                .water("30 % of oils")
                .acids(AcidRule.AS_WRITTEN)
                .add("vinegar-5", "10 % of oils", "lye")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // the rule's 300 g are all weighed; 95 g of water come with the vinegar and are not taken off
        assertThat(weighed(sheet, "water")).isEqualTo(300);
        assertThat(sheet.totals().water()).isEqualTo(300);
        assertThat(sheet.totals().waterBrought()).isEqualTo(95, within(1e-9));
        assertThat(sheet.lye().waterInJugGrams()).isEqualTo(395, within(1e-9));
        // 100 g × 0.8326 mmol take 0.08326 mol: alkali that reaches the oil 189.98 / 39.997 − 0.08326 = 4.666596 of 5
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(6.668, within(1e-3));
    }

    @Test
    void citric_acid_takes_alkali_as_written_or_compensated() {
        AFormula asWritten = house().superfat("5 %").forSale().add("citric-acid-anhydrous", "20 g per kg oils", "lye");
        AFormula compensated = house().superfat("5 %").add("citric-acid-anhydrous", "20 g per kg oils", "lye");

        // 20 g × 3 / 192.123 = 0.3123 mol, 6.246 points of 5 mol and 12.491 g of NaOH
        MakingSheet first = asWritten.sheet(Fill.oilMass(1000), Sheets.LABORATORY);
        assertThat(exact(first, "naoh")).isEqualTo(189.98575, within(1e-6));
        assertThat(first.sheetSuperfatPercent()).isEqualTo(5 + 6.246, within(0.005));
        MakingSheet second = compensated.sheet(Fill.oilMass(1000), Sheets.LABORATORY);
        assertThat(exact(second, "naoh")).isEqualTo(189.98575 + 12.491, within(1e-3));
        assertThat(second.sheetSuperfatPercent()).isEqualTo(5, within(0.005));
    }

    @Test
    void glycerin_and_oil_for_wetting_out_come_from_where_they_should() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "90 %", "castor", "10 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %")
                .add("activated-charcoal", "10 g per kg oils", "trace")
                .dispersed("castor", "4 to 1")
                .add("mica-white", "5 g per kg oils", "trace")
                .dispersed("glycerin", "2 to 1")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // castor 100 g in all, 40 g of it with the charcoal; 10 g of glycerin on top, half a percent of it water
        assertThat(exact(sheet, "castor", BatchLine.Kind.OIL)).isEqualTo(60, within(1e-9));
        assertThat(exact(sheet, "castor", BatchLine.Kind.DISPERSING_LIQUID)).isEqualTo(40, within(1e-9));
        assertThat(weighed(sheet, "glycerin")).isEqualTo(10);
        assertThat(sheet.totals().oils()).isEqualTo(1000, within(1e-9));
        assertThat(sheet.totals().waterBrought()).isEqualTo(0.05, within(1e-9));
    }

    @Test
    void a_volume_is_weighed_by_its_density() {
        MakingSheet sheet =
                house().superfat("5 %").add("glycerin", "20 ml", "trace").sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // 20 ml × 1.261 g/ml
        assertThat(weighed(sheet, "glycerin")).isEqualTo(25.22);
    }

    @Test
    void bars_asked_for_as_cured_come_out_at_that_mass() {
        Fill fill = new Fill(new Fill.Bars(10, 110, true), Mould.UNKNOWN, Optional.empty(), 0.02);
        MakingSheet sheet = house().superfat("5 %").curedWater("10 %").sheet(fill, Sheets.LABORATORY);

        MakingSheet.Bars bars = sheet.bars().orElseThrow();
        assertThat(bars.count()).isEqualTo(10);
        assertThat(bars.curedGrams()).isEqualTo(110, within(0.01));
        assertThat(bars.cutGrams()).isEqualTo(sheet.totals().mould() / 10, within(1e-9));
        // dry matter and a tenth of water: cut × (batch − water) / batch / 0.9
        double dryShare = 1 - sheet.totals().water() / sheet.totals().batch();
        assertThat(bars.curedGrams()).isEqualTo(bars.cutGrams() * dryShare / 0.9, within(1e-9));
        assertThat(bars.offcutsGrams()).isZero();
    }
}
