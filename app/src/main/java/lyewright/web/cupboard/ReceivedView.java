package lyewright.web.cupboard;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.web.Notice;
import lyewright.web.Shop;
import lyewright.words.Dates;
import lyewright.words.Sentences;

/** Looks at what has just come, so that whoever received it sees what each line was taken for. */
final class ReceivedView {

    private final Shop shop;
    private final Units units;
    private final LocalDate today;

    ReceivedView(Shop shop) {
        this.shop = shop;
        this.units = shop.workshop().units();
        this.today = LocalDate.now(shop.clock());
    }

    /**
     * The page.
     *
     * @param lots what came
     * @param before whether the same form was received before
     */
    ReceivedPage page(List<KeptLot> lots, boolean before) {
        Map<String, String> suppliers = new SupplierNames(shop.records()).ofLots(lots);
        String told = before
                ? "This delivery was received before; nothing came twice."
                : lots.size() == 1 ? "One lot was received." : lots.size() + " lots were received.";
        return new ReceivedPage(
                CupboardFrame.of(shop, "What came").telling(Notice.of(told)),
                lots.stream().map(lot -> line(lot, suppliers)).toList());
    }

    private ReceivedPage.Line line(KeptLot lot, Map<String, String> suppliers) {
        Records records = shop.records();
        StockItem item = records.items().find(lot.itemId()).orElseThrow();
        String says = Stream.of(
                        ItemView.from(lot, suppliers),
                        lot.said()
                                .bestBefore()
                                .map(day -> "best before " + Dates.day(day))
                                .orElse("no best before"),
                        lot.said().price().map(Amounts::said).orElse(""),
                        ItemView.state(lot.lot(), today))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        return new ReceivedPage.Line(
                lot.said().ownCode(),
                LotPages.addressOf(lot.id()),
                Amounts.said(item.said().counting(), lot.came(), units),
                item.name(),
                recipes(item),
                says);
    }

    private String recipes(StockItem item) {
        String kind = Sentences.upperFirst(item.said().kind().word());
        return new CalledInRecipes(shop.names())
                .name(item.said())
                .map(name -> kind + "; recipes call it " + name)
                .orElse(item.said().kind() == ItemKind.PACKAGING ? kind : kind + "; no recipe names it yet");
    }
}
