package lyewright.picture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import lyewright.makingsheet.MakingSheet;
import lyewright.template.Templates;

/** Every picture of the demo workshop's formulas on one page, to be looked at: target/pictures/index.html. */
final class Gallery {

    private Gallery() {}

    public static void main(String[] folder) throws IOException {
        write(Path.of(folder.length > 0 ? folder[0] : "target/pictures"));
    }

    static Path write(Path folder) throws IOException {
        StringBuilder page = new StringBuilder("""
                <!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
                <title>Pictures</title><link rel="stylesheet" href="pictures.css"><link rel="stylesheet" href="gallery.css">
                </head><body>
                """);
        page.append("<section class=\"marks\">");
        for (Path example : Sheets.examples()) {
            page.append("<div>").append(svg(RecipeMark.of(Sheets.formula(Sheets.text(example)))));
            page.append("<p>")
                    .append(Sheets.formula(Sheets.text(example)).recipe().replace("&", "&amp;"))
                    .append("</p></div>");
        }
        page.append("</section>");
        for (Map.Entry<String, Picture> picture : pictures().entrySet()) {
            page.append("<h2>").append(picture.getKey().replace("&", "&amp;")).append("</h2>");
            page.append(Templates.render("picture/figure.jte", picture.getValue()));
        }
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("gallery.css"), """
                @font-face { font-family: "IBM Plex Sans"; src: url("plex-latin-400.woff2"); font-weight: 400; }
                @font-face { font-family: "IBM Plex Sans"; src: url("plex-latin-600.woff2"); font-weight: 600; }
                body { margin: 16px; background: var(--paper); color: var(--ink);
                  font: 16px/1.5 "IBM Plex Sans", sans-serif; }
                h2 { font-size: 1rem; margin: 2.5rem 0 0.75rem; }
                .marks { display: grid; grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr)); gap: 1rem; }
                .marks p { margin: 0.25em 0; font-size: 0.875rem; }
                @media (min-width: 800px) { body { columns: 2; } .marks { column-span: all; } figure { break-inside: avoid; } h2 { break-after: avoid; } }
                @media (min-width: 1400px) { body { columns: 3; } }
                """);
        for (String file : new String[] {"pictures.css", "fonts/plex-latin-400.woff2", "fonts/plex-latin-600.woff2"}) {
            try (var in = Picture.class.getResourceAsStream("/lyewright/web/static/" + file)) {
                Files.write(folder.resolve(Path.of(file).getFileName()), in.readAllBytes());
            }
        }
        Path index = folder.resolve("index.html");
        Files.write(index, page.append("</body></html>").toString().getBytes(StandardCharsets.UTF_8));
        return index;
    }

    private static String svg(Drawing drawing) {
        return Templates.render("picture/svg.jte", drawing);
    }

    private static Map<String, Picture> pictures() {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        for (Path example : Sheets.examples()) {
            MakingSheet sheet = Sheets.inLoaf(Sheets.text(example));
            String name = sheet.formula().formula().recipe();
            pictures.put(name + ": superfat", SuperfatPicture.of(sheet));
            pictures.put(name + ": fatty acids", FattyAcidsPicture.of(sheet));
        }
        return pictures;
    }
}
