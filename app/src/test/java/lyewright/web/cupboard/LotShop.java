package lyewright.web.cupboard;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotDocument;
import lyewright.records.stock.LotSaid;
import lyewright.web.TestWorkshop;
import lyewright.web.ledger.LedgerPages;

/** A workshop with one lot, to which documents are sent over HTTP. */
final class LotShop implements AutoCloseable {

    /** A PDF, as small as one can be. */
    static final String PDF = "%PDF-1.4\n1 0 obj\nnull\nendobj\nxref\nstartxref\n29\n%%EOF\n";

    static final String EDGE = "edge-of-a-part";

    final TestWorkshop workshop;
    final String lot;
    final String page;

    LotShop(Path home) {
        workshop =
                TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CupboardPages(shop), new LedgerPages(shop)));
        lot = receive("Coconut oil");
        page = "/stores/lots/" + lot;
    }

    Records records() {
        return workshop.shop().records();
    }

    String receive(String item) {
        LotSaid said = LotSaid.of(LocalDate.of(2026, 11, 25)).withSupplierLot("NQ-118");
        ItemSaid what = ItemSaid.of(item, ItemKind.OIL, Identity.none());
        return records()
                .lots()
                .receive(records().author(), "", List.of(Arrival.of(what, said, 5_000_000)))
                .orThrow()
                .get(0)
                .id();
    }

    /** Sends a document to the lot. */
    HttpResponse<String> send(String file, String content, String name) throws IOException, InterruptedException {
        return send(page, file, content, name, false);
    }

    /** Sends a document to the lot of a page, and to all that came with it. */
    HttpResponse<String> send(String to, String file, String content, String name, boolean all)
            throws IOException, InterruptedException {
        String tick = all ? "--" + EDGE + "\r\nContent-Disposition: form-data; name=\"all\"\r\n\r\nyes\r\n" : "";
        return workshop.postParts(
                to + "/documents",
                EDGE,
                tick + "--" + EDGE + "\r\nContent-Disposition: form-data; name=\"name\"\r\n\r\n" + name + "\r\n--"
                        + EDGE
                        + "\r\nContent-Disposition: form-data; name=\"document\"; filename=\"" + file
                        + "\"\r\nContent-Type: application/pdf\r\n\r\n" + content + "\r\n--" + EDGE + "--\r\n");
    }

    List<LotDocument> kept() {
        return records().documents().of(lot);
    }

    String addressOf(LotDocument document) {
        return page + "/documents/" + document.sha256();
    }

    static String text(HttpResponse<String> answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    @Override
    public void close() {
        workshop.close();
    }
}
