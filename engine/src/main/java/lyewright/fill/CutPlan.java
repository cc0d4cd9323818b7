package lyewright.fill;

import java.util.Optional;
import lyewright.measure.Length;
import lyewright.measure.Outcome;

/**
 * How a loaf, slab or tube is cut into bars. All in millimetres.
 *
 * @param thickness of a bar along the mould's length
 * @param across of a bar along a slab's width; empty for a loaf, whose bars are as wide as it is
 * @param blade what a cut takes away
 * @param ends what is cut off each end first
 * @param trim what is planed off the top
 */
public record CutPlan(double thickness, Optional<Double> across, double blade, double ends, double trim) {

    /** As many as cavities: more is a wrong unit, and more than counts can hold. */
    private static final int MOST_BARS = 10_000;

    /**
     * Reads {@code 25mm}, or {@code 60x80mm} for a slab's grid; nothing lost to blade, ends or trim.
     *
     * @param text the text
     * @return the plan, or why not
     */
    public static Outcome<CutPlan> parse(String text) {
        if (Shape.times(text) > 0) {
            return Shape.sides(text, 2, "60x80mm")
                    .then(s -> Outcome.ok(new CutPlan(s.get(0), Optional.of(s.get(1)), 0, 0, 0)));
        }
        return Length.parse(text).then(CutPlan::ofThickness);
    }

    private static Outcome<CutPlan> ofThickness(Length length) {
        return length.millimetres() > 0
                ? Outcome.ok(new CutPlan(length.millimetres(), Optional.empty(), 0, 0, 0))
                : Outcome.refused("a bar of " + length + " has no thickness", "write it as 25mm");
    }

    /**
     * The same plan with what is lost.
     *
     * @param bladeMillimetres a cut takes away
     * @param endsMillimetres cut off each end
     * @param trimMillimetres planed off the top
     * @return the plan
     */
    public CutPlan losing(double bladeMillimetres, double endsMillimetres, double trimMillimetres) {
        return new CutPlan(thickness, across, bladeMillimetres, endsMillimetres, trimMillimetres);
    }

    /**
     * What a plan makes of a mould.
     *
     * @param bars whole bars
     * @param barShare one bar's share of what is in the mould, 0 to 1
     */
    public record Cut(int bars, double barShare) {}

    /**
     * Cuts a mould that is filled to the brim.
     *
     * @param shape the mould
     * @return the bars, or why there are none
     */
    public Outcome<Cut> of(Shape shape) {
        if (shape instanceof Shape.Loaf loaf) {
            return along(loaf.length(), 1, 1, trimmed(loaf.height()));
        }
        if (shape instanceof Shape.Tube tube) {
            return along(tube.length(), 1, 1, 1);
        }
        if (shape instanceof Shape.Slab slab) {
            double second = across.orElse(slab.width());
            double rows = pieces(slab.width(), second, 0);
            return along(slab.length(), rows, second / slab.width(), trimmed(slab.height()));
        }
        return Outcome.refused("cavities are bars already", "leave the cut out");
    }

    private Outcome<Cut> along(double length, double rows, double acrossShare, double heightShare) {
        double bars = pieces(length, thickness, ends) * rows;
        if (bars < 1 || heightShare <= 0) {
            return Outcome.refused(
                    "no whole bar comes out of the mould with this cut", "cut thinner, or lose less to ends and trim");
        }
        if (bars > MOST_BARS) {
            return Outcome.refused(
                    "this cut makes more than " + MOST_BARS + " bars of the mould",
                    "see that the bar's measures have the right unit");
        }
        return Outcome.ok(new Cut((int) bars, thickness / length * acrossShare * heightShare));
    }

    /** Whole pieces: between two there is a cut, and after the last one too unless it ends where the soap does. */
    private double pieces(double length, double piece, double lostAtEachEnd) {
        double usable = length - 2 * lostAtEachEnd + blade;
        return Math.floor(usable / (piece + blade) + 1e-9);
    }

    private double trimmed(double height) {
        return (height - trim) / height;
    }
}
