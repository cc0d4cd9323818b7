package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.fill.CutPlan;
import lyewright.fill.Shape;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.LengthUnit;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

class MouldPictureTest {

    private static final CutPlan USUAL = Cases.cut("25mm", 1, 5, 3);

    @Test
    void a_loaf_has_its_bars_numbered_and_its_sides_measured() {
        Picture picture = Cases.of("300x80x65mm", USUAL);
        List<String> texts = Drawn.of(picture.drawing()).texts();

        assertThat(texts)
                .containsExactly("1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "300 mm", "65 mm", "80 mm");
        assertThat(picture.sentence()).isEqualTo("11 bars, 25 mm thick.");
    }

    @Test
    void pieces_cuts_ends_and_what_is_left_are_the_whole_side() {
        Random random = new Random(4);
        for (int i = 0; i < 2000; i++) {
            double side = 1 + random.nextInt(1000);
            double piece = 1 + random.nextInt(80);
            double blade = random.nextInt(3) * 0.7;
            double ends = random.nextInt(12);
            Optional<Pieces> pieces = Pieces.along(side, piece, blade, ends);
            Outcome<CutPlan.Cut> engine =
                    new CutPlan(piece, Optional.empty(), blade, ends, 0).of(new Shape.Loaf(side, 10, 10));
            assertThat(pieces.isPresent()).isEqualTo(engine instanceof Outcome.Ok);
            pieces.ifPresent(p -> {
                assertThat(p.count()).isEqualTo(engine.orThrow().bars());
                assertThat(p.first() + p.count() * p.piece() + (p.count() - 1) * p.blade() + p.leftOver() + ends)
                        .isCloseTo(side, within(1e-6));
                assertThat(p.leftOver()).isLessThan(p.piece() + p.blade());
                assertThat(p.end()).isLessThanOrEqualTo(side);
            });
        }
    }

    @Test
    void a_slab_is_cut_in_the_engines_number_of_bars() {
        Shape.Slab slab = new Shape.Slab(400, 300, 40);
        CutPlan plan = Cases.cut("60x80mm", 1, 0, 2);
        Picture picture = MouldPicture.of(slab, Optional.of(plan), LengthUnit.MILLIMETRE);

        assertThat(plan.of(slab).orThrow().bars()).isEqualTo(18);
        assertThat(picture.sentence()).isEqualTo("18 bars in 3 rows of 6, 60 mm by 80 mm.");
        List<Double> lengthwise = Drawn.points(
                Drawn.of(picture.drawing()).with("path", "cut").get(0).getAttribute("d"));
        assertThat(lengthwise).as("five cuts, each of two lines of two points").hasSize(5 * 2 * 4);
    }

    @Test
    void a_cut_that_gives_nothing_is_said_and_nothing_is_cut() {
        Picture picture = Cases.of("300x80x65mm", Cases.cut("400mm", 1, 5, 3));

        assertThat(picture.sentence()).isEqualTo("No whole bar comes out of the mould with this cut.");
        assertThat(Drawn.of(picture.drawing()).with("path", "cut")).isEmpty();
        assertThat(Drawn.of(picture.drawing()).with("path", "h")).isEmpty();
    }

    @Test
    void cavities_are_counted_and_never_cut() {
        Picture picture =
                MouldPicture.of(Shape.parseCavities("12x95ml").orThrow(), Optional.empty(), LengthUnit.MILLIMETRE);
        assertThat(Drawn.of(picture.drawing()).with("path", "f-soft")).hasSize(12);
        assertThat(picture.sentence()).isEqualTo("12 cavities of 95 ml.");

        Picture cut =
                MouldPicture.of(Shape.parseCavities("12x95ml").orThrow(), Optional.of(USUAL), LengthUnit.MILLIMETRE);
        assertThat(cut.sentence()).startsWith("Cavities are bars already.");
    }

    @Test
    void more_cavities_than_can_be_drawn_are_told() {
        Picture picture =
                MouldPicture.of(Shape.parseCavities("10000x1ml").orThrow(), Optional.empty(), LengthUnit.MILLIMETRE);
        Drawn drawn = Drawn.of(picture.drawing());
        int circles = drawn.with("path", "f-soft").size();
        assertThat(drawn.texts()).contains("and " + (10_000 - circles) + " more");
    }

    @Test
    void the_soap_stands_as_high_as_the_sheet_fills_the_mould() {
        MakingSheet sheet = Cases.sheet("half a loaf");
        double full = sheet.filled().mouldSays().get(0).grams();
        double level = sheet.totals().mould() / full;
        Drawn drawn = Drawn.of(
                MouldPicture.of(sheet, LengthUnit.MILLIMETRE).orElseThrow().drawing());
        List<Double> brim =
                Drawn.points(drawn.with("path", "f-clear mould").get(1).getAttribute("d"));
        List<Double> soap = Drawn.points(drawn.with("path", "f-soft").get(0).getAttribute("d"));

        assertThat(level).isBetween(0.5, 0.7);
        assertThat(high(soap) / high(brim)).isCloseTo(level, within(0.005));
        assertThat(MouldPicture.of(sheet, LengthUnit.MILLIMETRE).orElseThrow().sentence())
                .contains("Filled to " + Math.round(100 * level) + " %.");
    }

    /** Of a face's outline: from its first point up to its last. */
    private static double high(List<Double> outline) {
        return outline.get(1) - outline.get(7);
    }

    @Test
    void a_batch_that_runs_over_is_told() {
        Picture picture = MouldPicture.of(Cases.sheet("a loaf and a half"), LengthUnit.MILLIMETRE)
                .orElseThrow();
        assertThat(picture.sentence()).contains("It runs over");
        assertThat(Drawn.of(picture.drawing()).with("path", "level")).hasSize(1);
    }

    @Test
    void measures_may_be_in_inches() {
        Picture picture = MouldPicture.of(Cases.loaf("12x3.25x2.75in"), Optional.empty(), LengthUnit.INCH);
        assertThat(Drawn.of(picture.drawing()).texts()).containsExactlyInAnyOrder("12 in", "3.25 in", "2.75 in");
    }

    @Test
    void a_sheet_without_a_mould_has_no_picture_of_one() {
        assertThat(MouldPicture.of(Cases.sheet("one gram"), LengthUnit.MILLIMETRE))
                .isEmpty();
    }

    @Test
    void a_mould_of_unmeasured_shape_is_dashed_and_says_what_it_takes() {
        Drawn drawn = Drawn.of(UnmeasuredView.of("1453 ml").drawing());

        assertThat(drawn.texts()).containsExactly("1453 ml");
        assertThat(drawn.with("path", "f-clear o o-dash")).hasSize(1);
    }
}
