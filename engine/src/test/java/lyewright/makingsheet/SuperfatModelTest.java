package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.uncertainty.Distribution;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Input;
import lyewright.uncertainty.Model;
import org.junit.jupiter.api.Test;

/** Which inputs a superfat hangs on, how they lie, and what comes of them. */
class SuperfatModelTest {

    /** The fine balance of 500 g carries it with what is in it. */
    private static final Equipment LIGHT_JUG =
            Equipment.USUAL.withVessels("lye jug:1g").orThrow();

    private static final int CASES = 400;

    private static SuperfatModel of(MakingSheet sheet) {
        return of(sheet, -1);
    }

    private static SuperfatModel of(MakingSheet sheet, int portion) {
        return new SuperfatModel(sheet.batch(), sheet.vessels(), portion);
    }

    private static Distribution input(SuperfatModel model, String name) {
        return model.inputs().stream()
                .filter(i -> i.name().equals(name))
                .findFirst()
                .map(Input::distribution)
                .orElseThrow(() -> new AssertionError(name + " is not among " + names(model)));
    }

    private static List<String> names(SuperfatModel model) {
        return model.inputs().stream().map(Input::name).toList();
    }

    private static AFormula house() {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %");
    }

    @Test
    void with_the_sheets_own_figures_it_gives_the_sheets_own_superfat() {
        int sheets = 0;
        for (long seed = 0; seed < CASES; seed++) {
            Outcome<MakingSheet> made = ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                    .then(f -> MakingSheet.of(f, Fill.mouldMass(1500), Equipment.USUAL));
            if (made instanceof Outcome.Ok<MakingSheet> ok) {
                sheets++;
                MakingSheet sheet = ok.value();
                SuperfatModel model = of(sheet);
                assertThat(model.at(model.sheetValues()))
                        .as("case %d", seed)
                        .isEqualTo(sheet.sheetSuperfatPercent(), within(1e-9));
                for (int p = 0; p < sheet.portions().size(); p++) {
                    SuperfatModel portion = of(sheet, p);
                    assertThat(portion.at(portion.sheetValues()))
                            .as("case %d, portion %d", seed, p)
                            .isEqualTo(sheet.portions().get(p).superfatPercent(), within(1e-9));
                }
            }
        }
        assertThat(sheets).isGreaterThan(CASES / 3);
    }

    @Test
    void many_sets_at_once_give_what_one_by_one_gives() {
        int many = 37;
        for (long seed = 0; seed < CASES / 4; seed++) {
            Outcome<MakingSheet> made = ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                    .then(f -> MakingSheet.of(f, Fill.mouldMass(1500), Equipment.USUAL));
            if (made instanceof Outcome.Ok<MakingSheet> ok) {
                SuperfatModel model = of(ok.value());
                double[][] columns = new double[model.inputs().size()][many + 3];
                double[] outputs = new double[many + 3];
                Random random = new Random(seed);
                for (int i = 0; i < columns.length; i++) {
                    Distribution d = model.inputs().get(i).distribution();
                    for (int set = 0; set < many; set++) {
                        columns[i][set] = d.least(3) + random.nextDouble() * (d.most(3) - d.least(3));
                    }
                }

                Model.Columns quick = model.columns(many + 3);
                quick.at(columns, many, outputs);
                quick.at(columns, many, outputs);

                for (int set = 0; set < many; set++) {
                    int which = set;
                    double[] row =
                            Arrays.stream(columns).mapToDouble(c -> c[which]).toArray();
                    double alone = model.at(row);
                    assertThat(outputs[set])
                            .as("case %d, set %d", seed, set)
                            .isEqualTo(alone, within(1e-9 * Math.max(1, Math.abs(alone))));
                }
                assertThat(outputs[many])
                        .as("what was not asked for is left alone")
                        .isZero();
            }
        }
    }

