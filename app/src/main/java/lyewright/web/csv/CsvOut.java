package lyewright.web.csv;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lyewright.records.csv.StockFiles;
import lyewright.web.FileNames;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.csv.CsvPage.Out;

/** Everything in the cupboard as files to keep. */
final class CsvOut {

    private static final String ALL = "all";

    private final Shop shop;

    CsvOut(Shop shop) {
        this.shop = shop;
    }

    List<Out> files() {
        return List.of(
                new Out("materials.csv", "every material that is stocked"),
                new Out("suppliers.csv", "who sells them"),
                new Out("lots.csv", "every lot, used up or not, and what is left of it"),
                new Out("moves.csv", "everything that came and went, and who wrote it"),
                new Out("data-dictionary.csv", "what each column means, with its unit and an example"));
    }

    void download(Context ctx) {
        String name = Optional.ofNullable(ctx.queryParam("file")).orElse(ALL);
        StockFiles files = new StockFiles(shop.records().stockBook(), ctx.queryParam("mark") != null);
        if (name.equals(ALL)) {
            send(ctx, zipName(), "application/zip", zip(files));
        } else {
            byte[] bytes = files.file(name)
                    .orElseThrow(() ->
                            Refused.notHere("There is no such file.", "Choose one under Stores, In and out as CSV."));
            send(ctx, name, "text/csv; charset=utf-8", bytes);
        }
    }

    private String zipName() {
        String who = FileNames.plain(shop.workshop().name(), "");
        return "lyewright-" + (who.isEmpty() ? "" : who + "-") + "stores-" + LocalDate.now(shop.clock()) + ".zip";
    }

    private static byte[] zip(StockFiles files) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            files.zip(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static void send(Context ctx, String name, String type, byte[] bytes) {
        ctx.contentType(type);
        ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        ctx.result(bytes);
    }
}
