package lyewright.web.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipInputStream;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.StockItem;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is shown as it was understood before anything of it is kept, and what was kept can be had again. */
class CsvPagesTest {

    private static final String LOTS = """
            material;kind;supplier;received;amount;price
            Kokosöl;oil;Northquay Oils;25.11.2026;2,5 kg;18,95
            Olivenöl;oil;Northquay Oils;25.11.2026;5 kg;
            Mondöl;;Northquay Oils;25.11.2026;1 kg;
            Olivenöl;oil;;03/04/2026;1 kg;
            """;

    @TempDir
    Path home;

    private TestWorkshop workshop;

    @BeforeEach
    void open() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CsvPages(shop)));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private String look(byte[] file) throws Exception {
        HttpResponse<String> sent = workshop.postFile("/stores/csv", "file", file);
        assertThat(sent.statusCode()).isEqualTo(303);
        return TestWorkshop.wayOn(sent);
    }

    private String look(String file) throws Exception {
        return look(file.getBytes(StandardCharsets.UTF_8));
    }

    /** Sends the form by which a preview's rows are kept. */
    private HttpResponse<String> keep(String address, HttpResponse<String> preview) throws Exception {
        List<String> fields = new ArrayList<>();
        String form = preview.body().substring(preview.body().indexOf("<form method=\"post\""));
        Matcher field = Pattern.compile("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"")
                .matcher(form.substring(0, form.indexOf("</form>")));
        while (field.find()) {
            fields.add(field.group(1));
            fields.add(field.group(2));
        }
        return workshop.post(address, fields.toArray(String[]::new));
    }

    @Test
    void a_file_is_shown_first_then_kept_and_the_rest_comes_back_as_a_file() throws Exception {
        String address = look(LOTS.getBytes(StandardCharsets.ISO_8859_1));
        HttpResponse<String> preview = workshop.get(address);
        assertThat(preview.statusCode()).isEqualTo(200);
        assertThat(preview.body())
                .contains("2 new, 0 already there, 2 with problems")
                .contains(
                        "Read as Latin-1 (Western European) with a semicolon between cells and a decimal comma: 4 rows in 6 columns.")
                .contains("may be day and month, or month and day")
                .contains("Keep the 2 new")
                .contains("2.5 kg");
        assertThat(records().items().list()).isEmpty();

        HttpResponse<String> kept = keep(address, preview);
        assertThat(kept.statusCode()).isEqualTo(303);
        HttpResponse<String> done = workshop.get(TestWorkshop.wayOn(kept));
        assertThat(done.body()).contains("was read in").contains("2 new, 0 already there, 2 with problems");
        assertThat(records().items().list()).extracting(StockItem::name).containsExactly("Kokosöl", "Olivenöl");
        assertThat(records().lots().held()).hasSize(2);

        HttpResponse<String> rest = workshop.get(address + "/left-out.csv");
        assertThat(rest.headers().firstValue("Content-Disposition")).contains("attachment; filename=\"left-out.csv\"");
        assertThat(rest.body().lines().toList()).hasSize(3);
        assertThat(rest.body())
                .contains("\"what is wrong\"")
                .contains("\"Mondöl\";")
                .contains("nothing says what kind of thing it is");

        String again = look(LOTS);
        assertThat(workshop.get(again).body())
                .contains("0 new, 2 already there, 2 with problems")
                .contains("There is nothing new to keep.")
                .doesNotContain("Keep the");
        assertThat(workshop.get(again + "/left-out.csv").body().lines().toList())
                .hasSize(3);
    }

    @Test
    void what_a_column_says_and_which_day_is_meant_can_be_chosen() throws Exception {
        String address = look("what,how much,when\nCoconut oil,5 kg,03/04/2026\n");
        assertThat(workshop.get(address).body()).contains("No column says what a material is called");
        String kind = "?kind=lots&was-kind=materials&separator=comma&was-separator=comma";
        assertThat(workshop.get(address + kind).body())
                .contains("No column says how much came")
                .contains("No column says the day it came");
        String chosen = "?kind=lots&was-kind=lots&separator=comma&was-separator=comma&decimal=point"
                + "&column-0=name&column-1=amount&column-2=received";
        assertThat(workshop.get(address + chosen).body())
                .contains("may be day and month")
                .contains("0 new, 0 already there, 1 with a problem");
        records()
                .items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.none()))
                .orThrow();
        HttpResponse<String> preview = workshop.get(address + chosen + "&days=month");
        assertThat(preview.body()).contains("1 new").contains("2026-03-04");
        assertThat(keep(address, preview).statusCode()).isEqualTo(303);
        assertThat(records().lots().held().get(0).said().received()).hasToString("2026-03-04");
    }

    @Test
    void another_separator_is_taken_and_its_columns_are_guessed_anew() throws Exception {
        String address = look("name;kind,notes\nOlive;oil,x\n");
        assertThat(workshop.get(
                                address
                                        + "?kind=materials&was-kind=materials&separator=semicolon&was-separator=comma&column-0=inci")
                        .body())
                .contains("with a semicolon between cells")
                .contains("<option value=\"name\" selected>");
    }

    @Test
    void a_pasted_text_is_as_good_as_a_file_and_what_is_none_stays_in_its_field() throws Exception {
        HttpResponse<String> pasted =
                workshop.post("/stores/csv", "opened-in", "mine", "text", "name\tkind\r\nOlive oil\toil\r\n");
        assertThat(workshop.get(TestWorkshop.wayOn(pasted)).body())
                .contains("1 new")
                .contains("with a tab between cells");
        HttpResponse<String> none = workshop.post("/stores/csv", "text", "name,kind\n\"Olive oil,oil <b>");
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("quotation mark is opened").contains("\"Olive oil,oil &lt;b&gt;</textarea>");
        assertThat(workshop.post("/stores/csv", "text", "  ").body()).contains("There is neither a file nor a text");
    }

    @Test
    void an_empty_file_is_called_empty_by_its_name() throws Exception {
        HttpResponse<String> sent = workshop.postFile("/stores/csv", "file", new byte[0]);
        assertThat(sent.statusCode()).isEqualTo(422);
        assertThat(sent.body()).contains("The file 'file' is empty; choose another, or save it anew.");
    }

    @Test
    void what_the_tables_know_is_shown_and_what_may_be_two_things_is_told() throws Exception {
        String way = look("""
                own code,material,kind,received,amount,sv,sv uncertainty
                A-1,Shea butter,oil,2026-11-25,5 kg,180,1.0
                A-2,Olive oil,oil,2026-11-25,500 g,,
                A-3,Castor oil,oil,2036-11-25,950 g,,
                """.getBytes(StandardCharsets.UTF_8));
        String page = workshop.get(way).body();
        assertThat(page)
                .contains("<li>Shea butter <span class=\"muted\">is shea-butter in recipes</span></li>")
                .contains("Worth a look")
                .contains("'Olive oil' may be Olive oil (virgin) or Olive oil (refined) or Olive pomace oil to recipes")
                .contains("<td data-says=\"In recipes\">shea-butter</td>")
                .contains("<td data-says=\"How much\">5 kg</td>")
                .contains("<td data-says=\"Certificate\">SV 180 ± 1.0</td>")
                .contains("That day has not come yet");
    }

    @Test
    void files_that_are_none_are_refused_with_a_sentence() throws Exception {
        assertThat(workshop.postFile("/stores/csv", "file", new byte[] {'P', 'K', 3, 4, 0})
                        .body())
                .contains("a spreadsheet's own file or a zip, not CSV");
        HttpResponse<String> large = workshop.postFile("/stores/csv", "file", new byte[(5 << 20) + 1]);
        assertThat(large.statusCode()).isEqualTo(422);
        assertThat(large.body()).contains("The file is larger than 5 MB");
        assertThat(workshop.get("/stores/csv/read/none").statusCode()).isEqualTo(409);
        assertThat(workshop.get("/stores/csv/out?file=passwd").statusCode()).isEqualTo(404);
    }

    @Test
    void hostile_cells_are_shown_as_text_and_told_shortly() throws Exception {
        String lengthy = "x".repeat(2_500);
        String address = look("name,kind,notes\n<script>alert(1)</script>,soap<img>,\n" + lengthy
                + ",oil,\nOli\u202Eve,oil,\n" + "=HYPERLINK(1),oil,\n");
        HttpResponse<String> preview = workshop.get(address);
        assertThat(preview.body())
                .doesNotContain("<script>alert")
                .doesNotContain("soap<img>")
                .doesNotContain("\u202E")
                .doesNotContain("x".repeat(100))
                .contains("he cell is longer than 2000 characters")
                .contains("hidden sign in it that turns the writing round")
                .contains("1 new, 0 already there, 3 with problems");
        assertThat(workshop.get(address + "/left-out.csv").body())
                .doesNotContain("\n\"=")
                .contains("<script>");
        assertThat(keep(address, preview).statusCode()).isEqualTo(303);
        assertThat(workshop.get("/stores/csv/out?file=materials.csv").body()).contains("\"'=HYPERLINK(1)\"");
    }

    @Test
    void many_problems_make_no_long_page() throws Exception {
        String address = look("name,kind\n" + "Olive oil,soap\n".repeat(5_000));
        String body = workshop.get(address).body();
        assertThat(body.length()).isLessThan(150_000);
        assertThat(body).contains("And 4900 more");
        assertThat(workshop.get(address + "/left-out.csv").body().lines().count())
                .isEqualTo(5_001);
    }

    @Test
    void everything_is_written_out_in_one_zip_or_file_by_file() throws Exception {
        String address = look(LOTS);
        keep(address, workshop.get(address));
        HttpResponse<byte[]> zip = workshop.download("/stores/csv/out?file=all");
        List<String> names = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip.body()))) {
            for (var entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertThat(names)
                .containsExactly("materials.csv", "suppliers.csv", "lots.csv", "moves.csv", "data-dictionary.csv");
        byte[] marked =
                workshop.download("/stores/csv/out?file=lots.csv&mark=on").body();
        assertThat(marked).startsWith(0xef, 0xbb, 0xbf);
        String again = look(marked);
        assertThat(workshop.get(again).body())
                .contains("0 new, 2 already there")
                .contains("UTF-8 with a byte order mark");
        for (String name : names) {
            assertThat(workshop.get("/stores/csv").body()).contains(name);
        }
    }

    @Test
    void the_example_files_go_in() throws Exception {
        for (String name : List.of("stock-materials.csv", "stock-lots.csv")) {
            String address = look(Files.readAllBytes(Path.of("../examples/" + name)));
            HttpResponse<String> preview = workshop.get(address);
            assertThat(preview.body()).contains("invented").doesNotContain("With problems");
            keep(address, preview);
            assertThat(workshop.get(look(Files.readAllBytes(Path.of("../examples/" + name))))
                            .body())
                    .contains("0 new, ");
        }
        assertThat(records().items().list()).hasSizeGreaterThan(5);
        assertThat(records().lots().held()).hasSizeGreaterThan(5);
    }

    @Test
    void prices_are_shown_and_the_decimal_sign_is_guessed_anew_once_the_columns_are_named() throws Exception {
        String address = look("Rohstoff;Menge;MHD;Preis;Tag\nKokosöl;2,500 kg;25.11.2027;32,50;25.11.2026\n");
        String named = "?kind=lots&was-kind=lots&separator=semicolon&was-separator=semicolon&decimal=point"
                + "&was-decimal=point&days=day&column-0=name&column-1=amount&column-2=best_before&column-3=price"
                + "&column-4=received";
        assertThat(workshop.get(address + named).body()).contains("a decimal comma");
        assertThat(workshop.get(address + named.replace("was-decimal=point", "was-decimal=comma"))
                        .body())
                .as("chosen otherwise than guessed")
                .contains("a decimal point");
        assertThat(workshop.get(look(LOTS)).body()).contains("18.95 GBP");
    }
}
