package lyewright.records.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.OnBoth;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@OnBoth
class LotsTest extends Workbench {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final long KILOGRAM = 1_000_000;

    private StockItem coconut = new StockItem("", ItemSaid.of("", ItemKind.OIL, Identity.none()));
    private Author maker = new Author("", Optional.empty());

    @BeforeEach
    void a_cupboard() {
        coconut = records.items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow();
        maker = records.author();
    }

    static LotSaid said(String code, LotStatus status) {
        return LotSaid.of(DAY)
                .withCode(code)
                .withSupplierLot("NQ-118")
                .withBestBefore(Optional.of(DAY.plusYears(1)))
                .withPrice(Optional.of(new Price(1895, "GBP")))
                .withStatus(status);
    }

    private KeptLot received(long amount) {
        return records.lots()
                .receive(maker, "", List.of(new Arrival(coconut.id(), said("", LotStatus.USABLE), amount)))
                .orThrow()
                .get(0);
    }

    @Test
    void a_lot_is_held_from_its_first_gram_to_its_last_and_again_when_something_is_taken_back() {
        KeptLot lot = received(KILOGRAM);
        assertThat(records.lots().held()).extracting(KeptLot::id).containsExactly(lot.id());

        long number = use("", lot, KILOGRAM).orThrow().get(0);
        assertThat(records.lots().held()).isEmpty();
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();

        records.lots().correct(maker, number, "it was another lot").orThrow();
        assertThat(records.lots().held()).extracting(KeptLot::left).containsExactly(KILOGRAM);
    }

    /** The numbers say what came after what; the clock only says what it showed. */
    @Test
    void a_clock_that_was_set_back_mixes_nothing_up() {
        KeptLot lot = received(KILOGRAM);
        use("", lot, KILOGRAM / 4).orThrow();
        clock.goOn(Duration.ofDays(-400));
        use("", lot, KILOGRAM / 2).orThrow();
        restart();

        assertThat(left(lot)).isEqualTo(KILOGRAM / 4);
        assertThat(records.lots().moves(lot.id()))
                .extracting(move -> move.told().amount())
                .containsExactly(-KILOGRAM / 2, -KILOGRAM / 4, KILOGRAM);
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
        assertThat(use("", lot, KILOGRAM).problems()).isNotEmpty();
    }

    private long left(KeptLot lot) {
        return records.lots().find(lot.id()).orElseThrow().left();
    }

