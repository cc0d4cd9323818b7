package lyewright.web.recipe;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.Formula;
import lyewright.material.Tables;
import lyewright.records.Records;
import lyewright.records.stock.Shelves;
import lyewright.stock.Expiry;
import lyewright.web.Shop;
import lyewright.words.Dates;

/** What of the cupboard is old for recipes. The records are asked twice, however many recipes are looked at. */
public final class StockAges {

    private final Shelves shelves;
    private final LocalDate today;
    private final int weeks;

    private StockAges(Shelves shelves, LocalDate today) {
        this.shelves = shelves;
        this.today = today;
        this.weeks = Expiry.weeksOfCure(Tables.bundled());
    }

    static StockAges of(Shop shop) {
        Records records = shop.records();
        return new StockAges(Shelves.of(records.items().list(), records.lots().held()), LocalDate.now(shop.clock()));
    }

    /**
     * A lot that is old.
     *
     * @param what which, in words
     * @param address its page
     * @param until until when it is good, or was
     * @param means what that means
     * @param isOver whether that is over
     */
    public record Old(String what, String address, String until, String means, boolean isOver) {}

    /** All of a recipe's. */
    List<Old> of(Formula formula) {
        return found(formula).stream().map(old -> told(old, formula)).toList();
    }

    /** What presses most of a recipe's, and how many there are besides. */
    Optional<Brief> brief(Formula formula) {
        List<Expiry> found = found(formula);
        return Expiry.mostPressing(found).map(first -> new Brief(told(first, formula), found.size() - 1));
    }

    /**
     * For a list.
     *
     * @param first what presses most
     * @param more how many others there are
     */
    public record Brief(Old first, int more) {}

    private List<Expiry> found(Formula formula) {
        Set<String> keys = Expiry.takenBy(formula);
        return Expiry.of(keys, shelves.calledAsIn(keys).lots(), today, weeks);
    }

    private Old told(Expiry expiry, Formula formula) {
        String day = Dates.day(expiry.lot().bestBefore().orElse(today));
        String others = expiry.others() ? " There is other of it that is good for longer." : "";
        String name = Optional.ofNullable(
                        shelves.calledAsIn(Expiry.takenBy(formula)).items().get(expiry.key()))
                .map(item -> item.name())
                .orElse(expiry.key());
        return new Old(
                name + ", lot " + expiry.lot().code(),
                "/stores/lots/" + expiry.lot().id(),
                (expiry.isOver() ? "was" : "is") + " best before " + day,
                (expiry.isOver()
                                ? ", so nothing of it is taken for a batch."
                                : ", sooner than a batch that is made today is cured.")
                        + others,
                expiry.isOver());
    }

    /** How long that is reckoned. */
    static String practice() {
        return "A batch is taken to cure " + Expiry.weeksOfCure(Tables.bundled())
                + " weeks. Soap of old oil may turn rancid sooner. Both are common practice.";
    }
}
