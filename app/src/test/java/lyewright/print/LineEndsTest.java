package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineEndsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "(1570 g asked, off by -1.1 g); (1570 g |asked, |off by -1.1 g)",
                "5.05 % (5 % asked); 5.05 % |(5 % |asked)",
                "24 to 48 h*, 4 weeks*; 24 |to |48 h*, |4 weeks*",
                "to 95 °C*, and; to |95 °C*, |and",
                "3 good oils, 7 of 12; 3 |good |oils, |7 |of |12",
                "off the tub, by hand; off |the |tub, |by |hand",
                "no anti-caking agent; no |anti-caking |agent",
                "g; g",
            })
    void a_line_does_not_end_between_a_figure_and_its_unit(String text, String marked) {
        LineEnds ends = new LineEnds();
        ends.setText(text);
        StringBuilder found = new StringBuilder();
        int from = 0;
        for (int at = ends.next(); at != BreakIterator.DONE; at = ends.next()) {
            found.append(from == 0 ? "" : "|").append(text, from, at);
            from = at;
        }
        assertThat(found).hasToString(marked);
    }
}