    private Outcome<List<Long>> use(String token, KeptLot lot, long amount) {
        return records.lots()
                .take(
                        maker,
                        token,
                        List.of(new Taking(lot.id(), amount, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose("Tideline"));
    }

    @Test
    void lots_are_numbered_by_the_year_and_a_code_of_ones_own_is_left_alone() {
        assertThat(received(KILOGRAM).said().ownCode()).isEqualTo("26-0001");
        records.lots()
                .receive(maker, "", List.of(new Arrival(coconut.id(), said("26-blue lid", LotStatus.USABLE), KILOGRAM)))
                .orThrow();
        assertThat(received(KILOGRAM).said().ownCode()).isEqualTo("26-0002");
        assertThat(records.lots()
                        .receive(maker, "", List.of(new Arrival(coconut.id(), said("26-0001", LotStatus.USABLE), 1)))
                        .problems())
                .extracting(Problem::path)
                .containsExactly("lines.0.ownCode");
    }

    @Test
    void a_code_that_turns_the_writing_round_is_refused() {
        Outcome<List<KeptLot>> turned = records.lots()
                .receive(maker, "", List.of(new Arrival(coconut.id(), said("26\u202e-1", LotStatus.USABLE), KILOGRAM)));
        assertThat(turned.problems()).extracting(Problem::path).containsExactly("lines.0.ownCode");
    }

    @Test
    void a_delivery_is_received_whole_or_not_at_all() {
        Outcome<List<KeptLot>> refused = records.lots()
                .receive(
                        maker,
                        "form-0001",
                        List.of(
                                new Arrival(coconut.id(), said("", LotStatus.USABLE), KILOGRAM),
                                new Arrival(coconut.id(), said("", LotStatus.USABLE), 0),
                                new Arrival("gone", said("", LotStatus.USABLE), 5)));
        assertThat(refused.problems()).extracting(Problem::path).containsExactly("lines.1.amount", "lines.2.item");
        assertThat(records.lots().held()).isEmpty();
        assertThat(records.ledger().head().isEmpty()).isTrue();
    }

    @Test
    void what_is_left_is_the_sum_of_the_moves() {
        KeptLot lot = received(KILOGRAM);
        use("", lot, 350_000).orThrow();
        records.lots()
                .take(
                        maker,
                        "",
                        List.of(new Taking(lot.id(), 50_000, "a good splash")),
                        StockMove.Told.of(MoveKind.LOSS, 0).withWhy("spilt"))
                .orThrow();
        records.lots()
                .count(maker, "", Map.of(lot.id(), 590_000L), Map.of(lot.id(), "what sticks to the tub"))
                .orThrow();
        assertThat(left(lot)).isEqualTo(590_000);
        assertThat(records.lots().moves(lot.id()))
                .extracting(
                        move -> move.told().kind().word() + " " + move.told().amount())
                .containsExactly("count -10000", "loss -50000", "use -350000", "receipt 1000000");
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
    }

    @Test
    void no_more_is_taken_than_there_is_nor_from_a_lot_that_must_not_be_used() {
        KeptLot lot = received(100_000);
        assertThat(use("", lot, 100_001).problems().get(0).what()).contains("holds less");
        records.lots()
                .change(maker, lot.id(), lot.said().withStatus(LotStatus.QUARANTINE))
                .orThrow();
        assertThat(use("", lot, 1).problems().get(0).what()).contains("in quarantine");
        assertThat(left(lot)).isEqualTo(100_000);
    }

    @Test
    void two_devices_that_take_the_last_hundred_grams_get_them_once() throws Exception {
        KeptLot lot = received(100_000);
        try (AutoClosePool pool = new AutoClosePool(Executors.newFixedThreadPool(2))) {
            Future<Outcome<List<Long>>> one = pool.it().submit(() -> use("device-one-1", lot, 100_000));
            Future<Outcome<List<Long>>> other = pool.it().submit(() -> use("device-two-1", lot, 100_000));
            assertThat(List.of(one.get() instanceof Outcome.Ok, other.get() instanceof Outcome.Ok))
                    .containsExactlyInAnyOrder(true, false);
        }
        assertThat(left(lot)).isZero();
    }

    private record AutoClosePool(ExecutorService it) implements AutoCloseable {
        @Override
        public void close() {
            it.shutdownNow();
        }
    }

    @Test
    void what_is_sent_twice_is_done_once() {
        KeptLot lot = received(KILOGRAM);
        assertThat(use("form-0002", lot, 10_000).orThrow()).hasSize(1);
        assertThat(use("form-0002", lot, 10_000).orThrow()).isEmpty();
        restart();
        assertThat(use("form-0002", lot, 10_000).orThrow()).isEmpty();
        assertThat(left(lot)).isEqualTo(990_000);
    }

    @Test
    void which_lots_a_form_brought_is_known_afterwards() {
        Arrival one = new Arrival(coconut.id(), said("", LotStatus.USABLE), KILOGRAM);
        for (String form : List.of("form-0003", "form-0004")) {
            records.lots().receive(maker, form, List.of(one, one)).orThrow();
            clock.goOn(Duration.ofSeconds(1));
        }
        use("form-0005", received(KILOGRAM), KILOGRAM).orThrow();
        assertThat(records.lots().broughtBy("form-0003"))
                .extracting(lot -> lot.said().ownCode())
                .containsExactly("26-0001", "26-0002");
        assertThat(records.lots().broughtBy("form-0004"))
                .extracting(lot -> lot.said().ownCode())
                .containsExactly("26-0003", "26-0004");
        for (String none : List.of("", "form-0005", "form-0006")) {
            assertThat(records.lots().broughtBy(none)).isEmpty();
        }
    }

    @Test
    void a_move_is_taken_back_once_and_by_name() {
        KeptLot lot = received(KILOGRAM);
        long number = use("", lot, 10_000).orThrow().get(0);
        assertThat(records.lots().correct(maker, number, " ").problems()).isNotEmpty();
        long back =
                records.lots().correct(maker, number, "weighed the wrong tub").orThrow();
        assertThat(left(lot)).isEqualTo(KILOGRAM);
        assertThat(records.lots().moves(lot.id()).get(0).told().corrects()).contains(number);
        assertThat(records.lots().moves(lot.id()).get(1).correctedBy()).contains(back);
        assertThat(records.lots()
                        .correct(maker, number, "again")
                        .problems()
                        .get(0)
                        .what())
                .contains("already");
        assertThat(records.lots().correct(maker, back, "again").problems()).isNotEmpty();
    }

    @Test
    void stock_lye_is_a_lot_of_lots() {
        StockItem soda = records.items()
                .add(ItemSaid.of("Sodium hydroxide", ItemKind.ALKALI, Identity.ofKey("sodium-hydroxide")))
                .orThrow();
        StockItem lye = records.items()
                .add(ItemSaid.of("Stock lye", ItemKind.ALKALI, Identity.ofKey("stock-lye")))
                .orThrow();
        KeptLot beads = records.lots()
                .receive(maker, "", List.of(new Arrival(soda.id(), said("", LotStatus.USABLE), KILOGRAM)))
                .orThrow()
                .get(0);
        KeptLot made = records.lots()
                .make(
                        maker,
                        "form-0003",
                        new Arrival(lye.id(), said("", LotStatus.USABLE), 1_500_000),
                        List.of(new Taking(beads.id(), 750_000, "")))
                .orThrow()
                .orElseThrow();
        assertThat(left(beads)).isEqualTo(250_000);
        assertThat(left(made)).isEqualTo(1_500_000);
        assertThat(records.lots().moves(beads.id()).get(0).told().purpose())
                .isEqualTo("made into lot " + made.said().ownCode());
        Outcome<Optional<KeptLot>> tooMuch = records.lots()
                .make(
                        maker,
                        "form-0004",
                        new Arrival(lye.id(), said("", LotStatus.USABLE), 1_500_000),
                        List.of(new Taking(beads.id(), 750_000, "")));
        assertThat(tooMuch.problems()).isNotEmpty();
        assertThat(records.lots().of(lye.id())).hasSize(1);
    }

    @Test
    void the_ledger_is_written_on_and_never_over() {
        received(KILOGRAM);
        for (String sql : List.of(
                "UPDATE ledger_entry SET entry_text = '{}' WHERE number = 1",
                "DELETE FROM ledger_entry WHERE number = 2",
                "UPDATE stock_move SET milligrams = 5 WHERE number = 2",
                "DELETE FROM stock_move WHERE number = 2",
                "DELETE FROM lot")) {
            assertThat(refused(sql)).as(sql).isTrue();
        }
    }

    private boolean refused(String sql) {
        try {
            Tinkering.with(place, sql);
            return false;
        } catch (RuntimeException e) {
            return true;
        }
    }
}
