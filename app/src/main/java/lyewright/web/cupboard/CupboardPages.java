package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Notice;
import lyewright.web.Shop;

/** The cupboard and all that belongs to it. */
public final class CupboardPages implements Feature {

    private final Shop shop;
    private final List<Feature> parts;

    /**
     * The cupboard of a workshop.
     *
     * @param shop the workshop that is shown
     */
    public CupboardPages(Shop shop) {
        this.shop = shop;
        this.parts = List.of(
                new DeliveryPages(shop),
                new ItemPages(shop),
                new AlikePages(shop),
                new LotPages(shop),
                new DocumentPages(shop),
                new GainPages(shop),
                new MadePages(shop),
                new CountPages(shop),
                new SupplierPages(shop));
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/stores/cupboard", this::show);
        parts.forEach(part -> part.routes(routes));
    }

    private void show(Context ctx) {
        CupboardPage page = new CupboardView(shop).page();
        Answers.page(
                ctx,
                "cupboard/cupboard.jte",
                new CupboardPage(
                        notice(ctx).map(page.frame()::telling).orElse(page.frame()), page.calls(), page.shelves()));
    }

    private Optional<Notice> notice(Context ctx) {
        Optional<Integer> received = number(ctx, "received");
        if (received.isPresent()) {
            return Optional.of(Notice.of(
                    switch (received.get()) {
                        case 0 -> "This delivery was received before; nothing came twice.";
                        case 1 -> "One lot was received.";
                        default -> received.get() + " lots were received.";
                    }));
        }
        return number(ctx, "counted")
                .map(counted -> Notice.of(
                        switch (counted) {
                            case 0 ->
                                "This count was kept before, and nothing is counted twice. What was written into it since"
                                        + " is not kept: count anew.";
                            case 1 -> "One lot was counted.";
                            default -> counted + " lots were counted.";
                        }))
                .or(() -> Optional.ofNullable(ctx.queryParam("made"))
                        .map(made ->
                                Notice.of("That was made before; nothing was made or taken twice. What was written into"
                                        + " the form since is not kept: make it anew.")))
                .or(() -> Optional.ofNullable(ctx.queryParam("removed"))
                        .flatMap(id -> shop.records().items().find(id))
                        .map(gone -> Notice.withUndo(
                                gone.name() + " is out of the cupboard; its records stay.",
                                "Put it back",
                                "/stores/cupboard/" + gone.id() + "/put-back")));
    }

    private static Optional<Integer> number(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name))
                .filter(text -> text.matches("[0-9]{1,4}"))
                .map(Integer::valueOf);
    }
}
