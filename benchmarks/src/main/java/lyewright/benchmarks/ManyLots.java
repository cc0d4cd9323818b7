package lyewright.benchmarks;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import lyewright.chain.PrintedHead;
import lyewright.records.Records;
import lyewright.records.ledger.Verified;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.records.store.Author;

/** Fills a workshop's folder with lots and moves, all invented and the same ones every time, and verifies the ledger of a folder. */
public final class ManyLots {

    /** Ten years of a small workshop. */
    private static final int LOTS = 3_000;

    private static final int MOVES = 20_000;
    private static final int ITEMS = 40;
    private static final int ON_A_DELIVERY = 10;
    private static final long CAME = 5_000_000;

    /** Lots in the cupboard at any time, however many came and went: a maker's shelves do not grow with the years. */
    private static final int HELD = 120;

    private static final int TAKINGS_OF_A_LOT = 5;
    private static final int LOTS_A_YEAR = 300;

    /** What recipes call some of the materials. */
    private static final List<String> KEYS = List.of(
            "coconut",
            "olive-virgin",
            "castor",
            "shea-butter",
            "palm-kernel",
            "rapeseed-low-erucic",
            "sunflower",
            "cocoa-butter");

    private static final int TIMES = 5;
    private static final double NANOSECONDS = 1e6;

    private ManyLots() {}

    /**
     * Fills a folder where there is none, then verifies its ledger.
     *
     * @param words the folder; then, if others are wanted, how many lots and how many moves in all
     */
    public static void main(String[] words) {
        Path folder = Path.of(words[0]);
        if (!Records.areIn(OtherPlace.of(folder))) {
            int lots = words.length > 1 ? Integer.parseInt(words[1]) : LOTS;
            fill(folder, lots, words.length > 2 ? Integer.parseInt(words[2]) : MOVES);
        }
        try (Records records =
                Records.open(OtherPlace.of(folder), Clock.systemUTC()).orThrow()) {
            PrintedHead head =
                    PrintedHead.parse(records.ledger().head().printed()).orThrow();
            for (int i = 0; i < TIMES; i++) {
                long start = System.nanoTime();
                Verified verified = records.ledger().verify(Optional.of(head));
                double took = (System.nanoTime() - start) / NANOSECONDS;
                System.out.printf(
                        Locale.ROOT,
                        "verified %d entries in %.0f ms: %s%n",
                        verified.head().number(),
                        took,
                        verified.isWhole()
                                ? "whole"
                                : verified.findings().get(0).what());
            }
        }
    }

    /**
     * Fills a folder.
     *
     * @param folder a new one
     * @param lots how many
     * @param moves how many in all, each lot's receipt among them
     */
    static void fill(Path folder, int lots, int moves) {
        try (Records records =
                Records.open(OtherPlace.of(folder), Clock.systemUTC()).orThrow()) {
            Author maker = records.author();
            List<String> items = items(records);
            Random random = new Random(1);
            List<String> kept = new ArrayList<>();
            int taken = 0;
            int oldest = 0;
            while (kept.size() < lots) {
                receive(records, maker, items, kept, lots, Math.min(ON_A_DELIVERY, lots - kept.size()));
                for (; oldest < kept.size() - HELD; oldest++) {
                    for (int i = 0; i < TAKINGS_OF_A_LOT; i++) {
                        take(records, maker, kept.get(oldest), CAME / TAKINGS_OF_A_LOT);
                        taken++;
                    }
                }
            }
            // the rest of the moves, from what is still there
            for (; taken < moves - lots; taken++) {
                String lot = kept.get(kept.size() - 1 - random.nextInt(Math.min(HELD, kept.size())));
                take(records, maker, lot, 1_000L + random.nextInt(20_000));
            }
        }
    }

    private static List<String> items(Records records) {
        List<String> items = new ArrayList<>();
        for (int i = 0; i < ITEMS; i++) {
            Identity identity = i < KEYS.size() ? Identity.ofKey(KEYS.get(i)) : Identity.none();
            items.add(records.items()
                    .add(ItemSaid.of("Oil number " + i + " (invented)", ItemKind.OIL, identity))
                    .orThrow()
                    .id());
        }
        return items;
    }

    private static void receive(
            Records records, Author maker, List<String> items, List<String> kept, int lots, int lines) {
        List<Arrival> arrivals = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            // the last one comes today, so that as much is about to expire however many years there were
            LocalDate day = LocalDate.now(ZoneOffset.UTC).minusDays((lots - kept.size() - i) * 365L / LOTS_A_YEAR);
            LotSaid said = LotSaid.of(day)
                    .withSupplierLot("NQ-" + (kept.size() + i))
                    .withBestBefore(Optional.of(day.plusYears(1)))
                    .withPrice(Optional.of(new Price(1895, "GBP")));
            arrivals.add(new Arrival(items.get((kept.size() + i) % ITEMS), said, CAME));
        }
        records.lots().receive(maker, "", arrivals).orThrow().stream()
                .map(KeptLot::id)
                .forEach(kept::add);
    }

    private static void take(Records records, Author maker, String lot, long amount) {
        records.lots()
                .take(
                        maker,
                        "",
                        List.of(new Taking(lot, amount, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose("Tideline"))
                .orThrow();
    }
}
