package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;

/** What of the cupboard is old for a recipe. Dates are counted by hand; that soap cures four to six weeks is common practice. */
class ExpiryTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private static Lot lot(String code, LocalDate bestBefore, LotStatus status, long left) {
        return new Lot("id-" + code, code, Optional.of(bestBefore), DAY.minusDays(90), status, left);
    }

    private static List<Expiry> of(Lot... lots) {
        return Expiry.of(List.of("coconut"), Map.of("coconut", List.of(lots)), DAY, 6);
    }

    @Test
    void a_batch_cures_six_weeks_at_most() {
        assertThat(Expiry.weeksOfCure(Tables.bundled())).isEqualTo(6);
    }

    @Test
    void a_lot_must_be_good_until_the_batch_is_cured() {
        // 28 November and 42 days is 9 January
        LocalDate cured = LocalDate.of(2027, 1, 9);
        assertThat(of(lot("a", cured, LotStatus.USABLE, 1))).isEmpty();
        assertThat(of(lot("a", cured.minusDays(1), LotStatus.USABLE, 1)))
                .extracting(Expiry::isOver)
                .containsExactly(false);
        assertThat(of(lot("a", DAY, LotStatus.USABLE, 1)))
                .extracting(Expiry::isOver)
                .containsExactly(false);
        assertThat(of(lot("a", DAY.minusDays(1), LotStatus.USABLE, 1)))
                .extracting(Expiry::isOver)
                .containsExactly(true);
    }

    @Test
    void what_is_empty_or_not_to_be_used_is_not_spoken_of() {
        assertThat(of(
                        lot("a", DAY, LotStatus.USABLE, 0),
                        lot("b", DAY, LotStatus.QUARANTINE, 5),
                        lot("c", DAY, LotStatus.REFUSED, 5)))
                .isEmpty();
    }

    @Test
    void it_is_told_whether_there_is_other_of_it_and_what_presses_most() {
        Lot over = lot("over", DAY.minusDays(1), LotStatus.USABLE, 5);
        Lot soon = lot("soon", DAY.plusDays(5), LotStatus.USABLE, 5);
        Lot good = lot("good", DAY.plusDays(500), LotStatus.USABLE, 5);
        assertThat(of(over)).extracting(Expiry::others).containsExactly(false);
        assertThat(of(soon, good, over))
                .containsExactly(new Expiry("coconut", over, true, true), new Expiry("coconut", soon, false, true));
        assertThat(Expiry.mostPressing(of(soon, over))).map(Expiry::lot).contains(over);
    }

    @Test
    void a_recipe_takes_its_oils_its_additions_what_they_are_stirred_into_and_its_alkali() {
        var read = FormulaFile.read("""
                        recipe: Bar
                        oils: {coconut: 40 %, house-blend: 60 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        additions:
                          - {of: kaolin, amount: 1 % of oils, stage: trace, disperse: {in: glycerin, ratio: 3 to 1}}
                        materials:
                          house-blend: {kind: oils, oils: {olive-virgin: 50 %, castor: 50 %}}
                        """);
        assertThat(read.problems()).isEmpty();
        Formula formula = read.formula().orElseThrow();
        assertThat(Expiry.takenBy(formula)).containsExactly("coconut", "house-blend", "kaolin", "glycerin", "naoh");
    }
}
