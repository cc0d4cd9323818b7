package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Allocation.Why;
import org.junit.jupiter.api.Test;

/** Lots that a maker picks by hand. Every expected amount is reckoned beside it. */
class PickedTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private static final Lot MAY = lot("may", "2027-05-01", LotStatus.USABLE, 300);
    private static final Lot JUNE = lot("june", "2027-06-01", LotStatus.USABLE, 500);
    private static final Lot JULY = lot("july", "2027-07-01", LotStatus.USABLE, 900);
    private static final Lot GONE = lot("gone", "2026-11-27", LotStatus.USABLE, 100);
    private static final Lot HELD = lot("held", "2027-01-01", LotStatus.QUARANTINE, 100);
    private static final Lot BAD = lot("bad", "2027-01-01", LotStatus.REFUSED, 100);
    private static final Lot EMPTY = lot("empty", "2027-01-01", LotStatus.USABLE, 0);
    private static final List<Lot> ALL = List.of(JULY, MAY, GONE, HELD, JUNE, BAD, EMPTY);

    private static Lot lot(String code, String bestBefore, LotStatus status, long left) {
        return new Lot("id-" + code, code, Optional.of(LocalDate.parse(bestBefore)), DAY.minusDays(30), status, left);
    }

    private static Picked first(Lot lot) {
        return new Picked(Optional.of(lot.id()), Set.of());
    }

    @Test
    void nothing_picked_is_first_expired_first_out() {
        assertThat(Picked.NOTHING.of(700, ALL, DAY).orThrow())
                .isEqualTo(Allocation.firstExpiredFirstOut(700, ALL, DAY));
    }

    @Test
    void what_is_taken_first_goes_as_far_as_it_does_and_the_rest_is_first_expired_first_out() {
        // 500 of June, then 300 of May, then 50 of July
        assertThat(first(JUNE).of(850, ALL, DAY).orThrow().taken())
                .containsExactly(new Taken(JUNE, 500), new Taken(MAY, 300), new Taken(JULY, 50));
        assertThat(first(JULY).of(850, ALL, DAY).orThrow().taken()).containsExactly(new Taken(JULY, 850));
    }

    @Test
    void what_is_left_out_is_not_taken_and_is_told_of() {
        Allocation allocation = new Picked(Optional.empty(), Set.of("id-may", "id-july", "id-nobody"))
                .of(700, ALL, DAY)
                .orThrow();
        assertThat(allocation.taken()).containsExactly(new Taken(JUNE, 500));
        assertThat(allocation.shortBy()).isEqualTo(200);
        assertThat(allocation.passedOver())
                .filteredOn(over -> over.why() == Why.LEFT_OUT)
                .extracting(over -> over.lot().code())
                .containsExactly("may", "july");
    }

    @Test
    void what_must_not_be_used_is_refused_in_a_sentence() {
        assertThat(List.of(HELD, BAD, GONE, EMPTY))
                .extracting(lot -> says(first(lot).of(50, ALL, DAY)))
                .containsExactly(
                        "lot held is in quarantine",
                        "lot bad is refused",
                        "lot gone is past its best before",
                        "lot empty holds nothing");
        assertThat(says(new Picked(Optional.of("id-may"), Set.of("id-may")).of(50, ALL, DAY)))
                .isEqualTo("lot may cannot be taken first and left out as well");
        assertThat(says(new Picked(Optional.of("id-nobody"), Set.of()).of(50, ALL, DAY)))
                .isEqualTo("the lot that was chosen is not in the cupboard");
    }

    private static String says(Outcome<Allocation> outcome) {
        return outcome.problems().stream().map(Problem::what).findFirst().orElse("taken");
    }

    @Test
    void a_lot_of_another_material_is_refused_and_the_sheet_goes_on_without_it() {
        Lot coconut = lot("coco", "2027-05-01", LotStatus.USABLE, 900);
        Cupboard cupboard = Cupboard.look(
                List.of(new Cupboard.Need("olive", "Olive oil", 100)),
                Map.of("olive", ALL, "coconut", List.of(coconut)),
                Map.of("olive", first(coconut)),
                DAY);
        assertThat(cupboard.refused()).extracting(Problem::what).containsExactly("lot coco is of another material");
        assertThat(cupboard.lines().get(0).allocation().taken()).containsExactly(new Taken(MAY, 100));
    }

    @Test
    void what_is_left_out_makes_no_bars() {
        // 800 of 1700 are left out; a need of 450 for 10 bars then allows 900 / 45 = 20
        Cupboard cupboard = Cupboard.look(
                List.of(new Cupboard.Need("olive", "Olive oil", 450)),
                Map.of("olive", ALL),
                Map.of("olive", new Picked(Optional.empty(), Set.of("id-may", "id-june"))),
                DAY);
        assertThat(cupboard.barsAllowed(10)).isEqualTo(20);
    }

    @Test
    void the_certificates_that_count_are_those_of_the_lots_that_were_picked() {
        Map<String, OwnMaterial> certificates = Map.of("id-june", certificate("190.0 ± 0.5"));
        assertThat(figures(400, Picked.NOTHING, certificates).any()).isFalse();
        LotFigures june = figures(400, first(JUNE), certificates);
        assertThat(june.lots()).containsExactly("june");
        assertThat(june.materials().values()).containsExactlyElementsOf(certificates.values());
    }

    @Test
    void two_lots_that_were_picked_are_mixed_by_mass() {
        Map<String, OwnMaterial> certificates = Map.of("id-june", certificate("190.0"), "id-may", certificate("188.0"));
        LotFigures mixed = figures(625, first(JUNE), certificates);
        assertThat(mixed.lots()).containsExactly("june", "may");
        // 500 of 190.0 and 125 of 188.0: (95000 + 23500) / 625 = 189.6
        assertThat(mixed.materials().values())
                .singleElement()
                .satisfies(own -> assertThat(
                                own.saponificationValue().orElseThrow().toString())
                        .startsWith("189.6"));
    }

    private static LotFigures figures(long need, Picked picked, Map<String, OwnMaterial> certificates) {
        return LotFigures.of(
                Cupboard.look(
                        List.of(new Cupboard.Need("olive-virgin", "Olive oil", need)),
                        Map.of("olive-virgin", List.of(MAY, JUNE)),
                        Map.of("olive-virgin", picked),
                        DAY),
                certificates);
    }

    private static OwnMaterial certificate(String saponificationValue) {
        return FormulaFile.read(
                        "recipe: x\noils: {olive-virgin: 100 %}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n"
                                + "materials:\n  olive-virgin:\n    saponification value: " + saponificationValue
                                + " mg KOH/g\n")
                .formula()
                .orElseThrow()
                .materials()
                .get(0);
    }

    @Test
    void whatever_is_picked_the_amounts_make_the_need_and_no_lot_gives_more_than_it_holds() {
        Random random = new Random(17);
        for (int i = 0; i < 2_000; i++) {
            List<Lot> lots = IntStream.range(0, 1 + random.nextInt(7))
                    .mapToObj(n -> lot(
                            "c" + n,
                            DAY.plusDays(random.nextInt(20) - 4).toString(),
                            List.of(LotStatus.QUARANTINE, LotStatus.USABLE, LotStatus.REFUSED)
                                    .get(random.nextInt(3)),
                            random.nextInt(400) - 10))
                    .toList();
            Set<String> out = Set.of("id-c" + random.nextInt(7));
            Picked picked = new Picked(Optional.of("id-c" + random.nextInt(7)), out);
            long need = random.nextInt(1_200);
            if (picked.of(need, lots, DAY) instanceof Outcome.Ok<Allocation> ok) {
                Allocation allocation = ok.value();
                long taken =
                        allocation.taken().stream().mapToLong(Taken::amount).sum();
                assertThat(taken).isEqualTo(Math.min(need, picked.usableAmount(lots, DAY)));
                assertThat(taken + allocation.shortBy()).isEqualTo(need);
                assertThat(allocation.taken())
                        .allMatch(part -> part.amount() <= part.lot().left()
                                && !out.contains(part.lot().id())
                                && part.lot().status() == LotStatus.USABLE
                                && !part.lot().isExpired(DAY));
            }
        }
    }

    @Test
    void lye_under_an_oils_name_is_not_taken_even_when_it_is_picked_and_oil_is_not_taken_as_lye() {
        Lot lye = new Lot("id-lye", "lye", Optional.empty(), DAY.minusDays(1), LotStatus.USABLE, 900, true);
        Map<String, List<Lot>> lots = Map.of("coconut", List.of(lye, MAY));
        Cupboard.Line oil = Cupboard.look(
                        List.of(new Cupboard.Need("coconut", "Coconut oil", 400)),
                        lots,
                        Map.of("coconut", first(lye)),
                        DAY)
                .lines()
                .get(0);
        assertThat(oil.allocation().taken()).containsExactly(new Taken(MAY, 300));
        assertThat(oil.allocation().shortBy()).isEqualTo(100);
        assertThat(oil.usable()).isEqualTo(300);
        assertThat(oil.refused().orElseThrow().what()).isEqualTo("lot lye is lye or alkali, not Coconut oil");
        Cupboard.Line alkali = Cupboard.look(List.of(new Cupboard.Need("coconut", "coconut", 400, true)), lots, DAY)
                .lines()
                .get(0);
        assertThat(alkali.allocation().taken()).containsExactly(new Taken(lye, 400));
        assertThat(alkali.allocation().passedOver()).containsExactly(new Allocation.PassedOver(MAY, Why.OTHER_KIND));
    }
}
