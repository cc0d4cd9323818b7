package lyewright.records.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.records.Formulas;
import lyewright.records.Records;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;

/** A cupboard with something of everything in it, invented: nine entries of the ledger. */
public final class Stocked {

    /** How many entries. */
    public static final long ENTRIES = 9;

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private Stocked() {}

    /** Fills a cupboard that is empty: coconut oil received, used from, counted, and one use taken back; wrappers received. */
    public static void fill(Records records) {
        Author maker = records.author();
        StockItem coconut = records.items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow();
        StockItem wrapper = records.items()
                .add(ItemSaid.of("Wrappers", ItemKind.PACKAGING, Identity.none()))
                .orThrow();
        KeptLot oil = records.lots()
                .receive(maker, "form-0001", List.of(new Arrival(coconut.id(), said("26-0001"), 5_000_000)))
                .orThrow()
                .get(0);
        long used = records.lots()
                .take(
                        maker,
                        "form-0002",
                        List.of(new Taking(oil.id(), 350_000, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose("Tideline"))
                .orThrow()
                .get(0);
        records.lots().correct(maker, used, "weighed the other jug").orThrow();
        records.lots()
                .change(
                        maker,
                        oil.id(),
                        said("26-0001")
                                .withCertificate(Optional.of(
                                        Formulas.read("""
                        recipe: holder
                        oils: {olive-virgin: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        materials:
                          house-olive:
                            kind: oil
                            saponification value: 189.5 ± 1.0 mg KOH/g
                            source: certificate L-204
                        """).materials().get(0))))
                .orThrow();
        records.lots()
                .receive(maker, "", List.of(new Arrival(wrapper.id(), said("26-0002"), 200)))
                .orThrow();
        records.lots()
                .count(
                        maker,
                        "",
                        Map.of(oil.id(), 4_990_000L),
                        Map.of(oil.id(), "what stuck to the scoop; '); DROP TABLE lot; --"))
                .orThrow();
        records.lots()
                .change(maker, oil.id(), said("26-0001").withStatus(LotStatus.QUARANTINE))
                .orThrow();
    }

    private static LotSaid said(String code) {
        return new LotSaid(
                code,
                Optional.empty(),
                "NQ-118",
                DAY,
                Optional.empty(),
                Optional.of(DAY.plusYears(1)),
                Optional.of(new Price(1895, "GBP")),
                LotStatus.USABLE,
                Optional.empty(),
                "white, mild");
    }
}
