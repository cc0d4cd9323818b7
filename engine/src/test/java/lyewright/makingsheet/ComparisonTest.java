package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OxidationIndices;
import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** What changes from one sheet to another. */
class ComparisonTest {

    private static final double EXACT = 1e-9; // in the unit of the figure

    private static final Fill A_KILOGRAM = Fill.oilMass(1000);

    private static AFormula bar(String... oils) {
        return AFormula.ofOils(oils).superfat("5 %").water("33 % lye");
    }

    private static Comparison compared(AFormula a, AFormula b) {
        return Comparison.of(a.sheet(A_KILOGRAM), b.sheet(A_KILOGRAM));
    }

    private static double difference(Comparison comparison, String path) {
        return comparison.row(path).orElseThrow().difference().orElseThrow();
    }

    /**
     * By hand: 10 % of a kilogram of oils, from 180 to 200 mg KOH/g, is 100 g × 20 mg/g = 2 g KOH more, times 39.997 ÷ 56.105
     * (NaOH for KOH) and 0.95 for 5 % of superfat; alkali is pure here.
     */
    @Test
    void a_swap_of_one_oil_needs_so_much_more_alkali() {
        AFormula a = bar("coconut", "90 %", "lean", "10 %").own(HouseMaterials.oil("lean", "180", "0.915"));
        AFormula b = bar("coconut", "90 %", "rich", "10 %").own(HouseMaterials.oil("rich", "200", "0.915"));

        Comparison comparison = compared(a, b);

        double more = 2 * 39.997 / 56.105 * 0.95;
        assertThat(difference(comparison, "perKgOils.naohPureGrams")).isCloseTo(more, within(1e-6));
        assertThat(difference(comparison, "perKgOils.waterGrams")).isCloseTo(more * 67 / 33, within(1e-6));
        assertThat(difference(comparison, "oilPhase.saponificationValueUsed")).isCloseTo(2, within(EXACT));
        assertThat(difference(comparison, "oils.coconut")).isZero();
        assertThat(difference(comparison, "oils.lean")).isCloseTo(-10, within(EXACT));
        assertThat(difference(comparison, "oils.rich")).isCloseTo(10, within(EXACT));
        assertThat(comparison.row("superfat.exactPercent").orElseThrow().differs())
                .isFalse();
    }

    /** A kitchen balance rounds both, but what the formulas ask for a kilogram of oils is compared before that. */
    @Test
    void a_coarse_balance_is_not_taken_for_a_difference_of_formulas() {
        Equipment coarse = Equipment.parseBalances("shop:30kg:5g").orThrow();
        AFormula formula = bar("coconut", "30 %", "olive-virgin", "70 %");

        Comparison comparison =
                Comparison.of(formula.sheet(A_KILOGRAM, coarse), formula.sheet(A_KILOGRAM, Sheets.LABORATORY));

        assertThat(comparison.rows())
                .filteredOn(row -> row.group() != Group.BATCH
                        && row.group() != Group.CURED_BAR
                        && row.group() != Group.SUPERFAT_AND_LYE)
                .noneMatch(Row::differs)
                .allMatch(row -> row.difference().orElse(0.0) == 0);
        assertThat(difference(comparison, "superfat.exactPercent")).isZero();
        assertThat(difference(comparison, "totals.batchGrams")).isNotZero();
    }

    @Test
    void a_sheet_and_itself_are_the_same_in_every_row() {
        for (long seed = 0; seed < 25; seed++) {
            if (SomeFormulas.of(seed).trySheet(A_KILOGRAM, Equipment.USUAL) instanceof Outcome.Ok<MakingSheet> sheet) {
                Comparison comparison = Comparison.of(sheet.value(), sheet.value());
                assertThat(comparison.differs()).as("case %d", seed).isFalse();
                assertThat(comparison.rows()).as("case %d", seed).hasSizeGreaterThan(15);
                assertThat(comparison.cautions())
                        .as("case %d", seed)
                        .hasSameSizeAs(sheet.value().cautions());
            }
        }
    }

    /** The other way round each difference has the other sign, what comes goes, and no path is there twice. */
    @Test
    void from_b_to_a_is_the_change_turned_round() {
        int compared = 0;
        for (long seed = 0; seed < 25; seed++) {
            Outcome<MakingSheet> a = SomeFormulas.of(seed).trySheet(A_KILOGRAM, Equipment.USUAL);
            Outcome<MakingSheet> b = SomeFormulas.of(seed + 1000).trySheet(A_KILOGRAM, Equipment.USUAL);
            if (a instanceof Outcome.Ok<MakingSheet> one && b instanceof Outcome.Ok<MakingSheet> other) {
                compared++;
                Comparison there = Comparison.of(one.value(), other.value());
                Comparison back = Comparison.of(other.value(), one.value());
                assertThat(there.rows().stream().map(Row::path))
                        .as("case %d", seed)
                        .doesNotHaveDuplicates();
                assertThat(back.rows().stream().map(Row::path))
                        .as("case %d", seed)
                        .containsExactlyInAnyOrderElementsOf(
                                there.rows().stream().map(Row::path).toList());
                for (Row row : there.rows()) {
                    Row turned = back.row(row.path()).orElseThrow();
                    assertThat(turned.a()).as(row.path()).isEqualTo(row.b());
                    assertThat(turned.b()).as(row.path()).isEqualTo(row.a());
                    assertThat(turned.differs()).as(row.path()).isEqualTo(row.differs());
                }
                assertThat(count(there, CautionChange.Change.COMES))
                        .as("case %d", seed)
                        .isEqualTo(count(back, CautionChange.Change.GOES));
                assertThat(count(there, CautionChange.Change.GRAVER))
                        .as("case %d", seed)
                        .isEqualTo(count(back, CautionChange.Change.MILDER));
            }
        }
        assertThat(compared).isGreaterThan(12);
    }

