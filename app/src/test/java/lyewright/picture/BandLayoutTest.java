package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Bands of every kind: no word of a drawing lies on another, on a line of zero or over the edge of the side where alkali is left. */
class BandLayoutTest {

    private static final int CASES = 3000;

    /** What a line of text reaches above and below its baseline, in letters' sizes. */
    private static final double ABOVE = 0.72;

    private static final double BELOW = 0.22;

    private static BandFigures band(Random random) {
        double scale = Math.pow(10, -1 + 3 * random.nextDouble());
        double sheet = scale * (random.nextDouble() - 0.4);
        double width = random.nextInt(5) == 0 ? 0 : scale * Math.pow(random.nextDouble(), 3);
        double low = sheet - width * random.nextDouble();
        double high = sheet + width * random.nextDouble();
        return new BandFigures(low, high, low - width * random.nextDouble(), sheet);
    }

    private static final List<Drawing> DRAWINGS = drawings();

    private static List<Drawing> drawings() {
        Random random = new Random(20261128);
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < CASES; i++) {
            BandFigures band = band(random);
            Optional<Double> asked = random.nextBoolean() ? Optional.of(60 * random.nextDouble()) : Optional.empty();
            drawings.add(SuperfatPicture.drawing(band, asked, band + " " + asked));
            drawings.add(ComparePicture.drawing(band, "A", band(random), "B", band.toString()));
        }
        return drawings;
    }

    /** A part of the drawing that something covers. */
    private record Area(String what, double left, double top, double right, double bottom) {

        static Area of(Mark.Text text) {
            return new Area(
                    text.text(),
                    text.left(),
                    text.y() - ABOVE * text.size(),
                    text.right(),
                    text.y() + BELOW * text.size());
        }

        static Area of(Mark.Path line) {
            List<Double> p = Drawn.points(line.d());
            return new Area(
                    line.style(),
                    Math.min(p.get(0), p.get(2)) - 1,
                    Math.min(p.get(1), p.get(3)),
                    Math.max(p.get(0), p.get(2)) + 1,
                    Math.max(p.get(1), p.get(3)));
        }

        boolean meets(Area other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        /** Lies partly in it and partly beside it. */
        boolean straddles(Area other) {
            return meets(other) && (left < other.left || right > other.right);
        }
    }

    private static List<Area> texts(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> Area.of((Mark.Text) mark))
                .toList();
    }

    private static List<Area> lines(Drawing drawing, List<String> styles) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Path && styles.contains(mark.style()))
                .map(mark -> Area.of((Mark.Path) mark))
                .toList();
    }

    private static List<Area> sides(Drawing drawing) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Box && mark.style().equals("side"))
                .map(mark -> (Mark.Box) mark)
                // words reach a little beyond the scale's end, on the drawing's ground
                .map(box -> new Area("side", 0, box.y(), box.x() + box.width(), box.y() + box.height()))
                .toList();
    }

    @Test
    void nothing_that_is_written_lies_on_anything_else() {
        for (Drawing drawing : DRAWINGS) {
            List<Area> texts = texts(drawing);
            assertThat(texts).hasSizeGreaterThan(5);
            for (int i = 0; i < texts.size(); i++) {
                Area text = texts.get(i);
                String where = text.what + " of " + drawing.description();
                assertThat(text.left).as(where).isNotNegative();
                assertThat(text.right).as(where).isLessThanOrEqualTo(drawing.width());
                assertThat(texts.subList(0, i).stream().filter(text::meets))
                        .as(where)
                        .isEmpty();
                assertThat(lines(drawing, List.of("zero", "now", "lead", "asked")).stream()
                                .filter(text::meets))
                        .as(where)
                        .isEmpty();
                assertThat(sides(drawing).stream().filter(text::straddles))
                        .as(where)
                        .isEmpty();
            }
        }
    }

    @Test
    void what_the_sides_of_zero_are_called_stands_on_every_scale_in_the_same_place_beside_it() {
        for (Drawing drawing : DRAWINGS) {
            List<Area> texts = texts(drawing);
            List<Area> zeros = lines(drawing, List.of("zero"));
            double zero = zeros.get(0).left + 1;
            Area before = only(texts, "alkali left over");
            Area after = only(texts, "superfat, %");
            assertThat(zero - before.right).isBetween(5.9, 6.1);
            assertThat(after.left - zero).isBetween(5.9, 6.1);
            assertThat(zeros).allSatisfy(line -> assertThat(line.left + 1).isBetween(zero - 0.01, zero + 0.01));
        }
    }

    private static Area only(List<Area> texts, String what) {
        List<Area> found = texts.stream().filter(text -> text.what.equals(what)).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }
}
