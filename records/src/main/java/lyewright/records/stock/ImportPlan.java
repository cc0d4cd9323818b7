package lyewright.records.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Problem;
import lyewright.records.stock.StockRow.MaterialSaid;
import lyewright.records.stock.StockVerdict.Fate;
import lyewright.records.store.Typed;

/** Rows of a file held against what is there, one after the other: what is new of them, and in which order it is to be written. */
final class ImportPlan {

    private final KnownStock known;
    private final java.util.function.Supplier<String> ids;
    private final LotCodes codes = new LotCodes();
    private final Map<String, Integer> seen = new HashMap<>();
    private final List<Supplier> suppliers = new ArrayList<>();
    private final List<StockItem> items = new ArrayList<>();
    private final List<Coming> lots = new ArrayList<>();

    /** A lot that is to be written, with its code. */
    record Coming(StockItem item, LotSaid said, long amount) {}

    ImportPlan(KnownStock known, java.util.function.Supplier<String> ids) {
        this.known = known;
        this.ids = ids;
    }

    List<Supplier> suppliers() {
        return suppliers;
    }

    List<StockItem> items() {
        return items;
    }

    List<Coming> lots() {
        return lots;
    }

    List<StockVerdict> judge(List<StockRow> rows) {
        known.codes().forEach(codes::taken);
        // codes that the file itself gives are not given to others
        rows.forEach(row -> {
            if (row.what() instanceof StockRow.OfLot of) {
                codes.taken(of.said().ownCode());
            }
        });
        return rows.stream().map(this::judge).toList();
    }

    private StockVerdict judge(StockRow row) {
        if (row.what() instanceof StockRow.OfSupplier of) {
            return supplier(row, of);
        }
        return row.what() instanceof StockRow.OfMaterial of
                ? material(row, of.said())
                : lot(row, (StockRow.OfLot) row.what());
    }

    // Suppliers

    private StockVerdict supplier(StockRow row, StockRow.OfSupplier of) {
        List<Problem> problems = new ArrayList<>(twice("supplier " + StockImport.read(of.name()), "name", row));
        Typed.name("name", "the supplier's name", of.name()).ifPresent(problems::add);
        Typed.text("contact", "how to reach them", of.contact(), Suppliers.LONGEST_CONTACT)
                .ifPresent(problems::add);
        Typed.text("notes", "the note", of.notes(), Suppliers.LONGEST_NOTES).ifPresent(problems::add);
        if (!problems.isEmpty()) {
            return leftOut(row, of.name(), problems);
        }
        Optional<Supplier> there = known.supplier(of.name());
        if (there.isPresent()) {
            return new StockVerdict(row, Fate.THERE, there.get().name(), List.of());
        }
        add(new Supplier(ids.get(), of.name(), of.contact(), of.notes()));
        return new StockVerdict(row, Fate.NEW, of.name(), List.of());
    }

    /** Whoever is called so: there, or new and perhaps not to be called so. */
    private Optional<Supplier> whoSells(String name, List<Problem> problems) {
        if (name.isBlank()) {
            return Optional.empty();
        }
        Optional<Supplier> there = known.supplier(name);
        if (there.isEmpty()) {
            Typed.name("supplier", "the supplier's name", name).ifPresent(problems::add);
        }
        return there.or(() -> Optional.of(new Supplier(ids.get(), name, "", "")));
    }

    private void addIfNew(Optional<Supplier> supplier) {
        supplier.filter(it -> known.supplier(it.name()).isEmpty()).ifPresent(this::add);
    }

    private void add(Supplier supplier) {
        known.add(supplier);
        suppliers.add(supplier);
    }

    // Materials

    private StockVerdict material(StockRow row, MaterialSaid said) {
        List<Problem> problems = new ArrayList<>(twice("material " + StockImport.read(said.name()), "name", row));
        Optional<StockItem> there = there(said, problems);
        if (problems.isEmpty() && there.isPresent()) {
            return new StockVerdict(row, Fate.THERE, there.get().name(), List.of());
        }
        Optional<Supplier> seller = whoSells(said.supplier(), problems);
        Optional<StockItem> item = made(said, seller, problems);
        if (!problems.isEmpty() || item.isEmpty()) {
            return leftOut(row, said.name(), problems);
        }
        addIfNew(seller);
        add(item.get());
        return new StockVerdict(row, Fate.NEW, said.name(), List.of());
    }

    private Optional<StockItem> there(MaterialSaid said, List<Problem> problems) {
        Optional<StockItem> named = known.named(said.name());
        Optional<StockItem> keyed = said.identity().materialKey().flatMap(known::keyed);
        if (named.isPresent()
                && keyed.isPresent()
                && !named.get().id().equals(keyed.get().id())) {
            problems.add(new Problem(
                    "material",
                    "'" + said.identity().materialKey().orElse("") + "' is what recipes call '"
                            + keyed.get().name() + "', which is another material than '"
                            + named.get().name() + "'",
                    "leave one of the two out"));
        }
        Optional<StockItem> there = named.or(() -> keyed).or(() -> known.keyed(said.name()));
        there.flatMap(item -> said.kind().flatMap(kind -> LotFits.sameKind(item.said(), kind)))
                .ifPresent(problem -> problems.add(new Problem("kind", problem.what(), problem.remedy())));
        return there;
    }

