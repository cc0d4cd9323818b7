package lyewright.print;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.batik.parser.AWTPathProducer;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Puts the shapes and texts of one picture on the page. */
final class PenStrokes {

    private static final int WHITE = 0xff;

    private final PdfBoxOutputDevice device;
    private final RenderingContext context;
    private final AffineTransform place;
    private final double scale;

    PenStrokes(PdfBoxOutputDevice device, RenderingContext context, double x, double y, double scale) {
        this.device = device;
        this.context = context;
        this.scale = scale;
        this.place = new AffineTransform(scale, 0, 0, scale, x, y);
    }

    void draw(Element svg) {
        NodeList styles = svg.getElementsByTagName("style");
        InkRules rules =
                new InkRules(styles.getLength() == 0 ? "" : styles.item(0).getTextContent());
        Stroke before = device.getStroke();
        for (Node node = svg.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element mark) {
                draw(mark, rules.of(mark.getTagName(), mark.getAttribute("class")));
            }
        }
        if (before != null) {
            device.setStroke(before);
        }
    }

    private void draw(Element mark, Map<String, String> look) {
        switch (mark.getTagName()) {
            case "rect" -> shape(mark, look, rectangle(mark));
            case "path" -> shape(mark, look, path(mark.getAttribute("d")));
            case "text" -> text(mark, look);
            default -> {
                // title, description and style are not drawn
            }
        }
    }

    private static Shape rectangle(Element mark) {
        return new Rectangle2D.Double(
                number(mark, "x"), number(mark, "y"), number(mark, "width"), number(mark, "height"));
    }

    private static Shape path(String d) {
        try {
            return AWTPathProducer.createShape(new StringReader(d), PathIterator.WIND_NON_ZERO);
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory cannot fail to be read", e);
        }
    }

    private void shape(Element mark, Map<String, String> look, Shape shape) {
        Shape placed = place.createTransformedShape(shape);
        String fill = look.getOrDefault("fill", "#000");
        if (!fill.equals("none")) {
            device.setColor(toned(fill, mark.getAttribute("fill-opacity")));
            device.fill(placed);
        }
        if (look.containsKey("stroke")) {
            device.setColor(toned(look.get("stroke"), ""));
            device.setStroke(stroke(look));
            device.draw(placed);
        }
    }

    private BasicStroke stroke(Map<String, String> look) {
        float width = scaled(look.getOrDefault("stroke-width", "1"));
        int cap = look.getOrDefault("stroke-linecap", "butt").equals("round")
                ? BasicStroke.CAP_ROUND
                : BasicStroke.CAP_BUTT;
        int join = look.getOrDefault("stroke-linejoin", "miter").equals("round")
                ? BasicStroke.JOIN_ROUND
                : BasicStroke.JOIN_MITER;
        String dashes = look.getOrDefault("stroke-dasharray", "");
        if (dashes.isEmpty()) {
            return new BasicStroke(width, cap, join);
        }
        String[] each = dashes.split(" ", -1);
        float[] dash = new float[each.length];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = scaled(each[i]);
        }
        return new BasicStroke(width, cap, join, 10, dash, 0);
    }

    private float scaled(String number) {
        return (float) (Double.parseDouble(number) * scale);
    }

    /** A colour, {@code #rgb} or {@code #rrggbb}, on white: paper has no half-transparent ink. */
    private static FSRGBColor toned(String colour, String opacity) {
        String hex = colour.substring(1);
        String six = hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex;
        double share = opacity.isEmpty() ? 1 : Double.parseDouble(opacity);
        int rgb = Integer.parseInt(six, 16);
        return new FSRGBColor(on(rgb >> 16, share), on(rgb >> 8, share), on(rgb, share));
    }

    private static int on(int part, double share) {
        return (int) Math.round(WHITE - share * (WHITE - (part & WHITE)));
    }

    private void text(Element mark, Map<String, String> look) {
        String words = mark.getTextContent();
        FontSpecification letters = new FontSpecification();
        letters.families = new String[] {Typeface.FAMILY};
        letters.size = scaled(mark.getAttribute("font-size"));
        letters.fontWeight = "bold".equals(look.get("font-weight")) ? IdentValue.FONT_WEIGHT_600 : IdentValue.NORMAL;
        letters.fontStyle = IdentValue.NORMAL;
        letters.variant = IdentValue.NORMAL;
        FSFont font = context.getFont(letters);
        double width = context.getTextRenderer().getWidth(context.getFontContext(), font, words);
        double left = switch (mark.getAttribute("text-anchor")) {
            case "end" -> width;
            case "middle" -> width / 2;
            default -> 0;
        };
        device.setColor(toned(look.getOrDefault("fill", "#000"), ""));
        device.setFont(font);
        float x = (float) (place.getTranslateX() + scale * number(mark, "x") - left);
        float y = (float) (place.getTranslateY() + scale * number(mark, "y"));
        device.drawString(words, x, y, null);
    }

    private static double number(Element mark, String attribute) {
        return Double.parseDouble(mark.getAttribute(attribute));
    }
}
