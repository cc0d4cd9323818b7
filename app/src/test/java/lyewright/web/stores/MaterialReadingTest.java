package lyewright.web.stores;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lyewright.formula.OwnMaterial;
import lyewright.material.AdditiveKind;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A material's form, judged by the rules of formula files. */
class MaterialReadingTest {

    private static final Tables TABLES = Tables.bundled();

    @Test
    void every_kind_of_addition_that_a_formula_may_name_can_be_chosen() {
        assertThat(Arrays.stream(AdditiveKind.values()).map(AdditiveKind::word))
                .allMatch(word -> MaterialKind.of(word).isPresent());
        assertThat(List.of(
                        OwnMaterial.OIL,
                        OwnMaterial.WAX,
                        OwnMaterial.FATTY_ACID,
                        OwnMaterial.OILS,
                        OwnMaterial.LYE,
                        ""))
                .allMatch(word -> MaterialKind.of(word).isPresent());
    }

    /** Whatever may be said of a material must be asked somewhere, for every kind that it can be true of. */
    @Test
    void every_figure_of_a_formula_file_is_asked_of_some_kind() {
        for (MaterialField field : MaterialField.values()) {
            assertThat(MaterialKind.values())
                    .as(field.path())
                    .anyMatch(kind ->
                            kind.asked().contains(field) || kind.folded().contains(field));
        }
    }

    @ParameterizedTest
    @EnumSource(MaterialKind.class)
    void what_is_kept_is_typed_again_the_same(MaterialKind kind) {
        MaterialForm form = full(kind);
        MaterialReading.Read read = MaterialReading.read(form, List.of(), TABLES);
        assertThat(read.problems()).as("%s", form).isEmpty();
        OwnMaterial own = read.material().orElseThrow();
        assertThat(own.kind()).isEqualTo(kind.word());
        MaterialReading.Read again = MaterialReading.read(MaterialForm.of(own), List.of(), TABLES);
        assertThat(again.material()).contains(own);
    }

    /** Everything said that the kind is asked for. */
    private static MaterialForm full(MaterialKind kind) {
        Map<MaterialField, String> texts = new EnumMap<>(MaterialField.class);
        kind.asked().forEach(field -> texts.put(field, example(field)));
        kind.folded().forEach(field -> texts.put(field, example(field)));
        boolean ofTables = kind == MaterialKind.OF_TABLES;
        if (ofTables) {
            texts.put(MaterialField.SAPONIFICATION_VALUE, example(MaterialField.SAPONIFICATION_VALUE));
        }
        return new MaterialForm(kind, ofTables ? "coconut" : "mine", "potassium", texts);
    }

    private static String example(MaterialField field) {
        return switch (field) {
            case SAPONIFICATION_VALUE -> "189.5 ± 1.0";
            case ACID_VALUE -> "1.2";
            case IODINE_VALUE -> "84 to 90";
            case DENSITY -> "0.92";
            case STRENGTH -> "50 ± 0.5";
            case OILS -> "Coconut oil 60\nolive-virgin: rest";
            case ACID -> "5 % lactic acid";
            case WATER -> "60";
            case FAT -> "4 %";
            case FAT_SAPONIFICATION_VALUE -> "225";
            case SUGAR -> "5";
            case SALT -> "0.1";
            case SUPPLIER -> "Northquay Oils: \"best\" # of all";
            case INCI -> "Olea Europaea Fruit Oil";
            case CAS -> "8001-25-0";
            case SOURCE -> "certificate L-204 \\ page 2";
        };
    }

