package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Formula;
import lyewright.formula.OilLine;
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
    static Term share(Formula formula, int oil) {
        OilLine line = formula.oils().get(oil);
        if (line.amount() instanceof OilLine.Weight) {
            return mass(line).over(allOils(formula));
        }
        if (line.amount() instanceof OilLine.Rest) {
            return rest(formula).over(Term.number(100)).as("share of " + line.key(), "", "what the others leave");
        }
        return percent(line).over(Term.number(100));
    }

    private static Term rest(Formula formula) {
        Term rest = Term.number(100);
        for (OilLine other : formula.oils()) {
            rest = other.amount() instanceof OilLine.Rest ? rest : rest.minus(percent(other));
        }
        return rest;
    }

    private static Given percent(OilLine line) {
        OilLine.Percent percent = (OilLine.Percent) line.amount();
        return percent(
                "share of " + line.key(),
                percent.share().percent().doubleValue(),
                "share of the oils that is " + line.key());
    }

    private static Given mass(OilLine line) {
        OilLine.Weight weight = (OilLine.Weight) line.amount();
        return mass("written " + line.key(), weight.mass(), line.key() + " as written");
    }

    /** All oils as written, of a formula in masses. */
    static Term allOils(Formula formula) {
        List<Term> masses = new ArrayList<>();
        for (OilLine line : formula.oils()) {
            masses.add(mass(line));
        }
        return Term.sum(masses).as("written oils", "g", "all oils as written");
    }
}
