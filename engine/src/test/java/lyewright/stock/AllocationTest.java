package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import lyewright.measure.Outcome;
import lyewright.stock.Allocation.PassedOver;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Allocation.Why;
import org.junit.jupiter.api.Test;

/** First expired, first out: worked cases of this project's own, the order being common practice. */
class AllocationTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static Lot lot(String code, String bestBefore, String received, LotStatus status, long left) {
        Optional<LocalDate> last = bestBefore.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(bestBefore));
        return new Lot("id-" + code, code, last, LocalDate.parse(received), status, left);
    }

    private static final Lot SPRING = lot("spring", "2027-03-01", "2026-03-01", LotStatus.USABLE, 400);
    private static final Lot WINTER = lot("winter", "2026-12-24", "2026-06-01", LotStatus.USABLE, 100);
    private static final Lot ENDLESS = lot("endless", "", "2020-01-01", LotStatus.USABLE, 1_000);
    private static final Lot YESTERDAY = lot("yesterday", "2026-11-24", "2026-01-01", LotStatus.USABLE, 50);
    private static final Lot TODAY = lot("today", "2026-11-25", "2026-01-01", LotStatus.USABLE, 30);
    private static final Lot HELD = lot("held", "2026-11-30", "2026-01-01", LotStatus.QUARANTINE, 70);
    private static final Lot BAD = lot("bad", "2027-01-01", "2026-01-01", LotStatus.REFUSED, 70);
    private static final Lot EMPTY = lot("empty", "2026-11-26", "2026-01-01", LotStatus.USABLE, 0);
    private static final List<Lot> ALL = List.of(ENDLESS, SPRING, WINTER, YESTERDAY, TODAY, HELD, BAD, EMPTY);

    @Test
    void what_expires_first_goes_first_and_a_lot_is_good_on_its_last_day() {
        Allocation allocation = Allocation.firstExpiredFirstOut(300, ALL, DAY);
        assertThat(allocation.taken())
                .containsExactly(new Taken(TODAY, 30), new Taken(WINTER, 100), new Taken(SPRING, 170));
        assertThat(allocation.shortBy()).isZero();
        assertThat(allocation.passedOver())
                .containsExactly(
                        new PassedOver(YESTERDAY, Why.EXPIRED),
                        new PassedOver(HELD, Why.QUARANTINE),
                        new PassedOver(BAD, Why.REFUSED));
    }

    @Test
    void what_never_says_it_expires_comes_last_and_the_rest_is_short() {
        Allocation allocation = Allocation.firstExpiredFirstOut(2_000, ALL, DAY);
        assertThat(allocation.taken().get(3)).isEqualTo(new Taken(ENDLESS, 1_000));
        assertThat(allocation.shortBy()).isEqualTo(470);
    }

    @Test
    void of_two_that_expire_together_the_older_goes_first() {
        Lot older = lot("b", "2027-01-01", "2026-01-01", LotStatus.USABLE, 10);
        Lot newer = lot("a", "2027-01-01", "2026-02-01", LotStatus.USABLE, 10);
        assertThat(Allocation.firstExpiredFirstOut(5, List.of(newer, older), DAY)
                        .taken())
                .containsExactly(new Taken(older, 5));
    }

    @Test
    void by_hand_what_must_not_be_used_is_not_to_be_named() {
        Allocation allocation =
                Allocation.byHand(60, Map.of("id-spring", 50L), ALL, DAY).orThrow();
        assertThat(allocation.taken()).containsExactly(new Taken(SPRING, 50));
        assertThat(allocation.shortBy()).isEqualTo(10);
        for (Map<String, Long> wrong : List.of(
                Map.of("id-yesterday", 5L),
                Map.of("id-held", 5L),
                Map.of("id-bad", 5L),
                Map.of("id-today", 31L),
                Map.of("id-nobody", 1L),
                Map.of("id-spring", 61L))) {
            assertThat(Allocation.byHand(60, wrong, ALL, DAY))
                    .as(wrong.toString())
                    .isInstanceOf(Outcome.Refused.class);
        }
    }

    @Test
    void nothing_is_made_up_and_nothing_is_lost() {
        Random random = new Random(41);
        for (int i = 0; i < 2_000; i++) {
            List<Lot> lots = IntStream.range(0, random.nextInt(8))
                    .mapToObj(n -> new Lot(
                            "id" + n,
                            "c" + n,
                            random.nextInt(3) == 0
                                    ? Optional.empty()
                                    : Optional.of(DAY.plusDays(random.nextInt(20) - 5)),
                            DAY.minusDays(random.nextInt(30)),
                            List.of(LotStatus.QUARANTINE, LotStatus.USABLE, LotStatus.REFUSED)
                                    .get(random.nextInt(3)),
                            random.nextInt(500) - 20))
                    .toList();
            long need = random.nextInt(1_500);
            Allocation allocation = Allocation.firstExpiredFirstOut(need, lots, DAY);
            long taken = allocation.taken().stream().mapToLong(Taken::amount).sum();
            assertThat(taken + allocation.shortBy()).isEqualTo(need);
            assertThat(taken).isEqualTo(Math.min(need, Allocation.usableAmount(lots, DAY)));
            assertThat(allocation.taken())
                    .allMatch(part ->
                            part.amount() > 0 && part.amount() <= part.lot().left());
        }
    }

    @Test
    void the_scarcest_material_says_how_many_bars() {
        Cupboard cupboard = Cupboard.look(
                List.of(
                        new Cupboard.Need("olive", "Olive oil", 600),
                        new Cupboard.Need("soda", "Sodium hydroxide", 90),
                        new Cupboard.Need("water", "Water", 300)),
                Map.of("olive", List.of(SPRING, WINTER), "soda", List.of(ENDLESS)),
                DAY);
        assertThat(cupboard.isEnough()).isFalse();
        assertThat(cupboard.shortages())
                .extracting(line -> line.need().name() + " " + line.allocation().shortBy())
                .containsExactly("Olive oil 100");
        assertThat(cupboard.barsAllowed(12)).isEqualTo(10);
    }

    @Test
    void just_enough_for_twenty_bars_is_twenty() {
        for (long need : List.of(3L, 7L, 333_333L, 1_000_003L)) {
            Lot lot = lot("l", "", "2026-01-01", LotStatus.USABLE, need);
            Cupboard cupboard =
                    Cupboard.look(List.of(new Cupboard.Need("k", "K", need)), Map.of("k", List.of(lot)), DAY);
            assertThat(cupboard.barsAllowed(20)).isEqualTo(20);
        }
    }
}
