package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.NotebookText;
import lyewright.material.Tables;
import lyewright.web.start.NotebookRows.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same notebook as text and in boxes. */
class NotebookRowsTest {

    @Test
    void a_text_goes_into_the_boxes_it_belongs_to() {
        NotebookRows rows = rows("""
                Harbour trial

                Coconut oil: 350 g
                350g olive (virgin)
                castor - 25 g
                NaOH 71 g
                water 155 g
                lavender 15 g at trace
                # from the blue bottle
                """);
        assertThat(rows.name()).isEqualTo("Harbour trial");
        assertThat(rows.lines())
                .containsExactly(
                        new Row("Coconut oil", "350 g"),
                        new Row("olive (virgin)", "350g"),
                        new Row("castor", "25 g"),
                        new Row("lavender", "15 g at trace"),
                        new Row("# from the blue bottle", ""));
        assertThat(List.of(rows.soda(), rows.potash(), rows.water(), rows.superfat()))
                .containsExactly("71 g", "", "155 g", "");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Harbour trial\ncoconut oil 350 g\n350g olive (virgin)\ncastor 25 g\nsoda 71 g\nwater 155 g\nlavender 15 g at trace",
                "coconut 12.5 oz\ncastor 1 oz\ncaustic potash 3 oz\ndistilled water 5 oz",
                "recipe: Bar 2\ncoconut 350 g\nsuperfat 5 %\nwater 120 g\nsea salt 200 g at trace",
                "coconut 350 g\nsoda 60 g\nwater 120 g"
            })
    void turned_into_boxes_and_back_it_is_the_same_recipe(String text) {
        Formula before = read(text + (text.startsWith("coconut") ? "\nrecipe: Unnamed" : ""));
        NotebookRows rows = rows(text);
        Formula after = read(rows.text("g"));
        assertThat(FormulaFile.write(after)).isEqualTo(FormulaFile.write(before));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "coconut 350 g 20 g",
                "olvie",
                "half a cup of olive",
                "soda 71 g\nsoda 72 g",
                "350",
                "g 350 coconut 7",
                "Name\nOther name",
                "<b>coconut</b> 350 g",
                "•\tcoconut\u00a0oil\t350\u00a0g"
            })
    void nothing_typed_is_lost_on_the_way(String text) {
        String back = rows(text).typedText("g");
        assertThat(signs(back.replace("recipe:", ""))).as(back).containsExactlyInAnyOrderElementsOf(signs(text));
    }

    private static List<Integer> signs(String text) {
        return text.codePoints()
                .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c))
                .boxed()
                .toList();
    }

    @Test
    void a_bare_number_takes_the_unit_that_is_set() {
        NotebookRows rows = new NotebookRows("", List.of(new Row("coconut", "12.5")), "2", "", "4,5", "5");
        assertThat(rows.typedText("oz")).isEqualTo("coconut 12.5 oz\nsoda 2 oz\nwater 4,5 oz\nsuperfat 5 %");
    }

    @Test
    void a_line_of_a_hundred_thousand_blanks_is_split_at_once() {
        String line = "coconut" + " ".repeat(100_000) + "x";
        assertThat(rows("Name\n" + line).lines()).containsExactly(new Row(line, ""));
    }

    private static NotebookRows rows(String text) {
        return NotebookRows.of(text, NotebookText.read(text, Tables.bundled()).nameLine());
    }

    @Test
    void a_name_that_sounds_like_an_oil_goes_into_the_box_for_names() {
        NotebookRows rows = rows("SF99\nlard 350 g\nsoda 45 g\nwater 120 g");
        assertThat(rows.name()).isEqualTo("SF99");
        assertThat(rows.lines()).containsExactly(new Row("lard", "350 g"));
    }

    @Test
    void what_is_chosen_for_a_row_takes_its_place() {
        NotebookRows rows = rows("olive 350 g\nlard 100 g\nsoda 45 g\nwater 120 g");
        assertThat(rows.withLine(2, "olive oil (virgin) 350 g", "g").lines())
                .containsExactly(new Row("olive oil (virgin)", "350 g"), new Row("lard", "100 g"));
        assertThat(rows.withLine(99, "lard 1 g", "g")).isEqualTo(rows);
    }

    private static Formula read(String text) {
        NotebookText.Read read = NotebookText.read(text, Tables.bundled());
        assertThat(read.troubles()).as(text).isEmpty();
        return read.formula().orElseThrow();
    }
}
