package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;

/** The frame around every page of the cupboard. */
final class CupboardFrame {

    private static final List<String> STYLES = List.of("stores.css", "cupboard.css");

    private CupboardFrame() {}

    static Frame of(Shop shop, String title) {
        return shop.frame(title, Section.STORES).with(STYLES, List.of());
    }
}
