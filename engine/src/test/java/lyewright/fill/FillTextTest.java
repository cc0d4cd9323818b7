package lyewright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lyewright.fill.FillText.Part;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FillTextTest {

    private static final Mould LOAF = FillText.mould("300x80x65mm").orThrow();
    private static final CutPlan PLAN = CutPlan.parse("25mm").orThrow().losing(1, 5, 3);

    // A mould in one line

    @Test
    void a_mould_in_one_line_is_known_by_what_is_measured() {
        assertThat(LOAF.shape()).contains(new Shape.Loaf(300, 80, 65));
        assertThat(FillText.mould("30 x 8 x 6.5 cm").orThrow()).isEqualTo(LOAF);
        assertThat(FillText.mould("300x76mm").orThrow().shape()).contains(new Shape.Tube(300, 76));
        assertThat(FillText.mould("12x95ml").orThrow().shape()).contains(new Shape.Cavities(12, 95));
        assertThat(FillText.mould("6 × 0.1 l").orThrow().shape()).contains(new Shape.Cavities(6, 100));
        assertThat(FillText.mould("1450 g of water").orThrow().waterFillGrams()).contains(1450.0);
        assertThat(FillText.mould("1.2 l").orThrow().shape()).contains(new Shape.Cavities(1, 1200));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                " 300 X 80 X 65 MM ",
                "300 by 80 by 65 mm",
                "300*80*65 mm",
                "30cm × 8cm × 65mm",
                "My loaf: 300 x 80 x 65 mm",
                "box 300\u00a0x\u00a080\u00a0x\u00a065\u00a0mm"
            })
    void a_mould_is_understood_as_people_write_it(String text) {
        assertThat(FillText.mould(text).orThrow()).isEqualTo(LOAF);
    }

    /** The three spellings are those that makers in inches use. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10 x 3 1/2 x 2 3/4 in | 254 | 88.9 | 69.85",
                "10 x 3½ x 2¾ in | 254 | 88.9 | 69.85",
                "10 x 3-1/2 x 2-3/4 inches | 254 | 88.9 | 69.85",
                "10 in. by 3 1/2 in. by 2 3/4 in. | 254 | 88.9 | 69.85",
                "loaf: 9 1/2 x 4 x 2 1/2 in | 241.3 | 101.6 | 63.5"
            })
    void a_mould_is_measured_in_parts_of_an_inch(String text, double length, double width, double height) {
        Shape.Loaf loaf = (Shape.Loaf) FillText.mould(text).orThrow().shape().orElseThrow();
        assertThat(loaf.length()).isCloseTo(length, within(1e-9));
        assertThat(loaf.width()).isCloseTo(width, within(1e-9));
        assertThat(loaf.height()).isCloseTo(height, within(1e-9));
    }

    @Test
    void every_way_of_saying_how_much_reads_parts_of_an_inch_or_an_ounce() {
        assertThat(FillText.mould("3 1/2 lb water").orThrow().waterFillGrams().orElseThrow())
                .isCloseTo(1587.573295, within(1e-9));
        assertThat(FillText.mould("3 lb 8 oz of water")
                        .orThrow()
                        .waterFillGrams()
                        .orElseThrow())
                .isCloseTo(1587.573295, within(1e-9));
        assertThat(FillText.mass("2 1/2 lb").orThrow()).hasToString("2.5 lb");
        assertThat(FillText.bars("10 bars of 4½ oz", false).orThrow())
                .isEqualTo(new Fill.Bars(10, 4.5 * 28.349523125, false));
        Fill fill = read(
                        Map.of(Part.BOX, "10 x 3 1/2 x 2½ in", Part.CUT, "1 inch", Part.BLADE, "1/16\""),
                        Mould.UNKNOWN,
                        Optional.empty())
                .orThrow();
        assertThat(fill.mould().shape().orElseThrow().millilitres()).isCloseTo(1433.868, within(0.001));
        assertThat(fill.cut()).contains(CutPlan.parse("25.4mm").orThrow().losing(1.5875, 0, 0));
    }

    @Test
    void a_box_that_is_called_a_slab_or_a_tray_is_one() {
        assertThat(FillText.mould("slab 400x300x40mm").orThrow().shape()).contains(new Shape.Slab(400, 300, 40));
        assertThat(FillText.mould("a tray, 400x300x40mm").orThrow().shape()).contains(new Shape.Slab(400, 300, 40));
        assertThat(FillText.mould("tube 30 x 7.6 cm").orThrow().shape()).contains(new Shape.Tube(300, 76));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "300x80x65 | has no unit",
                "300x80x65x20mm | has 4 measures, not 3",
                "300x0x65mm | has a side of no size",
                "0.1mm x 1mm x 1mm | is too small",
                "12.5x95ml | is no count",
                "12x0ml | holds nothing",
                "300x76 | has no unit",
                "long loaf | does not say what the mould holds",
                "a loaf | does not say what the mould holds",
                "0 l | is too small",
                "1450 g | does not say what the mould holds",
                "1450 water | has no unit",
                "0g water | is too small",
                "20000kg water | is too large",
                "99999x99999x99999mm | is too large"
            })
    void a_mould_that_cannot_be_is_refused(String text, String reason) {
        assertThat(FillText.mould(text).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.what()).contains(reason));
    }

    // A mould that is known, and its cut

    @Test
    void a_known_mould_is_filled_and_cut_as_planned_unless_told_otherwise() {
        Fill fill = read(Map.of(), LOAF, Optional.of(PLAN)).orThrow();

        assertThat(fill).isEqualTo(new Fill(new Fill.FullMould(), LOAF, Optional.of(PLAN), Fill.USUAL_HOLD_BACK));
    }

    @Test
    void another_thickness_loses_to_blade_and_ends_what_the_plan_does() {
        Fill fill = read(Map.of(Part.CUT, "30mm", Part.TRIM, "0mm"), LOAF, Optional.of(PLAN))
                .orThrow();

        assertThat(fill.cut()).contains(CutPlan.parse("30mm").orThrow().losing(1, 5, 0));
    }

    @Test
    void a_loss_alone_changes_the_plan() {
        Fill fill = read(Map.of(Part.BLADE, "2mm"), LOAF, Optional.of(PLAN)).orThrow();

        assertThat(fill.cut()).contains(PLAN.losing(2, 5, 3));
    }

    @Test
    void a_box_cut_in_a_grid_is_a_slab_whether_typed_or_known() {
        Fill known = read(Map.of(Part.CUT, "60x80mm"), LOAF, Optional.empty()).orThrow();
        Fill typed = read(Map.of(Part.BOX, "300x80x65mm", Part.CUT, "60x80mm"), Mould.UNKNOWN, Optional.empty())
                .orThrow();

        assertThat(known.mould().shape()).contains(new Shape.Slab(300, 80, 65));
        assertThat(typed).isEqualTo(known);
    }

    @Test
    void a_planned_cut_that_gives_another_number_of_bars_is_a_problem_of_the_bars() {
        assertRefused(Map.of(Part.BARS, "9x110g"), "bars", "this mould and cut give 11 bars, not 9");
    }

    @Test
    void a_cut_typed_wrongly_is_not_taken_for_the_plan() {
        assertRefused(Map.of(Part.CUT, "thick"), "cut", "does not begin with a number");
    }

    // What is wrong is said of the part it is wrong in

    @Test
    void several_ways_of_saying_how_much_do_not_go_together() {
        assertRefused(Map.of(Part.TOTAL, "1kg", Part.OILS, "1kg"), "oils", "cannot stand beside total");
    }

    @Test
    void everything_that_is_wrong_is_said_at_once() {
        Outcome<Fill> refused = read(
                Map.of(Part.TOTAL, "much", Part.HOLD_BACK, "100 %", Part.BLADE, "1 mile"), LOAF, Optional.of(PLAN));

        assertThat(refused.problems()).extracting("path").containsExactly("total", "blade", "hold back");
    }

    @Test
    void a_cut_of_a_mould_without_measures_is_refused() {
        Mould water = FillText.mould("1450g water").orThrow();

        assertThat(read(Map.of(Part.CUT, "25mm"), water, Optional.empty()).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.path()).isEqualTo("cut");
                    assertThat(problem.remedy()).isEqualTo("give box or tube too");
                });
    }

    private static void assertRefused(Map<Part, String> texts, String path, String what) {
        assertThat(read(texts, LOAF, Optional.of(PLAN)).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.path()).isEqualTo(path);
                    assertThat(problem.what()).contains(what);
                });
    }

    private static Outcome<Fill> read(Map<Part, String> texts, Mould known, Optional<CutPlan> planned) {
        return FillText.read(new Texts(texts), known, planned);
    }

    /** Parts called by their own names. */
    private record Texts(Map<Part, String> texts) implements FillText.Typed {

        private Texts {
            Map<Part, String> copy = new EnumMap<>(Part.class);
            copy.putAll(texts);
            texts = copy;
        }

        @Override
        public Optional<String> text(Part part) {
            return Optional.ofNullable(texts.get(part));
        }

        @Override
        public String called(Part part) {
            return part.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