    private Optional<StockItem> made(MaterialSaid said, Optional<Supplier> seller, List<Problem> problems) {
        if (said.name().isBlank()) {
            problems.add(new Problem("name", "no material is named", "write what it is called in the cupboard"));
            return Optional.empty();
        }
        if (said.kind().isEmpty()) {
            problems.add(new Problem(
                    "kind",
                    "there is no '" + said.name() + "' in the cupboard, and nothing says what kind of thing it is",
                    "write oil, alkali, additive, colourant, fragrance or packaging"));
            return Optional.empty();
        }
        ItemSaid whole = said.said(said.kind().get(), seller.map(Supplier::id));
        problems.addAll(ItemRules.check(whole));
        return Optional.of(new StockItem(ids.get(), whole));
    }

    private void add(StockItem item) {
        known.add(item);
        items.add(item);
    }

    // Lots

    private StockVerdict lot(StockRow row, StockRow.OfLot of) {
        LotSaid said = of.said();
        String code = said.ownCode();
        List<Problem> problems = new ArrayList<>();
        Optional<StockItem> there = there(of.material(), problems);
        Optional<KnownStock.LotThere> coded = known.coded(code);
        if (coded.isPresent()) {
            String name = there.map(StockItem::name).orElse(of.material().name());
            return StockImport.read(name).equals(coded.get().materialRead())
                            && coded.get().row() == 0
                    ? new StockVerdict(row, Fate.THERE, code, List.of())
                    : leftOut(row, code, List.of(codeTaken(coded.get())));
        }
        Optional<Supplier> seller = whoSells(of.supplier(), problems);
        Optional<StockItem> item =
                there.or(() -> made(of.material(), Optional.empty(), problems)).filter(it -> problems.isEmpty());
        item.ifPresent(it -> wrongAmount(it, of.amount()).ifPresent(problems::add));
        problems.addAll(LotRules.check(said));
        LotRules.pastWhenItCame(said).ifPresent(problems::add);
        problems.addAll(
                LotRules.check(StockMove.Told.of(MoveKind.RECEIPT, of.amount().number())));
        if (!problems.isEmpty() || item.isEmpty()) {
            return leftOut(row, code, problems);
        }
        KnownStock.Sameness same = new KnownStock.Sameness(
                item.get().id(),
                StockImport.read(of.supplier()),
                said.supplierLot(),
                said.received().toString(),
                of.amount().number());
        Optional<KnownStock.LotThere> alike = code.isBlank() ? known.same(same) : Optional.empty();
        if (alike.isPresent()) {
            return alike.get().row() == 0
                    ? new StockVerdict(row, Fate.THERE, alike.get().code(), List.of())
                    : leftOut(row, code, List.of(sameAs(alike.get().row(), "ownCode")));
        }
        return arrive(row, of, item.get(), seller, same);
    }

    private StockVerdict arrive(
            StockRow row, StockRow.OfLot of, StockItem item, Optional<Supplier> seller, KnownStock.Sameness same) {
        addIfNew(seller);
        if (known.named(item.name()).isEmpty()) {
            add(item);
        }
        LotSaid said = of.said();
        String code = said.ownCode().isBlank() ? codes.next(said.received()) : said.ownCode();
        known.add(new KnownStock.LotThere(code, StockImport.read(item.name()), item.name(), same, row.number()));
        LotSaid whole = new LotSaid(
                code,
                seller.map(Supplier::id),
                said.supplierLot(),
                said.received(),
                said.opened(),
                said.bestBefore(),
                said.price(),
                said.status(),
                said.certificate(),
                said.notes());
        lots.add(new Coming(item, whole, of.amount().number()));
        return new StockVerdict(row, Fate.NEW, code, List.of());
    }

    private static Optional<Problem> wrongAmount(StockItem item, StockRow.Amount amount) {
        if (amount.number() <= 0) {
            return Optional.of(new Problem("amount", "that is nothing", "write how much came"));
        }
        if (item.said().counting() == amount.counting()) {
            return Optional.empty();
        }
        return Optional.of(
                amount.counting() == Counting.PIECES
                        ? new Problem(
                                "amount",
                                "'" + item.name() + "' is weighed, and this number has no unit of mass",
                                "write it as in 500 g or 2.5 kg")
                        : new Problem(
                                "amount", "'" + item.name() + "' is counted, not weighed", "write how many, as in 50"));
    }

    private static Problem codeTaken(KnownStock.LotThere lot) {
        return lot.row() > 0
                ? new Problem("ownCode", "row " + lot.row() + " has this code already", "give each lot its own")
                : new Problem(
                        "ownCode",
                        "there is a lot " + lot.code() + " already, of '" + lot.materialName() + "'",
                        "give this one another code");
    }

    private List<Problem> twice(String what, String path, StockRow row) {
        Integer before = seen.putIfAbsent(what, row.number());
        return before == null ? List.of() : List.of(sameAs(before, path));
    }

    private static Problem sameAs(int row, String path) {
        return path.equals("ownCode")
                ? new Problem(
                        path,
                        "row " + row + " says the same of the same material",
                        "where there are two such lots, give each a code of its own; else leave one out")
                : new Problem(path, "row " + row + " has this name already", "leave one of the two out");
    }

    private static StockVerdict leftOut(StockRow row, String as, List<Problem> problems) {
        return new StockVerdict(row, Fate.LEFT_OUT, as, problems);
    }
}
