package lyewright.picture;

import java.util.List;
import java.util.function.Predicate;
import lyewright.picture.Mark.Anchor;

/** Masses one on top of another, each with its words beside it. */
final class MassColumn {

    static final double LINE = 17;
    private static final double THIN = 1.5;

    private final Canvas canvas;
    private final List<MassPart> parts;
    private final double x;
    private final double wide;
    private final double foot;
    private final double scale;
    private final Masses masses;

    MassColumn(Canvas canvas, List<MassPart> parts, double x, double wide, double foot, double scale, Masses masses) {
        this.canvas = canvas;
        this.parts = parts;
        this.x = x;
        this.wide = wide;
        this.foot = foot;
        this.scale = scale;
        this.masses = masses;
    }

    void draw() {
        double y = foot;
        for (MassPart part : parts) {
            double high = part.grams() * scale;
            y -= high;
            String outlined = high < THIN ? "" : " o";
            canvas.textured(part.style().style + outlined, part.style().texture, x, y, wide, high);
        }
    }

    /** Where the parts that pass a test end, counted from the foot. */
    double top(int count) {
        return foot
                - scale
                        * parts.stream()
                                .limit(count)
                                .mapToDouble(MassPart::grams)
                                .sum();
    }

    int count(Predicate<MassStyle> test) {
        return (int) parts.stream().filter(part -> test.test(part.style())).count();
    }

    /** Words and masses, as near to their parts as they have room, between two heights. */
    void label(boolean left, double from, double to) {
        double[] wanted = new double[parts.size()];
        double[] sizes = new double[parts.size()];
        double y = foot;
        for (int i = 0; i < wanted.length; i++) {
            double high = parts.get(i).grams() * scale;
            wanted[i] = y - high / 2;
            sizes[i] = LINE;
            y -= high;
        }
        double[] placed = Spread.of(wanted, sizes, from, to);
        double edge = left ? x : x + wide;
        double out = left ? -1 : 1;
        for (int i = 0; i < placed.length; i++) {
            MassPart part = parts.get(i);
            canvas.path(
                    "lead",
                    "M" + at(edge + out, wanted[i]) + "L" + at(edge + out * 4, wanted[i]) + "L"
                            + at(edge + out * 11, placed[i]));
            String style = part.style() == MassStyle.FREE_ALKALI ? "t t-stop" : "t";
            canvas.text(
                    style,
                    edge + out * 14,
                    placed[i] + 4.5,
                    left ? Anchor.END : Anchor.START,
                    part.words() + " " + masses.say(part.grams()));
        }
    }

    private static String at(double x, double y) {
        return Texture.Place.FLAT.at(x, y);
    }
}
