package lyewright.why;

import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.fill.Shape;
import lyewright.makingsheet.MakingSheet;
import lyewright.why.Term.Given;

/** What comes out of the mould. */
final class Bars {

    private static final String NONE =
            "Nothing says how many bars there are: ask for so many bars, or give cavities, or a mould's measures and its cut.";

    private static final String OVERFULL = "The batch is more than the mould holds: bars like that would not fit it.";

    private final Ledger ledger;
    private final MakingSheet.Bars bars;

    private Bars(Ledger ledger, MakingSheet.Bars bars) {
        this.ledger = ledger;
        this.bars = bars;
    }

    static void addTo(Figures figures, Ledger ledger) {
        Optional<MakingSheet.Bars> bars = ledger.sheet().bars();
        if (bars.isPresent()) {
            new Bars(ledger, bars.get()).addTo(figures);
        } else {
            boolean fits = ledger.sheet().filled().takes(ledger.sheet().totals().mould());
            figures.absent("bars", "What comes out of the mould", "", fits ? NONE : OVERFULL);
        }
    }

    private void addTo(Figures figures) {
        figures.add("bars.count", "Bars to sell", "", bars.count(), this::count);
        figures.add("bars.cutGrams", "One bar as cut", "g", bars.cutGrams(), this::cut);
        figures.add("bars.curedGrams", "One bar once cured", "g", bars.curedGrams(), this::cured);
        figures.add("bars.offcutsGrams", "What the cut leaves over", "g", bars.offcutsGrams(), this::offcuts);
    }

    private boolean isCut() {
        return ledger.sheet().filled().cut().isPresent();
    }

    private Account count() {
        if (isCut()) {
            return new Account("As many whole bars as the mould's length gives.", new Cutting(ledger).count());
        }
        Fill fill = ledger.sheet().fill();
        return new Account(
                "As it was asked for.",
                fill.target() instanceof Fill.Bars asked
                        ? new Given("asked", asked.count(), "", "bars asked for", Sources.ASKED)
                        : Shapes.cavities((Shape.Cavities) fill.mould().shape().orElseThrow()));
    }

    private Given mould() {
        return Ledger.figure(
                "mould", "totals.mouldGrams", ledger.sheet().totals().mould(), "g", "what reaches the mould");
    }

    private Given countFigure() {
        return Ledger.figure("count", "bars.count", bars.count(), "", "bars");
    }

    private Account cut() {
        return isCut()
                ? new Account("One bar's share of what is in the mould.", mould().times(new Cutting(ledger).barShare()))
                : new Account("What is in the mould, shared out.", mould().over(countFigure()));
    }

    private Given cutFigure() {
        return Ledger.figure("cut", "bars.cutGrams", bars.cutGrams(), "g", "one bar as cut");
    }

    private Account cured() {
        Cured cured = new Cured(Reacting.asWeighed(ledger), ledger.lines());
        return new Account(
                        "A bar as cut, less the water it loses until water is the cured bar's share of it.",
                        cutFigure().times(cured.grams()).over(cured.poured()))
                .note("How long that takes is not said here; soap is judged dry at the formula's cured water.");
    }

    private Account offcuts() {
        return new Account(
                "What is in the mould less all bars: ends, trim and what the blade takes.",
                Term.call(
                        Function.MAX,
                        Term.number(0),
                        mould().minus(countFigure().times(cutFigure()))));
    }
}
