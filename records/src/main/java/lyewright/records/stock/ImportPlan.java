package lyewright.records.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.StockRow.MaterialSaid;
import lyewright.records.stock.StockVerdict.Fate;
import lyewright.records.store.Typed;

/** Rows of a file held against what is there, one after the other: what is new of them, and in which order it is to be written. */
final class ImportPlan {

    private final KnownStock known;
    private final java.util.function.Supplier<String> ids;
    private final RowMaterials materials;
    private final LocalDate today;
    private final LotCodes codes = new LotCodes();
    private final Map<String, Integer> seen = new HashMap<>();
    private final List<Supplier> suppliers = new ArrayList<>();
    private final List<StockItem> items = new ArrayList<>();
    private final List<Coming> lots = new ArrayList<>();

    /** A lot that is to be written, with its code. */
    record Coming(StockItem item, LotSaid said, long amount) {}

    /**
     * A plan against what is there.
     *
     * @param today the day that days are held against
     */
    ImportPlan(KnownStock known, NamedMaterials names, java.util.function.Supplier<String> ids, LocalDate today) {
        this.known = known;
        this.ids = ids;
        this.materials = new RowMaterials(known, names, ids);
        this.today = today;
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
        known.lostCodes().forEach(codes::taken);
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
            return StockVerdict.leftOut(row, of.name(), problems);
        }
        Optional<Supplier> there = known.supplier(of.name());
        if (there.isPresent()) {
            return StockVerdict.there(row, there.get().name());
        }
        add(new Supplier(ids.get(), of.name(), of.contact(), of.notes()));
        return new StockVerdict(row, Fate.NEW, of.name(), Optional.empty(), List.of(), List.of());
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
        Optional<StockItem> there = materials.there(said, problems);
        if (problems.isEmpty() && there.isPresent()) {
            return StockVerdict.there(row, there.get().name());
        }
        Optional<Supplier> seller = whoSells(said.supplier(), problems);
        Optional<RowMaterials.Meant> meant = materials.listed(said, seller, problems);
        if (!problems.isEmpty() || meant.isEmpty()) {
            return StockVerdict.leftOut(row, said.name(), problems);
        }
        addIfNew(seller);
        add(meant.get().item());
        return new StockVerdict(
                row,
                Fate.NEW,
                said.name(),
                Optional.of(meant.get().told()),
                List.of(),
                meant.get().notes());
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
        Optional<RowMaterials.Meant> meant = materials.ofLot(of.material(), problems);
        Optional<KnownStock.LotThere> coded = known.coded(code);
        if (coded.isPresent()) {
            String name = meant.map(it -> it.item().name()).orElse(of.material().name());
            return StockImport.read(name).equals(coded.get().materialRead())
                            && coded.get().row() == 0
                    ? StockVerdict.there(row, code)
                    : StockVerdict.leftOut(row, code, List.of(codeTaken(coded.get())));
        }
        Optional<KnownStock.Sameness> same = meant.map(it -> sameness(it.item(), of));
        Optional<KnownStock.LotThere> alike = code.isBlank() ? same.flatMap(known::same) : Optional.empty();
        if (problems.isEmpty() && alike.isPresent()) {
            return alike.get().row() == 0
                    ? StockVerdict.there(row, alike.get().code())
                    : StockVerdict.leftOut(row, code, List.of(sameAs(alike.get().row(), "ownCode")));
        }
        Optional<Supplier> seller = whoSells(of.supplier(), problems);
        Optional<LotSaid> whole = meant.map(it -> whole(it.item(), of, seller, problems));
        if (!problems.isEmpty() || whole.isEmpty()) {
            return StockVerdict.leftOut(row, code, problems);
        }
        return arrive(row, whole.get(), meant.get(), seller, same.orElseThrow());
    }

    private static KnownStock.Sameness sameness(StockItem item, StockRow.OfLot of) {
        return new KnownStock.Sameness(
                item.id(),
                StockImport.read(of.supplier()),
                of.said().supplierLot(),
                of.said().received().toString(),
                of.amount().number());
    }

    /** As it is to be kept but for its code, held against what it is a lot of and against the day. */
    private LotSaid whole(StockItem item, StockRow.OfLot of, Optional<Supplier> seller, List<Problem> problems) {
        wrongAmount(item, of.amount()).ifPresent(problems::add);
        LotSaid said =
                of.said().withSupplier(seller.map(Supplier::id)).withCertificate(certificate(item, of, problems));
        problems.addAll(LotRules.check(said));
        problems.addAll(LotRules.notCome(said, today));
        said.bestBefore()
                .flatMap(last -> LotDays.neverSoLong(said.received(), last))
                .ifPresent(problems::add);
        LotDays.neverSoLongAgo("received", said.received(), today).ifPresent(problems::add);
        problems.addAll(LotFits.check(item.said(), said));
        said.certificate()
                .map(own -> CertificateRules.refused(item.said(), own))
                .ifPresent(refused -> refused.forEach(problem -> problems.add(problem.within("certificate"))));
        problems.addAll(
                LotRules.check(StockMove.Told.of(MoveKind.RECEIPT, of.amount().number())));
        return said;
    }

    private static Optional<OwnMaterial> certificate(StockItem item, StockRow.OfLot of, List<Problem> problems) {
        Optional<OwnMaterial> written = of.said().certificate();
        Optional<String> key = item.said().identity().materialKey();
        if (written.isPresent() && !written.map(OwnMaterial::key).equals(key)) {
            problems.add(new Problem(
                    "certificate",
                    "it is of '" + written.get().key() + "', and recipes call '" + item.name() + "' "
                            + key.map(it -> "'" + it + "'").orElse("nothing"),
                    "leave the certificate out, or write it in columns of its own"));
        }
        Optional<Outcome<OwnMaterial>> inColumns =
                of.certificate().map(it -> it.of(item.said(), of.said().ownCode()));
        inColumns.ifPresent(it -> problems.addAll(it.problems()));
        return written.or(() -> inColumns.flatMap(
                it -> it instanceof Outcome.Ok<OwnMaterial> ok ? Optional.of(ok.value()) : Optional.empty()));
    }

    private StockVerdict arrive(
            StockRow row, LotSaid said, RowMaterials.Meant meant, Optional<Supplier> seller, KnownStock.Sameness same) {
        StockItem item = meant.item();
        addIfNew(seller);
        if (meant.isNew()) {
            add(item);
        }
        String code = said.ownCode().isBlank() ? codes.next(said.received()) : said.ownCode();
        known.add(new KnownStock.LotThere(code, StockImport.read(item.name()), item.name(), same, row.number()));
        lots.add(new Coming(
                item,
                said.withCode(code),
                ((StockRow.OfLot) row.what()).amount().number()));
        List<Problem> notes = new ArrayList<>(meant.notes());
        said.bestBefore()
                .flatMap(last -> LotDays.hardlySoLong(said.received(), last))
                .ifPresent(notes::add);
        LotDays.hardlySoLongAgo("received", said.received(), today).ifPresent(notes::add);
        LotRules.pastWhenItCame(said).ifPresent(notes::add);
        said.certificate()
                .map(own -> CertificateRules.asked(item.said(), own))
                .ifPresent(outside -> outside.forEach(problem ->
                        notes.add(new Problem("certificate." + problem.path(), problem.what(), problem.remedy()))));
        return new StockVerdict(row, Fate.NEW, code, Optional.of(meant.told()), List.of(), notes);
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
}
