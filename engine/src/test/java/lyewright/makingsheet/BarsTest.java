package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Moulds;
import lyewright.fill.Shape;
import org.junit.jupiter.api.Test;

/** What comes out of the mould. */
class BarsTest {

    private static AFormula bar() {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("20 %")
                .water("2 to 1");
    }

    private static MakingSheet.Bars bars(Fill fill) {
        return bar().sheet(fill, Sheets.LABORATORY).bars().orElseThrow();
    }

    private static Fill full(Shape shape, Optional<CutPlan> cut) {
        return new Fill(new Fill.FullMould(), Moulds.of(shape), cut, 0);
    }

    @Test
    void a_loaf_of_300_mm_in_26_mm_is_11_bars_and_the_rest_offcuts() {
        Fill fill = full(
                new Shape.Loaf(300, 80, 65), Optional.of(CutPlan.parse("26mm").orThrow()));
        MakingSheet sheet = bar().sheet(fill, Sheets.LABORATORY);
        MakingSheet.Bars bars = sheet.bars().orElseThrow();

        assertThat(bars.count()).isEqualTo(11);
        assertThat(bars.cutGrams()).isEqualTo(sheet.totals().mould() * 26 / 300, within(1e-9));
        assertThat(bars.offcutsGrams()).isEqualTo(sheet.totals().mould() * 14 / 300, within(1e-9));
    }

    @Test
    void more_than_the_mould_holds_makes_no_bars_that_would_stand_higher_than_it() {
        Mould tray = Moulds.of(new Shape.Cavities(12, 95));
        MakingSheet fits =
                bar().sheet(new Fill(new Fill.MouldMass(1140), tray, Optional.empty(), 0), Sheets.LABORATORY);
        MakingSheet overfull =
                bar().sheet(new Fill(new Fill.MouldMass(5000), tray, Optional.empty(), 0), Sheets.LABORATORY);

        assertThat(fits.bars()).map(MakingSheet.Bars::count).contains(12);
        assertThat(overfull.bars()).isEmpty();
        assertThat(overfull.cautions()).extracting(Caution::id).contains("mould-overfull");
    }

    @Test
    void bars_and_offcuts_are_all_of_the_mould() {
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            CutPlan plan = new CutPlan(
                    15 + random.nextInt(30),
                    Optional.of(30.0 + random.nextInt(40)),
                    random.nextInt(3),
                    random.nextInt(10),
                    random.nextInt(8));
            Shape shape = i % 2 == 0
                    ? new Shape.Loaf(200 + random.nextInt(300), 80, 65)
                    : new Shape.Slab(200 + random.nextInt(300), 200 + random.nextInt(100), 30);
            MakingSheet sheet = bar().sheet(full(shape, Optional.of(plan)).holdingBack(0.02), Sheets.LABORATORY);
            MakingSheet.Bars bars = sheet.bars().orElseThrow();

            assertThat(bars.count() * bars.cutGrams() + bars.offcutsGrams())
                    .as("case %d: %s of %s", i, plan, shape)
                    .isEqualTo(sheet.totals().mould(), within(1e-6));
            assertThat(bars.curedGrams()).as("case %d", i).isPositive().isLessThanOrEqualTo(bars.cutGrams());
        }
    }

    @Test
    void bars_of_a_cut_come_out_at_the_mass_asked_for() {
        Fill fill = new Fill(
                new Fill.Bars(12, 110, false),
                Moulds.box(300, 80, 65),
                Optional.of(CutPlan.parse("25mm").orThrow().losing(0, 0, 3)),
                0.02);

        MakingSheet.Bars bars = bars(fill);
        assertThat(bars.count()).isEqualTo(12);
        assertThat(bars.cutGrams()).isEqualTo(110, within(0.01));
        // 3 of 65 mm are planed off the top
        assertThat(bars.offcutsGrams()).isEqualTo(12 * 110 / (62 / 65.0) - 12 * 110, within(0.1));
    }

    @Test
    void cured_bars_of_a_cut_come_out_at_the_mass_asked_for() {
        Fill fill = new Fill(
                new Fill.Bars(12, 100, true),
                Moulds.box(300, 80, 65),
                Optional.of(CutPlan.parse("25mm").orThrow()),
                0);

        assertThat(bars(fill).curedGrams()).isEqualTo(100, within(0.01));
    }

    @Test
    void cavities_are_as_many_bars() {
        MakingSheet sheet = bar().sheet(full(new Shape.Cavities(12, 95), Optional.empty()), Sheets.LABORATORY);
        MakingSheet.Bars bars = sheet.bars().orElseThrow();

        assertThat(bars.count()).isEqualTo(12);
        assertThat(bars.cutGrams()).isEqualTo(sheet.totals().mould() / 12, within(1e-9));
        assertThat(bars.cutGrams()).isEqualTo(95 * sheet.batterDensity(), within(0.01));
        assertThat(bars.offcutsGrams()).isZero();
    }

    @Test
    void nothing_is_known_of_bars_from_a_mould_mass_or_an_uncut_box() {
        assertThat(bar().sheet(Fill.mouldMass(1500)).bars()).isEmpty();
        assertThat(bar().sheet(full(new Shape.Loaf(300, 80, 65), Optional.empty()))
                        .bars())
                .isEmpty();
    }

    @Test
    void bars_that_should_hold_more_water_than_was_poured_weigh_what_was_poured() {
        MakingSheet sheet = bar().water("1 to 1")
                .curedWater("30 %")
                .sheet(new Fill(new Fill.Bars(10, 110, true), Mould.UNKNOWN, Optional.empty(), 0), Sheets.LABORATORY);

        assertThat(sheet.bars().orElseThrow().curedGrams())
                .isEqualTo(sheet.bars().orElseThrow().cutGrams(), within(1e-9));
    }
}
