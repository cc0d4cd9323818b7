package lyewright.picture;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import lyewright.template.Templates;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing as the template writes it, read back as XML. */
record Drawn(Drawing drawing, Document document) {

    private static final Pattern COMMAND = Pattern.compile("([MLAZh])([-0-9. ]*)");

    static Drawn of(Drawing drawing) {
        return new Drawn(drawing, xml(Templates.render("picture/svg.jte", drawing)));
    }

    static Document xml(String text) {
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (Exception e) {
            throw new IllegalStateException(text, e);
        }
    }

    List<Element> all(String tag) {
        NodeList nodes = document.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    List<Element> with(String tag, String style) {
        return all(tag).stream()
                .filter(e -> List.of(e.getAttribute("class").split(" ")).containsAll(List.of(style.split(" "))))
                .toList();
    }

    List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    /** Of a text that is there just once. */
    double xOf(String text) {
        List<Element> found = all("text").stream()
                .filter(e -> e.getTextContent().equals(text))
                .toList();
        if (found.size() != 1) {
            throw new IllegalStateException(text + " is there " + found.size() + " times in " + texts());
        }
        return number(found.get(0), "x");
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The points that a path goes through, x and y in turn. */
    static List<Double> points(String d) {
        List<Double> points = new ArrayList<>();
        Matcher commands = COMMAND.matcher(d);
        int read = 0;
        while (commands.find()) {
            if (commands.start() != read) {
                throw new IllegalStateException("no path: " + d);
            }
            read = commands.end();
            String[] figures = commands.group(2).isBlank()
                    ? new String[0]
                    : commands.group(2).trim().split(" ");
            switch (commands.group(1)) {
                case "M", "L" -> {
                    points.add(Double.parseDouble(figures[0]));
                    points.add(Double.parseDouble(figures[1]));
                }
                case "A" -> {
                    points.add(Double.parseDouble(figures[5]));
                    points.add(Double.parseDouble(figures[6]));
                }
                default -> {}
            }
        }
        if (read != d.length()) {
            throw new IllegalStateException("no path: " + d);
        }
        return points;
    }
}