    private static long count(Comparison comparison, CautionChange.Change change) {
        return comparison.cautions().stream()
                .filter(caution -> caution.change() == change)
                .count();
    }

    @Test
    void every_figure_is_that_of_its_own_sheet() {
        AFormula a = bar("coconut", "80 %", "castor", "20 %")
                .mixed("60 %", "40 %", AlkaliChoice.Basis.MOLES)
                .add("sea-salt", "50 % of oils", "trace");
        AFormula b = bar("olive-virgin", "100 %");
        MakingSheet sheet = b.sheet(Fill.mouldMass(1500));
        Comparison comparison = Comparison.of(a.sheet(Fill.mouldMass(1500)), sheet);

        assertThat(b(comparison, "totals.oilsGrams")).isEqualTo(sheet.totals().oils());
        assertThat(b(comparison, "totals.mouldGrams")).isEqualTo(sheet.totals().mould());
        assertThat(b(comparison, "batterDensityGramsPerMl")).isEqualTo(sheet.batterDensity());
        assertThat(b(comparison, "superfat.sheetPercent")).isEqualTo(sheet.sheetSuperfatPercent());
        assertThat(b(comparison, "superfat.low95Percent"))
                .isEqualTo(sheet.band().lowPercent());
        assertThat(b(comparison, "superfat.high95Percent"))
                .isEqualTo(sheet.band().highPercent());
        assertThat(b(comparison, "superfat.freeAlkaliProbability"))
                .isEqualTo(sheet.band().freeAlkaliProbability());
        assertThat(b(comparison, "superfat.exactPercent")).isCloseTo(5, within(EXACT));
        assertThat(b(comparison, "lye.pureStrengthPercent"))
                .isEqualTo(sheet.lye().pureStrengthPercent());
        assertThat(b(comparison, "alkali.jugConcentrationPercent"))
                .isEqualTo(sheet.lye().concentrationPercent());
        assertThat(b(comparison, "alkali.potassiumMolesPercent")).isZero();
        assertThat(b(comparison, "perKgOils.kohGrams")).isZero();
        assertThat(b(comparison, "additions.sea-salt")).isZero();
        OilPhaseAcids acids = OilPhaseAcids.of(sheet.formula());
        OxidationIndices indices = Keeping.of(acids).orElseThrow().indices();
        assertThat(b(comparison, "keeping.iodineValue"))
                .isEqualTo(acids.iodineValue().orElseThrow());
        assertThat(b(comparison, "keeping.oxidisability")).isEqualTo(indices.oxidisability());
        assertThat(b(comparison, "keeping.cox")).isEqualTo(indices.cox());
        assertThat(b(comparison, "keeping.pi")).isEqualTo(indices.peroxidisability());
        assertThat(b(comparison, "keeping.ape")).isEqualTo(indices.allylic());
        assertThat(b(comparison, "keeping.bape")).isEqualTo(indices.bisAllylic());
        assertThat(b(comparison, "fattyAcids.C18:1")).isEqualTo(acids.percent("C18:1"));
        assertThat(b(comparison, "fattyAcids.C12:0")).isZero();
        Row salt = comparison.row("additions.sea-salt").orElseThrow();
        assertThat(salt.a().orElseThrow()).isCloseTo(500, within(1e-6));
        assertThat(salt.unit()).isEqualTo("g per kg oils");
        assertThat(comparison
                        .row("alkali.potassiumMolesPercent")
                        .orElseThrow()
                        .a()
                        .orElseThrow())
                .isCloseTo(40, within(0.05));
    }

    /** Whatever the bar consists of adds up, and is what the sheet's own composition says. */
    @Test
    void the_cured_bar_is_compared_kind_by_kind() {
        AFormula a = bar("coconut", "80 %", "castor", "20 %").add("sea-salt", "50 % of oils", "trace");
        MakingSheet sheet = bar("olive-virgin", "100 %").sheet(A_KILOGRAM);
        Comparison comparison = Comparison.of(a.sheet(A_KILOGRAM), sheet);
        Composition cured = sheet.composition().moments().get(2);

        assertThat(b(comparison, "cured.soapPercent")).isEqualTo(cured.percent(Composition.Kind.SOAP));
        assertThat(b(comparison, "cured.saltPercent")).isZero();
        assertThat(b(comparison, "cured.totalFattyMatterPercent"))
                .isEqualTo(cured.totalFattyMatterPercent().orElseThrow());
        assertThat(comparison.row("cured.freeAlkaliPercent")).isEmpty();
        double sum = comparison.of(Group.CURED_BAR).stream()
                .filter(row -> !row.path().equals("cured.totalFattyMatterPercent"))
                .mapToDouble(row -> row.b().orElseThrow())
                .sum();
        assertThat(sum).isCloseTo(100, within(1e-6));
    }