    @Test
    void an_oil_needs_its_name_and_its_saponification_value_and_no_more() {
        MaterialReading.Read nothing =
                MaterialReading.read(MaterialForm.empty(MaterialKind.OIL, ""), List.of(), TABLES);
        assertThat(nothing.problems())
                .extracting(Problem::path)
                .containsExactlyInAnyOrder("key", "saponification value");
        MaterialReading.Read enough = MaterialReading.read(
                with(MaterialKind.OIL, "house-olive", MaterialField.SAPONIFICATION_VALUE, "184 to 196"),
                List.of(),
                TABLES);
        assertThat(enough.problems()).isEmpty();
        assertThat(enough.resolved().orElseThrow().oils().get(0).saponificationValue())
                .isEqualTo(190);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0.189", "184-196", "12,5", "1e3", "abc", "189.5 mg NaOH/g", "-5", "500"})
    void a_bad_saponification_value_is_told_beside_its_field(String typed) {
        MaterialReading.Read read = MaterialReading.read(
                with(MaterialKind.OIL, "house-olive", MaterialField.SAPONIFICATION_VALUE, typed), List.of(), TABLES);
        assertThat(read.material()).isEmpty();
        assertThat(read.problems()).isNotEmpty().allMatch(p -> p.path().equals("saponification value"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a\nb",
                "\u0000",
                "x: y\noils: {}",
                "<script>alert(1)</script>",
                "\ud800",
                "\u202eabc",
                "a\"b",
                "a\\",
                "- x",
                "{}",
                "&a",
                "!!int 3",
                "' #",
                "\u2028"
            })
    void hostile_names_are_names_or_are_refused_as_names(String key) {
        MaterialReading.Read read = MaterialReading.read(
                with(MaterialKind.OIL, key, MaterialField.SAPONIFICATION_VALUE, "190"), List.of(), TABLES);
        if (read.material().isPresent()) {
            assertThat(read.material().get().key()).isEqualTo(key.strip());
        } else {
            assertThat(read.problems()).isNotEmpty().allMatch(p -> p.path().equals("key"));
        }
    }

    @ParameterizedTest
    @EnumSource(MaterialField.class)
    void what_is_no_text_is_told_at_its_field(MaterialField field) {
        MaterialKind kind = Arrays.stream(MaterialKind.values())
                .filter(k -> k.asked().contains(field) || k.folded().contains(field))
                .findFirst()
                .orElseThrow();
        for (String text : List.of("5\u0000", "\u0007", "a\ud800", "\ufffe")) {
            MaterialReading.Read read = MaterialReading.read(with(kind, "mine", field, text), List.of(), TABLES);
            assertThat(read.material()).isEmpty();
            assertThat(read.problems()).extracting(Problem::path).contains(field.path());
        }
    }

    @Test
    void a_key_with_a_dot_finds_its_own_fields() {
        MaterialReading.Read read = MaterialReading.read(
                with(MaterialKind.OIL, "no. 7 olive.green", MaterialField.SAPONIFICATION_VALUE, "abc"),
                List.of(),
                TABLES);
        assertThat(read.problems()).extracting(Problem::path).containsExactly("saponification value");
    }

    @Test
    void premixed_oils_are_told_what_is_wrong_with_their_lines() {
        assertThat(premix("coconut 60 %\nOlive oil (virgin) 40")).isEmpty();
        assertThat(premix("coconut 60 % of 256.5 ± 0.8 mg KOH/g\nOlive oil (virgin) 40"))
                .isEmpty();
        assertThat(premix("coconut 60 % of 2565 mg KOH/g\nOlive oil (virgin) 40"))
                .singleElement()
                .satisfies(p -> assertThat(p.what()).contains("is not possible"));
        assertThat(premix("coconut 60 %\ncoconut oil 40 %"))
                .singleElement()
                .satisfies(p -> assertThat(p.what()).contains("listed twice"));
        assertThat(premix("coconut 60 %\npalm 30 %"))
                .singleElement()
                .satisfies(p -> assertThat(p.what()).contains("90 %"));
        assertThat(premix("coconut lots"))
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.path()).isEqualTo("oils"));
        assertThat(premix("green-clay 100 %"))
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.path()).isEqualTo("oils"));
        assertThat(premix("coconut 60 %\nolive 40 %"))
                .singleElement()
                .satisfies(p -> assertThat(p.what()).contains("olive oil (virgin)"));
        assertThat(premix("rest\nrest"))
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.path()).isEqualTo("oils"));
    }

    private static List<Problem> premix(String lines) {
        return MaterialReading.read(with(MaterialKind.OILS_MIXED, "mix", MaterialField.OILS, lines), List.of(), TABLES)
                .problems();
    }

    @Test
    void premixed_oils_may_be_made_of_oils_of_ones_own() {
        OwnMaterial house = MaterialReading.read(
                        with(MaterialKind.OIL, "house-olive", MaterialField.SAPONIFICATION_VALUE, "200"),
                        List.of(),
                        TABLES)
                .material()
                .orElseThrow();
        MaterialForm mix = with(MaterialKind.OILS_MIXED, "mix", MaterialField.OILS, "house-olive 100 %");
        MaterialReading.Read read = MaterialReading.read(mix, List.of(house), TABLES);
        assertThat(read.problems()).isEmpty();
        assertThat(read.resolved().orElseThrow().oils().get(0).saponificationValue())
                .isEqualTo(200);
        assertThat(MaterialReading.read(mix, List.of(), TABLES).problems()).isNotEmpty();
    }

    @Test
    void an_unknown_acid_is_told_at_the_acid() {
        assertThat(MaterialReading.read(
                                with(MaterialKind.ACID_KIND, "sour", MaterialField.ACID, "80 % lastic acid"),
                                List.of(),
                                TABLES)
                        .problems())
                .extracting(Problem::path)
                .containsExactly("acid");
        assertThat(MaterialReading.read(MaterialForm.empty(MaterialKind.ACID_KIND, "sour"), List.of(), TABLES)
                        .problems())
                .extracting(Problem::path)
                .containsExactly("acid");
    }

    @Test
    void an_oil_under_the_key_of_a_wax_is_told_at_its_name() {
        assertThat(MaterialReading.read(
                                with(MaterialKind.OIL, "beeswax", MaterialField.SAPONIFICATION_VALUE, "95"),
                                List.of(),
                                TABLES)
                        .problems())
                .extracting(Problem::path)
                .containsExactly("key");
    }

    @Test
    void a_certificate_is_of_something_the_tables_know() {
        MaterialReading.Read read = MaterialReading.read(
                with(MaterialKind.OF_TABLES, "coconutt", MaterialField.SAPONIFICATION_VALUE, "257"), List.of(), TABLES);
        assertThat(read.problems()).isNotEmpty().allMatch(p -> p.path().equals("key"));
        assertThat(read.problems().get(0).remedy()).contains("coconut");
    }

    private static MaterialForm with(MaterialKind kind, String key, MaterialField field, String text) {
        return new MaterialForm(kind, key, "sodium", Map.of(field, text));
    }
}
