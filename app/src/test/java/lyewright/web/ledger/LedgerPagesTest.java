package lyewright.web.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.records.Records;
import lyewright.records.csv.CsvFile;
import lyewright.records.csv.CsvImport;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.records.store.Author;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ledger over HTTP, by whole pages. */
class LedgerPagesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path home;

    private TestWorkshop workshop;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new LedgerPages(shop)));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private Author maker() {
        return records().author();
    }

    private KeptLot receive(String item, ItemKind kind, long amount) {
        LotSaid said = LotSaid.of(DAY).withBestBefore(Optional.of(DAY.plusYears(1)));
        return records()
                .lots()
                .receive(maker(), "", List.of(Arrival.of(ItemSaid.of(item, kind, Identity.none()), said, amount)))
                .orThrow()
                .get(0);
    }

    private void edit(String... changes) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("mine/lyewright.db"));
                Statement statement = connection.createStatement()) {
            for (String change : changes) {
                statement.execute(change);
            }
        }
    }

    private static String text(HttpResponse<String> page) {
        return page.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    @Test
    void an_empty_ledger_says_so_and_has_no_head_to_print() throws Exception {
        HttpResponse<String> page = workshop.get("/ledger");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(text(page)).contains("Nothing was written in it yet");
        assertThat(TestWorkshop.wayOn(workshop.get("/ledger/head"))).isEqualTo("/ledger");
        assertThat(text(workshop.post("/ledger/verify", "head", "")))
                .contains("Nothing was written in the ledger yet.");
    }

    @Test
    void entries_are_told_in_plain_words_the_newest_first() throws Exception {
        KeptLot oil = receive("Coconut oil <b>", ItemKind.OIL, 5_000_000);
        KeptLot wrappers = receive("Wrappers", ItemKind.PACKAGING, 200);
        long used = records()
                .lots()
                .take(
                        maker(),
                        "",
                        List.of(new Taking(oil.id(), 350_000, "")),
                        StockMove.Told.of(MoveKind.USE, 0).withPurpose("Tideline"))
                .orThrow()
                .get(0);
        records().lots().correct(maker(), used, "weighed the other jug").orThrow();
        records()
                .lots()
                .count(maker(), "", Map.of(wrappers.id(), 197L), Map.of(wrappers.id(), "torn"))
                .orThrow();

        String page = text(workshop.get("/ledger"));

        assertThat(workshop.get("/ledger").body())
                .doesNotContain("oil <b>")
                .contains("href=\"/stores/lots/" + oil.id() + "\"");
        assertThat(page.substring(page.indexOf("The latest entries")))
                .containsSubsequence(
                        "7 Counted Wrappers, lot 26-0002: 3 pieces less than the book said (torn)",
                        "The maker",
                        "6 Takes back entry 5: 350 g of Coconut oil &lt;b&gt;, lot 26-0001, for Tideline (weighed the other jug)",
                        "5 Used: 350 g of Coconut oil &lt;b&gt;, lot 26-0001, for Tideline",
                        "4 Came: 200 pieces of Wrappers, lot 26-0002",
                        "3 Wrappers, lot 26-0002: may be used, best before 25 Nov 2027",
                        "2 Came: 5 kg of",
                        "1 Coconut oil");
        assertThat(page).contains(records().ledger().head().printed()).contains("7 entries");
    }

    @Test
    void what_lyewright_wrote_of_a_move_stands_in_its_sentence_as_it_is() throws Exception {
        CsvFile file = CsvFile.read(
                        "own code,material,kind,received,amount\nA-1,Castor oil,oil,2026-11-20,5 kg\n",
                        Optional.empty())
                .orThrow();
        CsvImport.take(records(), maker(), file, file.guess(), "GBP");
        String lot = records().lots().findCode("A-1").orElseThrow().id();
        for (String purpose : List.of("for the fair", "Tideline", "made into lot 26-0009")) {
            records()
                    .lots()
                    .take(
                            maker(),
                            "",
                            List.of(new Taking(lot, 1_000, "")),
                            StockMove.Told.of(MoveKind.USE, 0).withPurpose(purpose))
                    .orThrow();
        }
        assertThat(text(workshop.get("/ledger")))
                .containsSubsequence(
                        "Used: 1 g of Castor oil, lot A-1, made into lot 26-0009",
                        "Used: 1 g of Castor oil, lot A-1, for Tideline",
                        "Used: 1 g of Castor oil, lot A-1, for the fair",
                        "Came: 5 kg of Castor oil, lot A-1, read in from a file")
                .doesNotContain("for read in", "for for", "for made into");
    }

    @Test
    void many_entries_come_page_by_page_and_each_page_leads_to_the_next() throws Exception {
        for (int i = 0; i < 50; i++) {
            receive("Coconut oil", ItemKind.OIL, 1_000 + i);
        }

        HttpResponse<String> first = workshop.get("/ledger");
        HttpResponse<String> last = workshop.get("/ledger?from=20");

        assertThat(first.body())
                .contains("<span class=\"entry-number\">100</span>", "<span class=\"entry-number\">61</span>")
                .doesNotContain("<span class=\"entry-number\">60</span>", "rel=\"prev\"")
                .contains("href=\"/ledger?from=60\"");
        assertThat(last.body())
                .contains("<span class=\"entry-number\">20</span>", "<span class=\"entry-number\">1</span>")
                .contains("href=\"/ledger?from=60\"")
                .doesNotContain("rel=\"next\"");
        assertThat(workshop.get("/ledger?from=nonsense").body()).contains("<span class=\"entry-number\">100</span>");
    }

    @Test
    void a_whole_ledger_is_said_to_be_whole_and_what_stays_hidden_is_said_too() throws Exception {
        receive("Coconut oil", ItemKind.OIL, 5_000_000);
        String head = records().ledger().head().printed();

        String without = text(workshop.post("/ledger/verify", "head", ""));
        receive("Coconut oil", ItemKind.OIL, 2_000_000);
        String with = text(workshop.post("/ledger/verify", "head", head));

        assertThat(without)
                .contains("All 2 entries are as they were written.")
                .contains("nobody can tell whether the last entries were cut off");
        assertThat(with)
                .contains("All 4 entries are as they were written.")
                .contains("Entry 2 is the one on your paper; 2 came after it.");
    }

    @Test
    void an_edit_underneath_is_named() throws Exception {
        receive("Coconut oil", ItemKind.OIL, 5_000_000);
        edit("DROP TRIGGER stock_move_is_not_altered", "UPDATE stock_move SET milligrams = 4000000");

        HttpResponse<String> page = workshop.post("/ledger/verify", "head", "");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(text(page))
                .contains("One thing is not as it was written.")
                .contains("Entry 2: the move now says something else than the ledger.");
    }

    @Test
    void a_cut_off_tail_is_named_where_a_head_is_held() throws Exception {
        receive("Coconut oil", ItemKind.OIL, 5_000_000);
        receive("Coconut oil", ItemKind.OIL, 2_000_000);
        String head = records().ledger().head().printed();
        edit(
                "DROP TRIGGER stock_move_is_not_deleted",
                "DROP TRIGGER lot_is_not_deleted",
                "DROP TRIGGER ledger_entry_is_not_deleted",
                "DELETE FROM stock_move WHERE number > 2",
                "DELETE FROM lot WHERE entry_number > 2",
                "DELETE FROM ledger_entry WHERE number > 2");

        assertThat(text(workshop.post("/ledger/verify", "head", "")))
                .contains("All 2 entries are as they were written.");
        assertThat(text(workshop.post("/ledger/verify", "head", head)))
                .contains("There is no entry 4. You may have mistyped it");
    }

    @Test
    void an_entry_that_was_edited_beyond_sense_is_still_shown() throws Exception {
        receive("Coconut oil", ItemKind.OIL, 5_000_000);
        edit(
                "DROP TRIGGER ledger_entry_is_not_altered",
                "UPDATE ledger_entry SET entry_text = 'nothing' WHERE number = 1",
                "UPDATE ledger_entry SET entry_text = '{\"lot\":\"x\",\"milligrams\":\"many\"}' WHERE number = 2");

        HttpResponse<String> page = workshop.get("/ledger");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(text(page)).contains("a lot that is not here any more");
        assertThat(text(workshop.post("/ledger/verify"))).contains("things are not as they were written");
    }

    @Test
    void what_is_no_head_comes_back_as_it_was_typed() throws Exception {
        HttpResponse<String> refused = workshop.post("/ledger/verify", "head", "214 \"x\"");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("value=\"214 &#34;x&#34;\"")
                .contains("id=\"f-head-trouble\"")
                .contains("that is not a printed head");
    }

    @Test
    void the_head_on_paper_has_the_workshop_and_the_day() throws Exception {
        receive("Coconut oil", ItemKind.OIL, 5_000_000);
        String head = records().ledger().head().printed();

        assertThat(text(workshop.get("/ledger/head")))
                .contains("Head of the ledger " + head)
                .contains("Gannet Stair Soap")
                .contains("Entries 2")
                .contains("./lyewright verify --head " + head);
    }
}
