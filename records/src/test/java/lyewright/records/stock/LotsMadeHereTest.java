package lyewright.records.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.measure.Problem;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.store.Author;
import lyewright.stock.Allocation;
import lyewright.stock.Cupboard;
import lyewright.stock.LotStatus;
import lyewright.stock.MadeHere;
import lyewright.stock.MixedFigures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Lots that are made here, and that none is what it is not called. */
@OnBoth
class LotsMadeHereTest extends Workbench {

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

    private KeptLot received(long amount) {
        return records.lots()
                .receive(maker, "", List.of(new Arrival(coconut.id(), LotsTest.said("", LotStatus.USABLE), amount)))
                .orThrow()
                .get(0);
    }

    private static OwnMaterial lye(String key) {
        return MadeHere.lye(
                key,
                Alkali.SODIUM,
                List.of(new MixedFigures.Weighted(Figure.exact(98, ""), KILOGRAM / 2)),
                KILOGRAM,
                "made here");
    }

    private static LotSaid certified(OwnMaterial certificate) {
        return LotsTest.said("", LotStatus.USABLE).withCertificate(Optional.of(certificate));
    }

    @Test
    void lye_is_never_kept_as_a_lot_of_an_oil() {
        KeptLot oil = received(KILOGRAM);
        List<Taking> from = List.of(new Taking(oil.id(), KILOGRAM / 2, ""));
        ItemSaid fresh = ItemSaid.of("coconut", ItemKind.ALKALI, Identity.ofKey("coconut"));
        for (Arrival made : List.of(
                new Arrival(coconut.id(), certified(lye("coconut")), KILOGRAM),
                new Arrival(coconut.id(), certified(lye("stock-lye")), KILOGRAM),
                new Arrival("", Optional.of(fresh), certified(lye("coconut")), KILOGRAM),
                new Arrival(
                        "",
                        Optional.of(ItemSaid.of("Coconut oil", ItemKind.ALKALI, Identity.ofKey("stock-lye"))),
                        certified(lye("stock-lye")),
                        KILOGRAM),
                new Arrival("", Optional.of(fresh), LotsTest.said("", LotStatus.USABLE), KILOGRAM))) {
            assertThat(records.lots().make(maker, "", made, from).problems())
                    .as(made.toString())
                    .isNotEmpty();
            assertThat(records.lots().receive(maker, "", List.of(made)).problems())
                    .as(made.toString())
                    .isNotEmpty();
        }
        assertThat(records.lots()
                        .change(maker, oil.id(), oil.said().withCertificate(Optional.of(lye("coconut"))))
                        .problems())
                .isNotEmpty();
        assertThat(records.lots().held()).extracting(KeptLot::left).containsExactly(KILOGRAM);
    }

    @Test
    void an_oil_of_the_tables_is_not_stocked_as_an_alkali_nor_an_alkali_as_an_oil() {
        for (ItemSaid wrong : List.of(
                ItemSaid.of("Palm oil", ItemKind.ALKALI, Identity.ofKey("palm")),
                ItemSaid.of("Caustic soda", ItemKind.OIL, Identity.ofKey("naoh")),
                ItemSaid.of("Caustic potash", ItemKind.ADDITIVE, Identity.ofKey("koh")))) {
            assertThat(records.items().add(wrong).problems())
                    .extracting(Problem::path)
                    .containsExactly("kind");
        }
    }

    @Test
    void what_a_lot_made_here_was_made_of_is_known() {
        KeptLot soda = records.lots()
                .receive(
                        maker,
                        "",
                        List.of(new Arrival(
                                "",
                                Optional.of(ItemSaid.of("Sodium hydroxide", ItemKind.ALKALI, Identity.ofKey("naoh"))),
                                LotsTest.said("", LotStatus.USABLE),
                                KILOGRAM)))
                .orThrow()
                .get(0);
        Arrival made = new Arrival(
                "",
                Optional.of(ItemSaid.of("stock-lye", ItemKind.ALKALI, Identity.ofKey("stock-lye"))),
                certified(lye("stock-lye")),
                KILOGRAM);
        KeptLot lye = records.lots()
                .make(
                        maker,
                        "",
                        made,
                        List.of(new Taking(soda.id(), KILOGRAM / 4, ""), new Taking(soda.id(), KILOGRAM / 8, "")))
                .orThrow()
                .orElseThrow();
        records.lots()
                .take(
                        maker,
                        "",
                        List.of(new Taking(soda.id(), KILOGRAM / 16, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose("Tideline"))
                .orThrow();
        assertThat(records.lots().madeOf(lye.id()))
                .extracting(move -> move.lotId() + move.told().amount())
                .containsExactly(soda.id() + -KILOGRAM / 4, soda.id() + -KILOGRAM / 8);
        assertThat(records.lots().madeOf(soda.id())).isEmpty();
    }

    /** As it was kept before this was refused. */
    @Test
    void lye_that_goes_by_an_oils_name_is_left_alone_when_the_oil_is_wanted() {
        KeptLot oil = received(KILOGRAM);
        KeptLot lye = new KeptLot("lye", coconut.id(), certified(lye("coconut")), KILOGRAM, KILOGRAM, 1);
        Shelves shelves = Shelves.of(List.of(coconut), List.of(lye, oil));
        Cupboard cupboard =
                Cupboard.look(List.of(new Cupboard.Need("coconut", "Coconut oil", 2 * KILOGRAM)), shelves.lots(), DAY);
        Allocation allocation = cupboard.lines().get(0).allocation();
        assertThat(allocation.taken()).extracting(taken -> taken.lot().id()).containsExactly(oil.id());
        assertThat(allocation.shortBy()).isEqualTo(KILOGRAM);
        assertThat(allocation.passedOver())
                .extracting(over -> over.lot().id() + " " + over.why())
                .containsExactly("lye OTHER_KIND");
    }
}
