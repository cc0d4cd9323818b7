package lyewright.print;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/**
 * Draws the pictures of papers with the page's own letters. Pictures are made of rectangles, paths and short texts, no more,
 * and so need none of the machine's fonts, which may not be there.
 */
final class Pen implements SVGDrawer {

    @Override
    public SVGImage buildSVGImage(Element svg, Box box, CssContext css, double width, double height, double dots) {
        String[] view = svg.getAttribute("viewBox").split(" ", -1);
        double wide = Double.parseDouble(view[2]);
        double high = Double.parseDouble(view[3]);
        double across = width >= 0 ? width : wide * dots;
        double down = height >= 0 ? height : across * high / wide;
        return new Drawn(svg, Math.min(across / wide, down / high), (int) across, (int) down);
    }

    /**
     * A picture in its place.
     *
     * @param svg its element
     * @param scale dots of the device for one unit
     * @param getIntrinsicWidth in dots
     * @param getIntrinsicHeight in dots
     */
    private record Drawn(Element svg, double scale, int getIntrinsicWidth, int getIntrinsicHeight) implements SVGImage {
        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            // shapes are filled and stroked in black again by whatever comes after
            new PenStrokes((PdfBoxOutputDevice) device, context, x, y, scale).draw(svg);
            device.setColor(FSRGBColor.BLACK);
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        // the page's own letters
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        throw new UnsupportedOperationException("the page's own letters are used");
    }

    @Override
    public void close() {
        // holds nothing
    }
}
