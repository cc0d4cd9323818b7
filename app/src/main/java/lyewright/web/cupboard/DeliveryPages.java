package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
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

    private final Shop shop;

    DeliveryPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ADDRESS + "/new", this::open);
        routes.post(ADDRESS, this::receive);
    }

    private void open(Context ctx) {
        DeliveryForm form = DeliveryForm.empty(LocalDate.now(shop.clock()).toString());
        Answers.page(ctx, "cupboard/delivery.jte", page(form, UUID.randomUUID().toString(), List.of()));
    }

    private void receive(Context ctx) {
        DeliveryForm form = DeliveryForm.sent(ctx);
        String token = Typed.line(ctx, "token");
        if ("more".equals(ctx.formParam("do"))) {
            Answers.page(ctx, "cupboard/delivery.jte", page(form.withMore(), token, List.of()));
            return;
        }
        OpenedIn.check(ctx, shop);
        Outcome<List<KeptLot>> received = kept(form, token);
        if (received instanceof Outcome.Ok<List<KeptLot>> ok) {
            Answers.seeOther(ctx, "/stores/cupboard?received=" + ok.value().size());
        } else {
            Answers.form(ctx, "cupboard/delivery.jte", page(form, token, received.problems()));
        }
    }

    private Outcome<List<KeptLot>> kept(DeliveryForm form, String token) {
        Records records = shop.records();
        Meant meant = new Meant(records.items().list(), shop.names());
        Outcome<DeliveryReading.Read> read =
                new DeliveryReading(meant, shop.workshop().currency(), LocalDate.now(shop.clock())).read(form);
        if (!(read instanceof Outcome.Ok<DeliveryReading.Read> ok)) {
            return new Outcome.Refused<>(read.problems());
        }
        return Typed.kept(() -> {
            Outcome<List<KeptLot>> kept =
                    records.lots().receive(records.author(), token, ok.value().delivery());
            return kept instanceof Outcome.Ok
                    ? kept
                    : new Outcome.Refused<>(
                            kept.problems().stream().map(ok.value()::onTheForm).toList());
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
