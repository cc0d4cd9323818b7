package lyewright.records.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lyewright.chain.Entry;
import lyewright.chain.Finding;
import lyewright.chain.PrintedHead;
import lyewright.records.OnBoth;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.stock.Stocked;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edits made underneath, with a tool that goes past the guards: verifying names the entry. */
@OnBoth
class LedgerTest extends Workbench {

    @BeforeEach
    void a_cupboard() {
        Stocked.fill(records);
    }

    private Verified verified() {
        return records.ledger().verify(Optional.empty());
    }

    private List<Long> found() {
        return verified().findings().stream().map(Finding::number).distinct().toList();
    }

    private PrintedHead printed() {
        return PrintedHead.parse(records.ledger().head().printed()).orThrow();
    }

    @Test
    void what_nobody_touched_is_whole() {
        assertThat(verified()).isEqualTo(new Verified(records.ledger().head(), List.of(), 0, List.of()));
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES);
        assertThat(records.ledger().verify(Optional.of(printed())).isWhole()).isTrue();
        restart();
        assertThat(verified().isWhole()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // the ledger itself
                "4 | UPDATE ledger_entry SET entry_text = '{}' WHERE number = 4",
                "3 | UPDATE ledger_entry SET entry_text = replace(entry_text, 'Tideline', 'Moonline') WHERE number = 3",
                "2 | UPDATE ledger_entry SET at_epoch_ms = at_epoch_ms - 86400000 WHERE number = 2",
                "5 | UPDATE ledger_entry SET device_id = '01a221b4-908b-73b2-ada9-c1ce46e5a425' WHERE number = 5",
                "9 | UPDATE ledger_entry SET kind = 'lots' WHERE number = 9",
                "6 | UPDATE ledger_entry SET sha256 = '0000000000000000000000000000000000000000000000000000000000000001' WHERE number = 6",
                // moves
                "3 | UPDATE stock_move SET milligrams = -35000 WHERE number = 3",
                "3 | UPDATE stock_move SET purpose = '' WHERE number = 3",
                "7 | UPDATE stock_move SET pieces = 20 WHERE pieces = 200",
                "4 | UPDATE stock_move SET corrects_number = NULL WHERE number = 4",
                "3 | UPDATE stock_move SET kind = 'loss' WHERE number = 3",
                "8 | DELETE FROM stock_move WHERE number = 8",
                // lots
                "9 | UPDATE lot SET status = 'usable' WHERE own_code = '26-0001'",
                "9 | UPDATE lot SET best_before_day = '2036-11-25' WHERE own_code = '26-0001'",
                "9 | UPDATE lot SET best_before_day = 'not a date' WHERE own_code = '26-0001'",
                "9 | UPDATE lot SET certificate_text = 'nothing' WHERE own_code = '26-0001'",
                "9 | UPDATE lot SET price_minor = 1 WHERE own_code = '26-0001'",
                // which lots hold something
                "9 | DELETE FROM lot_held WHERE lot_id = (SELECT id FROM lot WHERE own_code = '26-0001')",
            })
    void an_edit_underneath_is_named_by_its_entry(long number, String change) {
        Tinkering.underneath(place, change);

        assertThat(found()).as(change).contains(number);
        assertThat(verified().findings())
                .allSatisfy(finding -> assertThat(finding.what()).contains(Long.toString(finding.number())));
    }

    @Test
    void a_lot_that_is_set_back_to_what_was_said_of_it_before_is_found() {
        // the lot as the entry of its receipt has it, every column of it
        Tinkering.underneath(
                place,
                "UPDATE lot SET status = 'usable', certificate_text = NULL, entry_number = 1 WHERE own_code = '26-0001'");

        assertThat(verified().findings())
                .containsExactly(new Finding(9, "Entry 9: lot 26-0001 was set back to what entry 1 says of it."));
    }

    @Test
    void a_lot_that_is_gone_is_found_by_the_last_entry_that_tells_of_it() {
        Tinkering.underneath(place, "DELETE FROM lot WHERE own_code = '26-0001'");

        assertThat(verified().findings()).extracting(Finding::what).contains("Entry 9 tells of a lot that is gone.");
    }

    @Test
    void a_move_that_the_ledger_knows_nothing_of_is_found() {
        Tinkering.underneath(
                place,
                "INSERT INTO stock_move (number, lot_id, kind, milligrams, purpose, words, why) "
                        + "SELECT 77, id, 'use', -5, '', '', '' FROM lot WHERE own_code = '26-0001'");

        assertThat(found()).containsExactly(77L);
    }

    @Test
    void a_gap_is_found() {
        Tinkering.underneath(
                place, "DELETE FROM ledger_entry WHERE number = 3", "DELETE FROM stock_move WHERE number = 3");

        assertThat(verified().findings())
                .extracting(Finding::what)
                .contains("The chain is broken before entry 4: entry 3 is missing.");
    }

    @Test
    void a_tail_that_is_cut_off_with_all_that_it_told_is_found_by_a_printed_head_and_not_without() {
        PrintedHead printed = printed();
        Head before = records.ledger().head();
        Tinkering.underneath(
                place,
                "UPDATE lot SET entry_number = 5, status = 'usable' WHERE own_code = '26-0001'",
                "DELETE FROM stock_move WHERE number >= 7",
                "DELETE FROM lot WHERE own_code = '26-0002'",
                "DELETE FROM ledger_entry WHERE number >= 6");
        restoreCertificate();

        assertThat(verified().isWhole())
                .as("nothing within the records says that there was more")
                .isTrue();
        assertThat(records.ledger().verify(Optional.of(printed)).findings())
                .containsExactly(new Finding(
                        before.number(),
                        "There is no entry 9. You may have mistyped it: compare it letter by letter with the paper. If it stands there so, entry 9 is gone, and so is whatever came after it.",
                        true));
    }

    /** What the entry before the last says of the lot, put back into its row. */
    private void restoreCertificate() {
        String certificate = EntryText.facts(
                        Tinkering.texts(place, "SELECT entry_text FROM ledger_entry WHERE number = 5")
                                .get(0))
                .getOrDefault("certificate", "");
        Tinkering.underneath(
                place,
                "UPDATE lot SET certificate_text = '" + certificate.replace("'", "''")
                        + "' WHERE own_code = '26-0001'");
    }

    @Test
    void a_ledger_that_was_cut_short_and_written_on_is_found_by_a_printed_head() {
        PrintedHead printed = printed();
        Tinkering.underneath(
                place,
                "DELETE FROM ledger_entry WHERE number = 9",
                "UPDATE lot SET entry_number = 5 WHERE own_code = '26-0001'");
        records.lots()
                .change(
                        records.author(),
                        lotId(),
                        records.lots().find(lotId()).orElseThrow().said().withStatus(LotStatus.REFUSED))
                .orThrow();

        assertThat(records.ledger().head().number()).isEqualTo(9);
        assertThat(records.ledger().verify(Optional.of(printed)).findings())
                .extracting(Finding::what)
                .containsExactly(
                        "Entry 9 does not fit the head that you typed. You may have mistyped it: compare it letter by letter with the paper. If it stands there so, entry 9, or something before it, was changed.");
    }

    private String lotId() {
        return records.lots().findCode("26-0001").orElseThrow().id();
    }

    @Test
    void a_whole_ledger_that_was_thrown_away_is_found_by_a_printed_head() {
        PrintedHead printed = printed();
        Tinkering.underneath(
                place,
                "DELETE FROM stock_move",
                "DELETE FROM lot",
                "DELETE FROM ledger_once",
                "DELETE FROM ledger_entry");

        assertThat(verified().isWhole()).isTrue();
        assertThat(records.ledger().verify(Optional.of(printed)).isWhole()).isFalse();
    }

    @Test
    void many_findings_are_counted_beyond_the_first_fifty() {
        Tinkering.underneath(place, "UPDATE stock_move SET why = 'x'", "UPDATE ledger_entry SET device_id = NULL");
        assertThat(verified().findings()).hasSize(5);
        assertThat(verified().more()).isZero();
        StringBuilder rows =
                new StringBuilder("INSERT INTO stock_move (number, lot_id, kind, pieces, purpose, words, why) VALUES ");
        for (int i = 100; i < 160; i++) {
            rows.append(i == 100 ? "" : ", ")
                    .append("(")
                    .append(i)
                    .append(", '")
                    .append(lotId())
                    .append("', 'use', -1, '', '', '')");
        }
        Tinkering.underneath(place, rows.toString());

        assertThat(verified().findings()).hasSize(50);
        assertThat(verified().more()).isEqualTo(15);
    }

    @Test
    void a_clock_that_is_set_back_does_no_harm() {
        records.close();
        records =
                Records.open(place, Clock.offset(clock, Duration.ofDays(-400))).orThrow();
        records.lots()
                .change(
                        records.author(),
                        lotId(),
                        records.lots().find(lotId()).orElseThrow().said().withStatus(LotStatus.REFUSED))
                .orThrow();

        List<Entry> newest = records.ledger().entries(Long.MAX_VALUE, 2);
        assertThat(newest).extracting(Entry::number).containsExactly(10L, 9L);
        assertThat(newest.get(0).atEpochMs()).isLessThan(newest.get(1).atEpochMs());
        assertThat(verified().isWhole()).isTrue();
    }

    @Test
    void entries_come_page_by_page_the_newest_first() {
        assertThat(records.ledger().entries(Long.MAX_VALUE, 3))
                .extracting(Entry::number)
                .containsExactly(9L, 8L, 7L);
        assertThat(records.ledger().entries(2, 3)).extracting(Entry::number).containsExactly(2L, 1L);
        assertThat(records.ledger().entries(0, 3)).isEmpty();
        assertThat(EntryText.facts(records.ledger().entries(3, 1).get(0).text()))
                .containsEntry("purpose", "Tideline")
                .containsEntry("milligrams", "-350000");
    }

    @Test
    void a_text_that_is_not_one_of_ours_tells_nothing() {
        assertThat(EntryText.facts("{}")).isEmpty();
        assertThat(EntryText.facts("nothing")).isEmpty();
        assertThat(EntryText.facts("[1]")).isEmpty();
    }
}