    @Test
    void it_hangs_on_oils_alkali_and_acid_and_not_on_water_salt_or_clay() {
        MakingSheet sheet = AFormula.ofOils("coconut", "100 %")
                .superfat("5 %")
                .puritiesAssumed()
                .add("vinegar-5", "5 % of oils", "lye")
                .add("sea-salt", "50 % of oils", "trace")
                .add("kaolin", "10 g per kg oils", "trace")
                .dispersed("water", "2 to 1")
                .add("lavender-oil", "2 % of oils", "trace")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(names(of(sheet)))
                .containsExactlyInAnyOrder(
                        "weighing of coconut oil",
                        "saponification value of coconut oil",
                        "weighing of vinegar, 5 % acetic acid by mass",
                        "acid of vinegar, 5 % acetic acid by mass",
                        "weighing of sodium hydroxide (caustic soda)",
                        "purity of sodium hydroxide");
    }

    @Test
    void what_lies_on_top_has_no_say() {
        MakingSheet sheet =
                house().add("citric-acid-anhydrous", "5 g", "top").sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(names(of(sheet))).noneMatch(name -> name.contains("citric"));
    }

    @Test
    void oils_lie_anywhere_in_their_published_range() {
        MakingSheet sheet =
                AFormula.ofOils("coconut", "100 %").superfat("5 %").sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // Codex CXS 210-1999, Table 2
        assertThat(input(of(sheet), "saponification value of coconut oil")).isEqualTo(new Rectangular(248, 265));
    }

    @Test
    void a_certificate_says_how_exactly_it_knows() {
        AFormula formula = AFormula.ofOils("coconut", "50 %", "olive-virgin", "30 %", "castor", "20 %")
                .own(HouseMaterials.certificate("coconut", "256 ± 2"))
                .own(HouseMaterials.certificate("olive-virgin", "189.5"))
                .own(HouseMaterials.certificate("castor", "178 to 182"))
                .superfat("5 %");
        SuperfatModel model = of(formula.sheet(Fill.oilMass(1000), Sheets.LABORATORY));

        Distribution coconut = input(model, "saponification value of coconut oil");
        assertThat(coconut).isInstanceOf(Normal.class);
        assertThat(coconut.mean()).isEqualTo(256);
        assertThat(coconut.standardUncertainty()).isEqualTo(2 / 1.96, within(1e-4));
        assertThat(input(model, "saponification value of olive oil (virgin)")).isEqualTo(new Exact(189.5));
        assertThat(input(model, "saponification value of castor oil")).isEqualTo(new Rectangular(178, 182));
    }

    @Test
    void a_wax_reacts_from_the_least_of_its_acid_to_all_of_it() {
        AFormula formula = AFormula.ofOils("coconut", "85 %", "beeswax", "5 %", "jojoba", "5 %", "lanolin", "5 %")
                .superfat("5 %");
        SuperfatModel model = of(formula.sheet(Fill.oilMass(1000), Sheets.LABORATORY));

        // Ph. Eur.: acid value 17 to 24, saponification value to 104; Merck Index 92.2; BPC 1911 to 102
        assertThat(input(model, "how much reacts of beeswax (white)")).isEqualTo(new Rectangular(17, 104));
        assertThat(input(model, "how much reacts of jojoba oil (liquid wax)")).isEqualTo(new Rectangular(0, 92.2));
        assertThat(input(model, "how much reacts of lanolin (wool fat)")).isEqualTo(new Rectangular(0, 102));
    }

    @Test
    void purities_are_as_assumed_or_as_given() {
        AFormula formula = house().mixed("50 %", "50 %", AlkaliChoice.Basis.MOLES);
        SuperfatModel assumed = of(formula.puritiesAssumed().sheet(Fill.oilMass(1000), Sheets.LABORATORY));
        SuperfatModel given =
                of(formula.purities("naoh=98.5±0.5,koh=89 to 91").sheet(Fill.oilMass(1000), Sheets.LABORATORY));
        SuperfatModel exact = of(formula.purities("naoh=98.5,koh=90").sheet(Fill.oilMass(1000), Sheets.LABORATORY));

        assertThat(input(assumed, "purity of sodium hydroxide")).isEqualTo(new Rectangular(97, 99));
        assertThat(input(assumed, "purity of potassium hydroxide")).isEqualTo(new Rectangular(88, 92));
        assertThat(input(given, "purity of sodium hydroxide").mean()).isEqualTo(98.5);
        assertThat(input(given, "purity of sodium hydroxide").standardUncertainty())
                .isEqualTo(0.5 / 1.96, within(1e-4));
        assertThat(input(given, "purity of potassium hydroxide")).isEqualTo(new Rectangular(89, 91));
        assertThat(input(exact, "purity of sodium hydroxide")).isEqualTo(new Exact(98.5));
    }

