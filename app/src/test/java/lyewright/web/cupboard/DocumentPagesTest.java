package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.records.Records;
import lyewright.records.file.DocumentFiles;
import lyewright.records.file.DocumentKind;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotDocument;
import lyewright.records.stock.LotSaid;
import lyewright.stock.LotStatus;
import lyewright.web.TestWorkshop;
import lyewright.web.ledger.LedgerPages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Documents of a lot over HTTP, by whole pages. */
class DocumentPagesTest {

    private static final String PDF = "%PDF-1.4\n1 0 obj\nnull\nendobj\nxref\nstartxref\n29\n%%EOF\n";
    private static final String EDGE = "edge-of-a-part";

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private TestWorkshop workshop;

    private String lot = "";
    private String page = "";

    @BeforeEach
    void start() {
        workshop =
                TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CupboardPages(shop), new LedgerPages(shop)));
        lot = receive("Coconut oil");
        page = "/stores/lots/" + lot;
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private String receive(String item) {
        LotSaid said = new LotSaid(
                "",
                Optional.empty(),
                "NQ-118",
                LocalDate.of(2026, 11, 25),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LotStatus.USABLE,
                Optional.empty(),
                "");
        ItemSaid what = ItemSaid.of(item, ItemKind.OIL, Identity.none());
        return records()
                .lots()
                .receive(records().people().desk(), "", List.of(Arrival.of(what, said, 5_000_000)))
                .orThrow()
                .get(0)
                .id();
    }

    private HttpResponse<String> send(String file, String content, String name) throws Exception {
        return workshop.postParts(
                page + "/documents",
                EDGE,
                "--" + EDGE + "\r\nContent-Disposition: form-data; name=\"name\"\r\n\r\n" + name + "\r\n--" + EDGE
                        + "\r\nContent-Disposition: form-data; name=\"document\"; filename=\"" + file
                        + "\"\r\nContent-Type: application/pdf\r\n\r\n" + content + "\r\n--" + EDGE + "--\r\n");
    }

    private List<LotDocument> kept() {
        return records().documents().of(lot);
    }

    private String addressOf(LotDocument document) {
        return page + "/documents/" + document.sha256();
    }

    private static String text(HttpResponse<String> answer) {
        return answer.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    private static String header(HttpResponse<?> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    @Test
    void a_lot_without_documents_says_what_could_be_there() throws Exception {
        HttpResponse<String> answer = workshop.get(page);
        assertThat(text(answer))
                .contains("None yet: its certificate as it came")
                .contains("40 MB at most");
        assertThat(answer.body()).contains("type=\"file\"").contains("multipart/form-data");
    }

    @Test
    void a_certificate_is_kept_told_opened_and_downloaded() throws Exception {
        HttpResponse<String> sent = send("scan.pdf", PDF, "Certificate <NQ-118>");
        assertThat(sent.statusCode()).isEqualTo(303);

        HttpResponse<String> told = workshop.get(TestWorkshop.wayOn(sent));
        assertThat(text(told))
                .contains("Kept with this lot: Certificate &lt;NQ-118&gt;.")
                .contains("PDF, " + PDF.length() + " bytes");
        assertThat(told.body()).contains("href=\"" + addressOf(kept().get(0)) + "\"");

        HttpResponse<byte[]> opened = workshop.download(addressOf(kept().get(0)));
        assertThat(new String(opened.body(), StandardCharsets.UTF_8)).isEqualTo(PDF);
        assertThat(header(opened, "Content-Type")).isEqualTo("application/pdf");
        assertThat(header(opened, "Content-Length")).isEqualTo(Integer.toString(PDF.length()));
        assertThat(header(opened, "Content-Disposition")).isEqualTo("inline; filename=\"certificate-nq-118.pdf\"");
        assertThat(header(opened, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(opened, "Content-Security-Policy"))
                .startsWith("default-src 'none';")
                .doesNotContain("script");
        HttpResponse<byte[]> downloaded = workshop.download(addressOf(kept().get(0)) + "?download");
        assertThat(header(downloaded, "Content-Disposition"))
                .isEqualTo("attachment; filename=\"certificate-nq-118.pdf\"");
    }

    @Test
    void a_letter_is_shown_as_text_in_a_sandbox_whatever_its_file_was_called() throws Exception {
        send("C:\\papers\\letter.pdf", "Säurezahl 0,4. javascript:alert(1)", "");

        LotDocument letter = kept().get(0);
        assertThat(letter.name()).isEqualTo("letter.pdf");
        HttpResponse<byte[]> opened = workshop.download(addressOf(letter));
        assertThat(header(opened, "Content-Type").replace(" ", "")).isEqualTo("text/plain;charset=utf-8");
        assertThat(header(opened, "Content-Disposition")).isEqualTo("inline; filename=\"letter.txt\"");
        assertThat(header(opened, "Content-Security-Policy")).endsWith("sandbox");
        assertThat(new String(opened.body(), StandardCharsets.UTF_8)).startsWith("Säurezahl");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "scan.pdf | %PDF-1.4 half of it | The PDF is damaged or cut off",
                "certificate.pdf | #!/bin/sh rm -rf . | The file is a program",
                "certificate.pdf | <!doctype html>Log in first | The file is a web page",
                "certificate.pdf | '' | The file is empty",
                "'' | '' | No file was chosen",
            })
    void what_is_no_document_is_said_beside_the_field_and_the_name_stays(String file, String content, String says)
            throws Exception {
        HttpResponse<String> answer = send(file, content, "Certificate NQ-118");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(text(answer)).contains(says);
        assertThat(answer.body()).contains("value=\"Certificate NQ-118\"").contains("autofocus");
        assertThat(kept()).isEmpty();
    }

    @Test
    void a_name_that_turns_the_writing_round_comes_back_at_its_own_field() throws Exception {
        HttpResponse<String> answer = send("scan.pdf", PDF, "fdp.\u202Eetacifitrec");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"f-name-trouble\"").contains("turns the writing round");
        assertThat(send("fdp.\u202Eexe.pdf", PDF, "").statusCode()).isEqualTo(303);
        assertThat(kept().get(0).name()).isEqualTo("fdp.exe.pdf");
    }

    @Test
    void one_that_is_too_large_is_told_its_size_and_what_to_do() throws Exception {
        byte[] large = new byte[(int) DocumentFiles.LARGEST + (2 << 20)];
        HttpResponse<String> answer = workshop.postFile(page + "/documents", "document", large);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(text(answer))
                .contains("The file is 42 MB long, and more than 40 MB is not kept. Scan it with fewer dots");
    }

    @Test
    void the_same_document_again_says_that_the_lot_has_it() throws Exception {
        send("scan.pdf", PDF, "Certificate");
        HttpResponse<String> again = send("other.pdf", PDF, "");
        assertThat(text(workshop.get(TestWorkshop.wayOn(again))))
                .contains("This lot had that document already, as Certificate; nothing was added.");
        assertThat(kept()).hasSize(1);
    }

    @Test
    void one_on_the_wrong_lot_is_taken_off_with_a_reason_and_the_ledger_tells_both() throws Exception {
        send("scan.pdf", PDF, "Certificate");
        String off = addressOf(kept().get(0)) + "/take-off";
        HttpResponse<String> without = workshop.post(off, "why", " ");
        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(text(without)).contains("Nothing says why.");

        HttpResponse<String> done = workshop.post(off, "why", "is of lot 26-0002");

        assertThat(text(workshop.get(TestWorkshop.wayOn(done))))
                .contains("Taken off this lot: Certificate.")
                .contains("One that was taken off")
                .contains("Taken off: is of lot 26-0002");
        assertThat(workshop.get(addressOf(kept().get(0))).statusCode()).isEqualTo(200);
        assertThat(text(workshop.get("/ledger")))
                .contains("Document put to Coconut oil, lot 26-0001: Certificate (PDF, " + PDF.length()
                        + " bytes, SHA-256 " + kept().get(0).sha256().substring(0, 12))
                .contains("Document taken off Coconut oil, lot 26-0001: Certificate (is of lot 26-0002)");
        assertThat(text(workshop.post(off, "why", "again"))).contains("taken off before");
    }

    @Test
    void a_document_whose_file_has_gone_says_so_and_verifying_names_it() throws Exception {
        send("scan.pdf", PDF, "Certificate");
        assertThat(text(workshop.post("/ledger/verify", "head", "")))
                .contains("One document's file was read through and held against the ledger.");
        Files.delete(records().documents().file(kept().get(0)).orElseThrow());

        assertThat(text(workshop.get(page))).contains("Certificate its file is gone");
        HttpResponse<String> opened = workshop.get(addressOf(kept().get(0)));
        assertThat(opened.statusCode()).isEqualTo(404);
        assertThat(text(opened)).contains("Add the same document to the lot again");
        assertThat(text(workshop.post("/ledger/verify", "head", "")))
                .contains("Entry 3: the file of the document \"Certificate\" has gone.");
        send("scan.pdf", PDF, "Certificate");
        assertThat(workshop.get(addressOf(kept().get(0))).statusCode()).isEqualTo(200);
    }

    @Test
    void a_document_is_found_at_its_own_lot_only() throws Exception {
        send("scan.pdf", PDF, "Certificate");
        String sha256 = kept().get(0).sha256();
        String other = receive("Olive oil");
        for (String address : List.of(
                "/stores/lots/" + other + "/documents/" + sha256,
                page + "/documents/" + "0".repeat(64),
                page + "/documents/lyewright.db",
                page + "/documents/..%2f..%2flyewright.db")) {
            assertThat(workshop.get(address).statusCode()).as(address).isIn(400, 404);
        }
        assertThat(TestWorkshop.wayOn(workshop.get(page + "/documents"))).isEqualTo(page);
    }

    @Test
    void a_disk_that_takes_nothing_is_told_in_the_form() throws Exception {
        Path files = home.resolve("mine").resolve("files");
        Files.writeString(files, "in the way");
        HttpResponse<String> answer = send("scan.pdf", PDF, "typed with care");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("The document could not be written").contains("typed with care");
        Files.delete(files);
        assertThat(send("scan.pdf", PDF, "typed with care").statusCode()).isEqualTo(303);
    }

    @Test
    void a_form_that_stops_in_the_middle_brings_nothing() throws IOException, InterruptedException {
        HttpResponse<String> answer = workshop.postParts(
                page + "/documents",
                EDGE,
                "--" + EDGE
                        + "\r\nContent-Disposition: form-data; name=\"document\"; filename=\"scan.pdf\"\r\n\r\n%PDF");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(text(answer)).contains("did not come whole");
        assertThat(kept()).isEmpty();
    }

    @Test
    void names_of_files_that_go_out_are_plain() {
        Map.of(
                        "Zertifikat Öl (2).PDF", "zertifikat-ol-2.pdf",
                        "石鹸", "document.pdf",
                        "a\"; filename=\"b.exe", "a-filename-b-exe.pdf",
                        "..", "document.pdf")
                .forEach((name, file) ->
                        assertThat(DocumentName.forFile(name, DocumentKind.PDF)).isEqualTo(file));
        assertThat(DocumentName.ofFile("")).isEqualTo("document");
        assertThat(DocumentName.ofFile("/sdcard/DCIM/IMG_1.jpg")).isEqualTo("IMG_1.jpg");
        assertThat(DocumentName.ofFile("石".repeat(300) + ".pdf")).hasSize(200);
    }
}
