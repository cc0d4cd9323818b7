package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class NameRulesTest {

    private static final int CASES = 5_000;

    /** None of these leaves ink: by the property Default_Ignorable_Code_Point and the category of spaces in Unicode's tables. */
    private static final int[] UNSEEN = {
        ' ', 0xa0, 0xad, 0x34f, 0x61c, 0x115f, 0x1160, 0x1680, 0x180e, 0x2000, 0x2003, 0x200a, 0x200b, 0x200c, 0x200d,
        0x200e, 0x200f, 0x202f, 0x205f, 0x2060, 0x2061, 0x2064, 0x2065, 0x2800, 0x3000, 0x3164, 0xfe00, 0xfe0f, 0xffa0,
        0xfff0, 0xe0020, 0xe0041, 0xe007f, 0xe0100,
    };

    private static final List<String> SEEN = List.of(
            "Tideline",
            "صابون الغار",
            "סבון זית",
            "می\u200cخواهم",
            "石鹸",
            "สบู่",
            "Crème brûlée",
            "🧼",
            "👩\u200d🔬",
            "🏴\udb40\udc67\udb40\udc62\udb40\udc73\udb40\udc63\udb40\udc74\udb40\udc7f",
            "☀\ufe0f",
            "7",
            "½",
            "!",
            "olive \u2067סבון\u2069 5");

    static List<String> names() {
        return SEEN;
    }

    private static Optional<String> said(String name) {
        return NameRules.check("name", "its name", name).map(Problem::sentence);
    }

    private static String some(Random random, int[] characters, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.appendCodePoint(characters[random.nextInt(characters.length)]);
        }
        return text.toString();
    }

    @ParameterizedTest
    @MethodSource("names")
    void names_of_any_script_are_welcome(String name) {
        assertThat(said(name)).isEmpty();
    }

    @Test
    void no_name_is_made_of_what_cannot_be_seen() {
        Random random = new Random(20260);
        for (int i = 0; i < CASES; i++) {
            String name = some(random, UNSEEN, 1 + random.nextInt(12));
            assertThat(said(name)).as("case %s", i).isPresent();
        }
        assertThat(said("\u200b\u2060"))
                .contains("its name has nothing in it that can be seen; write a name of letters or figures");
        assertThat(said("  ")).contains("its name is empty; write a name");
    }

    @Test
    void what_can_be_seen_may_have_what_cannot_beside_it() {
        Random random = new Random(20261);
        for (int i = 0; i < CASES; i++) {
            String seen = SEEN.get(random.nextInt(SEEN.size()));
            String name = seen + some(random, new int[] {0x200b, 0x2060, 0xad, 0xfe0f}, 1 + random.nextInt(3));
            assertThat(said(name)).as("case %s", i).isEmpty();
            assertThat(NameRules.areSame(seen, name)).as("case %s", i).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a\u202eb",
                "a\u202eb\u202c",
                "a\u202db\u202c",
                "\u202aolive",
                "olive\u202c",
                "\u2067olive",
                "olive\u2069",
                "\u2066a\u202ab\u2069c\u202c",
                "\u202aa\u2069"
            })
    void a_name_does_not_turn_the_writing_round_it(String name) {
        assertThat(said(name))
                .contains("its name has a hidden sign in it that turns the writing round;"
                        + " delete the name and type it anew");
    }

    @Test
    void turns_that_are_ended_in_their_order_stay() {
        Random random = new Random(20262);
        for (int i = 0; i < CASES; i++) {
            String nested = nested(random, 4);
            assertThat(said(nested)).as("case %s", i).isEmpty();
            int cut = nested.indexOf(nested.chars()
                    .filter(c -> c >= 0x202a && c <= 0x2069)
                    .findFirst()
                    .orElse('x'));
            String broken = nested.substring(0, cut) + nested.substring(cut + 1);
            if (nested.charAt(cut) != 'x') {
                assertThat(said(broken)).as("case %s", i).isPresent();
            }
        }
    }

    private static String nested(Random random, int depth) {
        String inner = depth == 0 ? "x" : nested(random, depth - 1);
        return switch (random.nextInt(6)) {
            case 0 -> "\u202a" + inner + "\u202c";
            case 1 -> "\u202b" + inner + "\u202c";
            case 2 -> "\u2066" + inner + "\u2069";
            case 3 -> "\u2067" + inner + "\u2069";
            case 4 -> "\u2068" + inner + "\u2069";
            default -> "x" + inner;
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\nb", "a\u2028b", "a\u0000b", "a\u001bb", "a\u0085b", "a\ufeffb", "a\ud800"})
    void a_name_is_one_line_of_text(String name) {
        assertThat(said(name))
                .contains("its name has a line break or a control character in it; write a name of one line");
    }

    @Test
    void a_name_has_an_end() {
        assertThat(said("a".repeat(200))).isEmpty();
        assertThat(said("a".repeat(201))).contains("its name is longer than 200 characters; write a shorter one");
        assertThat(said(" a")).contains("its name begins or ends with a space; take it out");
    }

    @Test
    void names_are_the_same_to_people_whatever_they_are_coded_as() {
        assertThat(NameRules.areSame("Crème", "cre\u0300me")).isTrue();
        assertThat(NameRules.areSame("Big  loaf", "BIG\u00a0LOAF\u200b")).isTrue();
        assertThat(NameRules.areSame("STRASSE", "straße")).isTrue();
        assertThat(NameRules.areSame("Big loaf", "Big loaf 2")).isFalse();
        assertThat(NameRules.areSame("Creme", "Crème")).isFalse();
    }
}
