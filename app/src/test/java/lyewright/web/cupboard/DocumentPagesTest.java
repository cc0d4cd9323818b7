package lyewright.web.cupboard;

import static lyewright.web.cupboard.LotShop.PDF;
import static lyewright.web.cupboard.LotShop.text;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotDocument;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents of a lot over HTTP, by whole pages: kept, opened, taken off, told by the ledger. */
class DocumentPagesTest {

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private LotShop shop;

    @BeforeEach
    void start() {
        shop = new LotShop(home);
    }

    @AfterEach
    void stop() {
        shop.close();
    }

    private static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    @Test
    void a_lot_without_documents_says_what_could_be_there() throws Exception {
        HttpResponse<String> answer = shop.workshop.get(shop.page);
        assertThat(text(answer))
                .contains("None yet: its certificate as it came")
                .contains("40 MB at most");
        assertThat(answer.body()).contains("type=\"file\"").contains("multipart/form-data");
    }

    @Test
    void a_certificate_is_kept_told_opened_and_downloaded() throws Exception {
        HttpResponse<String> sent = shop.send("scan.pdf", PDF, "Certificate <NQ-118>");
        assertThat(sent.statusCode()).isEqualTo(303);

        HttpResponse<String> told = shop.workshop.get(TestWorkshop.wayOn(sent));
        assertThat(text(told))
                .contains("Kept with this lot: Certificate &lt;NQ-118&gt;.")
                .contains("PDF, " + PDF.length() + " bytes");
        assertThat(told.body()).contains("href=\"" + shop.addressOf(shop.kept().get(0)) + "\"");

        HttpResponse<byte[]> opened =
                shop.workshop.download(shop.addressOf(shop.kept().get(0)));
        assertThat(new String(opened.body(), StandardCharsets.UTF_8)).isEqualTo(PDF);
        assertThat(header(opened, "Content-Type")).isEqualTo("application/pdf");
        assertThat(header(opened, "Content-Length")).isEqualTo(Integer.toString(PDF.length()));
        assertThat(header(opened, "Content-Disposition")).isEqualTo("inline; filename=\"certificate-nq-118.pdf\"");
        assertThat(header(opened, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(opened, "Content-Security-Policy"))
                .startsWith("default-src 'none';")
                .doesNotContain("script");
        HttpResponse<byte[]> downloaded =
                shop.workshop.download(shop.addressOf(shop.kept().get(0)) + "?download");
        assertThat(header(downloaded, "Content-Disposition"))
                .isEqualTo("attachment; filename=\"certificate-nq-118.pdf\"");
    }

    @Test
    void a_letter_is_shown_as_text_in_a_sandbox_whatever_its_file_was_called() throws Exception {
        shop.send("C:\\papers\\letter.pdf", "Säurezahl 0,4. javascript:alert(1)", "");

        LotDocument letter = shop.kept().get(0);
        assertThat(letter.name()).isEqualTo("letter.pdf");
        HttpResponse<byte[]> opened = shop.workshop.download(shop.addressOf(letter));
        assertThat(header(opened, "Content-Type").replace(" ", "")).isEqualTo("text/plain;charset=utf-8");
        assertThat(header(opened, "Content-Disposition")).isEqualTo("inline; filename=\"letter.txt\"");
        assertThat(header(opened, "Content-Security-Policy")).endsWith("sandbox");
        assertThat(new String(opened.body(), StandardCharsets.UTF_8)).startsWith("Säurezahl");
    }

    @Test
    void the_same_document_again_says_that_the_lot_has_it() throws Exception {
        shop.send("scan.pdf", PDF, "Certificate");
        HttpResponse<String> again = shop.send("other.pdf", PDF, "");
        assertThat(text(shop.workshop.get(TestWorkshop.wayOn(again))))
                .contains("This lot had that document already, as Certificate; nothing was added.");
        assertThat(shop.kept()).hasSize(1);
    }

    @Test
    void a_delivery_note_is_kept_with_all_that_came_with_it_where_that_is_ticked() throws Exception {
        assertThat(shop.workshop.get(shop.page).body()).doesNotContain("name=\"all\"");
        shop.workshop.post(
                "/stores/deliveries",
                "opened-in",
                "mine",
                "token",
                "token-0001",
                "supplier",
                "Northquay Oils",
                "day",
                "2026-11-20",
                "do",
                "receive",
                "lines.0.material",
                "cocoa butter",
                "lines.0.amount",
                "5 kg",
                "lines.1.material",
                "castor",
                "lines.1.amount",
                "1 kg");
        List<KeptLot> came = shop.records().lots().held().stream()
                .filter(it -> !it.id().equals(shop.lot))
                .toList();
        assertThat(came).hasSize(2);
        String first = "/stores/lots/" + came.get(0).id();
        assertThat(text(shop.workshop.get(first)))
                .contains("Also with what came with it: " + came.get(1).said().ownCode());

        HttpResponse<String> refused = shop.send(first, "note.pdf", "%PDF-1.4 half", "Note", true);
        assertThat(refused.body()).contains("name=\"all\" value=\"yes\" checked");
        HttpResponse<String> sent = shop.send(first, "note.pdf", PDF, "Note", true);

        assertThat(text(shop.workshop.get(TestWorkshop.wayOn(sent))))
                .contains("Kept with this lot and with those that came with it: Note.");
        for (KeptLot each : came) {
            assertThat(shop.records().documents().of(each.id())).hasSize(1);
        }
    }

    @Test
    void one_on_the_wrong_lot_is_taken_off_with_a_reason_and_the_ledger_tells_both() throws Exception {
        shop.send("scan.pdf", PDF, "Certificate");
        String off = shop.addressOf(shop.kept().get(0)) + "/take-off";
        HttpResponse<String> without = shop.workshop.post(off, "why", " ");
        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(text(without)).contains("Nothing says why.");

        HttpResponse<String> done = shop.workshop.post(off, "why", "is of lot 26-0002");

        assertThat(text(shop.workshop.get(TestWorkshop.wayOn(done))))
                .contains("Taken off this lot: Certificate.")
                .contains("One that was taken off")
                .contains("Taken off: is of lot 26-0002");
        assertThat(shop.workshop.get(shop.addressOf(shop.kept().get(0))).statusCode())
                .isEqualTo(200);
        assertThat(text(shop.workshop.get("/ledger")))
                .contains("Document kept with Coconut oil, lot 26-0001: Certificate (PDF, " + PDF.length()
                        + " bytes, SHA-256 " + shop.kept().get(0).sha256().substring(0, 12))
                .contains("Document taken off Coconut oil, lot 26-0001: Certificate (is of lot 26-0002)");
        assertThat(text(shop.workshop.post(off, "why", "again"))).contains("taken off before");
    }

    @Test
    void a_document_whose_file_has_gone_says_so_and_verifying_names_it() throws Exception {
        shop.send("scan.pdf", PDF, "Certificate");
        assertThat(text(shop.workshop.post("/ledger/verify", "head", "")))
                .contains("One document's file was read through and compared with the ledger.");
        Files.delete(shop.records().documents().file(shop.kept().get(0)).orElseThrow());

        assertThat(text(shop.workshop.get(shop.page))).contains("Certificate its file is gone");
        HttpResponse<String> opened =
                shop.workshop.get(shop.addressOf(shop.kept().get(0)));
        assertThat(opened.statusCode()).isEqualTo(404);
        assertThat(text(opened)).contains("Add the same document to the lot again");
        assertThat(text(shop.workshop.post("/ledger/verify", "head", "")))
                .contains("Entry 3: the file of the document \"Certificate\" has gone.");
        shop.send("scan.pdf", PDF, "Certificate");
        assertThat(shop.workshop.get(shop.addressOf(shop.kept().get(0))).statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_document_whose_bytes_were_changed_on_the_disk_is_not_shown_and_can_be_mended() throws Exception {
        shop.send("scan.pdf", PDF, "Certificate");
        LotDocument kept = shop.kept().get(0);
        Path file = shop.records().documents().file(kept).orElseThrow();
        Files.writeString(file, PDF.replace("1.4", "1.5"));
        for (String address : List.of(shop.addressOf(kept), shop.addressOf(kept) + "?download")) {
            HttpResponse<String> opened = shop.workshop.get(address);
            assertThat(opened.statusCode()).isEqualTo(409);
            assertThat(text(opened))
                    .contains("its bytes were changed since, so it is not shown")
                    .contains("Add the document from your own copy to the lot again");
        }
        shop.send("scan.pdf", PDF, "Certificate");
        assertThat(shop.workshop.get(shop.addressOf(kept)).body()).isEqualTo(PDF);
    }

    @Test
    void a_document_is_found_at_its_own_lot_only() throws Exception {
        shop.send("scan.pdf", PDF, "Certificate");
        String sha256 = shop.kept().get(0).sha256();
        String other = shop.receive("Olive oil");
        for (String address : List.of(
                "/stores/lots/" + other + "/documents/" + sha256,
                shop.page + "/documents/" + "0".repeat(64),
                shop.page + "/documents/lyewright.db",
                shop.page + "/documents/..%2f..%2flyewright.db")) {
            assertThat(shop.workshop.get(address).statusCode()).as(address).isIn(400, 404);
        }
        assertThat(TestWorkshop.wayOn(shop.workshop.get(shop.page + "/documents")))
                .isEqualTo(shop.page);
    }
}
