package lyewright.picture;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.LengthUnit;

/** Pictures to try: the demo workshop's, and what makes a picture break. The workshop and all its figures are invented. */
final class Cases {

    static final String NO_ACIDS = """
            recipe: All Unknown
            oils: {mystery: 100 %}
            alkali: sodium
            superfat: 5 %
            water: 33 % lye
            materials:
              mystery: {kind: oil, saponification value: 190 mg KOH/g, density: 0.91 g/ml, source: a jar (invented)}
            """;

    static final String CAUSTIC = """
            recipe: Far Too Much Soda
            oils: {coconut: 500 g, olive-virgin: 500 g}
            alkali: {sodium: 205 g}
            water: 400 g
            """;

    static final String HOPELESS = """
            recipe: Hardly Any Oil
            oils: {olive-virgin: 100 g}
            alkali: {sodium: 90 g}
            water: 200 g
            """;

    static final String SCRIPT = """
            recipe: "<script>alert(1)</script> & \\"quoted\\" 'name' of a soap that goes on and on and on without an end"
            oils: {coconut: 60 %, olive-virgin: rest}
            alkali: sodium
            superfat: 12 %
            water: 34 % lye
            process: {pour: fade <b>plain&white</b> of the long name into <i>kelp</i> of a longer name still in 100}
            portions: {<b>plain&white</b> of the long name: 70 %, <i>kelp</i> of a longer name still: rest}
            """;

    private Cases() {}

    static Map<String, Picture> pictures() {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        sheets().forEach((name, sheet) -> {
            pictures.put(name + ": where the mass goes", WhereMassGoesPicture.of(sheet));
            pictures.put(name + ": superfat", SuperfatPicture.of(sheet));
            pictures.put(name + ": superfat as drawn", SuperfatDrawnPicture.of(sheet.band(), false));
            pictures.put(name + ": fatty acids", FattyAcidsPicture.of(sheet));
            PortionsPicture.of(sheet).ifPresent(p -> pictures.put(name + ": portions", p));
            FadePicture.of(sheet).ifPresent(p -> pictures.put(name + ": fade", p));
            MouldPicture.of(sheet, LengthUnit.MILLIMETRE).ifPresent(p -> pictures.put(name + ": mould", p));
        });
        compared(pictures);
        moulds(pictures);
        pictures.put("unmeasured, metric", UnmeasuredView.of("1453 ml"));
        pictures.put("unmeasured, ounces", UnmeasuredView.of("1051.15 oz of water"));
        return pictures;
    }

    static MakingSheet sheet(String name) {
        return Objects.requireNonNull(SHEETS.get(name), name);
    }

    /** By name, in order. */
    static Map<String, MakingSheet> sheets() {
        return SHEETS;
    }

    private static Map<String, MakingSheet> made() {
        Map<String, MakingSheet> sheets = new LinkedHashMap<>();
        for (Path example : Sheets.examples()) {
            MakingSheet sheet = Sheets.inLoaf(Sheets.text(example));
            sheets.put(sheet.formula().formula().recipe(), sheet);
        }
        sheets.put("acids of nothing known", Sheets.inLoaf(NO_ACIDS));
        sheets.put("superfat far under zero", Sheets.of(CAUSTIC, Fill.AS_WRITTEN));
        sheets.put("superfat off any scale", Sheets.of(HOPELESS, Fill.AS_WRITTEN));
        sheets.put("superfat of 95", Sheets.of(CAUSTIC.replace("205", "8.6"), Fill.AS_WRITTEN));
        sheets.put("names with tags", Sheets.inLoaf(SCRIPT));
        sheets.put("forty oils", Sheets.inLoaf(manyOilsOf(40)));
        sheets.put("forty portions", Sheets.inLoaf(manyPortions()));
        sheets.put("beeswax and citric acid", Sheets.inLoaf(EVERYTHING));
        sheets.put("one gram", Sheets.of(PLAIN, Fill.mouldMass(1)));
        sheets.put("half a tonne", Sheets.of(PLAIN, Fill.mouldMass(500_000)));
        sheets.put("half a loaf", Sheets.of(PLAIN, inLoaf(900)));
        sheets.put("a loaf and a half", Sheets.of(PLAIN, inLoaf(2400)));
        sheets.put("a drop in a loaf", Sheets.of(PLAIN, inLoaf(2)));
        return sheets;
    }

    static final String PLAIN = """
            recipe: Plain
            oils: {coconut: 25 %, olive-virgin: 65 %, castor: 10 %}
            alkali: sodium
            superfat: 6 %
            water: 32 % lye
            """;

    static final String EVERYTHING = """
            recipe: Everything at Once
            use: sale
            oils: {coconut: 30 %, olive-virgin: 45 %, beeswax: 10 %, stearic-acid-50: 10 %, castor: rest}
            alkali: {sodium: 70 %, potassium: 30 %, by: moles}
            superfat: 7 %
            water: 28 % lye
            additions:
              - {of: citric-acid-anhydrous, amount: 10 g per kg oils, stage: lye}
              - {of: sea-salt, amount: 5 % of oils, stage: lye}
              - {of: goat-milk, amount: 10 % of oils, stage: lye, replaces: water}
              - {of: green-clay, amount: 12 g per kg oils, stage: trace, disperse: {in: glycerin, ratio: 2 to 1}}
              - {of: rosemary-oil, amount: 2 % of oils, stage: trace}
            """;

    /** Made once: a band is drawn by many draws. */
    private static final Map<String, MakingSheet> SHEETS = made();

