package lyewright.picture;

import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Shape;
import lyewright.measure.LengthUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.words.Figures;

/**
 * What is drawn of a mould besides its measures.
 *
 * @param plan how it is cut, if it is
 * @param cut what the engine makes of that; empty where nothing is cut or no bar comes out
 * @param along the bars along its length
 * @param across the bars across a slab
 * @param level how full it is, 1 to the brim; empty where nobody asked
 * @param unit of its measures
 * @param trouble why the cut gives nothing; empty where it gives bars
 */
record MouldFacts(
        Optional<CutPlan> plan,
        Optional<CutPlan.Cut> cut,
        Optional<Pieces> along,
        Optional<Pieces> across,
        Optional<Double> level,
        LengthUnit unit,
        Optional<Problem> trouble) {

    /** More than so much over the brim is drawn as so much. */
    private static final double HIGHEST = 1.5;

    private static final double LOWEST = 0.02;

    static MouldFacts of(Shape shape, Optional<CutPlan> plan, Optional<Double> level, LengthUnit unit) {
        Optional<Outcome<CutPlan.Cut>> tried = plan.map(p -> p.of(shape));
        Optional<CutPlan.Cut> cut = tried.flatMap(
                t -> t instanceof Outcome.Ok<CutPlan.Cut> ok ? Optional.of(ok.value()) : Optional.empty());
        Optional<Problem> trouble = tried.flatMap(t -> t.problems().stream().findFirst());
        Optional<Pieces> along = cut.isPresent() ? along(shape, plan.orElseThrow()) : Optional.empty();
        Optional<Pieces> across = cut.isPresent() ? across(shape, plan.orElseThrow()) : Optional.empty();
        return new MouldFacts(plan, cut, along, across, level, unit, trouble);
    }

    private static Optional<Pieces> along(Shape shape, CutPlan plan) {
        double side = shape instanceof Shape.Loaf loaf
                ? loaf.length()
                : shape instanceof Shape.Slab slab ? slab.length() : ((Shape.Tube) shape).length();
        return Pieces.along(side, plan.thickness(), plan.blade(), plan.ends());
    }

    private static Optional<Pieces> across(Shape shape, CutPlan plan) {
        return shape instanceof Shape.Slab slab
                ? Pieces.along(slab.width(), plan.across().orElse(slab.width()), plan.blade(), 0)
                : Optional.empty();
    }

    /** How full it is drawn. */
    double drawnLevel() {
        return Math.max(LOWEST, Math.min(HIGHEST, level.orElse(1.0)));
    }

    double trim() {
        return cut.isPresent() ? plan.orElseThrow().trim() : 0;
    }

    /** A length in the unit that is wanted. */
    String say(double millimetres) {
        return Figures.upTo(millimetres / unit.millimetres(), unit == LengthUnit.MILLIMETRE ? 1 : 2) + " "
                + unit.symbol();
    }
}
