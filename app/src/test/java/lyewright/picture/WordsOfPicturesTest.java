package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether words have the room that pictures take them to need. */
class WordsOfPicturesTest {

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    @ParameterizedTest
    @ValueSource(strings = {"Regular", "SemiBold"})
    void no_letter_is_wider_than_it_is_taken_for(String weight) throws IOException, FontFormatException {
        Font font = font(weight);
        int seen = 0;
        for (int c = ' '; c < 0x2200; c++) {
            if (font.canDisplay(c) && Character.isDefined(c) && !Character.isISOControl(c)) {
                String letter = Character.toString(c);
                assertThat(font.getStringBounds(letter, EXACT).getWidth())
                        .as("%s, U+%04X", letter, c)
                        .isLessThanOrEqualTo(TextWidth.of(letter, 1000) + 0.6);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(600);
    }

    @Test
    void plain_words_are_not_taken_for_much_wider_than_they_are() throws IOException, FontFormatException {
        Font font = font("SemiBold");
        for (String words : new String[] {"Unsaponif. 11.8 g", "19 times in 20", "palmitoleic", "Filled to 57 %"}) {
            double real = font.getStringBounds(words, EXACT).getWidth();
            assertThat(TextWidth.of(words, 1000)).isBetween(real - 1, real * 1.05);
        }
    }

    private static Font font(String weight) throws IOException, FontFormatException {
        try (InputStream in =
                Picture.class.getResourceAsStream("/lyewright/print/fonts/IBMPlexSans-" + weight + ".ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
        }
    }

    @Test
    void what_has_no_room_is_cut_with_dots() {
        assertThat(TextWidth.fit("Olive", 13, 100)).isEqualTo("Olive");
        String cut = TextWidth.fit("Olive oil from the far side of the hill", 13, 100);
        assertThat(cut).startsWith("Olive oil").endsWith("…");
        assertThat(TextWidth.of(cut, 13)).isLessThanOrEqualTo(100);
        assertThat(TextWidth.fit("\uD83E\uDDFC\uD83E\uDDFC\uD83E\uDDFC", 13, 34))
                .isEqualTo("\uD83E\uDDFC…");
    }

    @Test
    void labels_keep_apart_within_their_line_and_move_no_more_than_they_must() {
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            int count = 1 + random.nextInt(12);
            double[] sizes = random.doubles(count, 1, 20).toArray();
            double[] wanted = random.doubles(count, -20, 320).toArray();
            double[] placed = Spread.of(wanted, sizes, 0, 300);
            Integer[] order = IntStream.range(0, count).boxed().toArray(Integer[]::new);
            Arrays.sort(order, (a, b) -> Double.compare(placed[a], placed[b]));
            double edge = 0;
            for (int k : order) {
                assertThat(placed[k] - sizes[k] / 2).isGreaterThanOrEqualTo(edge - 1e-9);
                edge = placed[k] + sizes[k] / 2;
            }
            assertThat(edge).isLessThanOrEqualTo(300 + 1e-9);
        }
        assertThat(Spread.of(new double[] {50, 200}, new double[] {10, 10}, 0, 300))
                .containsExactly(50, 200);
        assertThat(Spread.of(new double[] {100, 100}, new double[] {10, 10}, 0, 300))
                .containsExactly(95, 105);
    }

    @Test
    void what_xml_cannot_carry_is_left_out() {
        assertThat(Drawing.clean("soap\u0000 \u001Bbar\uD800\uFFFE \uD83E\uDDFC"))
                .isEqualTo("soap bar \uD83E\uDDFC");
        assertThat(Drawing.clean("<soap> & \"bar\"")).isEqualTo("<soap> & \"bar\"");
    }

    @Test
    void a_place_is_written_in_tenths() {
        assertThat(Drawing.at(12)).isEqualTo("12");
        assertThat(Drawing.at(-0.34)).isEqualTo("-0.3");
        assertThat(Drawing.at(-0.04)).isEqualTo("0");
        assertThat(Drawing.at(99.97)).isEqualTo("100");
        assertThatThrownBy(() -> Drawing.at(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
