package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.store.Author;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code verify}, and what {@code restore} makes of a ledger that goes further. */
class VerifyCommandTest {

    @TempDir
    Path folder;

    private String receive(int lots) {
        try (Records records = Records.open(new Place.Folder(folder.resolve("shop")), Clock.systemUTC())
                .orThrow()) {
            Author maker = records.author();
            LocalDate day = LocalDate.of(2026, 11, 25);
            LotSaid said = LotSaid.of(day);
            ItemSaid coconut = ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut"));
            for (int i = 0; i < lots; i++) {
                records.lots()
                        .receive(maker, "", List.of(Arrival.of(coconut, said, 1_000_000)))
                        .orThrow();
            }
            return records.ledger().head().printed();
        }
    }

    private void edit(String... changes) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop/lyewright.db"));
                Statement statement = connection.createStatement()) {
            for (String change : changes) {
                statement.execute(change);
            }
        }
    }

    private Run verify(String... more) {
        String[] words = new String[3 + more.length];
        words[0] = "verify";
        words[1] = "--home";
        words[2] = "shop";
        System.arraycopy(more, 0, words, 3, more.length);
        return Run.in(folder, words);
    }

    @Test
    void an_untouched_ledger_is_whole_and_its_head_is_told() {
        String head = receive(2);

        assertThat(verify())
                .isEqualTo(new Run(
                        0,
                        "All 4 entries are as they were written; lots, moves and documents say what the ledger says.\nThe head is "
                                + head
                                + ".\nWithout a printed head (--head) this cannot show what was cut off at the end.\n",
                        ""));
        assertThat(verify("--head", head.toUpperCase(java.util.Locale.ROOT)).out())
                .endsWith("Entry 4 is the one on your paper.\n");
    }

    @Test
    void an_empty_ledger_is_fine_and_one_that_was_emptied_is_not_where_a_head_is_held() throws Exception {
        receive(0);
        assertThat(verify()).isEqualTo(new Run(0, "Nothing was written in the ledger yet.\n", ""));

        Run run = verify("--head", "4-3f09ab51c2d7");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).contains("There is no entry 4. You may have mistyped it");
    }

    @Test
    void an_edit_underneath_is_named_with_an_exit_code_of_its_own() throws Exception {
        receive(2);
        edit("DROP TRIGGER stock_move_is_not_altered", "UPDATE stock_move SET milligrams = 1 WHERE number = 4");

        Run run = verify();

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).isEmpty();
        assertThat(run.lines())
                .startsWith("Not as it was written:", "  Entry 4: the move now says something else than the ledger.");
    }

    private String document() {
        try (Records records = Records.open(new Place.Folder(folder.resolve("shop")), Clock.systemUTC())
                .orThrow()) {
            KeptLot lot = records.lots().held().get(0);
            return records.documents()
                    .add(
                            records.author(),
                            lot.id(),
                            "Letter",
                            new ByteArrayInputStream("Dear maker, invented".getBytes(StandardCharsets.UTF_8)))
                    .orThrow()
                    .document()
                    .sha256();
        }
    }

    @Test
    void a_lots_documents_are_read_through_and_an_exchanged_file_is_named() throws Exception {
        receive(1);
        String sha256 = document();
        assertThat(verify().lines())
                .startsWith(
                        "All 3 entries are as they were written; lots, moves and documents say what the ledger says.",
                        "One document's file was read through and compared with the ledger.");
        Files.writeString(
                folder.resolve("shop/files/" + sha256.substring(0, 2) + "/" + sha256), "Dear maker, INVENTED");

        Run run = verify();

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.lines())
                .contains(
                        "  Entry 3: the file of the document \"Letter\" is not what was put there: its bytes were changed.");
    }

    @Test
    void what_is_no_head_and_what_is_no_workshop_is_refused() {
        receive(1);
        assertThat(verify("--head", "4").problems())
                .singleElement()
                .asString()
                .startsWith("--head: that is not a printed head");
        assertThat(verify("--head", "4").exit()).isEqualTo(2);
        assertThat(Run.in(folder, "verify", "--home", "nowhere").exit()).isEqualTo(2);
        assertThat(Run.in(folder, "verify", "shop").exit()).isEqualTo(2);
    }

    @Test
    void a_backup_tells_its_head_and_goes_over_a_newer_ledger_only_when_told_to() {
        String head = receive(1);
        assertThat(Run.in(folder, "backup", "all.zip", "--home", "shop").lines())
                .endsWith("Its ledger goes to " + head + ".");
        String newer = receive(2);

        Run refused = Run.in(folder, "restore", "all.zip", "--home", "shop");

        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.problems())
                .containsExactly("restore: this backup does not know entries 3 to 6 of the ledger, which would be lost"
                        + " (4 of 6); give --over-newer if they may be; nothing was touched");
        assertThat(verify("--head", newer).exit()).isZero();
        assertThat(Run.in(folder, "restore", "all.zip", "--home", "shop", "--over-newer")
                        .out())
                .contains("Its ledger goes to " + head + ".");
        assertThat(verify("--head", head).exit()).isZero();
        assertThat(verify("--head", newer).exit()).isEqualTo(3);
    }
}
