package lyewright.why;

import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.why.Term.Given;

/** The mould mass asked for. */
final class Target {

    static final String NONE =
            "No mould mass was asked for: the oils were, or the formula is made as written. So there is nothing to be off.";

    private Target() {}

    static void addTo(Figures figures, Ledger ledger) {
        Optional<Double> target = ledger.sheet().totals().target();
        if (target.isEmpty()) {
            figures.absent("totals.targetGrams", "Mould mass asked for", "g", NONE);
        } else {
            figures.add("totals.targetGrams", "Mould mass asked for", "g", target.get(), () -> account(ledger));
        }
    }

    private static Account account(Ledger ledger) {
        if (ledger.sheet().fill().target() instanceof Fill.MouldMass mass) {
            return new Account(
                    "As it was asked for.",
                    new Given("asked", mass.grams(), "g", "mould mass asked for", Sources.ASKED));
        }
        return new Account(
                "Everything before rounding, less the share that stays in jugs: so much fills the mould or makes the bars.",
                Ledger.sum(ledger.lines(), Line::exact).times(Term.number(1).minus(Totals.heldBack(ledger))));
    }
}
