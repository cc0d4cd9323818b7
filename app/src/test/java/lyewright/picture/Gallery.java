package lyewright.picture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.LengthUnit;
import lyewright.measure.Outcome;
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
                <title>Pictures</title><link rel="stylesheet" href="lyewright.css"><link rel="stylesheet" href="pictures.css"><link rel="stylesheet" href="gallery.css">
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
                body { display: block; margin: 16px; }
                h2 { font-size: 1rem; margin: 2.5rem 0 0.75rem; }
                .marks { display: grid; grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr)); gap: 1rem; }
                .marks p { margin: 0.25em 0; font-size: 0.875rem; }
                @media (min-width: 800px) { body { columns: 2; } .marks { column-span: all; } figure { break-inside: avoid; } h2 { break-after: avoid; } }
                @media (min-width: 1400px) { body { columns: 3; } }
                """);
        for (String file : new String[] {
            "lyewright.css", "pictures.css", "fonts/plex-latin-400.woff2", "fonts/plex-latin-600.woff2"
        }) {
            try (var in = Picture.class.getResourceAsStream("/lyewright/web/static/" + file)) {
                Files.createDirectories(folder.resolve(file).getParent());
                Files.write(folder.resolve(file), in.readAllBytes());
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
            pictures.put(name + ": where the mass goes", WhereMassGoesPicture.of(sheet));
            pictures.put(name + ": superfat", SuperfatPicture.of(sheet));
            pictures.put(name + ": fatty acids", FattyAcidsPicture.of(sheet));
            PortionsPicture.of(sheet).ifPresent(p -> pictures.put(name + ": portions", p));
            FadePicture.of(sheet).ifPresent(p -> pictures.put(name + ": fade", p));
        }
        MakingSheet castile = Sheets.inLoaf(Sheets.text(Path.of("../examples/plain-castile.yaml")));
        MakingSheet tideline = Sheets.inLoaf(Sheets.text(Path.of("../examples/tideline.yaml")));
        pictures.put(
                "two superfats",
                ComparePicture.superfats(castile, "Plain Castile, version 1", tideline, "Tideline, version 3"));
        pictures.put(
                "two profiles",
                ComparePicture.fattyAcids(castile, "Plain Castile, version 1", tideline, "Tideline, version 3"));
        pictures.putAll(moulds());
        return pictures;
    }

    private static Map<String, Picture> moulds() {
        Map<String, Picture> moulds = new LinkedHashMap<>();
        moulds.put("loaf", mould(Shape.parseLoaf("300x80x65mm"), "25mm", 1, 5, 3));
        moulds.put("slab", mould(slab("400x300x40mm"), "60x80mm", 1, 0, 2));
        moulds.put("tube", mould(Shape.parseTube("300x76mm"), "25mm", 1, 5, 0));
        moulds.put(
                "cavities",
                MouldPicture.of(Shape.parseCavities("12x95ml").orThrow(), Optional.empty(), LengthUnit.MILLIMETRE));
        moulds.put(
                "tall loaf in inches",
                MouldPicture.of(
                        Shape.parseLoaf("4x3.5x9in").orThrow(),
                        Optional.of(CutPlan.parse("1in").orThrow()),
                        LengthUnit.INCH));
        String castile = Sheets.text(Path.of("../examples/plain-castile.yaml"));
        Fill half = new Fill(
                new Fill.MouldMass(900),
                new Mould(Optional.of(Shape.parseLoaf("300x80x65mm").orThrow()), Optional.empty(), Optional.empty()),
                Optional.of(CutPlan.parse("25mm").orThrow().losing(1, 5, 3)),
                0);
        moulds.put(
                "loaf, half full",
                MouldPicture.of(Sheets.of(castile, half), LengthUnit.MILLIMETRE).orElseThrow());
        Fill over = new Fill(new Fill.MouldMass(2000), half.mould(), half.cut(), 0);
        moulds.put(
                "loaf, over the brim",
                MouldPicture.of(Sheets.of(castile, over), LengthUnit.MILLIMETRE).orElseThrow());
        return moulds;
    }

    private static Shape slab(String text) {
        Shape.Loaf loaf = (Shape.Loaf) Shape.parseLoaf(text).orThrow();
        return new Shape.Slab(loaf.length(), loaf.width(), loaf.height());
    }

    private static Picture mould(Outcome<Shape> shape, String cut, double blade, double ends, double trim) {
        return mould(shape.orThrow(), cut, blade, ends, trim);
    }

    private static Picture mould(Shape shape, String cut, double blade, double ends, double trim) {
        return MouldPicture.of(
                shape, Optional.of(CutPlan.parse(cut).orThrow().losing(blade, ends, trim)), LengthUnit.MILLIMETRE);
    }
}
