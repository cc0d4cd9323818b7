package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lyewright.chemistry.BatchLine;
import lyewright.fill.Fill;
import lyewright.formula.Linear;
import lyewright.why.Account.Equation;
import lyewright.why.Term.Given;

/**
 * The mass of oils that a fill comes to. Asked for or written it is just that. For a mould mass everything weighed is a straight
 * line in the oils, which is turned round. For a volume or a cured mass it is found by trial, and shown to fit.
 */
final class Solved {

    private final Ledger ledger;
    private final Fill fill;

    Solved(Ledger ledger) {
        this.ledger = ledger;
        this.fill = ledger.sheet().fill();
    }

    /** How the oils are found, in words. */
    String sentence() {
        if (fill.target() instanceof Fill.OilMass) {
            return "The mass of oils was asked for.";
        }
        if (fill.target() instanceof Fill.AsWritten) {
            return "The oils are made as written.";
        }
        return straight()
                ? "The mass of oils is the one with which everything comes to what was asked."
                : "The mass of oils is found by trial, so that the equation below holds.";
    }

    /** Whether one straight line gives the oils. */
    private boolean straight() {
        return fill.target() instanceof Fill.MouldMass || (fill.target() instanceof Fill.Bars bars && !bars.cured());
    }

    /** All oils. */
    Term oils() {
        if (fill.target() instanceof Fill.OilMass oils) {
            return new Given("oils", oils.grams(), "g", "oils asked for", Sources.ASKED);
        }
        if (fill.target() instanceof Fill.AsWritten) {
            return Written.allOils(ledger.formula());
        }
        return straight() ? fromBatch() : found();
    }

    private Given found() {
        return new Given(
                "oils",
                ledger.sheet().filled().oilsGrams(),
                "g",
                "all oils before rounding, found by trial",
                "the equation that holds for it");
    }

    private Term fromBatch() {
        Term room = batch();
        if (ledger.batch().total().perBatch() != 0) {
            room = room.times(Term.number(1).minus(perBatch()));
        }
        if (ledger.batch().total().fixed() != 0) {
            room = room.minus(fixed());
        }
        return room.over(perOils()).as("oils", "g", "all oils before rounding");
    }

    /** Everything weighed, before rounding. */
    Term batch() {
        if (!straight()) {
            return fromOils();
        }
        Term target = new Target(ledger).asked();
        Term whole = fill.holdBack() == 0 ? target : target.over(Term.number(1).minus(Totals.heldBack(ledger)));
        return whole.as("batch", "g", "everything weighed, before rounding");
    }

    private Term fromOils() {
        Term rest = perOils().times(oils());
        if (ledger.batch().total().fixed() != 0) {
            rest = rest.plus(fixed());
        }
        return rest.over(Term.number(1).minus(perBatch())).as("batch", "g", "everything weighed, before rounding");
    }

    private Term perOils() {
        return rates(Linear::perOils, "for each gram of oils", "g/g", "per oils")
                .as("per oils", "g/g", "everything for each gram of oils");
    }

    private Term fixed() {
        return rates(Linear::fixed, "whatever the size", "g", "fixed").as("fixed", "g", "what is fixed");
    }

    private Term perBatch() {
        return rates(Linear::perBatch, "for each gram of everything", "g/g", "per batch")
                .as("per batch", "g/g", "what goes with everything weighed");
    }

    /** One part of every line's straight line. */
    private Term rates(ToDoubleFunction<Linear> part, String words, String unit, String name) {
        List<Term> rates = new ArrayList<>();
        for (BatchLine line : ledger.batch().lines()) {
            double rate = part.applyAsDouble(line.mass());
            if (rate != 0) {
                rates.add(new Given(
                        name + " " + ledger.label(line),
                        rate,
                        unit,
                        ledger.label(line) + " " + words,
                        "follows from the formula: ask for the line's exactGrams"));
            }
        }
        return Term.sum(rates);
    }

    /** What holds where the oils are found by trial. */
    List<Equation> equations() {
        boolean told = fill.target() instanceof Fill.OilMass || fill.target() instanceof Fill.AsWritten || straight();
        return told ? List.of() : List.of(new Target(ledger).equation());
    }
}
