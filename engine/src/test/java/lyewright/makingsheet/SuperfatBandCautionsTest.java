package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import lyewright.fill.Fill;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Alkali;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When free alkali is cautioned against, how gravely, and what is said to do about it. */
class SuperfatBandCautionsTest {

    private static final Fill KILOGRAM = Fill.oilMass(1000);

    private static Caution freeAlkali(AFormula formula) {
        return freeAlkali(formula.sheet(KILOGRAM, Sheets.LABORATORY));
    }

    private static Caution freeAlkali(MakingSheet sheet) {
        return Sheets.caution(sheet, "free-alkali").orElseThrow(() -> new AssertionError("not cautioned"));
    }

    private static AFormula coconut(String superfat) {
        return AFormula.ofOils("coconut", "100 %").superfat(superfat);
    }

    private static AFormula house(String superfat) {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat(superfat);
    }

    /** Clay in one half, wetted out with oil that the plain half then lacks. */
    private static MakingSheet halves(String superfat, String clay) {
        return coconut(superfat)
                .portions("plain", "50 %", "clay", "rest")
                .add("kaolin", clay + " per kg portion oils", "portion clay")
                .dispersed("oil", "2 to 1")
                .sheet(KILOGRAM, Sheets.LABORATORY);
    }

    private static List<Caution> look(SuperfatBand band) {
        List<Caution> found = new ArrayList<>();
        FreeAlkaliCautions.look(band, List.of(), found);
        return found;
    }

    @Test
    void a_chance_of_a_hundredth_is_care_and_less_is_nothing() {
        // (256.5 × (1 − superfat) − 248) ÷ 17: 0.007 at 3.3 %, 0.0172 at 3.2 %
        assertThat(freeAlkali(coconut("3.2 %")).level()).isEqualTo(Level.CARE);
        assertThat(Sheets.ids(coconut("3.3 %").sheet(KILOGRAM, Sheets.LABORATORY)))
                .doesNotContain("free-alkali");
    }

    @Test
    void a_chance_of_a_half_is_not_to_be_made_though_the_sheet_is_over_zero() {
        // such a sheet needs an oil whose range lies mostly under its figure, which the tables have none of
        MakingSheet over = AFormula.ofOils("coconut", "1000 g")
                .water("300 g")
                .naohPure("183.5 g")
                .sheet(KILOGRAM, Sheets.LABORATORY);
        MakingSheet under = coconut("0.1 %").sheet(KILOGRAM, Sheets.LABORATORY);
        assertThat(over.band().freeAlkaliProbability()).isGreaterThan(0.5);
        assertThat(under.band().freeAlkaliProbability()).isBetween(0.4, 0.5);

        assertThat(look(new SuperfatBand(over.batch(), over.vessels(), -1, 0.1)))
                .singleElement()
                .satisfies(c -> assertThat(c.level()).isEqualTo(Level.STOP));
        assertThat(look(new SuperfatBand(under.batch(), under.vessels(), -1, 0.1)))
                .singleElement()
                .satisfies(c -> assertThat(c.level()).isEqualTo(Level.CARE));
    }

    @Test
    void a_sheet_under_zero_is_not_to_be_made_whatever_its_chance() {
        Caution caution = freeAlkali(AFormula.ofOils("coconut", "1000 g")
                .water("300 g")
                .naohPure("183.5 g")
                .sheet(KILOGRAM, Sheets.LABORATORY));

        assertThat(caution.level()).isEqualTo(Level.STOP);
        assertThat(caution.source()).isEqualTo("mass balance");
        assertThat(caution.text()).startsWith("The superfat is -0.35 %: there is more alkali than the oils can take");
    }

    @Test
    void what_is_said_is_the_band_and_the_chance() {
        Caution caution = freeAlkali(coconut("2 %"));

        assertThat(caution.text())
                .isEqualTo(
                        "A superfat of 2.0 % may really be anything from -1.2 to 5.0 %, and under 0 alkali is left over and"
                                + " the bars stay caustic: about 1 chance in 5, before a certificate for coconut oil.");
        assertThat(caution.source()).contains("this project's own rule");
    }

    @Test
    void the_remedy_is_a_certificate_where_one_would_settle_it() {
        assertThat(freeAlkali(coconut("2 %")).remedy())
                .isEqualTo(
                        "Ask for more superfat, or get the certificate of analysis of your lot of coconut oil and give"
                                + " its value under materials.");
    }

    @Test
    void the_remedy_is_the_purity_where_most_hangs_on_that() {
        assertThat(freeAlkali(house("0.5 %").puritiesAssumed()).remedy())
                .isEqualTo("Ask for more superfat, or read the alkali's purity off its certificate and give it.");
        assertThat(freeAlkali(house("0.5 %")
                                .own(HouseMaterials.stockLye("jug", "49 to 51 %", Alkali.SODIUM))
                                .stockLye("jug"))
                        .remedy())
                .contains("strength of the stock lye");
    }

