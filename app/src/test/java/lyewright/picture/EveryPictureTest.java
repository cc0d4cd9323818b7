package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lyewright.template.Templates;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What holds of every picture, of the demo workshop's recipes and of what makes pictures break. */
class EveryPictureTest {

    private static final Map<String, Picture> PICTURES = Cases.pictures();

    /** Half a stroke may lie outside. */
    private static final double STROKE = 1.01;

    static Stream<Arguments> pictures() {
        Stream<Arguments> marks = Sheets.examples().stream()
                .map(Sheets::text)
                .map(Sheets::formula)
                .map(f -> Arguments.of(f.recipe() + ": mark", RecipeMark.of(f)));
        return Stream.concat(
                marks,
                PICTURES.entrySet().stream()
                        .map(e -> Arguments.of(e.getKey(), e.getValue().drawing())));
    }

    static Stream<Arguments> figures() {
        return PICTURES.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void a_picture_lies_inside_its_frame(String name, Drawing drawing) {
        Drawn drawn = Drawn.of(drawing);
        assertThat(drawn.all("svg").get(0).getAttribute("viewBox"))
                .isEqualTo("0 0 " + drawing.width() + " " + drawing.height());
        for (Element box : drawn.all("rect")) {
            double x = Drawn.number(box, "x");
            double y = Drawn.number(box, "y");
            inside(drawing, x, y, box);
            assertThat(Drawn.number(box, "width")).as(name).isNotNegative();
            assertThat(Drawn.number(box, "height")).as(name).isNotNegative();
            inside(drawing, x + Drawn.number(box, "width"), y + Drawn.number(box, "height"), box);
        }
        for (Element path : drawn.all("path")) {
            List<Double> points = Drawn.points(path.getAttribute("d"));
            assertThat(points).isNotEmpty();
            for (int i = 0; i < points.size(); i += 2) {
                inside(drawing, points.get(i), points.get(i + 1), path);
            }
        }
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Text text) {
                assertThat(text.left()).as(text.text()).isNotNegative();
                assertThat(text.right()).as(text.text()).isLessThanOrEqualTo(drawing.width());
                assertThat(text.y() - 0.75 * text.size()).as(text.text()).isNotNegative();
                assertThat(text.y() + 0.25 * text.size()).as(text.text()).isLessThanOrEqualTo(drawing.height());
            }
        }
    }

    private static void inside(Drawing drawing, double x, double y, Element what) {
        assertThat(x).as(what.getAttribute("class")).isBetween(-STROKE, drawing.width() + STROKE);
        assertThat(y).as(what.getAttribute("class")).isBetween(-STROKE, drawing.height() + STROKE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void no_words_lie_on_others(String name, Drawing drawing) {
        List<Mark.Text> texts = drawing.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(Mark.Text.class::cast)
                .toList();
        for (int i = 0; i < texts.size(); i++) {
            for (int k = 0; k < i; k++) {
                assertThat(overlap(texts.get(i), texts.get(k)))
                        .as(
                                "%s: %s on %s",
                                name, texts.get(i).text(), texts.get(k).text())
                        .isFalse();
            }
        }
    }

    /** Small letters are just over half as high as the line they stand on; what hangs below it may touch the next line's tops. */
    private static boolean overlap(Mark.Text a, Mark.Text b) {
        double high = 0.75 * Math.min(a.size(), b.size());
        return a.left() < b.right() && b.left() < a.right() && Math.abs(a.y() - b.y()) < high;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void a_picture_has_a_name_and_says_what_it_shows(String name, Drawing drawing) {
        Drawn drawn = Drawn.of(drawing);
        assertThat(drawn.all("svg").get(0).getAttribute("role")).isEqualTo("img");
        assertThat(drawn.all("title")).hasSize(1);
        assertThat(drawn.all("title").get(0).getTextContent()).isNotBlank();
        assertThat(drawn.all("desc").get(0).getTextContent()).isNotBlank().doesNotContain("NaN", "Infinity");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void a_picture_has_its_colours_from_classes_that_screen_and_paper_know(String name, Drawing drawing)
            throws IOException {
        String screen = resource("/lyewright/web/static/pictures.css");
        String paper = Templates.render("picture/svgPaper.jte", drawing);
        Set<String> styles = new TreeSet<>();
        drawing.marks().forEach(mark -> styles.addAll(List.of(mark.style().split(" "))));
        styles.remove("t");
        styles.remove("t-muted");
        for (String style : styles) {
            assertThat(screen).contains("." + style);
            assertThat(paper).containsPattern(Pattern.quote("." + style) + "[ ,]");
        }
        String page = Templates.render("picture/svg.jte", drawing);
        assertThat(page).doesNotContain("<style", "style=", "fill=", "stroke=", " id=");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void screen_and_paper_show_the_same_table(String name, Picture picture) {
        String screen = Templates.render("picture/figure.jte", picture);
        String paper = Templates.render("picture/figurePaper.jte", picture);
        for (String page : List.of(screen, paper)) {
            Drawn drawn = new Drawn(picture.drawing(), Drawn.xml(page));
            assertThat(drawn.all("caption")).hasSize(1);
            assertThat(drawn.all("tr")).hasSize(picture.table().rows().size() + 1);
            assertThat(drawn.all("th").stream()
                            .filter(th -> th.getAttribute("scope").equals("row"))
                            .map(Element::getTextContent))
                    .containsExactlyElementsOf(picture.table().rows().stream()
                            .map(row -> row.get(0))
                            .toList());
            assertThat(page).doesNotContain("NaN", "Infinity");
        }
        picture.table()
                .rows()
                .forEach(row -> assertThat(row).hasSameSizeAs(picture.table().heads()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void a_name_is_words_and_never_a_tag(String name, Picture picture) {
        String page = Templates.render("picture/figure.jte", picture);
        assertThat(page).doesNotContain("<script", "<b>", "<i>");
    }

    @Test
    void the_gallery_has_them_all() throws IOException {
        String page = Gallery.page();
        PICTURES.keySet().forEach(name -> assertThat(page).contains(">" + name.replace("&", "&amp;") + "<"));
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = Picture.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
