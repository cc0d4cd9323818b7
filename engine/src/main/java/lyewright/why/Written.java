package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.OilLine;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.measure.WrittenMass;
import lyewright.why.Term.Given;

/** What is put in as it is typed in the formula: shares and masses of the oils. */
final class Written {

    private Written() {}

    /** A mass as typed, in grams. */
    static Given mass(String name, WrittenMass mass, String meaning) {
        String typed = mass.unit().symbol().equals("g") ? "" : " (" + mass + ")";
        return new Given(name, mass.grams(), "g", meaning + typed, Sources.FORMULA);
    }

    /** Percent as typed. */
    static Given percent(String name, double percent, String meaning) {
        return new Given(name, percent, "%", meaning, Sources.FORMULA);
    }

    /** An oil's share of all oils, as a fraction. */
    static Term share(ResolvedFormula formula, int oil) {
        OilLine line = formula.formula().oils().get(oil);
        OilPart part = formula.oils().get(oil);
        if (line.amount() instanceof OilLine.Weight) {
            return mass(line, part).over(allOils(formula));
        }
        if (line.amount() instanceof OilLine.Rest) {
            return rest(formula).over(Term.number(100)).as("share of " + Labels.of(part), "", "what the others leave");
        }
        return percent(line, part).over(Term.number(100));
    }

    private static Term rest(ResolvedFormula formula) {
        Term rest = Term.number(100);
        for (int i = 0; i < formula.oils().size(); i++) {
            OilLine other = formula.formula().oils().get(i);
            rest = other.amount() instanceof OilLine.Rest
                    ? rest
                    : rest.minus(percent(other, formula.oils().get(i)));
        }
        return rest;
    }

    private static Given percent(OilLine line, OilPart part) {
        OilLine.Percent percent = (OilLine.Percent) line.amount();
        return percent(
                "share of " + Labels.of(part),
                percent.share().percent().doubleValue(),
                "share of the oils that is " + part.name());
    }

    private static Given mass(OilLine line, OilPart part) {
        OilLine.Weight weight = (OilLine.Weight) line.amount();
        return mass("written " + Labels.of(part), weight.mass(), part.name() + " as written");
    }

    /** All oils as written, of a formula in masses. */
    static Term allOils(ResolvedFormula formula) {
        List<Term> masses = new ArrayList<>();
        for (int i = 0; i < formula.oils().size(); i++) {
            masses.add(mass(formula.formula().oils().get(i), formula.oils().get(i)));
        }
        return Term.sum(masses).as("written oils", "g", "all oils as written");
    }
}
