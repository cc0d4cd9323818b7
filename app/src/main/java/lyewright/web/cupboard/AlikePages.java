package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.records.stock.StockItem;
import lyewright.stock.Variants.Thing;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Shop;

/** What a name that is being typed is easily taken for; a part of a page, asked for when the field is left. */
final class AlikePages implements Feature {

    private static final int LONGEST = 200;

    private final Shop shop;

    AlikePages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/stores/alike", this::show);
    }

    private void show(Context ctx) {
        String of = query(ctx, "of");
        List<StockItem> items = shop.records().items().list();
        Alike alike = of.matches("lines\\.[0-9]{1,3}\\.material")
                ? Alike.ofLine(query(ctx, of), items, shop.names())
                : Alike.ofForm(thing(ctx), query(ctx, "id"), items);
        Answers.page(ctx, "cupboard/alike.jte", alike);
    }

    private static Thing thing(Context ctx) {
        return new Thing(
                Optional.of(query(ctx, "material")).filter(key -> !key.isEmpty()),
                query(ctx, "name"),
                query(ctx, "species"),
                query(ctx, "part"));
    }

    private static String query(Context ctx, String name) {
        String typed = Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
        return typed.length() > LONGEST ? typed.substring(0, LONGEST) : typed;
    }
}
