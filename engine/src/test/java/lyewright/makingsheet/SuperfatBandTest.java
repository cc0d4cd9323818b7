package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.fill.Fill;
import org.junit.jupiter.api.Test;

class SuperfatBandTest {

    /** Points of superfat: what the ends of an interval may still move by. */
    private static final double SETTLED = 0.03;

    /**
     * One oil, known but for its saponification value: superfat = 100 × (1 − a ÷ SV) with a = 0.98 × 256.5, SV anywhere from
     * 248 to 265 (Codex CXS 210-1999, Table 2). Ends at 2.5 and 97.5 % of that range, chance of SV under a: by hand.
     */
    @Test
    void coconut_alone_agrees_with_the_closed_form() {
        SuperfatBand band = sheet("2 %").band();

        assertThat(band.lowPercent()).isCloseTo(100 * (1 - 0.98 * 256.5 / 248.425), within(SETTLED));
        assertThat(band.highPercent()).isCloseTo(100 * (1 - 0.98 * 256.5 / 264.575), within(SETTLED));
        assertThat(band.worstPercent()).isCloseTo(-1.36, within(0.005));
        assertThat(band.freeAlkaliProbability()).isCloseTo((0.98 * 256.5 - 248) / 17, within(0.005));
    }

    private static MakingSheet sheet(String superfat) {
        Equipment fine = Equipment.parseBalances("laboratory:2kg:0.001g").orThrow();
        return AFormula.ofOils("coconut", "100 %").superfat(superfat).sheet(Fill.oilMass(1000), fine);
    }
}
