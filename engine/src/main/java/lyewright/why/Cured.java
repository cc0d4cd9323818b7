package lyewright.why;

import java.util.List;
import lyewright.chemistry.Stoichiometry;
import lyewright.formula.ResolvedFormula;
import lyewright.why.Term.Given;

/** What a batch weighs once cured: all that is not water, with the cured bar's water. */
final class Cured {

    private final Reacting reacting;
    private final Ledger ledger;

    Cured(Reacting reacting) {
        this.reacting = reacting;
        this.ledger = reacting.ledger();
    }

    /** Everything as poured. */
    Term poured() {
        return Ledger.sum(ledger.lines(), reacting.mass()).as("poured", "g", "everything as poured");
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
        Term formed = formed();
        Term left = formed == null ? dry : dry.minus(formed);
        Term bar = left.over(Term.number(1).minus(source.over(Term.number(100))))
                .as("dry with its water", "g", "what is not water, with the cured bar's water");
        return Term.call(Function.MIN, poured(), bar).as("cured", "g", "everything once cured");
    }

    private Term water() {
        List<Line> wet = ledger.where(line -> line.line().water() > 0);
        return Ledger.sum(
                        wet,
                        line -> line.line().water() == 1
                                ? reacting.mass().apply(line)
                                : reacting.mass().apply(line).times(Contents.water(ledger, line)))
                .as("all water", "g", "all water as poured");
    }

    /** Water that neutralisation forms: a mole for each mole of acid; null where there is no acid. */
    private @org.jspecify.annotations.Nullable Term formed() {
        boolean free = ledger.lines().stream().anyMatch(line -> line.line().freeAcid() > 0);
        boolean first = ledger.lines().stream().anyMatch(Reacting::takesFirst);
        if (!free && !first) {
            return null;
        }
        Term moles = free && first ? ofOils().plus(ofAdditions()) : free ? ofOils() : ofAdditions();
        return new Given("M of water", Stoichiometry.WATER, "g/mol", "molar mass of water", Sources.ATOMIC_WEIGHTS)
                .times(moles)
                .as("formed", "g", "water that acids form with alkali");
    }

    private Term ofOils() {
        List<Line> acid = ledger.where(line -> line.line().freeAcid() > 0);
        Term free = Ledger.sum(
                        acid, line -> reacting.mass().apply(line).times(Contents.freeAcid(Contents.oil(ledger, line))))
                .over(Reacting.milligramsPerMole())
                .as("free acid", "mol", "free acid of the oils");
        return Term.call(Function.MIN, reacting.reaching(ledger.lines()), free)
                .as("neutralised", "mol", "free acid that finds alkali");
    }

    private Term ofAdditions() {
        return Term.call(Function.MIN, reacting.alkali(ledger.lines()), reacting.taken(ledger.lines()))
                .as("neutralised first", "mol", "acid of the additions that finds alkali");
    }
}
