package lyewright.web.cupboard;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A workshop whose cupboard is asked over HTTP, by whole pages, as it is without scripts. */
abstract class AtTheCupboard {

    final LocalDate today = LocalDate.now(ZoneOffset.UTC);

    @TempDir
    Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    TestWorkshop workshop;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CupboardPages(shop)));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    Records records() {
        return workshop.shop().records();
    }

    HttpResponse<String> deliver(String token, String... lines) throws Exception {
        return deliver(token, List.of(), lines);
    }

    /** The same with more fields, as pairs of name and value. */
    HttpResponse<String> deliver(String token, List<String> more, String... lines) throws Exception {
        List<String> form = new ArrayList<>(List.of(
                "opened-in",
                "mine",
                "token",
                token,
                "supplier",
                "Northquay Oils",
                "day",
                today.toString(),
                "do",
                "receive"));
        form.addAll(more);
        for (int i = 0; i < lines.length; i++) {
            String[] cells = lines[i].split("\\|", -1);
            String[] names = {"material", "amount", "lot", "bestBefore", "price", "kind"};
            for (int n = 0; n < names.length; n++) {
                form.add("lines." + i + "." + names[n]);
                form.add(n < cells.length ? cells[n] : "");
            }
        }
        return workshop.post("/stores/deliveries", form.toArray(String[]::new));
    }

    KeptLot lot(String item) {
        StockItem found = records().items().list().stream()
                .filter(it -> it.name().equals(item))
                .findFirst()
                .orElseThrow();
        return records().lots().of(found.id()).get(0);
    }
}
