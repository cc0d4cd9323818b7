package lyewright.why;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.formula.ResolvedFormula.DispersingLiquid.From;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Alkali;
import lyewright.material.OilBlend;

/** The grams of every substance of one moment, as terms; what has kind, name and origin alike is one substance. */
final class Substances {

    /** What is lighter is left of a subtraction, not there. */
    private static final double NOTHING = 1e-9;

    private final Scope scope;
    private final boolean cured;
    private final Extents extents;
    private final Reckoning reckoning = new Reckoning(Reckoning.ALL);
    private final Map<Key, Term> grams = new LinkedHashMap<>();
    private Term commonSalt = Term.number(0);

    private record Key(Kind kind, String name, String of) {}

    private Substances(Scope scope, boolean cured) {
        this.scope = scope;
        this.cured = cured;
        this.extents = new Extents(scope);
    }

    /** As poured, or as cured. */
    static Substances of(Scope scope, boolean cured) {
        Substances substances = new Substances(scope, cured);
        scope.lines().forEach(substances::add);
        return substances;
    }

    /** The grams of one. */
    Term grams(Substance substance) {
        Term term = grams.get(new Key(substance.kind(), substance.name(), substance.of()));
        if (term == null) {
            throw new IllegalStateException("no rule tells of " + substance);
        }
        return term;
    }

    /** All common salt. */
    Term commonSalt() {
        return commonSalt;
    }

    void add(Kind kind, String name, String of, Term term) {
        if (term.value(reckoning) > NOTHING) {
            grams.merge(new Key(kind, name, of), term, Term::plus);
        }
    }

    void addCommonSalt(String name, String of, Term term) {
        add(Kind.SALT, name, of, term);
        commonSalt = commonSalt instanceof Term.Plain ? term : commonSalt.plus(term);
    }

    Scope scope() {
        return scope;
    }

    Extents extents() {
        return extents;
    }

    boolean cured() {
        return cured;
    }

    private void add(Line line) {
        switch (line.line().kind()) {
            case OIL -> addOil(line);
            case ADDITION -> new AdditionSubstances(this).add(line);
            case DISPERSING_LIQUID -> addLiquid(line);
            case ALKALI -> addAlkali(line);
            case WATER -> {}
        }
        if (!cured && line.line().water() > 0) {
            boolean added = Moments.isAdded(scope.ledger(), line);
            add(
                    Kind.WATER,
                    added ? "Water added by the rule" : "Water brought by materials",
                    line.line().key(),
                    scope.waterOf(line));
        }
    }

    private void addOil(Line line) {
        OilPart part = Contents.oil(scope.ledger(), line);
        OilSubstances oils = new OilSubstances(this);
        for (OilBlend.Part in : part.parts()) {
            Term mass = scope.mass(line);
            oils.add(in.oil(), part.key(), part.parts().size() == 1 ? mass : mass.times(Contents.share(part, in)));
        }
    }

    private void addLiquid(Line line) {
        From from = scope.ledger().batch().liquidFrom(line.line());
        if (from == From.OILS) {
            addOil(line);
        } else if (from == From.EXTRA) {
            new AdditionSubstances(this)
                    .addRest(
                            scope.ledger().glycerin(), scope.ledger().glycerin().key(), scope.mass(line));
        }
    }

    private void addAlkali(Line line) {
        Alkali alkali = Alkalis.of(scope.ledger(), line);
        Term pure = scope.mass(line).times(Alkalis.strength(scope.ledger(), line));
        add(
                Kind.FREE_ALKALI,
                alkali == Alkali.SODIUM ? "Sodium hydroxide" : "Potassium hydroxide",
                line.line().key(),
                cured ? pure.times(extents.alkaliLeft()) : pure);
        if (line.line().water() == 0) {
            add(
                    Kind.INERT,
                    "Impurities of the " + Alkalis.name(alkali),
                    line.line().key(),
                    scope.mass(line).times(Term.number(1).minus(Alkalis.strength(scope.ledger(), line))));
        }
    }

    /** What moles of alkali make of so many grams, a part with each alkali. */
    void addSalts(Kind kind, Salts names, String of, Term bound, Term moles, Term freedPerMole) {
        for (Alkali alkali : Alkali.values()) {
            if (extents.has(alkali)) {
                Term made = bound.plus(moles.times(Alkalis.molarMass(alkali).minus(freedPerMole)));
                add(kind, names.of(alkali), of, extents.withAlkali(alkali, made));
            }
        }
    }

    /** What something is called with each alkali. */
    record Salts(String sodium, String potassium) {
        String of(Alkali alkali) {
            return alkali == Alkali.SODIUM ? sodium : potassium;
        }
    }

    /** What a substance is called in a path: with what it is from where another of its moment is called so too. */
    static String wordFor(Substance substance, List<Substance> all) {
        long alike = all.stream().filter(s -> s.name().equals(substance.name())).count();
        return alike == 1 ? substance.name() : substance.name() + " from " + substance.of();
    }
}
