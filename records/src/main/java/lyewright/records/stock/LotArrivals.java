package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.store.Author;
import org.jdbi.v3.core.Handle;

/** Lots that come, within one transaction, with whatever of supplier and material is not known yet. */
final class LotArrivals {

    private final Handle handle;
    private final LotRows rows;
    private final ItemRows items;
    private final LotFacts facts;
    private final LedgerBook book;
    private final Author author;
    private final java.util.function.Supplier<String> ids;
    private final long now;

    LotArrivals(Handle handle, LedgerBook book, Author author, long now, java.util.function.Supplier<String> ids) {
        this.handle = handle;
        this.rows = new LotRows(handle);
        this.items = new ItemRows(handle);
        this.facts = new LotFacts(handle, book, author);
        this.book = book;
        this.author = author;
        this.ids = ids;
        this.now = now;
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
        StockMove.Told told = StockMove.Told.of(MoveKind.RECEIPT, arrival.amount())
                .withPurpose(purpose)
                .withWords(arrival.words());
        List<Problem> problems = new ArrayList<>(LotRules.check(said));
        problems.addAll(LotRules.check(told));
        Outcome<StockItem> item = item(arrival);
        problems.addAll(item.problems());
        if (item instanceof Outcome.Ok<StockItem> known) {
            problems.addAll(LotFits.check(known.value().said(), said));
        }
        if (arrival.amount() <= 0) {
            problems.add(new Problem("amount", "that is nothing", "write how much came"));
        }
        problems.addAll(facts.codeTaken(said.ownCode(), ""));
        problems.addAll(facts.supplierUnknown(said));
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        String id = ids.get();
        StockItem of = item.orThrow();
        rows.insert(id, of.id(), said, facts.entry(id, of.id(), said));
        rows.move(book, author, id, of.said().counting(), told);
        return facts.found(id);
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
            return LotFits.sameKind(there.get().said(), said.kind())
                    .<Outcome<StockItem>>map(Outcome::refused)
                    .orElseGet(() -> Outcome.ok(there.get()));
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
                                        arrival.amount(),
                                        arrival.words()))
                                .toList(),
                        ""));
    }

    private Outcome<Optional<String>> supplier(String name) {
        return name.isBlank()
                ? Outcome.ok(Optional.empty())
                : Suppliers.named(handle, name, ids, now).then(found -> Outcome.ok(Optional.of(found.id())));
    }
}
