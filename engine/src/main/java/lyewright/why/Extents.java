package lyewright.why;

import lyewright.chemistry.BatchLine.Kind;
import lyewright.material.Alkali;

/** How far each reaction goes until the bar is cured: acids of the additions first, then those of the oils, then glycerides. */
final class Extents {

    private final Scope scope;
    private final Reacting reacting;

    Extents(Scope scope) {
        this.scope = scope;
        this.reacting = scope.reacting();
    }

    /** Share of the additions' acid that reacts. */
    Term additionAcid() {
        return Term.call(
                        Function.MIN,
                        Term.number(1),
                        reacting.alkali(scope.lines()).over(reacting.taken(scope.lines())))
                .as("acid reacted", "", "share of the additions' acid that finds alkali");
    }

    private boolean hasFreeAcid() {
        return scope.any(line -> line.line().freeAcid() > 0);
    }

    /** Share of the oils' free acid that reacts. */
    Term oilAcid() {
        return Term.call(
                        Function.MIN,
                        Term.number(1),
                        reacting.reaching(scope.lines()).over(reacting.freeAcid(scope.lines())))
                .as("free acid reacted", "", "share of the oils' free acid that finds alkali");
    }

    /** Share of the glycerides that reacts. */
    Term ester() {
        Term there = reacting.reaching(scope.lines());
        Term wanted = reacting.equivalents(scope.lines());
        if (hasFreeAcid()) {
            Term free = reacting.freeAcid(scope.lines());
            there = there.minus(free);
            wanted = wanted.minus(free);
        }
        return Term.call(Function.MAX, Term.number(0), Term.call(Function.MIN, Term.number(1), there.over(wanted)))
                .as("reacted", "", "share of the glycerides that finds alkali");
    }

    /** Share of the alkali that nothing takes. */
    Term alkaliLeft() {
        return Term.call(
                        Function.MAX,
                        Term.number(0),
                        reacting.reaching(scope.lines()).minus(reacting.equivalents(scope.lines())))
                .over(reacting.alkali(scope.lines()))
                .as("alkali left", "", "share of the alkali that nothing takes");
    }

    boolean has(Alkali alkali) {
        return scope.any(line -> line.is(Kind.ALKALI) && Alkalis.of(scope.ledger(), line) == alkali);
    }

    /** A part of something that goes with one alkali, by its share of the moles. */
    Term withAlkali(Alkali alkali, Term term) {
        if (!has(Alkali.SODIUM) || !has(Alkali.POTASSIUM)) {
            return term;
        }
        Term sodium = reacting.alkali(
                        scope.lines().stream()
                                .filter(line ->
                                        Alkalis.of(scope.ledger(), line) == Alkali.SODIUM || !line.is(Kind.ALKALI))
                                .toList(),
                        "sodium hydroxide")
                .over(reacting.alkali(scope.lines()))
                .as("sodium", "", "share of the alkali's moles that is sodium hydroxide");
        return alkali == Alkali.SODIUM
                ? sodium.times(term)
                : Term.number(1).minus(sodium).times(term);
    }
}
