package lyewright.print;

import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Crosses every page of what is not to be made, from corner to corner, under the text: the reasons stay readable. */
final class Cross {

    private static final float GREY = 0.7f;
    private static final float WIDTH = 16;
    private static final float MARGIN = 24;

    private Cross() {}

    static void over(PDDocument document) throws IOException {
        for (PDPage page : document.getPages()) {
            cross(document, page);
        }
    }

    private static void cross(PDDocument document, PDPage page) throws IOException {
        PDRectangle box = page.getMediaBox();
        float right = box.getWidth() - MARGIN;
        float top = box.getHeight() - MARGIN;
        try (PDPageContentStream lines =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.PREPEND, true, true)) {
            // nothing to read out: every page says it in words too
            lines.beginMarkedContent(COSName.ARTIFACT);
            lines.setStrokingColor(GREY);
            lines.setLineWidth(WIDTH);
            lines.moveTo(MARGIN, MARGIN);
            lines.lineTo(right, top);
            lines.moveTo(MARGIN, top);
            lines.lineTo(right, MARGIN);
            lines.stroke();
            lines.endMarkedContent();
        }
    }
}
