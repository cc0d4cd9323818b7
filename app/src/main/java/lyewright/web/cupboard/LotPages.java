package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.Lots;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import lyewright.stock.SaidAmount;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.words.Sentences;

/** One lot: what it holds, taking from it, judging it, and what came and went. */
final class LotPages implements Feature {

    private static final String ONE = "/stores/lots/{id}";

    private final Shop shop;

    LotPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ONE, this::open);
        routes.post(ONE, this::change);
        routes.post(ONE + "/take", this::take);
        routes.post(ONE + "/status", this::judge);
        routes.post(ONE + "/certificate", this::certify);
        routes.post(ONE + "/take-back/{number}", this::takeBack);
    }

    private Author author() {
        return shop.records().author();
    }

    static String addressOf(String id) {
        return "/stores/lots/" + id;
    }

    private KeptLot lot(Context ctx) {
        return lot(shop, ctx);
    }

    /** The lot of an address. */
    static KeptLot lot(Shop shop, Context ctx) {
        String id = ctx.pathParam("id");
        return shop.records()
                .lots()
                .find(id)
                .orElseThrow(() -> shop.notHere(
                        "lot",
                        records -> records.lots().find(id).isPresent(),
                        "There is no such lot.",
                        "Go back to the cupboard."));
    }

    private void open(Context ctx) {
        KeptLot lot = lot(ctx);
        LotPage page = new LotView(shop).page(lot, Map.of(), LotForm.of(lot.said()), Optional.empty(), List.of());
        Answers.page(
                ctx,
                "cupboard/lot.jte",
                DocumentPages.done(ctx, shop, lot)
                        .or(() -> LotDone.told(ctx, shop, lot))
                        .map(page::telling)
                        .orElse(page));
    }

    private void show(Context ctx, KeptLot lot, Map<String, String> typed, LotForm edit, List<Problem> problems) {
        show(ctx, new LotView(shop).page(lot, typed, edit, Optional.empty(), problems), problems);
    }

    private static void show(Context ctx, LotPage page, List<Problem> problems) {
        if (problems.isEmpty()) {
            Answers.page(ctx, "cupboard/lot.jte", page);
        } else {
            Answers.form(ctx, "cupboard/lot.jte", page);
        }
    }

    private void change(Context ctx) {
        KeptLot lot = lot(ctx);
        LotForm form = LotForm.sent(ctx);
        Outcome<KeptLot> changed = form.read(lot.said(), shop.workshop().currency(), LocalDate.now(shop.clock()))
                .then(said -> Typed.kept(() -> shop.records().lots().change(author(), lot.id(), said)));
        done(ctx, lot, Map.of(), form, changed);
    }

    private void take(Context ctx) {
        KeptLot lot = lot(ctx);
        ItemSaid item = shop.records().items().find(lot.itemId()).orElseThrow().said();
        Map<String, String> typed = Map.of(
                "amount", Typed.line(ctx, "amount"),
                "why", Typed.line(ctx, "why"),
                "kind", Typed.line(ctx, "kind"),
                "token", Typed.line(ctx, "token"));
        Optional<MoveKind> kind = MoveKind.ofWord(typed.getOrDefault("kind", ""))
                .filter(it -> it != MoveKind.RECEIPT && it != MoveKind.COUNT);
        Outcome<List<Long>> taken = DeliveryReading.amount(typed.getOrDefault("amount", ""), Optional.of(item))
                .then(amount -> Typed.kept(() -> taken(lot, kind.orElse(MoveKind.USE), amount, typed)));
        Outcome<List<Long>> atTheField = taken instanceof Outcome.Ok
                ? taken
                : new Outcome.Refused<>(taken.problems().stream()
                        .map(problem -> new Problem(field(problem.path()), what(problem, lot, item), problem.remedy()))
                        .toList());
        if (atTheField instanceof Outcome.Ok<List<Long>> ok) {
            Answers.seeOther(ctx, LotDone.taken(lot.id(), ok.value()));
        } else {
            show(ctx, lot(ctx), typed, LotForm.of(lot.said()), atTheField.problems());
        }
    }

    /** Who is told that a lot holds less wants to know how much that is. */
    private String what(Problem problem, KeptLot lot, ItemSaid item) {
        return problem.what().endsWith(Lots.HOLDS_LESS)
                ? shop.records()
                        .lots()
                        .find(lot.id())
                        .map(now -> problem.what() + ", "
                                + Amounts.exactly(
                                        item.counting(),
                                        now.left(),
                                        shop.workshop().units()))
                        .orElse(problem.what())
                : problem.what();
    }

    private static String field(String path) {
        return path.equals("purpose") || path.equals("why") ? "why" : "amount";
    }

    private Outcome<List<Long>> taken(KeptLot lot, MoveKind kind, SaidAmount amount, Map<String, String> typed) {
        String said = typed.getOrDefault("why", "").strip();
        StockMove.Told told = StockMove.Told.of(kind, 0);
        return shop.records()
                .lots()
                .take(
                        author(),
                        typed.getOrDefault("token", ""),
                        List.of(new Taking(lot.id(), amount.amount(), amount.words())),
                        kind == MoveKind.USE ? told.withPurpose(said) : told.withWhy(said));
    }

    private void judge(Context ctx) {
        KeptLot lot = lot(ctx);
        Optional<LotStatus> status = LotStatus.ofWord(Typed.line(ctx, "status"));
        LotSaid said = lot.said().withStatus(status.orElse(lot.said().status()));
        done(
                ctx,
                lot,
                Map.of(),
                LotForm.of(lot.said()),
                Typed.kept(() -> shop.records().lots().change(author(), lot.id(), said)));
    }

    private void certify(Context ctx) {
        KeptLot lot = lot(ctx);
        ItemSaid item = shop.records().items().find(lot.itemId()).orElseThrow().said();
        CertificateForm form = CertificateForm.sent(ctx);
        Outcome<KeptLot> certified = form.read(item, lot.said().ownCode())
                .then(certificate ->
                        certificate.isEmpty() && lot.said().certificate().isEmpty()
                                ? CertificateForm.nothing(item)
                                : Outcome.ok(certificate))
                .then(certificate -> Typed.kept(() -> shop.records()
                        .lots()
                        .change(author(), lot.id(), lot.said().withCertificate(certificate))));
        if (certified instanceof Outcome.Ok<KeptLot> ok) {
            Answers.seeOther(ctx, LotDone.certified(ok.value()));
            return;
        }
        List<Problem> problems = certified.problems().stream()
                .map(problem -> new Problem(
                        problem.path().replaceFirst("^certificate\\.", ""), problem.what(), problem.remedy()))
                .toList();
        LotForm edit = LotForm.of(lot.said());
        show(ctx, new LotView(shop).page(lot, Map.of(), edit, Optional.of(form), problems), problems);
    }

    private void takeBack(Context ctx) {
        KeptLot lot = lot(ctx);
        String number = ctx.pathParam("number");
        Outcome<Long> back = number.matches("[0-9]{1,15}")
                ? Typed.kept(
                        () -> shop.records().lots().correct(author(), Long.parseLong(number), Typed.line(ctx, "why")))
                : Outcome.refused("there is no such move", "go back to the lot");
        if (back instanceof Outcome.Ok) {
            Answers.seeOther(ctx, "/stores/lots/" + lot.id());
            return;
        }
        Problem problem = back.problems().get(0);
        throw new Refused(409, Sentences.whole(problem.what()), Sentences.whole(problem.remedy()));
    }

    private <T> void done(Context ctx, KeptLot lot, Map<String, String> typed, LotForm edit, Outcome<T> outcome) {
        if (outcome instanceof Outcome.Ok) {
            Answers.seeOther(ctx, "/stores/lots/" + lot.id());
        } else {
            show(ctx, lot, typed, edit, outcome.problems());
        }
    }
}
