package lyewright.why;

import java.util.Optional;
import java.util.function.Function;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.fill.Fill;
import lyewright.formula.ResolvedFormula.DispersingLiquid.From;
import lyewright.makingsheet.MakingSheet;
import lyewright.why.Term.Given;

/** Masses of the rounded sheet. */
final class Totals {

    private final Ledger ledger;
    private final MakingSheet.Totals totals;

    private Totals(Ledger ledger) {
        this.ledger = ledger;
        this.totals = ledger.sheet().totals();
    }

    static void addTo(Figures figures, Ledger ledger) {
        new Totals(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        figures.add("totals.oilsGrams", "All oils", "g", totals.oils(), this::oils);
        figures.add("totals.batchGrams", "Everything weighed", "g", totals.batch(), this::batch);
        figures.add("totals.mouldGrams", "What reaches the mould", "g", totals.mould(), this::mould);
        Target.addTo(figures, ledger);
        Optional<Double> off = totals.offTarget();
        if (off.isPresent()) {
            figures.add("totals.offTargetGrams", "Mould mass over what was aimed at", "g", off.get(), this::offTarget);
        } else {
            figures.absent("totals.offTargetGrams", "Mould mass over what was aimed at", "g", Target.NONE);
        }
        figures.add("totals.waterGrams", "Water by the formula's rule", "g", totals.water(), this::water);
        figures.add(
                "totals.waterBroughtGrams", "Water that other things bring", "g", totals.waterBrought(), this::brought);
    }

    private Account oils() {
        return new Account(
                "All oils as weighed, those that something is wetted out with included.",
                ledger.weighed(ledger.where(ledger::isOil)));
    }

    private Account batch() {
        return new Account("Everything as weighed, added up.", ledger.weighed(ledger.lines()));
    }

    private Account mould() {
        return new Account(
                "Everything weighed, less the share that stays in jugs and tools.",
                figure("batch", "totals.batchGrams", totals.batch(), "everything weighed")
                        .times(Term.number(1).minus(heldBack(ledger))));
    }

    /** The share of the batch that stays in jugs. */
    static Given heldBack(Ledger ledger) {
        Fill fill = ledger.sheet().fill();
        return new Given(
                "held back",
                fill.holdBack(),
                "",
                "share of everything weighed that stays in jugs and tools",
                fill.holdBack() > 0 ? Sources.ASKED : "nothing is held back unless it is asked for");
    }

    private Account offTarget() {
        return new Account(
                "What reaches the mould less what was asked. Balances weigh in whole steps, so it is seldom nothing.",
                figure("mould", "totals.mouldGrams", totals.mould(), "what reaches the mould")
                        .minus(figure(
                                "target", "totals.targetGrams", totals.target().orElse(0.0), "what was asked")));
    }

    private static Given figure(String name, String path, double grams, String meaning) {
        return Ledger.figure(name, path, grams, "g", meaning);
    }

    private Account water() {
        return new Account(
                        "Water that counts for the water rule: plain, in dispersions, and liquids that replace water, mass for"
                                + " mass.",
                        byRule(ledger, ledger::weighed))
                .note(
                        ledger.formula().alkali().stock().isPresent()
                                ? "A stock lye's own water is part of the rule's."
                                : "");
    }

    /** Water that counts for the rule, of masses as weighed or before rounding. */
    static Term byRule(Ledger ledger, Function<Line, Term> mass) {
        Totals totals = new Totals(ledger);
        return Ledger.sum(
                ledger.where(totals::byRule),
                line -> line.is(Kind.ALKALI) ? mass.apply(line).times(Contents.water(ledger, line)) : mass.apply(line));
    }

    private boolean byRule(Line line) {
        return switch (line.line().kind()) {
            case OIL -> false;
            case WATER -> true;
            case DISPERSING_LIQUID -> ledger.batch().liquidFrom(line.line()) == From.WATER;
            case ADDITION -> replacesWater(line);
            case ALKALI -> ledger.formula().alkali().stock().isPresent();
        };
    }

    private boolean replacesWater(Line line) {
        return ledger.formula().additions().get(line.line().place()).written().replacesWater();
    }

    private Account brought() {
        return new Account(
                "Water in potash and in additions that do not replace water. It is shown beside the rule's, never taken off.",
                Ledger.sum(
                        ledger.where(line -> !byRule(line) && line.line().water() > 0),
                        line -> ledger.weighed(line).times(Contents.water(ledger, line))));
    }
}
