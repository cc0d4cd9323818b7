package lyewright.web.stores;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import lyewright.fill.Shape;
import lyewright.formula.FormulaFile;
import lyewright.measure.Problem;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.equipment.KeptMould;
import lyewright.records.recipe.RecipeVersion;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mould's form, judged by the rules of moulds. */
class MouldReadingTest {

    @TempDir
    private static Path home;

    private static Records records;

    @BeforeAll
    static void open() {
        records = Records.open(new Place.Folder(home), Clock.systemUTC()).orThrow();
    }

    @AfterAll
    static void close() {
        records.close();
    }

    private static RecipesByName recipes() {
        return new RecipesByName(records.recipes());
    }

    private static MouldReading.Read read(MouldForm form) {
        return MouldReading.read(form, recipes());
    }

    private static MouldForm form(MouldKind kind, String size, String bar) {
        return new MouldForm(kind, "Mine", size, bar, "", "", "", "", "", "");
    }

    /** 12 × 3 × 2.5 in is 304.8 × 76.2 × 63.5 mm, by hand 1474.8 ml. */
    @Test
    void holds_what_its_measures_give_in_any_unit() {
        assertThat(millilitres(form(MouldKind.LOAF, "300 x 80 x 65 mm", ""))).isEqualTo(1560, within(1e-9));
        assertThat(millilitres(form(MouldKind.LOAF, "30 x 8 x 6.5 cm", ""))).isEqualTo(1560, within(1e-9));
        assertThat(millilitres(form(MouldKind.LOAF, "12\" by 3\" by 2½\"", ""))).isEqualTo(1474.835, within(1e-3));
        assertThat(millilitres(form(MouldKind.TUBE, "300 x 76 mm", ""))).isEqualTo(1360.94, within(1e-2));
        assertThat(millilitres(form(MouldKind.CAVITIES, "12 cavities of 95 ml", "")))
                .isEqualTo(1140);
    }

    /** An ounce is 28.3495 g, and water has 0.9982 g/ml: 3.3 oz is 93.72 ml. */
    @Test
    void a_cavity_may_be_told_by_the_water_in_it() {
        assertThat(millilitres(form(MouldKind.CAVITIES, "12 x 3.3 oz", ""))).isEqualTo(12 * 93.72, within(0.1));
    }

    private static double millilitres(MouldForm form) {
        MouldReading.Read read = read(form);
        assertThat(read.problems()).isEmpty();
        return read.shape().map(Shape::millilitres).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "LOAF | `` | `` | size",
                "LOAF | 300 x 80 mm | `` | size",
                "LOAF | 300 x 80 x 65 | `` | size",
                "LOAF | 300 x 80 x 0 mm | `` | size",
                "LOAF | 300 x -80 x 65 mm | `` | size",
                "LOAF | 300,5 x 80 x 65 mm | `` | size",
                "LOAF | <b>300</b> x 80 x 65 mm | `` | size",
                "LOAF | 300 x 80 x 65 mm | 400 mm | bar",
                "LOAF | 300 x 80 x 65 mm | 0 mm | bar",
                "LOAF | 300 x 80 x 65 mm | 25 | bar",
                "LOAF | 300 x 80 x 65 mm | 25 x 40 mm | bar",
                "SLAB | 360 x 240 x 30 mm | 60 x 400 mm | bar",
                "TUBE | 300 mm | `` | size",
                "CAVITIES | 95 ml | `` | size",
                "CAVITIES | 12.5 x 95 ml | `` | size",
                "CAVITIES | 12 x 3 fl oz | `` | size",
                "CAVITIES | 0 x 95 ml | `` | size",
                "CAVITIES | 12 x 0 oz | `` | size",
                "UNMEASURED | `` | `` | water"
            })
    void what_does_not_read_is_told_beside_its_field(MouldKind kind, String size, String bar, String field) {
        MouldReading.Read read = read(form(kind, size, bar));
        assertThat(read.measures()).isEmpty();
        assertThat(read.problems()).extracting(Problem::path).containsExactly(field);
    }

    @Test
    void a_usual_mass_needs_the_recipe_that_was_in_the_mould() {
        MouldForm without = new MouldForm(MouldKind.UNMEASURED, "Box", "", "", "", "", "", "", "1480 g", "");
        assertThat(read(without).problems()).extracting(Problem::path).containsExactly("usualOf");
        MouldForm unknown = new MouldForm(MouldKind.UNMEASURED, "Box", "", "", "", "", "", "", "1480 g", "Tideline");
        assertThat(read(unknown).problems()).singleElement().satisfies(p -> {
            assertThat(p.path()).isEqualTo("usualOf");
            assertThat(p.what()).contains("no recipe called 'Tideline'");
        });
        RecipeVersion first = recipe("Tideline");
        assertThat(read(unknown).measures().orElseThrow().usual().orElseThrow().version())
                .isEqualTo(first.number());
        MouldForm second =
                new MouldForm(MouldKind.UNMEASURED, "Box", "", "", "", "", "", "", "1480 g", "tideline, version 2");
        assertThat(read(second).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.remedy()).contains("version 1"));
        recipe("Tideline");
        assertThat(read(unknown).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.what()).contains("2 recipes are called"));
    }

    private static RecipeVersion recipe(String name) {
        String file = "recipe: " + name + "\noils: {coconut: 500 g, palm: 500 g}\nalkali: sodium\nsuperfat: 5 %\n"
                + "water: 33 % lye\n";
        return records.recipes()
                .add(FormulaFile.read(file).formula().orElseThrow())
                .orThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "LOAF | 300 x 80 x 65 mm | 25 mm",
                "LOAF | 12 x 3 x 2.5 in | 1 in",
                "LOAF | 30 cm x 80 mm x 65 mm | ``",
                "SLAB | 14 x 9.5 x 1.25 in | 2.5 x 3 in",
                "SLAB | 360 x 240 x 30 mm | 60 mm",
                "TUBE | 300 x 76 mm | 25 mm",
                "CAVITIES | 12 x 95 ml | ``"
            })
    void what_is_kept_is_typed_again_as_it_was(MouldKind kind, String size, String bar) {
        String name = "Mine, " + size;
        MouldForm typed = new MouldForm(
                kind,
                name,
                size,
                bar,
                bar.isEmpty() ? "" : "1.5 mm",
                bar.isEmpty() ? "" : "5 mm",
                "",
                "54.9 oz",
                "",
                "");
        MouldReading.Read read = read(typed);
        assertThat(read.problems()).isEmpty();
        KeptMould kept = records.equipment()
                .addMould(name, read.measures().orElseThrow())
                .orThrow();
        KeptMould again = records.equipment().mould(kept.id()).orElseThrow();
        assertThat(MouldForm.of(again, "")).isEqualTo(typed);
    }
}
