package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.words.Figures;
import org.junit.jupiter.api.Test;

class LayoutTest {

    @Test
    void wide_characters_and_marks_are_counted_as_they_are_drawn() {
        assertThat(Widths.of("soap")).isEqualTo(4);
        assertThat(Widths.of("мыло")).isEqualTo(4);
        assertThat(Widths.of("石鹸")).isEqualTo(4);
        assertThat(Widths.of("🧼")).isEqualTo(2);
        assertThat(Widths.of("e\u0301")).isEqualTo(1);
    }

    @Test
    void text_is_broken_at_spaces_and_long_words_where_they_must_be() {
        assertThat(Widths.wrap("one two three", 7)).containsExactly("one two", "three");
        assertThat(Widths.wrap("abcdefgh", 3)).containsExactly("abc", "def", "gh");
        assertThat(Widths.wrap("🧼🧼🧼", 4)).containsExactly("🧼🧼", "🧼");
        assertThat(Widths.wrap("", 4)).containsExactly("");
    }

    @Test
    void a_table_never_grows_over_its_page() {
        TextTable table = new TextTable(2, TextTable.words("a"), TextTable.words("b"), TextTable.figures("c"))
                .row("x".repeat(300), "word ".repeat(40), "1234567.89 g")
                .row("y", "z", "1 g");

        List<String> lines = table.lines(60);

        assertThat(lines).allMatch(line -> Widths.of(line) <= 60);
        assertThat(String.join("", lines).replaceAll("[^x]", "")).hasSize(300);
    }

    @Test
    void figures_have_a_point_and_no_exponent() {
        assertThat(Figures.fixed(1234567.891, 2)).isEqualTo("1234567.89");
        assertThat(Figures.fixed(-0.004, 2)).isEqualTo("0.00");
        assertThat(Figures.upTo(1e-9, 3)).isEqualTo("0");
        assertThat(Figures.upTo(120, 3)).isEqualTo("120");
        assertThat(Figures.signed(0.44, 1)).isEqualTo("+0.4");
        assertThat(Figures.signed(-0.44, 1)).isEqualTo("-0.4");
        assertThat(Figures.signed(0.04, 1)).isEqualTo("0.0");
    }
}
