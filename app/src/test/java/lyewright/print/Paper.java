package lyewright.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import lyewright.makingsheet.MakingSheet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** What a reader of a PDF gets to see. */
final class Paper {

    private final byte[] bytes;

    private Paper(byte[] bytes) {
        this.bytes = bytes;
    }

    interface Look<T> {
        T at(PDDocument document) throws IOException;
    }

    static Paper of(MakingSheet sheet, PaperOrder order) {
        return new Paper(SheetPaper.pdf(sheet, order));
    }

    <T> T look(Look<T> look) {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return look.at(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of each page, top to bottom. */
    List<String> pages() {
        return look(document -> {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return pages;
        });
    }

    /** All of it on one line, every gap a single space. */
    String text() {
        return flat(String.join(" ", pages()));
    }

    static String flat(String text) {
        // between a degree sign and its letter the reader sees a gap now and then, where none is drawn
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .replaceAll("[\\s\\u00a0]+", " ")
                .replaceAll("° (?=[CF])", "°")
                .strip();
    }

    BufferedImage drawn(int page) {
        return look(document -> new PDFRenderer(document).renderImageWithDPI(page, 72));
    }
}