    @Test
    void a_stock_lye_brings_its_strength_instead_of_a_purity() {
        MakingSheet sheet = house().puritiesAssumed()
                .own(HouseMaterials.stockLye("jug", "50 ± 0.5 %", Alkali.SODIUM))
                .stockLye("jug")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);
        SuperfatModel model = of(sheet);

        assertThat(input(model, "strength of jug").mean()).isEqualTo(50);
        assertThat(input(model, "strength of jug").standardUncertainty()).isEqualTo(0.5 / 1.96, within(1e-4));
        assertThat(names(model)).noneMatch(name -> name.startsWith("purity"));
        assertThat(model.at(model.sheetValues())).isEqualTo(sheet.sheetSuperfatPercent(), within(1e-9));
    }

    @Test
    void a_weighing_errs_by_what_its_balance_may_and_by_half_a_step() {
        // 1000 g on 1 g are 1000 steps: class III in service ± 2 of them (OIML R 76-1, memory); a light lye
        // jug reads 300 and more on 0.1 g, over 2000 steps: ± 3
        MakingSheet sheet = house().water("300 g fixed").sheet(Fill.oilMass(1000), LIGHT_JUG);
        SuperfatModel model = of(sheet);

        assertThat(input(model, "weighing of house-oil")).isEqualTo(new Trapezoidal(1000, 2, 0.5));
        Distribution alkali = input(model, "weighing of sodium hydroxide (caustic soda)");
        assertThat(alkali.mean()).isEqualTo(Sheets.weighed(sheet, "naoh"));
        assertThat(alkali.most(0) - alkali.mean()).isEqualTo(0.3 + 0.05, within(1e-9));
    }

    @Test
    void no_weighing_errs_by_more_than_itself() {
        // a gram of oil on a balance of 5 g that may err by 5 g
        MakingSheet sheet = AFormula.ofOils("house-oil", "98 %", "castor", "2 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %")
                .sheet(
                        Fill.oilMass(250),
                        Equipment.parseBalances("shop:30kg:5g").orThrow());
        SuperfatModel model = of(sheet);

        assertThat(Sheets.weighed(sheet, "castor")).isEqualTo(5);
        assertThat(input(model, "weighing of castor oil").least(0)).isPositive();
        assertThat(input(model, "weighing of castor oil").mean()).isEqualTo(5);
        assertThat(model.worstCorner(0)).isFinite();
    }

    @Test
    void one_oil_in_several_vessels_has_one_value_and_as_many_weighings() {
        MakingSheet sheet = AFormula.ofOils("coconut", "60 %", "olive-virgin", "40 %")
                .superfat("8 %")
                .portions("plain", "50 %", "clay", "rest")
                .add("kaolin", "10 g per kg oils", "portion clay")
                .dispersed("olive-virgin", "2 to 1")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(names(of(sheet)))
                .containsOnlyOnce("saponification value of olive oil (virgin)")
                .contains(
                        "weighing of olive oil (virgin)",
                        "weighing of olive oil (virgin) to wet out white clay (kaolin) for clay");
        assertThat(names(of(sheet, 0)))
                .doesNotContain("weighing of olive oil (virgin) to wet out white clay (kaolin) for clay");
        assertThat(names(of(sheet, 1)))
                .contains("weighing of olive oil (virgin) to wet out white clay (kaolin) for clay");
    }

    @Test
    void a_premix_has_the_values_of_the_oils_in_it() {
        MakingSheet sheet = AFormula.ofOils("blend", "90 %", "coconut", "10 %")
                .own(HouseMaterials.premix("blend", "coconut", "40 %", "olive-virgin", "60 %"))
                .superfat("5 %")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);
        SuperfatModel model = of(sheet);

        assertThat(names(model))
                .containsOnlyOnce("saponification value of coconut oil")
                .containsOnlyOnce("saponification value of olive oil (virgin)")
                .contains("weighing of blend");
        assertThat(model.oils()).hasSize(2);
    }

    @Test
    void only_oils_that_the_tables_give_a_range_want_a_certificate() {
        AFormula formula = AFormula.ofOils(
                        "coconut",
                        "30 %",
                        "olive-virgin",
                        "30 %",
                        "castor",
                        "20 %",
                        "beeswax",
                        "10 %",
                        "lauric-acid",
                        "rest")
                .own(HouseMaterials.certificate("castor", "178 to 182"))
                .superfat("5 %");

        assertThat(of(formula.sheet(Fill.oilMass(1000), Sheets.LABORATORY)).oils())
                .filteredOn(SuperfatModel.OilInput::wantsCertificate)
                .extracting(o -> o.oil().key())
                .containsExactly("coconut", "olive-virgin");
    }

    @Test
    void the_worst_corner_is_what_a_pencil_makes_of_it() {
        // 1000 g less 2.5, of 248; alkali of 99 %, 0.3 + 0.05 g heavy
        MakingSheet sheet = AFormula.ofOils("coconut", "100 %")
                .superfat("5 %")
                .puritiesAssumed()
                .water("300 g fixed")
                .sheet(Fill.oilMass(1000), LIGHT_JUG);
        double alkali = (Sheets.weighed(sheet, "naoh") + 0.35) * 0.99 / 39.997;
        double oils = (1000 - 2.5) * 248 / 56105;

        assertThat(of(sheet).worstCorner(Distribution.NORMAL_95)).isEqualTo(100 * (1 - alkali / oils), within(1e-9));
    }

    @Test
    void at_its_worst_a_certificate_is_at_the_end_of_its_interval_and_acid_is_light() {
        MakingSheet sheet = house().add("citric-acid-anhydrous", "10 g", "lye")
                .own(HouseMaterials.stockLye("jug", "50 ± 0.5 %", Alkali.SODIUM))
                .stockLye("jug")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);
        SuperfatModel model = of(sheet);
        double acid = input(model, "weighing of citric acid, anhydrous").least(0);
        double lye = input(model, "weighing of jug").most(0);
        double oil = input(model, "weighing of house-oil").least(0);

        // 50.5 % lye; 3 mol of alkali to 192.123 g of acid
        double reaching = lye * 0.505 / 39.997 - acid * 3 / 192.123;
        assertThat(model.worstCorner(Distribution.NORMAL_95))
                .isEqualTo(100 * (1 - reaching / (oil * 0.005)), within(1e-3));
    }

    @Test
    void no_corner_is_worse_than_the_worst() {
        for (long seed = 0; seed < CASES; seed++) {
            Optional<MakingSheet> made = ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                                    .then(f -> MakingSheet.of(f, Fill.mouldMass(1500), Sheets.LABORATORY))
                            instanceof Outcome.Ok<MakingSheet> ok
                    ? Optional.of(ok.value())
                    : Optional.empty();
            if (made.isPresent()) {
                SuperfatModel model = of(made.get());
                double worst = model.worstCorner(2);
                double[] x = model.sheetValues();
                for (int i = 0; i < x.length; i++) {
                    for (double end : new double[] {
                        model.inputs().get(i).distribution().least(2),
                        model.inputs().get(i).distribution().most(2)
                    }) {
                        double kept = x[i];
                        x[i] = end;
                        assertThat(model.at(x))
                                .as("case %d: %s", seed, model.inputs().get(i).name())
                                .isGreaterThanOrEqualTo(worst - 1e-9);
                        x[i] = kept;
                    }
                }
            }
        }
    }
}
