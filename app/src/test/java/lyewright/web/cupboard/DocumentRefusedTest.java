package lyewright.web.cupboard;

import static lyewright.web.cupboard.LotShop.EDGE;
import static lyewright.web.cupboard.LotShop.PDF;
import static lyewright.web.cupboard.LotShop.text;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import lyewright.records.file.DocumentFiles;
import lyewright.records.file.DocumentKind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Documents of a lot that are not kept, and why. */
class DocumentRefusedTest {

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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "scan.pdf | %PDF-1.4 half of it | The PDF is damaged or cut off",
                "certificate.pdf | #!/bin/sh rm -rf . | The file is a program",
                "certificate.pdf | <!doctype html>Log in first | The file is a web page",
                "certificate.pdf | '' | The file 'certificate.pdf' is empty",
                "'' | '' | No file was chosen",
            })
    void what_is_no_document_is_said_beside_the_field_and_the_name_stays(String file, String content, String says)
            throws Exception {
        HttpResponse<String> answer = shop.send(file, content, "Certificate NQ-118");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(text(answer)).contains(says);
        assertThat(answer.body()).contains("value=\"Certificate NQ-118\"").contains("autofocus");
        assertThat(shop.kept()).isEmpty();
    }

    @Test
    void a_name_that_turns_the_writing_round_comes_back_at_its_own_field() throws Exception {
        HttpResponse<String> answer = shop.send("scan.pdf", PDF, "fdp.\u202Eetacifitrec");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"f-name-trouble\"").contains("turns the writing round");
        assertThat(shop.send("fdp.\u202Eexe.pdf", PDF, "").statusCode()).isEqualTo(303);
        assertThat(shop.kept().get(0).name()).isEqualTo("fdp.exe.pdf");
    }

    @Test
    void one_that_is_too_large_is_told_its_size_and_what_to_do() throws Exception {
        byte[] large = new byte[(int) DocumentFiles.LARGEST + (2 << 20)];
        HttpResponse<String> answer = shop.workshop.postFile(shop.page + "/documents", "document", large);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(text(answer))
                .contains("The file is 42 MB long, and more than 40 MB is not kept. Scan it with fewer dots");
    }

    @Test
    void a_disk_that_takes_nothing_is_told_in_the_form() throws Exception {
        Path files = home.resolve("mine").resolve("files");
        Files.writeString(files, "in the way");
        HttpResponse<String> answer = shop.send("scan.pdf", PDF, "typed with care");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("The document could not be written").contains("typed with care");
        Files.delete(files);
        assertThat(shop.send("scan.pdf", PDF, "typed with care").statusCode()).isEqualTo(303);
    }

    @Test
    void a_form_that_stops_in_the_middle_brings_nothing() throws IOException, InterruptedException {
        HttpResponse<String> answer = shop.workshop.postParts(
                shop.page + "/documents",
                EDGE,
                "--" + EDGE
                        + "\r\nContent-Disposition: form-data; name=\"document\"; filename=\"scan.pdf\"\r\n\r\n%PDF");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(text(answer)).contains("did not come whole");
        assertThat(shop.kept()).isEmpty();
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
