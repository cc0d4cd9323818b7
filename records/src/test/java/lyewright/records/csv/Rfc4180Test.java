package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The seven rules of section 2 of RFC 4180 (October 2005), each with the example that stands there, or one like it. */
@Tag("validation")
class Rfc4180Test {

    private static List<List<String>> rows(String text) {
        CsvTable table =
                CsvTable.read("one,two,three\r\n" + text, Optional.empty()).orThrow();
        return table.rows().stream().map(CsvTable.Row::cells).toList();
    }

    @Test
    void rule_1_each_record_is_on_a_line_of_its_own_ended_by_cr_lf() {
        assertThat(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_2_the_last_record_may_have_no_end_of_line() {
        assertThat(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx")).hasSize(2).last().isEqualTo(List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_3_the_first_line_names_the_fields() {
        CsvTable table = CsvTable.read("field_name,field_name2\r\naaa,bbb\r\n", Optional.empty())
                .orThrow();
        assertThat(table.header()).containsExactly("field_name", "field_name2");
        assertThat(table.rows()).hasSize(1);
    }

    @Test
    void rule_4_spaces_are_part_of_a_field_and_the_last_one_is_followed_by_no_comma() {
        assertThat(rows(" aaa ,b b,ccc")).containsExactly(List.of(" aaa ", "b b", "ccc"));
    }

    @Test
    void rule_5_fields_may_stand_between_double_quotes() {
        assertThat(rows("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"))
                .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_6_line_breaks_quotes_and_commas_stand_between_double_quotes() {
        assertThat(rows("\"aaa\",\"b\r\nbb\",\"c,cc\"\r\nzzz,yyy,xxx"))
                .containsExactly(List.of("aaa", "b\r\nbb", "c,cc"), List.of("zzz", "yyy", "xxx"));
    }

    @Test
    void rule_7_a_double_quote_inside_is_written_twice() {
        assertThat(rows("\"aaa\",\"b\"\"bb\",\"ccc\"")).containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }

    @Test
    void what_we_write_keeps_the_same_rules() {
        byte[] written = CsvText.bytes(List.of(List.of("a,b", "c\"d", "e\r\nf"), List.of("g", 12L, "")), ',', false);
        assertThat(new String(written, java.nio.charset.StandardCharsets.UTF_8))
                .isEqualTo("\"a,b\",\"c\"\"d\",\"e\r\nf\"\r\n\"g\",12,\"\"\r\n");
    }
}
