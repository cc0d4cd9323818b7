package lyewright.why;

import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.why.Account.Equation;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** What was asked for, as a mould mass, and what the oils have to satisfy where they are found by trial. */
final class Target {

    static final String NONE =
            "No mould mass was asked for: the oils were, or the formula is made as written. So there is nothing to be off.";

    private final Ledger ledger;
    private final Fill fill;

    Target(Ledger ledger) {
        this.ledger = ledger;
        this.fill = ledger.sheet().fill();
    }

    static void addTo(Figures figures, Ledger ledger) {
        Optional<Double> target = ledger.sheet().totals().target();
        if (target.isEmpty()) {
            figures.absent("totals.targetGrams", "Mould mass aimed at", "g", NONE);
        } else {
            figures.add(
                    "totals.targetGrams", "Mould mass aimed at", "g", target.get(), () -> new Target(ledger).account());
        }
    }

    private Account account() {
        if (fill.target() instanceof Fill.MouldMass) {
            return new Account("As it was asked for.", asked());
        }
        if (fill.target() instanceof Fill.Bars bars && !bars.cured()) {
            return new Account("All bars together, and what the cut leaves over.", asked());
        }
        return new Account(
                        "Everything before rounding that reaches the mould. " + new Solved(ledger).sentence(),
                        reaching(Ledger.sum(ledger.lines(), Line::exact)))
                .holds(List.of(equation()));
    }

    /** A mould mass, or bars as cut. */
    Term asked() {
        if (fill.target() instanceof Fill.MouldMass mass) {
            return new Given("asked", mass.grams(), "g", "mould mass asked for", Sources.ASKED);
        }
        return bars((Fill.Bars) fill.target());
    }

    private Term bars(Fill.Bars bars) {
        Given each = new Given(
                "each", bars.grams(), "g", bars.cured() ? "one bar once cured" : "one bar as cut", Sources.ASKED);
        if (ledger.sheet().filled().cut().isPresent()) {
            return each.over(new Cutting(ledger).barShare());
        }
        return new Given("count", bars.count(), "", "bars asked for", Sources.ASKED).times(each);
    }

    private Term reaching(Term whole) {
        return fill.holdBack() == 0 ? whole : whole.times(Term.number(1).minus(Totals.heldBack(ledger)));
    }

    /** Cured mass or volume in the mould equals what was asked. */
    Equation equation() {
        if (fill.target() instanceof Fill.Bars bars) {
            Stage cured = reaching(new Cured(Reacting.exact(ledger), ledger.lines()).grams())
                    .as("cured in mould", "g", "what is in the mould, once cured");
            return new Equation(
                    cured, bars(bars).as("asked cured", "g", "what was asked"), "the cured mass is as asked");
        }
        Stage filled = reaching(new Batter(Reacting.exact(ledger)).millilitres())
                .as("batter in mould", "ml", "volume of what reaches the mould");
        return new Equation(
                filled, holds().as("mould holds", "ml", "what the mould takes"), "the batter fills the mould");
    }

    /** What the mould holds, by the best of what is known. */
    private Term holds() {
        Mould mould = fill.mould();
        if (mould.usual().isPresent()) {
            return new Given(
                    "usual volume",
                    usualMillilitres(mould.usual().get()),
                    "ml",
                    "volume that the usual mass, "
                            + Digits.figure(mould.usual().get().grams())
                            + " g, has of the formula it was measured with",
                    Sources.ASKED);
        }
        return mould.waterFillGrams().isPresent()
                ? new Given(
                                "water fill",
                                mould.waterFillGrams().get(),
                                "g",
                                "water that fills the mould",
                                Sources.ASKED)
                        .over(Batter.waterDensity())
                : Shapes.millilitres(mould.shape().orElseThrow());
    }

    private double usualMillilitres(Mould.Usual usual) {
        double oils = usual.of().oilsFor(usual.grams() / (1 - fill.holdBack()));
        return (1 - fill.holdBack())
                * lyewright.chemistry.BatterVolume.millilitres(
                        usual.of(), usual.of().massesAt(oils));
    }
}
