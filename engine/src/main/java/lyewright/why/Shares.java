package lyewright.why;

import lyewright.formula.Formula;
import lyewright.formula.PortionLine;
import lyewright.formula.ResolvedFormula;

/** Portions' shares of the base batter. */
final class Shares {

    private Shares() {}

    /** Which portion a name means. */
    static int place(ResolvedFormula formula, String name) {
        for (int p = 0; p < formula.portions().size(); p++) {
            if (formula.portions().get(p).name().equals(name)) {
                return p;
            }
        }
        throw new IllegalStateException("no portion " + name);
    }

    /** A portion's share as a fraction. */
    static Term of(Formula formula, int portion) {
        return percent(formula, portion)
                .over(Term.number(100))
                .as("share", "", "the portion's share of the base batter");
    }

    /** A portion's share in percent: as written, or what the others leave. */
    static Term percent(Formula formula, int portion) {
        PortionLine line = formula.portions().get(portion);
        if (line.share().isPresent()) {
            return percent(line);
        }
        Term rest = Term.number(100);
        for (PortionLine other : formula.portions()) {
            rest = other.share().isPresent() ? rest.minus(percent(other)) : rest;
        }
        return rest;
    }

    private static Term percent(PortionLine line) {
        double percent = line.share().orElseThrow().percent().doubleValue();
        return Written.percent("share of " + line.name(), percent, "share of the base batter for " + line.name());
    }
}
