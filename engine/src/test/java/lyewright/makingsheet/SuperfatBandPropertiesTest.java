package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.SuperfatBand.Contribution;
import lyewright.makingsheet.SuperfatBand.Gain;
import lyewright.makingsheet.SuperfatBand.Verdict;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** What holds for the band of every sheet that can be made, on generated formulas. A case is its seed. */
class SuperfatBandPropertiesTest {

    private static final int CASES = 420;

    private static final List<Equipment> REGISTERS = List.of(
            Equipment.USUAL,
            Sheets.LABORATORY,
            Equipment.parseBalances("counter:25lb:0.05oz").orThrow());

    private static final List<Purities> PURITIES = List.of(
            Purities.ASSUMED,
            Purities.parse("naoh=98.5,koh=90").orThrow(),
            Purities.parse("naoh=98±0.5,koh=89 to 91").orThrow());

    /** One band and where it is from. */
    private record Of(long seed, String portion, SuperfatBand band) {
        @Override
        public String toString() {
            return "case " + seed + " " + portion;
        }
    }

    private static List<Of> bands() {
        List<Of> bands = new ArrayList<>();
        for (long seed = 0; seed < CASES; seed++) {
            int which = (int) seed;
            Outcome<MakingSheet> made = ResolvedFormula.of(
                            RandomFormulas.of(seed), Tables.bundled(), PURITIES.get(which % PURITIES.size()))
                    .then(f -> MakingSheet.of(
                            f, Fill.mouldMass(1500), REGISTERS.get(which / PURITIES.size() % REGISTERS.size())));
            if (made instanceof Outcome.Ok<MakingSheet> ok) {
                bands.add(new Of(seed, "", ok.value().band()));
                List<PortionSheet> portions = ok.value().portions();
                if (!portions.isEmpty()) {
                    PortionSheet portion = portions.get(which % portions.size());
                    bands.add(new Of(seed, portion.name(), portion.band()));
                }
            }
        }
        assertThat(bands).as("some hundred bands").hasSizeGreaterThan(180);
        return bands;
    }

    private static final List<Of> BANDS = bands();

    /** What an end may be off: twice the tolerance, or a hundredth of a wide band. */
    private static double settled(double width) {
        return Math.max(2 * SuperfatBand.TOLERANCE, width / 100);
    }

    @Test
    void the_low_end_is_under_the_high_one_and_the_worst_under_both() {
        for (Of of : BANDS) {
            SuperfatBand band = of.band;
            assertThat(band.lowPercent()).as(of.toString()).isLessThanOrEqualTo(band.highPercent());
            assertThat(band.highPercent()).as(of.toString()).isLessThanOrEqualTo(100);
            assertThat(band.worstPercent())
                    .as(of.toString())
                    .isLessThanOrEqualTo(band.lowPercent() + settled(band.highPercent() - band.lowPercent()))
                    .isLessThanOrEqualTo(band.sheetPercent() + 1e-9);
        }
    }

    @Test
    void the_chance_of_free_alkali_agrees_with_the_band_and_the_worst() {
        for (Of of : BANDS) {
            SuperfatBand band = of.band;
            double chance = band.freeAlkaliProbability();
            assertThat(chance).as(of.toString()).isBetween(0.0, 1.0);
            // 1 in 40 lies under the low end and as much over the high one; near an end either may be
            if (band.lowPercent() > 0) {
                assertThat(chance).as(of.toString()).isLessThanOrEqualTo(0.025);
            }
            if (band.lowPercent() < -0.05) {
                assertThat(chance).as(of.toString()).isGreaterThan(0.02);
            }
            if (band.highPercent() < 0) {
                assertThat(chance).as(of.toString()).isGreaterThanOrEqualTo(0.975);
            }
            if (band.surelyWithoutAlkali()) {
                assertThat(chance).as(of.toString()).isLessThan(0.0001);
            }
        }
    }

    @Test
    void contributions_add_up_to_a_hundred_or_there_are_none() {
        for (Of of : BANDS) {
            List<Contribution> contributions = of.band.contributions();
            double sum = contributions.stream()
                    .mapToDouble(Contribution::percentOfVariance)
                    .sum();
            if (!contributions.isEmpty()) {
                assertThat(sum).as(of.toString()).isEqualTo(100, within(1e-6));
            }
            assertThat(contributions)
                    .as(of.toString())
                    .isSortedAccordingTo(Comparator.comparingDouble(Contribution::percentOfVariance)
                            .reversed())
                    .allSatisfy(c -> assertThat(c.percentOfVariance()).isPositive());
        }
    }

    @Test
    void a_certificate_never_widens_the_band() {
        int gains = 0;
        for (Of of : BANDS.subList(0, BANDS.size() / 6)) {
            Optional<Gain> gain = of.band.certificateGain();
            if (gain.isPresent()) {
                gains++;
                double before = of.band.highPercent() - of.band.lowPercent();
                assertThat(gain.get().highPercent() - gain.get().lowPercent())
                        .as(of.toString())
                        .isLessThan(before + settled(before));
            }
        }
        assertThat(gains).isGreaterThan(10);
    }

    @Test
    void every_band_is_said_in_whole_sentences() {
        for (Of of : BANDS) {
            String sentence = of.band.sentence();
            String word = of.band.verdict() == Verdict.CAUSTIC
                    ? ""
                    : of.band.verdict().word();
            assertThat(sentence)
                    .as(of.toString())
                    .matches(first -> first.toLowerCase(Locale.ROOT).startsWith(word), "begins with its verdict")
                    .endsWith(".")
                    .doesNotContain("NaN", "Infinity", "{}", "  ", "10 chances in 10", "1 chance in 1 ");
            assertThat(of.band.beforeCertificateOf().isPresent())
                    .as(of.toString())
                    .isEqualTo(sentence.contains("before a certificate"));
            if (of.band.verdict() == Verdict.SAFE) {
                assertThat(of.band.beforeCertificateOf()).as(of.toString()).isEmpty();
            }
        }
    }

    @Test
    void all_verdicts_occur_among_the_cases() {
        assertThat(BANDS).extracting(of -> of.band.verdict()).contains(Verdict.values());
    }
}
