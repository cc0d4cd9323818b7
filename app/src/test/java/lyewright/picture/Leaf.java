package lyewright.picture;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.FontFormatException;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import lyewright.template.Templates;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Pictures on paper; run it with a file's name to look at them all. */
final class Leaf {

    private static final String STYLE = """
            @page { size: A4; margin: 15mm }
            body { font-family: Plex; font-size: 10pt }
            svg { width: 90mm }
            table { width: 90mm } th { text-align: left; font-weight: normal } .number { text-align: right }
            .picture { page-break-inside: avoid; margin-bottom: 8mm }
            """;

    private Leaf() {}

    public static void main(String[] file) throws IOException {
        Files.write(Path.of(file[0]), pdf(Cases.pictures().values()));
    }

    static byte[] pdf(Collection<Picture> pictures) throws IOException {
        String body = pictures.stream()
                .map(picture -> Templates.render("picture/figurePaper.jte", picture))
                .collect(Collectors.joining());
        String page =
                "<!DOCTYPE html><html lang=\"en-GB\"><head><title>Pictures</title><meta name=\"subject\" content=\"x\" />"
                        + "<meta name=\"description\" content=\"x\" /><style>" + STYLE + "</style></head><body>" + body
                        + "</body></html>";
        XRLog.setLoggingEnabled(false);
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFont(letters(document, "Regular"), "Plex", 400, FontStyle.NORMAL, true);
            builder.useFont(letters(document, "SemiBold"), "Plex", 600, FontStyle.NORMAL, true);
            BatikSVGDrawer drawer = new OwnLetters();
            builder.usePDDocument(document)
                    .usePdfUaAccessibility(true)
                    .useSVGDrawer(drawer)
                    .withHtmlContent(page, null);
            try (var renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
            }
            document.save(out);
            return out.toByteArray();
        }
    }

    private static PDFontSupplier letters(PDDocument document, String weight) throws IOException {
        try (InputStream in =
                Picture.class.getResourceAsStream("/lyewright/print/fonts/IBMPlexSans-" + weight + ".ttf")) {
            return new PDFontSupplier(PDType0Font.load(document, in, true));
        }
    }

    /** Pictures are written with the paper's letters only where those are files. */
    private static final class OwnLetters extends BatikSVGDrawer {
        @Override
        public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
            super.importFontFaceRules(rules, context);
            try {
                addFontFile(file("Regular"), "Plex", 400, FontStyle.NORMAL);
                addFontFile(file("SemiBold"), "Plex", 700, FontStyle.NORMAL);
            } catch (IOException | FontFormatException e) {
                throw new IllegalStateException(e);
            }
        }

        private static File file(String weight) {
            return new File("src/main/resources/lyewright/print/fonts/IBMPlexSans-" + weight + ".ttf");
        }
    }
}
