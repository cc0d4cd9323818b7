package lyewright.web.start;

import lyewright.formula.MaterialNames;
import lyewright.web.Shop;

/** The names that a notebook may have. */
final class KnownNames {

    private final Shop shop;

    KnownNames(Shop shop) {
        this.shop = shop;
    }

    MaterialNames now() {
        return shop.names();
    }
}
