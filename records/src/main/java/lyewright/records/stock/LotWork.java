package lyewright.records.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.material.MaterialText;
import lyewright.records.people.Author;
import lyewright.stock.LotStatus;
import org.jdbi.v3.core.Handle;

/** What is done to lots within one transaction. */
final class LotWork {

    private final LotRows rows;
    private final ItemRows items;
    private final Handle handle;
    private final LedgerBook book;
    private final Author author;
    private final java.util.function.Supplier<String> ids;
    private final long now;
    private long lastNumber;

    LotWork(Handle handle, Author author, long now, java.util.function.Supplier<String> ids) {
        this.handle = handle;
        this.rows = new LotRows(handle);
        this.items = new ItemRows(handle);
        this.book = new LedgerBook(handle, now);
        this.author = author;
        this.ids = ids;
        this.now = now;
    }

    LedgerBook book() {
        return book;
    }

    /** The number of what was written last, 0 where nothing was. */
    long lastNumber() {
        return lastNumber;
    }

    Outcome<List<KeptLot>> receive(List<Arrival> arrivals, String purpose) {
        List<Problem> problems = new ArrayList<>();
        List<KeptLot> lots = new ArrayList<>();
        if (arrivals.isEmpty()) {
            problems.add(new Problem("", "nothing came", "write a line for each thing that did"));
        }
        for (int i = 0; i < arrivals.size(); i++) {
            String line = "lines." + i;
            Outcome<KeptLot> lot = arrive(arrivals.get(i), purpose);
            lot.problems().forEach(problem -> problems.add(problem.within(line)));
            if (lot instanceof Outcome.Ok<KeptLot> ok) {
                lots.add(ok.value());
            }
        }
        return problems.isEmpty() ? Outcome.ok(lots) : new Outcome.Refused<>(problems);
    }

    private Outcome<KeptLot> arrive(Arrival arrival, String purpose) {
        LotSaid said = arrival.said().ownCode().isBlank()
                ? arrival.said().withCode(rows.nextCode(arrival.said().received()))
                : arrival.said();
        StockMove.Told told =
                StockMove.Told.of(MoveKind.RECEIPT, arrival.amount()).withPurpose(purpose);
        List<Problem> problems = new ArrayList<>(LotRules.check(said));
        problems.addAll(LotRules.check(told));
        Outcome<StockItem> item = item(arrival);
        problems.addAll(item.problems());
        if (arrival.amount() <= 0) {
            problems.add(new Problem("amount", "that is nothing", "write how much came"));
        }
        problems.addAll(codeTaken(said.ownCode(), ""));
        problems.addAll(supplierUnknown(said));
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        String id = ids.get();
        StockItem of = item.orThrow();
        rows.insert(id, of.id(), said, entry(id, of.id(), said));
        lastNumber = rows.move(book, author, id, of.said().counting(), told);
        return found(id);
    }

    /** What came; something new is added to the cupboard, once though two lots of it come. */
    private Outcome<StockItem> item(Arrival arrival) {
        if (arrival.fresh().isEmpty()) {
            return items.find(arrival.itemId())
                    .map(Outcome::ok)
                    .orElseGet(() -> Outcome.refused(
                            new Problem("item", "there is no such material in the cupboard", "choose one, or add it")));
        }
        ItemSaid said = arrival.fresh().get();
        Optional<StockItem> there = said.identity()
                .materialKey()
                .flatMap(items::findKey)
                .or(() -> items.list().stream()
                        .filter(item -> NameRules.areSame(item.name(), said.name()))
                        .findFirst());
        if (there.isPresent()) {
            return Outcome.ok(there.get());
        }
        List<Problem> problems = ItemRules.check(said);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        StockItem item = new StockItem(ids.get(), said);
        items.insert(item, now);
        return Outcome.ok(item);
    }

