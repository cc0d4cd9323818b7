package lyewright.why;

import java.util.Optional;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.AcidRule;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Alkali;
import lyewright.measure.WrittenMass;

/** Alkali before any rounding: as given, or for the superfat asked. */
final class ExactAlkali {

    private final Ledger ledger;
    private final ResolvedFormula formula;

    ExactAlkali(Ledger ledger) {
        this.ledger = ledger;
        this.formula = ledger.formula();
    }

    Account account(Line line) {
        AlkaliChoice choice = formula.formula().alkali();
        if (choice instanceof AlkaliChoice.Given given) {
            return new Account("As the formula gives it.", given(given, line));
        }
        if (choice instanceof AlkaliChoice.Stock stock && stock.mass().isPresent()) {
            return new Account("As the formula gives it.", written(stock.mass().get(), stock.fixed()));
        }
        return new Account(
                "The alkali that leaves the superfat asked for in the oils, before anything is rounded. What is weighed is"
                        + " worked out again from the rounded masses.",
                new AlkaliMass(ledger).product(moles(), line));
    }

    private Term given(AlkaliChoice.Given given, Line line) {
        Optional<WrittenMass> mass = Alkalis.of(ledger, line) == Alkali.SODIUM ? given.sodium() : given.potassium();
        Term written = written(mass.orElseThrow(), given.fixed());
        boolean pure = given.as().isPresent() && given.as().get() == AlkaliChoice.As.PURE;
        return pure ? written.over(Alkalis.strength(ledger, line)) : written;
    }

    private Term written(WrittenMass mass, boolean fixed) {
        return ExactMass.scaled(ledger, Written.mass("written", mass, "alkali as written"), fixed);
    }

    private Term moles() {
        Reacting exact = Reacting.exact(ledger);
        boolean compensate = formula.formula().acidRule() == AcidRule.COMPENSATE;
        Term reacting = exact.equivalents(ledger.where(line -> compensate || !line.is(Kind.ADDITION)))
                .times(Term.number(1).minus(Superfat.asked(ledger).over(Term.number(100))));
        boolean more = compensate && ledger.lines().stream().anyMatch(Reacting::takesFirst);
        return (more ? reacting.plus(exact.taken(ledger.lines())) : reacting).as("moles", "mol", "alkali needed");
    }
}
