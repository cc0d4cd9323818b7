package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import lyewright.picture.Mark.Anchor;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaperPicturesTest {

    private static final int DARK = 100;

    @ParameterizedTest
    @ValueSource(doubles = {Canvas.TEXT, Canvas.SMALL, Canvas.TINY})
    void letters_of_every_size_that_pictures_use_are_as_high_on_paper_as_they_should_be(double size)
            throws IOException {
        Mark.Text letters = new Mark.Text("t", 10, 60, Anchor.START, size, "HHHH");
        Drawing drawing = new Drawing("pic-try", "Letters", "Four letters.", 100, 100, List.of(letters));
        Picture picture =
                new Picture(drawing, "", List.of(), new FigureTable("", List.of(FigureTable.words("")), List.of()));
        try (PDDocument paper = Loader.loadPDF(Leaf.pdf(List.of(picture)))) {
            // 100 units are drawn 90 mm wide
            double unitsPerPixel = 100 / 90.0 * 25.4 / 72;
            assertThat(highestInk(paper) * unitsPerPixel).isBetween(0.6 * size, 0.9 * size);
        }
    }

    /** Rows of pixels with something dark in them. */
    private static int highestInk(PDDocument paper) throws IOException {
        BufferedImage image = new PDFRenderer(paper).renderImage(0);
        int rows = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            boolean ink = false;
            for (int x = 0; x < image.getWidth(); x++) {
                ink |= (image.getRGB(x, y) & 0xff) < DARK;
            }
            rows += ink ? 1 : 0;
        }
        return rows;
    }

    @Test
    void the_figures_of_a_picture_are_words_on_paper_too() throws IOException {
        Map<String, Picture> all = Cases.pictures();
        List<Picture> some = List.of(
                all.get("Tideline: where the mass goes"),
                all.get("Tideline: superfat"),
                all.get("Tideline: mould"),
                all.get("names with tags: fade"));
        try (PDDocument paper = Loader.loadPDF(Leaf.pdf(some))) {
            String text = new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
            for (Picture picture : some) {
                for (List<String> row : picture.table().rows()) {
                    assertThat(text).contains(String.join(" ", row).strip());
                }
            }
        }
    }
}
