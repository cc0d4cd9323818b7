package lyewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measures as people type them. */
class SaidTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "300 x 80 x 65 mm | 300 x 80 x 65 mm",
                "300X80X65MM | 300x80x65mm",
                "300 × 80 × 65 mm | 300 x 80 x 65 mm",
                "300*80*65 mm | 300x80x65 mm",
                "12 by 3 by 2.5 inches | 12 x 3 x 2.5 in",
                "12\" x 3 1/2\" x 2½\" | 12 in x 3.5 in x 2.5 in",
                "12” × 3” × 2.5” | 12 in x 3 in x 2.5 in",
                "1/16 in | 0.0625 in",
                "¼ inch | 0.25 in",
                "5 kilos | 5 kg",
                "0.05 ounces | 0.05 oz",
                "11 lbs | 11 lb",
                "250 grammes | 250 g",
                "95 mls | 95 ml",
                "1.2 litres | 1.2 l",
                "30 centimetres | 30 cm",
                "10 in. x 3½ in. x 2 and 3/4 in. | 10 in x 3.5 in x 2.75 in",
                "3 lb 2 oz | 50 oz",
                "3 lbs, 2½ oz. | 50.5 oz"
            },
            delimiter = '|')
    void is_read_as_it_is_said(String typed, String read) {
        assertThat(Said.measure(typed)).isEqualTo(read);
    }

    /** What is not understood must stay, so that whoever refuses it can show it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12,5 mm | 12,5 mm", "about 300 mm | about 300 mm", "3 fl oz | 3 fl oz", "25/11/2026 | 25/11/2026"
            })
    void stays_as_typed_where_it_is_not_understood(String typed, String read) {
        assertThat(Said.measure(typed)).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 x 95 ml | 12 x 95 ml",
                "12 cavities of 95 ml each | 12 x 95 ml",
                "6 of 110ml | 6 x 110ml",
                "12 holes x 3.3 oz | 12 x 3.3 oz",
                "10 bars of 4 1/2 oz | 10 x 4.5 oz",
                "10 bars at 110 g apiece | 10 x 110 g",
                "1450 g of water | 1450 g of water"
            })
    void counts_cavities(String typed, String read) {
        assertThat(Said.counted(typed)).isEqualTo(read);
    }
}
