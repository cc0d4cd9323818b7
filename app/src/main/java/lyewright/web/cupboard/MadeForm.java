package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Purities;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotDays;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.Taking;
import lyewright.stock.MadeHere;
import lyewright.stock.MixedFigures.Weighted;
import lyewright.stock.SaidAmount;

/**
 * What is made here, as typed.
 *
 * @param name what it is
 * @param parts of what
 * @param water how much water
 * @param day when
 * @param bestBefore its last day
 * @param far whether that is right though it is far off
 * @param sure whether a lye stronger than a cool room holds is right all the same
 */
record MadeForm(String name, List<Part> parts, String water, String day, String bestBefore, boolean far, boolean sure) {

    private static final String SOURCE = "made here of lot";

    private static final Set<String> FIELDS = Set.of("name", "water", "day", "bestBefore");

    MadeForm {
        parts = List.copyOf(parts);
    }

    /** So much of a lot, as typed. */
    record Part(String lot, String amount) {}

    /**
     * What is made, and of what.
     *
     * @param made the lot
     * @param from the lots it is made of
     */
    record Read(Arrival made, List<Taking> from) {}

    /** A part that reads. */
    private record Ready(StockItem item, KeptLot lot, SaidAmount amount) {}

    static MadeForm empty(int parts, LocalDate day) {
        return new MadeForm("", Collections.nCopies(parts, new Part("", "")), "", day.toString(), "", false, false);
    }

    static MadeForm sent(Context ctx, int parts) {
        return new MadeForm(
                Typed.line(ctx, "name"),
                IntStream.range(0, parts)
                        .mapToObj(i -> new Part(
                                Typed.line(ctx, "from." + i + ".lot"), Typed.line(ctx, "from." + i + ".amount")))
                        .toList(),
                Typed.line(ctx, "water"),
                Typed.line(ctx, "day"),
                Typed.line(ctx, "bestBefore"),
                Typed.ticked(ctx, "far"),
                Typed.ticked(ctx, "sure"));
    }

    static boolean canBePart(ItemSaid item, KeptLot lot) {
        return item.identity().materialKey().isPresent()
                && (item.kind() == ItemKind.OIL || alkali(item).isPresent())
                && lot.lot(item.kind()).alkali() == (item.kind() == ItemKind.ALKALI);
    }

    /** What sort of thing it is in the cupboard. */
    static ItemKind kind(OwnMaterial made) {
        return made.kind().equals(OwnMaterial.LYE) ? ItemKind.ALKALI : ItemKind.OIL;
    }

    private static Optional<Alkali> alkali(ItemSaid item) {
        return item.identity().materialKey().flatMap(Alkali::ofKey);
    }

    static boolean hasNoField(String path) {
        return !FIELDS.contains(path) && !path.startsWith("from.");
    }

    /** What the records say of the lot that is made, at its field here. */
    static Problem onTheForm(Problem problem) {
        String path = problem.path().replaceFirst("^lines\\.0\\.", "");
        return new Problem(path.equals("item") ? "name" : path, problem.what(), problem.remedy());
    }

