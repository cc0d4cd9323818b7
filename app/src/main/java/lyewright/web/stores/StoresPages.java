package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Map;
import lyewright.web.Feature;
import lyewright.web.Shop;

/** The stores: equipment, the maker's own materials, and what the tables know. */
public final class StoresPages implements Feature {

    private final List<Feature> parts;

    /**
     * The stores of a workshop.
     *
     * @param shop the workshop that is shown
     */
    public StoresPages(Shop shop) {
        MouldPages moulds = new MouldPages(shop);
        BalancePages balances = new BalancePages(shop);
        JugPages jugs = new JugPages(shop);
        MaterialPages materials = new MaterialPages(shop);
        Map<Thing, ThingPages<?, ?>> all =
                Map.of(Thing.MOULD, moulds, Thing.BALANCE, balances, Thing.JUG, jugs, Thing.MATERIAL, materials);
        parts = List.of(new Overview(shop, all), new TablesPages(shop), moulds, balances, jugs, materials);
    }

    @Override
    public void routes(RoutesConfig routes) {
        parts.forEach(part -> part.routes(routes));
    }
}
