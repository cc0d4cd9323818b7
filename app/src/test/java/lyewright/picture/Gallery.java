package lyewright.picture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import lyewright.formula.Formula;
import lyewright.template.Templates;

/** Every picture on one page, to be looked at: run it and open target/pictures/index.html. */
final class Gallery {

    private static final String STYLE = """
            body { display: block; margin: 16px; }
            h2 { font-size: 1rem; margin: 2.5rem 0 .75rem; break-after: avoid; }
            .marks { display: grid; grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr)); gap: 1rem; }
            .marks p { margin: .25em 0; font-size: .875rem; }
            @media (min-width: 800px) { body { columns: 2; } .marks { column-span: all; } }
            @media (min-width: 1400px) { body { columns: 3; } }
            """;

    private Gallery() {}

    public static void main(String[] folder) throws IOException {
        write(Path.of(folder.length > 0 ? folder[0] : "target/pictures"));
    }

    private static void write(Path folder) throws IOException {
        for (String file : new String[] {
            "lyewright.css", "pictures.css", "fonts/plex-latin-400.woff2", "fonts/plex-latin-600.woff2"
        }) {
            Files.createDirectories(folder.resolve(file).getParent());
            try (InputStream in = Picture.class.getResourceAsStream("/lyewright/web/static/" + file)) {
                Files.write(folder.resolve(file), in.readAllBytes());
            }
        }
        Files.writeString(folder.resolve("gallery.css"), STYLE);
        Files.writeString(folder.resolve("index.html"), page());
    }

    static String page() {
        StringBuilder page = new StringBuilder("""
                <!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
                <title>Pictures</title><link rel="stylesheet" href="lyewright.css"><link rel="stylesheet" href="pictures.css">
                <link rel="stylesheet" href="gallery.css"></head><body><section class="marks">
                """);
        for (Path example : Sheets.examples()) {
            Formula formula = Sheets.formula(Sheets.text(example));
            page.append("<div>").append(Templates.render("picture/svg.jte", RecipeMark.of(formula)));
            page.append("<p>").append(escaped(formula.recipe())).append("</p></div>");
        }
        page.append("</section>");
        for (Map.Entry<String, Picture> picture : Cases.pictures().entrySet()) {
            page.append("<h2>").append(escaped(picture.getKey())).append("</h2>");
            page.append(Templates.render("picture/figure.jte", picture.getValue()));
        }
        return page.append("</body></html>").toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;");
    }
}
