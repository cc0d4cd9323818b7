package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.formula.Formula;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

class RecipeMarkTest {

    @ParameterizedTest
    @CsvSource({"250 g,650 g,100 g", "25 %,65 %,10 %", "25 %,65 %,rest"})
    void layers_are_as_high_as_the_oils_shares(String first, String second, String third) {
        List<Element> layers = layers(oils(List.of(first, second, third)));
        assertThat(layers).hasSize(3);
        assertThat(Drawn.number(layers.get(0), "height")).isCloseTo(0.25 * 50, within(0.06));
        assertThat(Drawn.number(layers.get(1), "height")).isCloseTo(0.65 * 50, within(0.06));
        assertThat(Drawn.number(layers.get(2), "height")).isCloseTo(0.10 * 50, within(0.06));
        assertThat(Drawn.number(layers.get(0), "y"))
                .as("first oil undermost")
                .isGreaterThan(Drawn.number(layers.get(1), "y"));
    }

    private static Formula oils(List<String> amounts) {
        List<String> keys = List.of("coconut", "olive-virgin", "castor");
        return Sheets.formula("recipe: Three\noils: {"
                + IntStream.range(0, 3)
                        .mapToObj(i -> keys.get(i) + ": " + amounts.get(i))
                        .collect(Collectors.joining(", "))
                + "}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n");
    }

    /** Those on the bar's face, without its outline. */
    private static List<Element> layers(Formula formula) {
        return Drawn.of(RecipeMark.of(formula)).all("rect").stream()
                .filter(rect -> !rect.getAttribute("class").contains("f-clear"))
                .toList();
    }

    @Test
    void the_demo_workshops_marks_all_differ_and_stay_the_same() {
        List<Drawing> marks = new ArrayList<>();
        for (var example : Sheets.examples()) {
            Formula formula = Sheets.formula(Sheets.text(example));
            marks.add(RecipeMark.of(formula));
            assertThat(RecipeMark.of(formula)).isEqualTo(RecipeMark.of(formula));
        }
        assertThat(marks.stream().map(Drawing::marks)).doesNotHaveDuplicates();
    }

    @Test
    void oils_met_most_often_have_each_a_look_of_their_own() {
        List<String> common = List.of(
                "coconut",
                "olive-virgin",
                "castor",
                "olive-pomace",
                "shea-butter",
                "sunflower-high-oleic",
                "palm",
                "cocoa-butter",
                "rapeseed-low-erucic",
                "lard",
                "tallow");
        List<String> looks = common.stream()
                .map(key -> "recipe: One\noils: {" + key + ": 100 %}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n")
                .map(text -> RecipeMark.of(Sheets.formula(text)).marks().stream()
                        .filter(mark -> mark instanceof Mark.Box || mark.style().startsWith("h"))
                        .toList()
                        .toString())
                .toList();
        assertThat(looks).doesNotHaveDuplicates();
    }

    @Test
    void neighbours_never_look_alike() {
        List<Element> layers = layers(Sheets.formula(Cases.manyOilsOf(33)));
        assertThat(layers).hasSize(33);
        Drawing drawing = RecipeMark.of(Sheets.formula(Cases.manyOilsOf(33)));
        String before = "";
        List<Mark> marks = drawing.marks();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Mark.Box box && !box.style().contains("f-clear")) {
                boolean textured =
                        i + 1 < marks.size() && marks.get(i + 1).style().startsWith("h");
                String look = box.style() + (textured ? slopes(((Mark.Path) marks.get(i + 1)).d()) : "");
                assertThat(look).isNotEqualTo(before);
                before = look;
            }
        }
    }

    /** Which ways a texture's lines go. */
    private static String slopes(String d) {
        if (d.contains("h0.1")) {
            return "dots";
        }
        List<Double> points = Drawn.points(d);
        return IntStream.iterate(0, i -> i < points.size(), i -> i + 4)
                .mapToObj(i -> Integer.signum((int) Math.round(10 * (points.get(i + 2) - points.get(i)))) + "/"
                        + Integer.signum((int) Math.round(10 * (points.get(i + 3) - points.get(i + 1)))))
                .distinct()
                .sorted()
                .collect(Collectors.joining(" "));
    }

    @Test
    void hundreds_of_oils_make_no_more_than_a_small_picture() {
        assertThat(layers(Sheets.formula(Cases.manyOilsOf(300)))).hasSize(1);
    }
}
