package lyewright.why;

import lyewright.fill.Shape;
import lyewright.why.Term.Given;

/** A mould's measures. */
final class Shapes {

    private Shapes() {}

    static Given measure(String name, double millimetres, String meaning) {
        return new Given(name, millimetres, "mm", meaning, Sources.ASKED);
    }

    /** What it holds. */
    static Term millilitres(Shape shape) {
        if (shape instanceof Shape.Loaf loaf) {
            return box(loaf.length(), loaf.width(), loaf.height());
        }
        if (shape instanceof Shape.Slab slab) {
            return box(slab.length(), slab.width(), slab.height());
        }
        if (shape instanceof Shape.Tube tube) {
            return tube(tube);
        }
        Shape.Cavities cavities = (Shape.Cavities) shape;
        return cavities(cavities)
                .times(new Given("each", cavities.each(), "ml", "what one cavity holds", Sources.ASKED));
    }

    static Given cavities(Shape.Cavities cavities) {
        return new Given("cavities", cavities.count(), "", "how many cavities", Sources.ASKED);
    }

    private static Term box(double length, double width, double height) {
        return length(length).times(width(width)).times(height(height)).over(Term.number(Shape.CUBIC_MILLIMETRES));
    }

    private static Term tube(Shape.Tube tube) {
        Given diameter = measure("diameter", tube.diameter(), "inside diameter of the mould");
        Given pi = new Given("pi", Math.PI, "", "the circle's", "mathematics");
        return length(tube.length())
                .times(pi)
                .times(diameter)
                .times(diameter)
                .over(Term.number(4))
                .over(Term.number(Shape.CUBIC_MILLIMETRES));
    }

    static Given length(double millimetres) {
        return measure("length", millimetres, "inside length of the mould");
    }

    static Given width(double millimetres) {
        return measure("width", millimetres, "inside width of the mould");
    }

    static Given height(double millimetres) {
        return measure("height", millimetres, "inside height of the mould");
    }
}
