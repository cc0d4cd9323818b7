package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import java.util.List;
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
        parts = List.of(new TablesPages(shop));
    }

    @Override
    public void routes(RoutesConfig routes) {
        parts.forEach(part -> part.routes(routes));
    }
}
