package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lyewright.formula.MaterialNames;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.Supplier;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.OpenedIn;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Sentences;

/** Receiving a delivery: many lines on one page. */
final class DeliveryPages implements Feature {

    private static final String ADDRESS = "/stores/deliveries";

    private static final String ITEM = "item";

    private final Shop shop;

    DeliveryPages(Shop shop) {
        this.shop = shop;
    }

    /** Where more of something is received. */
    static String moreOf(StockItem item) {
        return ADDRESS + "/new?" + ITEM + "=" + item.id();
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS + "/new", this::open);
        routes.get(ADDRESS + "/received", this::show);
        routes.post(ADDRESS, this::receive);
    }

    private void open(Context ctx) {
        String day = LocalDate.now(shop.clock()).toString();
        DeliveryForm form = Optional.ofNullable(ctx.queryParam(ITEM))
                .flatMap(id -> shop.records().items().find(id))
                .map(item -> DeliveryForm.ofMore(item.name(), lastFrom(item), day))
                .orElseGet(() -> DeliveryForm.empty(day));
        Answers.keepForTheWayBack(ctx);
        Answers.page(ctx, "cupboard/delivery.jte", page(form, UUID.randomUUID().toString(), List.of()));
    }

    /** From whom the last lot of something came, if they are still on the list; empty where nobody is known. */
    private String lastFrom(StockItem item) {
        List<Supplier> listed = shop.records().suppliers().list();
        return shop.records().lots().of(item.id()).stream()
                .filter(lot -> lot.said().supplierId().isPresent())
                .reduce((first, later) -> later)
                .flatMap(lot -> listed.stream()
                        .filter(one ->
                                lot.said().supplierId().filter(one.id()::equals).isPresent())
                        .findFirst())
                .map(Supplier::name)
                .orElse("");
    }

    private void receive(Context ctx) {
        DeliveryForm form = DeliveryForm.sent(ctx);
        String token = Typed.line(ctx, "token");
        if ("more".equals(ctx.formParam("do"))) {
            Answers.keepForTheWayBack(ctx);
            Answers.page(ctx, "cupboard/delivery.jte", page(form.withMore(), token, List.of()));
            return;
        }
        OpenedIn.check(ctx, shop);
        Outcome<Received> received = read(form, token).then(read -> received(read, token));
        if (!(received instanceof Outcome.Ok<Received> ok)) {
            Answers.form(ctx, "cupboard/delivery.jte", page(form, token, received.problems()));
        } else if (ok.value().another().isPresent()) {
            // what was kept before has used the token up: from here on it would be kept as another
            String fresh = UUID.randomUUID().toString();
            Answers.form(
                    ctx,
                    "cupboard/delivery.jte",
                    page(form, fresh, List.of(ok.value().another().get())));
        } else {
            Answers.seeOther(ctx, whatCame(token, ok.value().lots()));
        }
    }

    /** Where it is told what the lines became; a form without a token is no browser's. */
    private String whatCame(String token, int lots) {
        return shop.records().lots().broughtBy(token).isEmpty()
                ? "/stores/cupboard?received=" + lots
                : ADDRESS + "/received?of=" + URLEncoder.encode(token, StandardCharsets.UTF_8)
                        + (lots == 0 ? "&before=1" : "");
    }

    private void show(Context ctx) {
        String token = Optional.ofNullable(ctx.queryParam("of")).orElse("");
        List<KeptLot> lots = shop.records().lots().broughtBy(token);
        if (lots.isEmpty()) {
            Answers.seeOther(ctx, "/stores/cupboard");
        } else {
            Answers.page(
                    ctx, "cupboard/received.jte", new ReceivedView(shop).page(lots, ctx.queryParam("before") != null));
        }
    }

    /** So many lots came, or something else had come with the same form, which the way back in a browser makes easy. */
    private record Received(int lots, Optional<Problem> another) {}

    private Outcome<DeliveryReading.Read> read(DeliveryForm form, String token) {
        Records records = shop.records();
        return new DeliveryReading(
                        new Meant(records.items().list(), shop.names()),
                        shop.workshop().currency(),
                        LocalDate.now(shop.clock()),
                        new HereAlready(
                                records,
                                form.supplier(),
                                records.lots().broughtBy(token).isEmpty()))
                .read(form);
    }

    private Outcome<Received> received(DeliveryReading.Read read, String token) {
        Records records = shop.records();
        return Typed.kept(() -> {
            Outcome<List<KeptLot>> kept = records.lots().receive(records.author(), token, read.delivery());
            return kept instanceof Outcome.Ok<List<KeptLot>> ok
                    ? Outcome.ok(new Received(
                            ok.value().size(),
                            ok.value().isEmpty() ? new ReceivedBefore(records).another(read, token) : Optional.empty()))
                    : new Outcome.Refused<>(
                            kept.problems().stream().map(read::onTheForm).toList());
        });
    }

    private DeliveryPage page(DeliveryForm form, String token, List<Problem> problems) {
        Records records = shop.records();
        List<StockItem> items = records.items().list();
        MaterialNames names = shop.names();
        return new DeliveryPage(
                CupboardFrame.of(shop, "A delivery"),
                token,
                TextField.of("supplier", "From whom", "a name; a new one is kept with it", form.supplier())
                        .with(problems),
                TextField.of("day", "When it came", "", form.day()).with(problems),
                DeliveryPage.Ask.of(form.longAgo(), "day", DeliveryReading.FAR, problems),
                form.quarantine(),
                IntStream.range(0, form.lines().size())
                        .mapToObj(i -> DeliveryPage.Line.of(
                                i,
                                form.lines().get(i),
                                problems,
                                Alike.ofLine(form.lines().get(i).material(), items, names)))
                        .toList(),
                shop.workshop().currency(),
                known(items, names),
                records.suppliers().list().stream().map(Supplier::name).toList(),
                problems.stream()
                        .filter(problem -> problem.path().isEmpty())
                        .map(Sentences::whole)
                        .toList(),
                problems.size());
    }

    /** What is in the cupboard first, then all that recipes may name. */
    private static List<String> known(List<StockItem> items, MaterialNames names) {
        return Stream.of(
                        items.stream().map(StockItem::name),
                        Stream.of("Sodium hydroxide", "Potassium hydroxide"),
                        Stream.of(MaterialNames.Place.values())
                                .flatMap(place -> names.all(place).stream())
                                .map(MaterialNames.Named::name))
                .flatMap(all -> all)
                .distinct()
                .toList();
    }
}
