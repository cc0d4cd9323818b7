package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.fill.Fill;
import org.junit.jupiter.api.Test;

class PortionSuperfatTest {

    private static final double TOLERANCE = 0.01; // percent, weighed to 0.01 g

    private static AFormula house() {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("6 %")
                .portions("plain", "50 %", "clay", "rest");
    }

    @Test
    void portions_that_get_the_same_have_the_batchs_superfat() {
        MakingSheet sheet = house().add("lavender-oil", "2 % of oils", "every portion")
                .add("kaolin", "10 g per kg oils", "portion clay")
                .dispersed("water", "2 to 1")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(sheet.portions())
                .allSatisfy(portion ->
                        assertThat(portion.superfatPercent()).isEqualTo(sheet.sheetSuperfatPercent(), within(1e-9)));
    }

    @Test
    void oil_that_clay_is_wetted_out_with_is_missing_in_the_other_portion() {
        // 20 g of 1000 g of oils go into the clay's half: base oils 980 g, alkali for 940 g, halved
        // plain 1 - 470 / 490 = 4.08 %, clay 1 - 470 / 510 = 7.84 %
        MakingSheet sheet = house().add("kaolin", "10 g per kg oils", "portion clay")
                .dispersed("oil", "2 to 1")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(sheet.portions().get(0).superfatPercent()).isEqualTo(100 * (1 - 470.0 / 490), within(TOLERANCE));
        assertThat(sheet.portions().get(1).superfatPercent()).isEqualTo(100 * (1 - 470.0 / 510), within(TOLERANCE));
    }

    @Test
    void acid_in_one_portion_takes_its_alkali_there_only() {
        // 10 g of anhydrous citric acid, 0.15615 mol, compensated: alkali 4.7 + 0.15615 mol, half of it for 2.5 mol
        MakingSheet sheet = house().add("citric-acid-anhydrous", "10 g", "portion clay")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        double half = (4.7 + 0.15615) / 2;
        assertThat(sheet.portions().get(0).superfatPercent()).isEqualTo(100 * (1 - half / 2.5), within(TOLERANCE));
        assertThat(sheet.portions().get(1).superfatPercent())
                .isEqualTo(100 * (1 - (half - 0.15615) / 2.5), within(TOLERANCE));
        assertThat(sheet.sheetSuperfatPercent()).isEqualTo(6, within(TOLERANCE));
    }
}