    /** Read; problems name the fields. */
    Outcome<Read> read(
            List<StockItem> items,
            List<OwnMaterial> owned,
            Map<String, KeptLot> lots,
            Purities purities,
            LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        List<Ready> ready = ready(items, lots, problems);
        if (!sure) {
            ready.stream()
                    .filter(part -> part.lot().lot().isExpired(today))
                    .findFirst()
                    .ifPresent(part -> problems.add(past(part)));
        }
        Optional<LocalDate> made = Typed.ok("day", Typed.dayCome(day, today), problems);
        Optional<Optional<LocalDate>> last = Typed.ok("bestBefore", Typed.day(bestBefore), problems);
        long added = water.isBlank()
                ? 0
                : Typed.ok("water", SaidAmount.mass(water, new SaidAmount.Known(Optional.of(1.0), Map.of())), problems)
                        .map(SaidAmount::amount)
                        .orElse(0L);
        last.flatMap(day -> day)
                .filter(day -> made.filter(day::isBefore).isPresent())
                .ifPresent(day -> problems.add(
                        new Problem("bestBefore", "that is before it is made", "look at the two days again")));
        made.flatMap(from -> last.flatMap(day -> day).flatMap(day -> far(from, day)))
                .ifPresent(problems::add);
        if (name.isBlank()) {
            problems.add(new Problem("name", "nothing says what it is", "write what recipes will call it"));
        }
        if (ready.isEmpty() && problems.isEmpty()) {
            problems.add(new Problem("from.0.amount", "nothing is taken", "choose a lot and write how much of it"));
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        long whole =
                added + ready.stream().mapToLong(part -> part.amount().amount()).sum();
        MadeName names = new MadeName(items, owned, lots.values());
        return material(ready, added, purities)
                .then(own -> possible(own, added, whole, names))
                .then(own -> Outcome.ok(new Read(
                        new Arrival(
                                items.stream()
                                        .filter(item -> item.said()
                                                .identity()
                                                .materialKey()
                                                .filter(own.key()::equals)
                                                .isPresent())
                                        .findFirst()
                                        .map(StockItem::id)
                                        .orElse(""),
                                Optional.of(ItemSaid.of(own.key(), kind(own), Identity.ofKey(own.key()))),
                                said(own, made.orElseThrow(), last.orElseThrow().or(() -> earliest(ready))),
                                whole),
                        ready.stream()
                                .map(part -> new Taking(
                                        part.lot().id(),
                                        part.amount().amount(),
                                        part.amount().words()))
                                .toList())));
    }

    private Optional<Problem> far(LocalDate made, LocalDate last) {
        return LotDays.neverSoLong(made, last)
                .or(() -> far
                        ? Optional.empty()
                        : LotDays.hardlySoLong(made, last).map(DeliveryReading::asked));
    }

    /** Whether a lot is one of these. */
    static boolean isMadeHere(LotSaid said) {
        return said.certificate().filter(own -> own.source().startsWith(SOURCE)).isPresent();
    }

    /** Oils that are mixed keep as long as the first of them; lye is not spoilt by its day. */
    private static Optional<LocalDate> earliest(List<Ready> ready) {
        return ready.stream()
                .filter(part -> part.item().said().kind() == ItemKind.OIL)
                .flatMap(part -> part.lot().said().bestBefore().stream())
                .min(Comparator.naturalOrder());
    }

    private Outcome<OwnMaterial> possible(OwnMaterial own, long added, long whole, MadeName names) {
        List<Problem> problems = new ArrayList<>();
        names.taken(own).ifPresent(problems::add);
        MadeStrength.wrong(own, added, whole, sure).ifPresent(problems::add);
        return problems.isEmpty() ? Outcome.ok(own) : new Outcome.Refused<>(problems);
    }

    /** What is mixed of it is as old as it is. */
    private static Problem past(Ready part) {
        return new Problem(
                "sure",
                "lot " + part.lot().said().ownCode() + " is past its best before, and so would be what is made of it",
                "take another, or tick below that you found it good");
    }

    private List<Ready> ready(List<StockItem> items, Map<String, KeptLot> lots, List<Problem> problems) {
        List<Ready> ready = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            String field = "from." + i + ".amount";
            Optional<KeptLot> lot = Optional.ofNullable(lots.get(part.lot()));
            Optional<StockItem> item = lot.flatMap(it ->
                    items.stream().filter(one -> one.id().equals(it.itemId())).findFirst());
            if (part.lot().isEmpty() && part.amount().isBlank()) {
                continue;
            }
            if (lot.isEmpty() || item.isEmpty()) {
                problems.add(new Problem(field, "nothing says of which lot", "choose one"));
                continue;
            }
            if (!canBePart(item.get().said(), lot.get())) {
                problems.add(new Problem(
                        field,
                        "lot " + lot.get().said().ownCode()
                                + " is no oil and no alkali that goes into something made here",
                        "choose another"));
                continue;
            }
            Typed.ok(field, SaidAmount.mass(part.amount(), Known.of(item.map(StockItem::said))), problems)
                    .ifPresent(amount -> ready.add(new Ready(item.get(), lot.get(), amount)));
        }
        return ready;
    }

    private Outcome<OwnMaterial> material(List<Ready> ready, long added, Purities purities) {
        String source = SOURCE
                + (ready.size() == 1 ? " " : "s ")
                + String.join(
                        ", ",
                        ready.stream().map(part -> part.lot().said().ownCode()).toList());
        if (ready.stream().allMatch(part -> part.item().said().kind() == ItemKind.OIL)) {
            if (added > 0) {
                return Outcome.refused(new Problem("water", "oils do not take water", "leave it empty"));
            }
            return Outcome.ok(MadeHere.premix(
                    name.strip(), ready.stream().map(MadeForm::oil).toList(), source));
        }
        Set<Alkali> alkalis = new LinkedHashSet<>();
        ready.forEach(part -> alkali(part.item().said()).ifPresent(alkalis::add));
        boolean onlyAlkali =
                ready.stream().allMatch(part -> alkali(part.item().said()).isPresent());
        if (!onlyAlkali || alkalis.size() != 1) {
            return Outcome.refused(
                    "stock lye is one alkali and water, a premix is oils; this is neither", "make it in two goes");
        }
        if (added <= 0) {
            return Outcome.refused(new Problem("water", "lye needs water", "write how much, as in 500 g"));
        }
        Alkali alkali = alkalis.iterator().next();
        List<Weighted> weighted = ready.stream()
                .map(part -> new Weighted(
                        purity(part, purities.figure(alkali)), part.amount().amount()))
                .toList();
        return Outcome.ok(MadeHere.lye(name.strip(), alkali, weighted, added, source));
    }

    private static MadeHere.Oil oil(Ready part) {
        return new MadeHere.Oil(
                part.item().said().identity().materialKey().orElse(""),
                part.amount().amount(),
                part.lot()
                        .said()
                        .certificate()
                        .flatMap(OwnMaterial::saponificationValue)
                        .map(figure -> figure.figure("")));
    }

    private static Figure purity(Ready part, Figure usual) {
        return part.lot()
                .said()
                .certificate()
                .flatMap(OwnMaterial::strength)
                .map(strength -> strength.pure().figure(""))
                .orElse(usual);
    }

    private static LotSaid said(OwnMaterial own, LocalDate day, Optional<LocalDate> last) {
        return LotSaid.of(day).withBestBefore(last).withCertificate(Optional.of(own));
    }
}
