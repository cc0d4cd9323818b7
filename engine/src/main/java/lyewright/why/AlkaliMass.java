package lyewright.why;

import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.AcidRule;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Balance;
import lyewright.material.Alkali;
import lyewright.why.Term.Given;

/** How much alkali goes on the balance: recomputed from everything else as weighed, and rounded down. */
final class AlkaliMass {

    private final Ledger ledger;
    private final ResolvedFormula formula;

    AlkaliMass(Ledger ledger) {
        this.ledger = ledger;
        this.formula = ledger.formula();
    }

    /** The mass of one alkali as weighed. */
    Account weighed(Line line) {
        return new Account(
                        sentence(),
                        Term.call(
                                Function.DOWN,
                                needed(moles(), line),
                                step(line.weighing().balance())))
                .note("Rounded down to the balance's steps: a little too much oil is harmless, too much alkali burns.");
    }

    private String sentence() {
        return formula.superfat().isPresent()
                ? "The alkali that leaves the superfat asked for in the oils as weighed."
                : "The alkali of the formula, moved as the oils moved when they were rounded, so that the superfat stays.";
    }

    static Given step(Balance balance) {
        return new Given(
                "step",
                balance.step().grams(),
                "g",
                "what balance " + balance.name() + " counts in (" + balance.step() + ")",
                Sources.EQUIPMENT);
    }

    /** What goes on the balance for so many moles, before rounding. */
    private Term needed(Term moles, Line line) {
        return product(moles, line).as("needed", "g", line.weighing().name() + " before rounding");
    }

    /** One alkali as it comes, of so many moles of both. */
    Term product(Term moles, Line line) {
        Alkali alkali = Alkalis.of(ledger, line);
        Term share = mixed() ? moles.times(new AlkaliMix(ledger).share(alkali)) : moles;
        return share.times(Alkalis.molarMass(alkali)).over(Alkalis.strength(ledger, line));
    }

    private boolean mixed() {
        return formula.alkali().has(Alkali.SODIUM) && formula.alkali().has(Alkali.POTASSIUM);
    }

    /** Moles of alkali for the oils as weighed. */
    private Term moles() {
        Reacting rounded = Reacting.asWeighed(ledger);
        if (formula.superfat().isEmpty()) {
            return given(rounded);
        }
        boolean compensate = formula.formula().acidRule() == AcidRule.COMPENSATE;
        Term oils = compensate
                ? rounded.equivalents(ledger.lines())
                : rounded.equivalents(
                        ledger.where(line -> !line.is(Kind.ADDITION)),
                        "equivalents",
                        "alkali that the formula's oils can take, the fat of additions left out");
        Term reacting = oils.times(Term.number(1).minus(Superfat.asked(ledger).over(Term.number(100))));
        boolean more = compensate && ledger.lines().stream().anyMatch(Reacting::takesFirst);
        return named(more ? reacting.plus(rounded.taken(ledger.lines())) : reacting);
    }

    private static Term named(Term moles) {
        return moles.as("moles", "mol", "alkali needed");
    }

    /** Where the alkali is given, the share of the oils that it reaches is kept. */
    private Term given(Reacting rounded) {
        Reacting exact = Reacting.exact(ledger);
        if (allTaken()) {
            return named(exact.alkali(ledger.lines()));
        }
        Term share = exact.reaching(ledger.lines())
                .over(exact.equivalents(ledger.lines()))
                .as("reached", "", "share of the oils' equivalents that the alkali given reaches");
        Term reacting = share.times(rounded.equivalents(ledger.lines()));
        boolean acids = ledger.lines().stream().anyMatch(Reacting::takesFirst);
        return named(acids ? reacting.plus(rounded.taken(ledger.lines())) : reacting);
    }

    /** Whether acids take all the alkali that is given. */
    private boolean allTaken() {
        double left = 0;
        for (Line line : ledger.lines()) {
            left += line.weighing().exactGrams()
                    * (line.line().alkali() - line.line().taken());
        }
        return left <= 0;
    }
}
