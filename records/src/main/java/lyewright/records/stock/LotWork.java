package lyewright.records.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.jdbi.v3.core.Handle;

/** What is done to lots within one transaction. */
final class LotWork {

    static final String MADE_HERE = "made here";
    static final String MADE_INTO = "made into lot ";

    private final LotRows rows;
    private final ItemRows items;
    private final LotArrivals arrivals;
    private final LotFacts facts;
    private final LedgerBook book;
    private final Author author;

    LotWork(Handle handle, Author author, long now, Supplier<String> ids) {
        this.rows = new LotRows(handle);
        this.items = new ItemRows(handle);
        this.book = new LedgerBook(handle, now);
        this.author = author;
        this.arrivals = new LotArrivals(handle, book, author, now, ids);
        this.facts = new LotFacts(handle, book, author);
    }

    LedgerBook book() {
        return book;
    }

    LotArrivals arrivals() {
        return arrivals;
    }

    LotFacts facts() {
        return facts;
    }

    Outcome<List<Long>> take(List<Taking> from, StockMove.Told told) {
        List<Problem> problems = new ArrayList<>(LotRules.check(told));
        from.forEach(taking -> problems.addAll(LotRules.check(told(taking, told))));
        Map<String, Long> open = new LinkedHashMap<>();
        for (Taking taking : from) {
            Optional<KeptLot> lot = rows.find(taking.lotId());
            if (lot.isEmpty()) {
                problems.add(new Problem(taking.lotId(), "there is no such lot", "go back to the cupboard"));
            } else {
                long left = open.computeIfAbsent(taking.lotId(), id -> lot.get().left());
                wrong(lot.get(), left, taking.amount(), told.kind()).ifPresent(problems::add);
                open.put(taking.lotId(), left - taking.amount());
            }
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        return Outcome.ok(from.stream().map(taking -> taken(taking, told)).toList());
    }

    private long taken(Taking taking, StockMove.Told told) {
        KeptLot lot = rows.find(taking.lotId()).orElseThrow();
        return rows.move(book, author, lot.id(), counting(lot), told(taking, told));
    }

    private static StockMove.Told told(Taking taking, StockMove.Told told) {
        String why = taking.why().isEmpty() ? told.why() : taking.why();
        return new StockMove.Told(told.kind(), -taking.amount(), Optional.empty(), told.purpose(), taking.words(), why);
    }

    private Optional<Problem> wrong(KeptLot lot, long left, long amount, MoveKind kind) {
        String code = lot.said().ownCode();
        if (amount <= 0) {
            return Optional.of(new Problem(lot.id(), "that is nothing", "write how much, above nothing"));
        }
        if (kind == MoveKind.USE && lot.said().status() != LotStatus.USABLE) {
            return Optional.of(new Problem(
                    lot.id(),
                    "lot " + code + " is " + (lot.said().status() == LotStatus.REFUSED ? "refused" : "in quarantine"),
                    "take another, or judge this one first"));
        }
        return left >= amount
                ? Optional.empty()
                : Optional.of(new Problem(
                        lot.id(),
                        "lot " + code + " " + Lots.HOLDS_LESS,
                        "take less of it, or count it if the cupboard has more"));
    }

    private Counting counting(KeptLot lot) {
        return items.find(lot.itemId()).orElseThrow().said().counting();
    }

    Outcome<Optional<KeptLot>> make(Arrival made, List<Taking> from) {
        return arrivals.receive(List.of(made), MADE_HERE).then(lots -> {
            KeptLot lot = lots.get(0);
            StockMove.Told told = StockMove.Told.of(MoveKind.USE, 0)
                    .withPurpose(MADE_INTO + lot.said().ownCode());
            return take(from, told).then(numbers -> Outcome.ok(Optional.of(lot)));
        });
    }

    Outcome<List<Long>> count(Map<String, Long> counted, Map<String, String> why) {
        List<Problem> problems = new ArrayList<>();
        List<Long> numbers = new ArrayList<>();
        for (Map.Entry<String, Long> entry : counted.entrySet()) {
            Optional<KeptLot> lot = rows.find(entry.getKey());
            if (lot.isEmpty()) {
                problems.add(new Problem(entry.getKey(), "there is no such lot", "go back to the cupboard"));
            } else if (entry.getValue() < 0) {
                problems.add(new Problem(entry.getKey(), "that is less than nothing", "write what there is"));
            } else {
                StockMove.Told told = StockMove.Told.of(
                                MoveKind.COUNT, entry.getValue() - lot.get().left())
                        .withWhy(why.getOrDefault(entry.getKey(), ""));
                LotRules.check(told).forEach(problem -> problems.add(problem.within(entry.getKey())));
                if (problems.isEmpty()) {
                    numbers.add(rows.move(book, author, lot.get().id(), counting(lot.get()), told));
                }
            }
        }
        return problems.isEmpty() ? Outcome.ok(numbers) : new Outcome.Refused<>(problems);
    }

    Outcome<List<Long>> correct(List<Long> numbers, String why) {
        List<Long> written = new ArrayList<>();
        for (long number : numbers) {
            Outcome<Long> one = correct(number, why);
            if (one instanceof Outcome.Ok<Long> ok) {
                written.add(ok.value());
            } else {
                return new Outcome.Refused<>(one.problems());
            }
        }
        return Outcome.ok(written);
    }

    Outcome<Long> correct(long number, String why) {
        Optional<StockMove> move = rows.move(number);
        if (move.isEmpty()) {
            return Outcome.refused("there is no such move", "go back to the lot");
        }
        if (why.isBlank()) {
            return Outcome.refused(new Problem("why", "nothing says why", "write what was wrong with it"));
        }
        if (move.get().correctedBy().isPresent() || move.get().told().corrects().isPresent()) {
            return Outcome.refused(
                    move.get().correctedBy().isPresent()
                            ? "it was taken back already"
                            : "it takes another move back, and is not taken back itself",
                    "write what is right as a new move");
        }
        KeptLot lot = rows.find(move.get().lotId()).orElseThrow();
        StockMove.Told was = move.get().told();
        StockMove.Told back =
                new StockMove.Told(was.kind(), -was.amount(), Optional.of(number), was.purpose(), "", why);
        List<Problem> problems = LotRules.check(back);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        if (lot.left() + back.amount() < 0 && back.amount() < 0) {
            return Outcome.refused(
                    "lot " + lot.said().ownCode() + " " + Lots.HOLDS_LESS,
                    "count the lot instead, and write there what happened");
        }
        return Outcome.ok(rows.move(book, author, lot.id(), counting(lot), back));
    }
}