    private static Fill inLoaf(double grams) {
        return new Fill(new Fill.MouldMass(grams), mould("300x80x65mm"), Optional.of(cut("25mm", 1, 5, 3)), 0);
    }

    private static Mould mould(String box) {
        return new Mould(Optional.of(Shape.parseLoaf(box).orThrow()), Optional.empty(), Optional.empty());
    }

    /** So many oils in equal parts, none of them in the tables. */
    static String manyOilsOf(int count) {
        String own = IntStream.range(0, count)
                .mapToObj(i -> "  an-oil-with-a-name-longer-than-any-" + i
                        + ": {kind: oil, saponification value: 190 mg KOH/g, source: a jar (invented)}")
                .collect(Collectors.joining("\n"));
        String oils = IntStream.range(0, count)
                .mapToObj(i -> "  an-oil-with-a-name-longer-than-any-" + i + ": 10 g")
                .collect(Collectors.joining("\n"));
        return "recipe: Many\noils:\n" + oils + "\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\nmaterials:\n" + own
                + "\n";
    }

    private static String manyPortions() {
        return "recipe: Forty Jugs\noils: {coconut: 100 %}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\nportions:\n"
                + IntStream.range(0, 40)
                        .mapToObj(i -> "  jug number " + i + ": 2.5 %")
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    private static void compared(Map<String, Picture> pictures) {
        MakingSheet plain = Sheets.inLoaf(PLAIN);
        MakingSheet tideline = Sheets.inLoaf(Sheets.text(Path.of("..", "examples", "tideline.yaml")));
        MakingSheet unknown = Sheets.inLoaf(NO_ACIDS);
        MakingSheet hopeless = Sheets.of(HOPELESS, Fill.AS_WRITTEN);
        pictures.put(
                "two superfats", ComparePicture.superfats(plain, "Plain, version 1", tideline, "Tideline, version 3"));
        pictures.put(
                "two profiles", ComparePicture.fattyAcids(plain, "Plain, version 1", tideline, "Tideline, version 3"));
        pictures.put("a superfat and one off the scale", ComparePicture.superfats(plain, "<b>", hopeless, "&lt;"));
        String longName = "a name that goes on and on and on and on and on and on until there is no room";
        pictures.put("a profile and one not known", ComparePicture.fattyAcids(plain, longName, unknown, longName));
        pictures.put("two not known", ComparePicture.fattyAcids(unknown, "a", unknown, "b"));
    }

    private static void moulds(Map<String, Picture> pictures) {
        pictures.put("loaf of one bar", of("90x80x65mm", cut("85mm", 1, 2, 3)));
        pictures.put("loaf of five hundred bars", of("1600x80x65mm", cut("3mm", 0.2, 0, 0)));
        pictures.put("loaf cut to nothing", of("300x80x65mm", cut("400mm", 1, 5, 3)));
        pictures.put("loaf trimmed to nothing", of("300x80x65mm", cut("25mm", 1, 5, 65)));
        pictures.put("tall loaf", of("20x30x600mm", cut("5mm", 0, 0, 0)));
        pictures.put("flat loaf", of("900x40x1mm", cut("25mm", 1, 5, 0)));
        pictures.put("deep loaf", of("20x900x10mm", cut("5mm", 1, 0, 0)));
        pictures.put("tiny loaf", of("0.5x0.5x0.5mm", cut("0.1mm", 0, 0, 0)));
        pictures.put(
                "loaf in inches",
                MouldPicture.of(loaf("12x3.25x2.75in"), Optional.of(cut("1in", 1, 0, 2)), LengthUnit.INCH));
        pictures.put("slab", slab("400x300x40mm", cut("60x80mm", 1, 0, 2)));
        pictures.put("slab of many", slab("1000x900x40mm", cut("20x21mm", 1, 3, 2)));
        pictures.put("slab not across", slab("400x300x40mm", cut("60mm", 1, 7, 2)));
        pictures.put("tube", tube("300x76mm", cut("25mm", 1, 5, 0)));
        pictures.put("tube like a coin", tube("3x300mm", cut("1mm", 0, 0, 0)));
        pictures.put("tube like a straw", tube("900x3mm", cut("25mm", 1, 5, 0)));
        for (String cavities : new String[] {"1x95ml", "12x95ml", "7x1ml", "120x30ml", "10000x1ml"}) {
            pictures.put(
                    "cavities " + cavities,
                    MouldPicture.of(Shape.parseCavities(cavities).orThrow(), Optional.empty(), LengthUnit.MILLIMETRE));
        }
    }

    static CutPlan cut(String text, double blade, double ends, double trim) {
        return CutPlan.parse(text).orThrow().losing(blade, ends, trim);
    }

    static Shape loaf(String text) {
        return Shape.parseLoaf(text).orThrow();
    }

    static Picture of(String box, CutPlan cut) {
        return MouldPicture.of(loaf(box), Optional.of(cut), LengthUnit.MILLIMETRE);
    }

    static Picture slab(String text, CutPlan cut) {
        Shape.Loaf box = (Shape.Loaf) loaf(text);
        return MouldPicture.of(
                new Shape.Slab(box.length(), box.width(), box.height()), Optional.of(cut), LengthUnit.MILLIMETRE);
    }

    static Picture tube(String text, CutPlan cut) {
        return MouldPicture.of(Shape.parseTube(text).orThrow(), Optional.of(cut), LengthUnit.MILLIMETRE);
    }
}
