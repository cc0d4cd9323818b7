package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Process;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CautionsTest {

    private static final List<CautionCases.Case> CASES = CautionCases.all();

    static List<CautionCases.Case> cases() {
        return CASES;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_caution_is_there_from_its_threshold_on_and_not_before(CautionCases.Case c) {
        MakingSheet sheet = c.sheet().get();

        List<Level> levels = sheet.cautions().stream()
                .filter(caution -> caution.id().equals(c.id()))
                .map(Caution::level)
                .toList();
        assertThat(levels).isEqualTo(c.level().map(List::of).orElse(List.of()));
        assertThat(sheet.cautions()).allSatisfy(CautionsTest::assertWellFormed);
        assertThat(sheet.cautions()).extracting(Caution::level).isSortedAccordingTo(Comparator.reverseOrder());
    }

    private static void assertWellFormed(Caution caution) {
        assertThat(caution.text())
                .as(caution.id())
                .doesNotContain("{}")
                .endsWith(".")
                .doesNotContain("..", "  ", "NaN");
        assertThat(caution.text().charAt(0)).as(caution.id()).isNotEqualTo(' ');
        assertThat(caution.remedy()).as(caution.id()).isNotBlank().endsWith(".");
        assertThat(caution.source()).as(caution.id()).isNotBlank();
        assertThat(caution.sentence().split("\\{}", -1))
                .as(caution.id())
                .hasSize(caution.figures().size() + 1);
    }

    @Test
    void every_caution_of_the_rules_has_a_case_on_either_side() throws IOException {
        Set<String> known = idsInTheSources();

        assertThat(known).hasSizeGreaterThan(30);
        assertThat(ids(c -> c.level().isPresent())).isEqualTo(known);
        assertThat(ids(c -> c.level().isEmpty())).isEqualTo(known);
    }

    private static Set<String> ids(Predicate<CautionCases.Case> which) {
        return CASES.stream().filter(which).map(CautionCases.Case::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The ids as the rules are written, so that a new rule without a case is found. */
    private static Set<String> idsInTheSources() throws IOException {
        Path rules = Path.of(System.getProperty("basedir", ""), "src", "main", "java", "lyewright", "makingsheet");
        Pattern id = Pattern.compile("new Caution\\(\\s*\"([a-z-]+)\"");
        Set<String> ids = new TreeSet<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(rules, "*Cautions.java")) {
            for (Path file : files) {
                Matcher matcher = id.matcher(Files.readString(file));
                while (matcher.find()) {
                    ids.add(matcher.group(1));
                }
            }
        }
        return ids;
    }

    @Test
    void every_level_of_a_caution_has_a_case() {
        for (String id : List.of(
                "superfat-unusual",
                "acid-takes-alkali",
                "stearic-needs-heat",
                "salt-unusual",
                "salt-undissolved",
                "sugar-heats",
                "balance-coarse")) {
            assertThat(CASES.stream()
                            .filter(c -> c.id().equals(id))
                            .flatMap(c -> c.level().stream())
                            .collect(Collectors.toSet()))
                    .as(id)
                    .containsExactlyInAnyOrder(Level.NOTE, Level.CARE);
        }
    }

    static Stream<AFormula> ordinaryBars() {
        return Stream.of(
                // plain
                AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                        .superfat("5 %"),
                AFormula.ofOils("coconut", "25 %", "palm", "25 %", "rapeseed-low-erucic", "rest")
                        .superfat("8 %")
                        .water("30 % lye")
                        .blendedAt("40 C", "38 C"),
                // castile
                AFormula.ofOils("olive-virgin", "100 %").superfat("5 %").water("28 % lye"),
                // charcoal in oil
                AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                        .superfat("6 %")
                        .add("activated-charcoal", "10 g per kg oils", "trace")
                        .dispersed("oil", "4 to 1", "1 h"),
                // clay, wetted out in the morning
                AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                        .superfat("6 %")
                        .add("rose-clay", "15 g per kg oils", "trace")
                        .dispersed("water", "2.5 to 1", "3 h"),
                // fragrance of 2.5 %
                AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                        .superfat("5 %")
                        .add("lavender-oil", "2.5 % of oils", "trace"),
                // a salt bar of the usual kind
                AFormula.ofOils("coconut", "80 %", "olive-virgin", "12 %", "castor", "rest")
                        .superfat("18 %")
                        .water("34 % lye")
                        .add("sea-salt", "50 % of oils", "trace"),
                // a warm shaving soap
                AFormula.ofOils("stearic-acid-50", "45 %", "coconut", "25 %", "tallow", "20 %", "castor", "rest")
                        .superfat("4 %")
                        .mixed("40 %", "60 %", AlkaliChoice.Basis.MOLES)
                        .water("30 % lye")
                        .blendedAt("75 C", "70 C"),
                // cool milk at half the water
                AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                        .superfat("6 %")
                        .water("30 % of oils")
                        .blendedAt("30 C", "28 C")
                        .add("goat-milk", "15 % of oils", "lye")
                        .replacingWater(),
                // plain in an oven
                AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                        .superfat("5 %")
                        .make(Process.Make.OVEN)
                        .oven("72 C"));
    }

    @ParameterizedTest
    @MethodSource("ordinaryBars")
    void an_ordinary_bar_shows_nothing_of_level_care(AFormula bar) {
        for (double mould : new double[] {800, 1500, 4000}) {
            MakingSheet sheet = bar.puritiesAssumed().sheet(Fill.mouldMass(mould));

            assertThat(sheet.cautions())
                    .as("%s g", mould)
                    .filteredOn(caution -> caution.level() != Level.NOTE)
                    .isEmpty();
            assertThat(sheet.stopped()).isFalse();
        }
    }

    @Test
    void a_sheet_is_stopped_by_a_caution_that_says_stop_and_by_no_other() {
        AFormula grams = AFormula.ofOils("house-oil", "1000 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .water("300 g");

        MakingSheet caustic = grams.naohPure("210 g").sheet(Fill.AS_WRITTEN);
        assertThat(caustic.stopped()).isTrue();
        assertThat(caustic.cautions().get(0).level()).isEqualTo(Level.STOP);
        assertThat(grams.naohPure("160 g").sheet(Fill.AS_WRITTEN).stopped()).isFalse();
        assertThat(AFormula.ofOils("coconut", "100 %")
                        .superfat("6 %")
                        .sheet(Fill.oilMass(2000))
                        .cautions())
                .as("nothing to say")
                .isEmpty();
    }

    @Test
    void a_superfat_of_0_asked_is_never_under_0_by_the_milligram_a_step_is_printed_to() {
        // seen: oils of these saponification values and masses, where so many steps of 0.05 oz are a hair under what
        // the
        // oil takes, and a hair over once they are rounded to the milligram
        int[][] valuesAndGrams = {
            {182, 1344}, {197, 838}, {198, 1426}, {212, 563}, {237, 1032}, {242, 1372}, {262, 1351}
        };
        Equipment ounces = Equipment.parseBalances("counter:11lb:0.05oz").orThrow();
        for (int[] seen : valuesAndGrams) {
            MakingSheet sheet = AFormula.ofOils("oil", "100 %")
                    .own(HouseMaterials.oil("oil", Integer.toString(seen[0]), "0.9"))
                    .superfat("0 %")
                    .sheet(Fill.oilMass(seen[1]), ounces);
            assertThat(sheet.sheetSuperfatPercent())
                    .as("%d g of SV %d", seen[1], seen[0])
                    .isGreaterThanOrEqualTo(-1e-9);
            assertThat(sheet.stopped()).as("%d g of SV %d", seen[1], seen[0]).isFalse();
        }
    }

    @Test
    void the_sentence_of_every_material_that_has_one_is_whole() {
        int looked = 0;
        for (Additive additive : Tables.bundled().additives()) {
            if (additive.effects().contains("do-not-use") || additive.effects().contains("restricted")) {
                MakingSheet sheet = AFormula.ofOils("coconut", "100 %")
                        .superfat("6 %")
                        .add(additive.key(), "1 g per kg oils", "trace")
                        .sheet(Fill.oilMass(1000), Sheets.LABORATORY);
                assertThat(sheet.cautions()).as(additive.key()).allSatisfy(CautionsTest::assertWellFormed);
                assertThat(Sheets.ids(sheet))
                        .as(additive.key())
                        .containsAnyOf("do-not-use", "restricted", "salt-anticaking");
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(3);
    }

    @Test
    void every_material_of_the_tables_makes_a_sheet_at_its_usual_dose_with_no_word_about_it() {
        for (Additive additive : Tables.bundled().additives()) {
            if (additive.usualDose().isPresent() && additive.kind() != AdditiveKind.SALT) {
                double percent = additive.usualDose().get().high();
                MakingSheet sheet = AFormula.ofOils("coconut", "100 %")
                        .superfat("6 %")
                        .add(
                                additive.key(),
                                BigDecimal.valueOf(10 * percent).setScale(3, RoundingMode.HALF_UP) + " g per kg oils",
                                "trace")
                        .sheet(Fill.oilMass(1000), Sheets.LABORATORY);
                assertThat(Sheets.ids(sheet)).as(additive.key()).doesNotContain("over-usual-dose");
                assertThat(sheet.cautions()).as(additive.key()).allSatisfy(CautionsTest::assertWellFormed);
            }
        }
    }

    @Test
    void a_caution_says_its_figures_in_its_sentence() {
        Caution caution = new Caution(
                "x",
                Level.NOTE,
                "Of {} there are {} g, {} % and {} in all.",
                "Mind it.",
                "memory",
                List.of("{}", Caution.tenths(2.25), Caution.hundredths(-0.005), Caution.whole(2.5)));

        assertThat(caution.text()).isEqualTo("Of {} there are 2.3 g, -0.01 % and 3 in all.");
        assertThat(Level.STOP.word()).isEqualTo("stop");
    }
}
