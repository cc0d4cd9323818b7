package lyewright.why;

import lyewright.fill.CutPlan;
import lyewright.fill.Shape;
import lyewright.why.Term.Given;

/** How a mould's content is cut: how many bars, and one bar's share of it. */
final class Cutting {

    private final CutPlan plan;
    private final Shape shape;

    Cutting(Ledger ledger) {
        this.plan = ledger.sheet().fill().cut().orElseThrow();
        this.shape = ledger.sheet().fill().mould().shape().orElseThrow();
    }

    private Given thickness() {
        return Shapes.measure("thickness", plan.thickness(), "thickness of a bar");
    }

    private Given blade() {
        return Shapes.measure("blade", plan.blade(), "what a cut takes away");
    }

    private Given length() {
        if (shape instanceof Shape.Loaf loaf) {
            return Shapes.length(loaf.length());
        }
        return Shapes.length(shape instanceof Shape.Tube tube ? tube.length() : ((Shape.Slab) shape).length());
    }

    private Given across(Shape.Slab slab) {
        return Shapes.measure("across", plan.across().orElse(slab.width()), "a bar's side along the width");
    }

    /** Whole bars: between two there is a cut, and after the last one too unless it ends where the soap does. */
    Term count() {
        Term usable = length();
        if (plan.ends() > 0) {
            usable =
                    usable.minus(Term.number(2).times(Shapes.measure("ends", plan.ends(), "what is cut off each end")));
        }
        Term along = pieces(usable, thickness());
        return shape instanceof Shape.Slab slab ? along.times(pieces(Shapes.width(slab.width()), across(slab))) : along;
    }

    private Term pieces(Term usable, Term piece) {
        return plan.blade() > 0
                ? Term.call(Function.WHOLE, usable.plus(blade()).over(piece.plus(blade())))
                : Term.call(Function.WHOLE, usable.over(piece));
    }

    /** One bar's share of what is in the mould. */
    Term barShare() {
        Term share = thickness().over(length());
        if (shape instanceof Shape.Slab slab) {
            share = share.times(across(slab)).over(Shapes.width(slab.width()));
        }
        if (plan.trim() > 0 && !(shape instanceof Shape.Tube)) {
            Given height = height();
            Given trim = Shapes.measure("trim", plan.trim(), "what is planed off the top");
            share = share.times(height.minus(trim)).over(height);
        }
        return share.as("bar share", "", "one bar's share of what is in the mould");
    }

    private Given height() {
        return Shapes.height(shape instanceof Shape.Loaf loaf ? loaf.height() : ((Shape.Slab) shape).height());
    }
}