    private static double b(Comparison comparison, String path) {
        return comparison.row(path).orElseThrow().b().orElseThrow();
    }

    @Test
    void what_is_not_known_is_no_nought() {
        AFormula a = bar("mine", "100 %").own(HouseMaterials.oil("mine", "190", "0.915"));
        AFormula b = bar("olive-virgin", "100 %");

        Comparison comparison = compared(a, b);

        Row oleic = comparison.row("fattyAcids.C18:1").orElseThrow();
        assertThat(oleic.a()).isEmpty();
        assertThat(oleic.b()).isPresent();
        assertThat(oleic.difference()).isEmpty();
        assertThat(oleic.shownDifference()).isEmpty();
        assertThat(oleic.differs()).isTrue();
        assertThat(comparison.row("unknownPercent").orElseThrow().difference()).contains(-100.0);
        assertThat(compared(a, a).row("keeping.cox")).isEmpty();
    }

    @Test
    void bars_are_compared_where_either_has_them() {
        AFormula formula = bar("olive-virgin", "100 %");
        MakingSheet without = formula.sheet(A_KILOGRAM);
        MakingSheet with = formula.sheet(
                new Fill(new Fill.Bars(10, 110, false), without.fill().mould(), Optional.empty(), 0));

        Comparison comparison = Comparison.of(without, with);

        assertThat(comparison.row("bars.count").orElseThrow().a()).isEmpty();
        assertThat(comparison.row("bars.count").orElseThrow().b()).contains(10.0);
        assertThat(Comparison.of(without, without).row("bars.count")).isEmpty();
    }

    /** Glycerin is neither oil nor water; water and oil that wet things out are in theirs already. */
    @Test
    void glycerin_that_wets_something_out_counts_as_added() {
        AFormula a = bar("olive-virgin", "100 %");
        AFormula b = bar("olive-virgin", "100 %")
                .add("kaolin", "2 % of oils", "trace")
                .dispersed("glycerin", "2 to 1");
        Comparison glycerin = compared(a, b);
        assertThat(difference(glycerin, "additions.kaolin")).isCloseTo(20, within(1e-6));
        assertThat(difference(glycerin, "additions.glycerin")).isCloseTo(40, within(1e-6));

        AFormula wet = bar("olive-virgin", "100 %")
                .add("kaolin", "2 % of oils", "trace")
                .dispersed("water", "2 to 1");
        Comparison water = compared(a, wet);
        assertThat(water.row("additions.water")).isEmpty();
        assertThat(difference(water, "perKgOils.waterGrams")).isCloseTo(0, within(1e-6));
    }

    @Test
    void a_stock_lye_is_told_by_the_alkali_in_it_too() {
        AFormula flakes = bar("olive-virgin", "100 %");
        AFormula stock = bar("olive-virgin", "100 %")
                .own(HouseMaterials.stockLye("half", "50", lyewright.material.Alkali.SODIUM))
                .stockLye("half");

        Comparison comparison = compared(flakes, stock);

        assertThat(difference(comparison, "perKgOils.naohPureGrams")).isCloseTo(0, within(1e-6));
        assertThat(b(comparison, "perKgOils.naohGrams"))
                .isCloseTo(2 * b(comparison, "perKgOils.naohPureGrams"), within(1e-6));
    }

    @Test
    void a_row_differs_by_what_is_shown() {
        Row row = new Row("x", Group.BATCH, "x", Optional.of(1.04), Optional.of(0.96), "g", 1);
        assertThat(row.differs()).isFalse();
        assertThat(row.difference().orElseThrow()).isCloseTo(-0.08, within(EXACT));
        Row more = new Row("x", Group.BATCH, "x", Optional.of(1.04), Optional.of(1.06), "g", 1);
        assertThat(more.shownDifference()).contains(new BigDecimal("0.1"));
        Row nothing = new Row("x", Group.BATCH, "x", Optional.empty(), Optional.empty(), "g", 1);
        assertThat(nothing.differs()).isFalse();
    }

    @Test
    void groups_stand_in_the_order_of_making() {
        Comparison comparison = compared(bar("coconut", "100 %"), bar("olive-virgin", "100 %"));
        List<Group> groups =
                comparison.rows().stream().map(Row::group).distinct().toList();
        assertThat(groups).isSorted().contains(Group.OILS, Group.KEEPING, Group.BATCH);
        assertThat(comparison.of(Group.OILS))
                .extracting(Row::path)
                .containsExactly("oils.coconut", "oils.olive-virgin");
        assertThat(comparison.row("no such row")).isEmpty();
        assertThat(comparison.differs()).isTrue();
    }
}
