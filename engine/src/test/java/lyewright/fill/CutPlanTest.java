package lyewright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutPlanTest {

    private static final Shape LOAF = new Shape.Loaf(300, 80, 65);

    @Test
    void a_loaf_of_300_mm_gives_12_bars_of_25_mm() {
        CutPlan.Cut cut = CutPlan.parse("25mm").orThrow().of(LOAF).orThrow();

        assertThat(cut.bars()).isEqualTo(12);
        assertThat(cut.barShare()).isEqualTo(1 / 12.0, within(1e-12));
    }

    @Test
    void a_foot_of_loaf_gives_12_bars_of_an_inch() {
        // 304.8 / 25.4 falls a hair under 12 in binary
        Shape foot = Shape.parseLoaf("12x3x2.5in").orThrow();

        assertThat(CutPlan.parse("1in").orThrow().of(foot).orThrow().bars()).isEqualTo(12);
    }

    @Test
    void what_is_too_short_for_a_bar_is_left_over() {
        // 300 = 11 × 26 + 14
        CutPlan.Cut cut = CutPlan.parse("26mm").orThrow().of(LOAF).orThrow();

        assertThat(cut.bars()).isEqualTo(11);
        assertThat(1 - cut.bars() * cut.barShare()).isEqualTo(14 / 300.0, within(1e-12));
    }

    @Test
    void a_blade_takes_its_width_between_two_bars_only() {
        CutPlan plan = CutPlan.parse("24mm").orThrow().losing(1, 0, 0);

        // 12 bars and 11 cuts are 12 × 24 + 11 × 1 = 299 mm; 12 and 12 would be just 300
        assertThat(plan.of(new Shape.Loaf(299, 80, 65)).orThrow().bars()).isEqualTo(12);
        assertThat(plan.of(new Shape.Loaf(298.9, 80, 65)).orThrow().bars()).isEqualTo(11);
    }

    @Test
    void ends_are_cut_off_first() {
        // 300 − 2 × 5 = 290 = 11 × 25 + 15
        CutPlan.Cut cut =
                CutPlan.parse("25mm").orThrow().losing(0, 5, 0).of(LOAF).orThrow();

        assertThat(cut.bars()).isEqualTo(11);
        assertThat(cut.barShare()).isEqualTo(25 / 300.0, within(1e-12));
    }

    @Test
    void trim_makes_every_bar_lower() {
        // 65 mm less 6.5 mm is nine tenths
        CutPlan.Cut cut =
                CutPlan.parse("25mm").orThrow().losing(0, 0, 6.5).of(LOAF).orThrow();

        assertThat(cut.bars()).isEqualTo(12);
        assertThat(cut.barShare()).isEqualTo(0.9 / 12, within(1e-12));
    }

    @Test
    void a_slab_is_cut_in_a_grid() {
        // 400 / 80 = 5 along, 300 / 60 = 5 across
        CutPlan.Cut cut = CutPlan.parse("80x60mm")
                .orThrow()
                .of(new Shape.Slab(400, 300, 25))
                .orThrow();

        assertThat(cut.bars()).isEqualTo(25);
        assertThat(cut.barShare()).isEqualTo(1 / 25.0, within(1e-12));
    }

    @Test
    void a_grid_loses_its_ends_along_only_and_the_blade_both_ways() {
        CutPlan plan = CutPlan.parse("80x60mm").orThrow().losing(2, 10, 5);

        // along: 400 − 20 = 380, four bars need 4 × 80 + 3 × 2 = 326, five 408
        // across: four need 4 × 60 + 3 × 2 = 246, and five 308, more than 300; without a blade they just fit
        CutPlan.Cut cut = plan.of(new Shape.Slab(400, 300, 25)).orThrow();
        assertThat(cut.bars()).isEqualTo(16);
        assertThat(cut.barShare()).isEqualTo(80 / 400.0 * 60 / 300.0 * 20 / 25.0, within(1e-12));
        assertThat(plan.losing(0, 10, 5)
                        .of(new Shape.Slab(400, 300, 25))
                        .orThrow()
                        .bars())
                .isEqualTo(4 * 5);
    }

    @Test
    void a_cut_of_more_bars_than_anybody_counts_is_refused() {
        // 4000 rows of 4000; as many more as do not fit a whole number of 32 bits
        for (String cut : new String[] {"0.1x0.1mm", "0.001x0.001mm", "0.01mm"}) {
            assertThat(CutPlan.parse(cut)
                            .orThrow()
                            .of(new Shape.Slab(400, 400, 50))
                            .problems())
                    .as(cut)
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.sentence())
                            .contains("more than 10000 bars")
                            .contains("unit"));
        }
        assertThat(CutPlan.parse("4x4mm")
                        .orThrow()
                        .of(new Shape.Slab(400, 400, 50))
                        .orThrow()
                        .bars())
                .isEqualTo(10_000);
    }

    @Test
    void a_slab_with_one_measure_is_cut_into_strips() {
        CutPlan.Cut cut =
                CutPlan.parse("80mm").orThrow().of(new Shape.Slab(400, 300, 25)).orThrow();

        assertThat(cut.bars()).isEqualTo(5);
        assertThat(cut.barShare()).isEqualTo(0.2, within(1e-12));
    }

    @Test
    void a_strip_of_a_slab_loses_its_ends_along_only() {
        // strips as wide as the slab, so only 400 − 20 = 380 counts: four of 80
        CutPlan plan = CutPlan.parse("80mm").orThrow().losing(0, 10, 0);

        Outcome<CutPlan.Cut> cut = plan.of(new Shape.Slab(400, 300, 25));
        assertThat(cut.problems()).isEmpty();
        assertThat(cut.orThrow().bars()).isEqualTo(4);
    }

    @Test
    void a_tube_is_cut_along_its_length() {
        CutPlan.Cut cut =
                CutPlan.parse("25mm").orThrow().of(new Shape.Tube(300, 76)).orThrow();

        assertThat(cut).isEqualTo(new CutPlan.Cut(12, 25 / 300.0));
    }

    @Test
    void cavities_are_not_cut() {
        Outcome<CutPlan.Cut> cut = CutPlan.parse("25mm").orThrow().of(new Shape.Cavities(12, 95));

        assertThat(cut.problems()).hasSize(1);
        assertThat(cut.problems().get(0).sentence()).isEqualTo("cavities are bars already; leave the cut out");
    }

    @Test
    void a_cut_that_leaves_no_whole_bar_is_refused() {
        assertThat(CutPlan.parse("301mm").orThrow().of(LOAF).problems()).hasSize(1);
        assertThat(CutPlan.parse("25mm").orThrow().losing(0, 140, 0).of(LOAF).problems())
                .as("20 mm are left between the ends")
                .hasSize(1);
        assertThat(CutPlan.parse("25mm").orThrow().losing(0, 0, 65).of(LOAF).problems())
                .as("all of the height is trimmed off")
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0mm | has no thickness",
                "25 | has no unit",
                "-25mm | is negative",
                "2,5cm | has a comma in its number",
                "thin | does not begin with a number",
                "60x0mm | has a side of no size",
                "60x80 | has no unit",
                "60x80x25mm | has 3 measures, not 2"
            })
    void a_cut_of_no_size_or_form_is_refused(String text, String reason) {
        Outcome<CutPlan> plan = CutPlan.parse(text);

        assertThat(plan.problems()).hasSize(1);
        assertThat(plan.problems().get(0).what()).contains(reason);
        assertThat(plan.problems().get(0).remedy()).isNotBlank();
    }

    @Test
    void bars_never_come_to_more_than_the_mould() {
        Random random = new Random(20261125);
        int cut = 0;
        for (int i = 0; i < 5000; i++) {
            Shape shape = shape(random, i);
            CutPlan plan = new CutPlan(
                    5 + random.nextInt(120),
                    random.nextBoolean() ? Optional.of(5.0 + random.nextInt(90)) : Optional.empty(),
                    random.nextInt(4),
                    random.nextInt(12),
                    random.nextInt(10));
            if (plan.of(shape) instanceof Outcome.Ok<CutPlan.Cut> ok) {
                cut++;
                assertThat(ok.value().bars()).as("case %d", i).isPositive();
                assertThat(ok.value().barShare()).as("case %d", i).isPositive();
                assertThat(ok.value().bars() * ok.value().barShare())
                        .as("case %d: %s of %s", i, plan, shape)
                        .isLessThanOrEqualTo(1 + 1e-9);
            }
        }
        assertThat(cut).isGreaterThan(3000);
    }

    private static Shape shape(Random random, int i) {
        double length = 60 + random.nextInt(500);
        return switch (i % 3) {
            case 0 -> new Shape.Loaf(length, 40 + random.nextInt(60), 30 + random.nextInt(60));
            case 1 -> new Shape.Slab(length, 60 + random.nextInt(300), 15 + random.nextInt(30));
            default -> new Shape.Tube(length, 40 + random.nextInt(60));
        };
    }
}
