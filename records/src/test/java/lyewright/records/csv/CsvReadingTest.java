package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockRow;
import lyewright.records.stock.StockRow.Amount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files as makers have them: how they are understood, and what their cells say. */
class CsvReadingTest {

    private static CsvFile file(String text) {
        return CsvFile.read(text, Optional.empty()).orThrow();
    }

    private static StockRow.OfLot lot(CsvFile file, CsvChoice choice) {
        CsvFile.Rows rows = file.rows(choice, "EUR");
        assertThat(rows.troubles()).isEmpty();
        return (StockRow.OfLot) rows.read().get(0).what();
    }

    @Test
    void semicolons_decimal_commas_and_days_with_points_are_understood() {
        CsvFile file = file("""
                Material;Batch;Received on;Amount (kg);Price;Expiry date
                Kokosöl;K-7;25.11.2026;2,5;1.018,95 €;25.11.2027
                """);
        CsvChoice guess = file.guess();
        assertThat(file.separator()).isEqualTo(Separator.SEMICOLON);
        assertThat(guess.decimal()).isEqualTo(DecimalSign.COMMA);
        assertThat(guess.kind()).isEqualTo(CsvKind.LOTS);
        assertThat(guess.meanings())
                .containsExactly(
                        Meaning.NAME,
                        Meaning.SUPPLIER_LOT,
                        Meaning.RECEIVED,
                        Meaning.AMOUNT_KG,
                        Meaning.PRICE,
                        Meaning.BEST_BEFORE);
        StockRow.OfLot lot = lot(file, guess);
        assertThat(lot.amount().number()).isEqualTo(2_500_000);
        assertThat(lot.said().price()).contains(new Price(101_895, "EUR"));
        assertThat(lot.said().received()).isEqualTo(LocalDate.of(2026, 11, 25));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2.5 kg|POINT|2500000",
                "500 g|POINT|500000",
                "500g|COMMA|500000",
                "2,5 kg|COMMA|2500000",
                "1.234,5 g|COMMA|1234500",
                "1,234.5 g|POINT|1234500",
                "1,234,567 g|POINT|1234567000",
                "1 000 g|POINT|1000000",
                "1.234 g|POINT|1234",
                "1,234 g|COMMA|1234",
                "8 oz|POINT|226796",
                "2 Pounds|POINT|907185",
                ".5 kg|POINT|500000"
            })
    void a_mass_is_read_with_its_decimal_sign_and_unit(String cell, DecimalSign decimal, long milligrams) {
        Amount amount = AmountCell.read(cell, decimal, "").orThrow();
        assertThat(amount.number()).isEqualTo(milligrams);
    }

    @Test
    void the_decimal_sign_that_some_cell_is_sure_of_counts_for_all() {
        assertThat(decimal("\"1,234 g\"", "\"2,5 kg\"")).isEqualTo(DecimalSign.COMMA);
        assertThat(decimal("1.234 g", "2.5 kg")).isEqualTo(DecimalSign.POINT);
        assertThat(decimal("\"1,234.50 g\"", "500 g")).isEqualTo(DecimalSign.POINT);
        assertThat(decimal("500 g", "7 g")).isEqualTo(DecimalSign.POINT);
        assertThat(file("material;amount;received\nA;1,234 g;2026-11-25\n")
                        .guess()
                        .decimal())
                .isEqualTo(DecimalSign.COMMA);
    }

    private static DecimalSign decimal(String one, String other) {
        return file("material,amount,received\nA," + one + ",2026-11-25\nB," + other + ",2026-11-25\n")
                .guess()
                .decimal();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25,ASKED,2026-11-25",
        "2026-11-25 00:00:00,ASKED,2026-11-25",
        "25.11.2026,ASKED,2026-11-25",
        "3.4.2026,ASKED,2026-04-03",
        "25/11/2026,ASKED,2026-11-25",
        "11/25/2026,ASKED,2026-11-25",
        "25/11/2026,MONTH_FIRST,2026-11-25",
        "04/04/2026,ASKED,2026-04-04",
        "03/04/2026,DAY_FIRST,2026-04-03",
        "03/04/2026,MONTH_FIRST,2026-03-04",
        "25-11-2026,ASKED,2026-11-25"
    })
    void a_day_is_read_in_the_ways_people_write_it(String cell, DayOrder order, LocalDate day) {
        assertThat(DayCell.read(cell, order).orThrow()).isEqualTo(day);
    }

    @ParameterizedTest
    @CsvSource({
        "£18.95,GBP,1895",
        "18.95 GBP,GBP,1895",
        "EUR 18.95,EUR,1895",
        "1895 JPY,JPY,1895",
        "18.95,USD,1895",
        "$18.95,USD,1895"
    })
    void a_price_is_read_with_its_currency_or_without(String cell, String currency, long minor) {
        assertThat(PriceCell.read(cell, DecimalSign.POINT, "", "USD").orThrow()).isEqualTo(new Price(minor, currency));
    }

    @Test
    void a_dollar_is_the_workshops_own_and_a_column_beside_the_price_names_another() {
        assertThat(PriceCell.read("$5", DecimalSign.POINT, "", "CAD").orThrow().currency())
                .isEqualTo("CAD");
        assertThat(PriceCell.read("5", DecimalSign.POINT, "sek", "CAD")
                        .orThrow()
                        .currency())
                .isEqualTo("SEK");
    }

    @Test
    void tabs_are_understood_and_so_is_a_first_line_that_names_the_separator() {
        assertThat(file("name\tkind\nOlive, virgin\toil\n").separator()).isEqualTo(Separator.TAB);
        CsvFile told = file("sep=;\r\nname;kind\r\nOlive oil;oil\r\n;soap\r\n");
        assertThat(told.separator()).isEqualTo(Separator.SEMICOLON);
        assertThat(told.columns()).containsExactly("name", "kind");
        // as a spreadsheet counts, though that line is not a row of the table
        assertThat(told.rows(told.guess(), "EUR").troubles())
                .extracting(CellTrouble::row)
                .containsOnly(4);
        CsvFile chosen = CsvFile.read("name;kind,notes\nOlive;oil,x\n", Optional.of(Separator.COMMA))
                .orThrow();
        assertThat(chosen.columns()).containsExactly("name;kind", "notes");
    }

    @Test
    void the_meaning_of_a_column_may_be_chosen() {
        CsvFile file = file("what,how much,when\nCoconut oil,5 kg,2026-11-25\n");
        assertThat(file.standsInTheWay(file.guess(CsvKind.LOTS))).hasSize(3);
        CsvChoice chosen = new CsvChoice(
                CsvKind.LOTS,
                List.of(Meaning.NAME, Meaning.AMOUNT, Meaning.RECEIVED),
                DecimalSign.POINT,
                DayOrder.ASKED);
        assertThat(file.standsInTheWay(chosen)).isEmpty();
        assertThat(lot(file, chosen).amount().number()).isEqualTo(5_000_000);
        CsvChoice doubled = new CsvChoice(
                CsvKind.LOTS, List.of(Meaning.NAME, Meaning.NAME, Meaning.RECEIVED), DecimalSign.POINT, DayOrder.ASKED);
        assertThat(file.standsInTheWay(doubled).get(0).sentence()).contains("two columns say 'what it is called'");
    }

    @Test
    void a_text_that_a_spreadsheet_would_run_is_guarded_and_given_back_as_it_was() {
        for (String text :
                new String[] {"=1+1", "+44 20", "-", "@SUM(A1)", "\tx", "\rx", "'=1", "''@", "'tis", "", "olive"}) {
            String guarded = FormulaGuard.guarded(text);
            assertThat(guarded).doesNotMatch("(?s)[=+\\-@\t\r].*");
            assertThat(FormulaGuard.bare(guarded)).isEqualTo(text);
        }
        Random random = new Random(7);
        String signs = "'=+-@\t\ra ";
        for (int i = 0; i < 2_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int j = random.nextInt(6); j > 0; j--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            assertThat(FormulaGuard.bare(FormulaGuard.guarded(text.toString()))).isEqualTo(text.toString());
        }
    }
}
