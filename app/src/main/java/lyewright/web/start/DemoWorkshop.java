package lyewright.web.start;

import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.web.Shop;

/** Fills the demo workshop, through the same doors as a maker's own. Everything in it is invented, and says so. */
public final class DemoWorkshop {

    private DemoWorkshop() {}

    /** Puts everything into empty records. */
    public static void fill(Records records) {
        records.settings().save(Shop.usual("Gannet Stair Soap", Units.GRAMS));
    }
}
