package lyewright.print;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Turns a well-formed page into a PDF with tags and its own letters. Reads nothing from outside. Safe for several threads. */
final class Press {

    /** Widths of letters, which are the same for every paper. */
    private static final FSCacheEx<String, FSCacheValue> METRICS = new FSDefaultCacheStore();

    /** Stands for a letter that the typeface has not. */
    static final String NO_SUCH_LETTER = "\uFFFD";

    static {
        // it tells of every step it takes
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new OwnLetters());
    }

    private Press() {}

    /** What is done to a document before it is written. */
    interface Finish {
        void apply(PDDocument document) throws IOException;
    }

    static byte[] pdf(String xhtml, Finish finish) {
        try (PDDocument document = new PDDocument();
                PdfBoxRenderer renderer = renderer(document, xhtml);
                ByteArrayOutputStream out = new ByteArrayOutputStream(100_000)) {
            renderer.createPDFWithoutClosing();
            finish.apply(document);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a paper in memory cannot fail to be written", e);
        }
    }

    private static PdfBoxRenderer renderer(PDDocument document, String xhtml) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        for (Typeface face : Typeface.ALL) {
            PDFont letters = PDType0Font.load(document, face.letters(), true);
            builder.useFont(new PDFontSupplier(letters), Typeface.FAMILY, face.weight(), FontStyle.NORMAL, true);
        }
        return builder.usePDDocument(document)
                .useCacheStore(PdfRendererBuilder.CacheStore.PDF_FONT_METRICS, METRICS)
                .usePdfUaAccessibility(true)
                .useSVGDrawer(new Pen())
                .useUnicodeLineBreaker(new LineEnds())
                .useUriResolver((base, uri) -> null)
                .useReplacementText(NO_SUCH_LETTER)
                .withProducer("Lyewright")
                .withHtmlContent(xhtml, null)
                .buildPdfRenderer();
    }
}
