package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.FadePicture;
import lyewright.picture.Mark;
import lyewright.picture.Picture;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** What a paper is to whoever listens to it, and the pictures on it. */
class PaperTagsTest {

    private static final MakingSheet TIDELINE = Sheets.of(
            Sheets.examples().stream()
                    .filter(file -> file.endsWith("tideline.yaml"))
                    .findFirst()
                    .orElseThrow(),
            Sheets.LOAF,
            Equipment.USUAL);

    private static final Paper PAPER = Paper.of(TIDELINE, Sheets.order(PaperSize.A4));

    private static List<String> tags() {
        return walked(element -> element.getStructureType());
    }

    private interface Ask {
        String of(PDStructureElement element);
    }

    private static List<String> walked(Ask ask) {
        return PAPER.look(document -> {
            List<String> found = new ArrayList<>();
            walk(document.getDocumentCatalog().getStructureTreeRoot(), element -> found.add(ask.of(element)));
            return found;
        });
    }

    private static void walk(PDStructureNode node, Consumer<PDStructureElement> look) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                look.accept(element);
                walk(element, look);
            }
        }
    }

    @Test
    void headings_tables_and_their_heads_are_tagged_as_what_they_are() {
        assertThat(tags()).contains("H1", "H2", "P", "Table", "TR", "TH", "TD", "Figure", "Link");
        assertThat(tags().stream().filter("H1"::equals)).hasSize(1);
        assertThat(tags().stream().filter("H2"::equals)).hasSize(4);
    }

    @Test
    void it_tells_its_title_instead_of_its_file_and_that_it_is_made_for_everyone() {
        assertThat(PAPER.<Boolean>look(document ->
                        document.getDocumentCatalog().getViewerPreferences().displayDocTitle()))
                .isTrue();
        String about = PAPER.look(document ->
                new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8));
        assertThat(about.toLowerCase(Locale.ROOT)).contains("pdfuaid", "making sheet: tideline");
    }

    @Test
    void every_picture_says_what_it_is() {
        List<String> told = walked(element -> element.getStructureType().equals("Figure")
                        ? String.valueOf(element.getAlternateDescription())
                        : "")
                .stream()
                .filter(text -> !text.isEmpty())
                .toList();
        assertThat(told)
                .containsExactlyInAnyOrder(
                        "How sure the superfat is", "The pour: plain fading into kelp", "A loaf mould");
    }

    // Pictures

    @Test
    void words_and_figures_of_pictures_are_text_that_can_be_searched_for() {
        List<String> pages = PAPER.pages().stream().map(Paper::flat).toList();
        assertThat(pages.get(0)).contains("18.0 %, as asked", "superfat, %", "alkali left over");
        String rest = String.join(" ", pages.subList(1, pages.size()));
        assertThat(rest).contains("65 mm", "80 mm", "300 mm", "of kelp", "11 bars, 25 mm thick.");
        Picture fade = FadePicture.of(TIDELINE).orElseThrow();
        fade.drawing().marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(Mark.Text.class::cast)
                .forEach(text -> assertThat(rest).contains(Paper.flat(text.text())));
    }

    @Test
    void a_layer_of_the_fade_is_as_dark_as_it_has_of_the_coloured_batter() {
        // seen: the undermost layer is all kelp, drawn #555; white would be 255
        var image = PAPER.look(document -> new PDFRenderer(document).renderImageWithDPI(2, 72));
        int dark = 0;
        int pale = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                int shade = image.getRGB(x, y) & 0xff;
                dark += Math.abs(shade - 0x55) < 3 ? 1 : 0;
                pale += shade > 0xd5 && shade < 0xf5 ? 1 : 0;
            }
        }
        assertThat(dark).isGreaterThan(300);
        assertThat(pale).isGreaterThan(300);
    }

    @Test
    void a_picture_has_marks_for_letters_that_are_not_there_and_the_paper_says_so() {
        MakingSheet sheet = Sheets.of("""
                recipe: Two
                oils: {olive-virgin: 700 g, coconut: 300 g}
                alkali: sodium
                superfat: 6 %
                water: 33 % lye
                portions: {plain: 60 %, "\u05e9\u05de\u05df": rest}
                """, Sheets.LOAF, Equipment.USUAL);
        String text = Paper.of(sheet, Sheets.order(PaperSize.A4)).text();
        assertThat(text)
                .contains("40 %, ", "\uFFFD\uFFFD\uFFFD", "stands for a letter that this paper's typeface has not");
    }
}
