package lyewright.why;

import java.util.List;
import lyewright.formula.ResolvedFormula;
import lyewright.why.Term.Given;

/** What a batch weighs once cured: all that is not water, with the cured bar's water. */
final class Cured {

    private final Reacting reacting;
    private final Ledger ledger;
    private final List<Line> lines;

    Cured(Reacting reacting, List<Line> lines) {
        this.reacting = reacting;
        this.lines = lines;
        this.ledger = reacting.ledger();
    }

    /** Everything as poured. */
    Term poured() {
        return Ledger.sum(lines, reacting.mass()).as("poured", "g", "everything as poured");
    }

    /** The same once cured, never more than was poured. */
    Term grams() {
        ResolvedFormula formula = ledger.formula();
        Given curedWater = Written.percent("cured water", 100 * formula.curedWater(), "water of the cured bar");
        Given source = formula.formula().curedWater().isPresent()
                ? curedWater
                : new Given(
                        curedWater.name(),
                        curedWater.amount(),
                        "%",
                        curedWater.meaning() + ", taken since none is written",
                        Sources.COMMON_PRACTICE);
        Term dry = poured().minus(water());
        Term left = hasFreeAcid() || hasAcidFirst() ? dry.minus(formed()) : dry;
        Term bar = left.over(Term.number(1).minus(source.over(Term.number(100))))
                .as("dry with its water", "g", "what is not water, with the cured bar's water");
        return Term.call(Function.MIN, poured(), bar).as("cured", "g", "everything once cured");
    }

    private Term water() {
        List<Line> wet = lines.stream().filter(line -> line.line().water() > 0).toList();
        return Ledger.sum(
                        wet,
                        line -> line.line().water() == 1
                                ? reacting.mass().apply(line)
                                : reacting.mass().apply(line).times(Contents.water(ledger, line)))
                .as("all water", "g", "all water as poured");
    }

    private boolean hasFreeAcid() {
        return lines.stream().anyMatch(line -> line.line().freeAcid() > 0);
    }

    private boolean hasAcidFirst() {
        return lines.stream().anyMatch(Reacting::takesFirst);
    }

    /** Water that neutralisation forms: a mole for each mole of acid; nothing where there is no acid. */
    Term formed() {
        if (!hasFreeAcid() && !hasAcidFirst()) {
            return Term.number(0);
        }
        Term moles = !hasAcidFirst() ? ofOils() : hasFreeAcid() ? ofOils().plus(ofAdditions()) : ofAdditions();
        return OilSubstances.waterMolarMass().times(moles).as("formed", "g", "water that acids form with alkali");
    }

    private Term ofOils() {
        return Term.call(Function.MIN, reacting.reaching(lines), reacting.freeAcid(lines))
                .as("neutralised", "mol", "free acid that finds alkali");
    }

    private Term ofAdditions() {
        return Term.call(Function.MIN, reacting.alkali(lines), reacting.taken(lines))
                .as("neutralised first", "mol", "acid of the additions that finds alkali");
    }
}