    @Test
    void the_remedy_is_not_about_a_wax_which_only_makes_a_bar_milder() {
        MakingSheet sheet = AFormula.ofOils("house-oil", "80 %", "beeswax", "20 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("0.5 %")
                .puritiesAssumed()
                .sheet(KILOGRAM, Sheets.LABORATORY);

        assertThat(sheet.band().contributions().get(0).input()).startsWith("how much reacts of beeswax");
        assertThat(freeAlkali(sheet).remedy()).contains("the alkali's purity");
    }

    @Test
    void the_remedy_is_a_finer_balance_where_most_hangs_on_that() {
        // 28 g of soda on a balance that may err by a gram and hides half of one
        MakingSheet sheet = house("2 %")
                .sheet(
                        Fill.oilMass(145),
                        Equipment.parseBalances("kitchen:5kg:1g").orThrow());

        assertThat(sheet.band().contributions().get(0).input()).startsWith("weighing of");
        assertThat(freeAlkali(sheet).remedy())
                .isEqualTo("Ask for more superfat, use a finer balance, or make a larger batch.");
    }

    @Test
    void the_remedy_is_what_is_known_better_where_a_makers_own_range_does_it() {
        assertThat(freeAlkali(coconut("2 %").own(HouseMaterials.certificate("coconut", "248 to 265")))
                        .remedy())
                .isEqualTo("Ask for more superfat, or give the saponification value of your oils more closely.");
    }

    @ParameterizedTest
    @CsvSource({
        // 4 % of the half's oils are 2 % of all: the plain half has 1 − (1 − superfat) ÷ 0.98, the batch the superfat;
        // its chance is (256.5 × (1 − superfat) ÷ 0.98 − 248) ÷ 17
        "5.4 %, 20 g, none", // 3.47 %: none
        "5.1 %, 20 g, care", // 3.16 %: 0.023
        "3.4 %, 20 g, care", // 1.43 %: 0.285
        "1.9 %, 20 g, stop" // -0.10 %
    })
    void a_leaner_portion_is_cautioned_by_itself(String superfat, String clay, String level) {
        MakingSheet sheet = halves(superfat, clay);

        assertThat(Sheets.caution(sheet, "portion-free-alkali")
                        .map(c -> c.level().word())
                        .orElse("none"))
                .isEqualTo(level);
        Sheets.caution(sheet, "portion-free-alkali")
                .ifPresent(c -> assertThat(c.text()).startsWith("Portion plain "));
    }

    @Test
    void a_portion_no_leaner_than_the_batch_is_not_cautioned_once_more() {
        MakingSheet sheet = coconut("2 %")
                .portions("plain", "50 %", "clay", "rest")
                .add("kaolin", "20 g per kg portion oils", "portion clay")
                .dispersed("water", "2 to 1")
                .sheet(KILOGRAM, Sheets.LABORATORY);

        assertThat(Sheets.ids(sheet)).contains("free-alkali").doesNotContain("portion-free-alkali");
    }

    @Test
    void a_portions_chance_of_a_half_is_not_to_be_made() {
        MakingSheet sheet = halves("1.5 %", "20 g");
        PortionSheet lean = sheet.portions().get(0);
        assertThat(lean.band().freeAlkaliProbability()).isBetween(0.5, 0.6);

        // over zero by its sheet, and half of the batches under it all the same
        Caution stop = lookAt(sheet, withSuperfat(lean, 0.1, lean.band()));
        Caution care = lookAt(
                sheet,
                withSuperfat(
                        lean, 0.1, halves("2.2 %", "20 g").portions().get(0).band()));

        assertThat(stop.level()).isEqualTo(Level.STOP);
        assertThat(stop.text())
                .isEqualTo(
                        "Portion plain is leaner than the batch: about 6 chances in 10 that alkali is left over in it.");
        assertThat(care.level()).isEqualTo(Level.CARE);
    }

    private static Caution lookAt(MakingSheet sheet, PortionSheet portion) {
        List<Caution> found = new ArrayList<>();
        FreeAlkaliCautions.look(sheet.band(), List.of(portion), found);
        return found.stream()
                .filter(c -> c.id().equals("portion-free-alkali"))
                .findFirst()
                .orElseThrow();
    }

    private static PortionSheet withSuperfat(PortionSheet p, double percent, SuperfatBand band) {
        return new PortionSheet(
                p.name(),
                p.sharePercent(),
                p.emptyGrams(),
                p.baseBatterGrams(),
                p.oilsGrams(),
                p.waterGrams(),
                percent,
                band,
                p.additions(),
                p.totalGrams());
    }

    @Test
    void an_ordinary_bar_is_not_cautioned_and_nothing_is_drawn_for_it() {
        MakingSheet sheet = coconut("5 %").sheet(KILOGRAM, Sheets.LABORATORY);

        assertThat(sheet.band().surelyWithoutAlkali()).isTrue();
        assertThat(sheet.cautions()).isSameAs(sheet.plainCautions());
        assertThat(sheet.stopped()).isFalse();
    }

    @Test
    void cautions_about_free_alkali_come_before_others_as_grave() {
        MakingSheet sheet = coconut("2 %").sheet(KILOGRAM, Sheets.LABORATORY);

        assertThat(sheet.cautions().get(0).id()).isEqualTo("free-alkali");
    }
}
