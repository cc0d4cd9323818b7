package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.material.Figure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenFigureTest {

    @ParameterizedTest
    @CsvSource({
        "189.5 mg KOH/g, 189.5, mg KOH/g",
        "189.5 ± 1.0 mg KOH/g, 189.5 ± 1.0, mg KOH/g",
        "189.5 +/- 1 %, 189.5 ± 1, %",
        "257.3 +- 1.0, 257.3 ± 1.0, ''",
        "257.3 +/- 1.0, 257.3 ± 1.0, ''",
        "257.3+-1.0 mg KOH/g, 257.3 ± 1.0, mg KOH/g",
        "98.6 +\u22120.4 %, 98.6 ± 0.4, %",
        "184 to 196, 184 to 196, ''",
        "184 to 184 %, 184 to 184, %"
    })
    void a_figure_reads_and_prints_as_typed(String text, String print, String unit) {
        WrittenFigure.WithUnit read = WrittenFigure.parse(text).orThrow();
        assertThat(read.figure()).hasToString(print);
        assertThat(read.unit()).isEqualTo(unit);
        assertThat(WrittenFigure.parse(print + " " + unit).orThrow()).isEqualTo(read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "5 ± 6", "5 ± x", "5 +- 6", "5 +-", "6 to 5", "5 to -6", "-5", "5,5"})
    void what_is_no_figure_is_refused(String text) {
        assertThat(WrittenFigure.parse(text).problems()).hasSize(1);
    }

    @Test
    void it_is_exact_normal_or_anywhere_between() {
        Figure exact = WrittenFigure.parse("190").orThrow().figure().figure("sheet");
        Figure normal = WrittenFigure.parse("190 ± 2").orThrow().figure().figure("sheet");
        Figure between = WrittenFigure.parse("184 to 196").orThrow().figure().figure("sheet");
        assertThat(exact.low()).isEqualTo(190).isEqualTo(exact.high());
        assertThat(normal.low()).isEqualTo(188);
        assertThat(normal.high()).isEqualTo(192);
        assertThat(normal.spread()).isEqualTo(Figure.Spread.NORMAL);
        assertThat(between.middle()).isEqualTo(190);
        assertThat(between.spread()).isNotEqualTo(Figure.Spread.NORMAL);
        assertThat(WrittenFigure.parse("190 ± 0").orThrow().figure().figure("sheet"))
                .isEqualTo(exact);
    }
}
