package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoBreaksTest {

    /** A no-break space is written as a line below. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "(1570 g asked, off by -1.1 g) | (1570_g asked, off_by_-1.1_g)",
                "5.05 % (5 % asked) | 5.05_% (5_% asked)",
                "24 to 48 h*, 4 to 6 weeks* | 24 to 48_h*, 4 to 6_weeks*",
                "<p>95 °C* and</p> | <p><span class=\"nb\">95_°C*</span> and</p>",
                "<title>Soap at 40 °C</title> | <title>Soap at 40_°C</title>",
                "<svg alt=\"40 °C\"></svg> | <svg alt=\"40_°C\"></svg>",
                "3 good oils, 7 of 12 | 3 good oils, 7 of 12",
            })
    void a_figure_stays_with_its_unit(String page, String kept) {
        assertThat(NoBreaks.in(page).replace('\u00a0', '_')).isEqualTo(kept);
    }
}