    Outcome<List<KeptLot>> receive(Delivery delivery) {
        return supplier(delivery.supplier())
                .then(supplier -> receive(
                        delivery.arrivals().stream()
                                .map(arrival -> new Arrival(
                                        arrival.itemId(),
                                        arrival.fresh(),
                                        arrival.said().withSupplier(supplier),
                                        arrival.amount()))
                                .toList(),
                        ""));
    }

    private Outcome<Optional<String>> supplier(String name) {
        return name.isBlank()
                ? Outcome.ok(Optional.empty())
                : Suppliers.named(handle, name, ids, now).then(found -> Outcome.ok(Optional.of(found.id())));
    }

    private long entry(String id, String itemId, LotSaid said) {
        lastNumber = book.write(
                author,
                StockEntries.LOT,
                StockEntries.lot(id, itemId, said, said.certificate().map(MaterialText::of)));
        return lastNumber;
    }

    private List<Problem> codeTaken(String code, String byOtherThan) {
        return rows
                .findCode(code)
                .filter(other -> !other.id().equals(byOtherThan))
                .map(other -> new Problem("ownCode", "there is a lot " + code + " already", "give it another code"))
                .stream()
                .toList();
    }

    private List<Problem> supplierUnknown(LotSaid said) {
        return said
                .supplierId()
                .filter(id -> Suppliers.byId(handle, id).isEmpty())
                .map(id -> new Problem("supplier", "there is no such supplier", "choose one, or add it"))
                .stream()
                .toList();
    }

    Outcome<KeptLot> change(String id, LotSaid said) {
        Optional<KeptLot> before = rows.find(id);
        if (before.isEmpty()) {
            return none();
        }
        List<Problem> problems = new ArrayList<>(codeTaken(said.ownCode(), id));
        problems.addAll(supplierUnknown(said));
        if (said.ownCode().isBlank()) {
            problems.add(new Problem("ownCode", "its own code is empty", "write one, as in 26-0007"));
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        if (before.get().said().equals(said)) {
            return Outcome.ok(before.get());
        }
        rows.update(id, before.get().itemId(), said, entry(id, before.get().itemId(), said));
        return found(id);
    }

    Outcome<List<Long>> take(List<Taking> from, StockMove.Told told) {
        List<Problem> problems = new ArrayList<>(LotRules.check(told));
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
        StockMove.Told of = new StockMove.Told(
                told.kind(), -taking.amount(), Optional.empty(), told.purpose(), taking.words(), told.why());
        lastNumber = rows.move(book, author, lot.id(), counting(lot), of);
        return lastNumber;
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
                        "lot " + code + " holds less than that by now",
                        "take less of it, or count it if the cupboard has more"));
    }

    private Counting counting(KeptLot lot) {
        return items.find(lot.itemId()).orElseThrow().said().counting();
    }

    Outcome<Optional<KeptLot>> make(Arrival made, List<Taking> from) {
        return receive(List.of(made), "made here").then(lots -> {
            KeptLot lot = lots.get(0);
            StockMove.Told told = StockMove.Told.of(MoveKind.USE, 0)
                    .withPurpose("made into lot " + lot.said().ownCode());
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
                    lastNumber = rows.move(book, author, lot.get().id(), counting(lot.get()), told);
                    numbers.add(lastNumber);
                }
            }
        }
        return problems.isEmpty() ? Outcome.ok(numbers) : new Outcome.Refused<>(problems);
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
                    "lot " + lot.said().ownCode() + " holds less than that by now",
                    "count the lot instead, and write there what happened");
        }
        lastNumber = rows.move(book, author, lot.id(), counting(lot), back);
        return Outcome.ok(lastNumber);
    }

    private Outcome<KeptLot> found(String id) {
        return rows.find(id).map(Outcome::ok).orElseGet(LotWork::none);
    }

    private static Outcome<KeptLot> none() {
        return Outcome.refused("there is no such lot", "go back to the cupboard");
    }
}
