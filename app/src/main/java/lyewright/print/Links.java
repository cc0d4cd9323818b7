package lyewright.print;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;

/** Says of every link where it leads, for whoever listens to a paper (ISO 14289-1:2014, 7.18.5). */
final class Links {

    private Links() {}

    static void tell(PDDocument document, String where) throws IOException {
        for (PDPage page : document.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink) {
                    annotation.setContents(where);
                }
            }
        }
    }
}
