package lyewright.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;

/** One oil of a formula in place of another, the same share or mass of it; all else stays as written. */
public final class OilSwap {

    /** Path of a problem with the oil that goes. */
    public static final String OUT = "out";

    /** Path of a problem with the oil that comes. */
    public static final String IN = "in";

    private final Formula formula;
    private final String out;
    private final String in;

    private OilSwap(Formula formula, String out, String in) {
        this.formula = formula;
        this.out = out;
        this.in = in;
    }

    /**
     * Swaps two oils.
     *
     * @param formula as written, which stays as it is
     * @param out key of the oil that goes
     * @param in key of the oil that comes; where the formula has it already it gets more
     * @param own what is to be known of the oil that comes and of its parts, where the formula does not say it already
     * @return the other formula, or why not
     */
    public static Outcome<Formula> of(Formula formula, String out, String in, Collection<OwnMaterial> own) {
        if (formula.oils().stream().noneMatch(line -> line.key().equals(out))) {
            return Outcome.refused(
                    new Problem(OUT, "'" + out + "' is not one of the oils", "choose one of the recipe's"));
        }
        if (out.equals(in)) {
            return Outcome.refused(new Problem(IN, "it is the oil that goes", "choose another"));
        }
        return Outcome.ok(new OilSwap(formula, out, in).swapped(own));
    }

    private Formula swapped(Collection<OwnMaterial> own) {
        List<OwnMaterial> materials = new ArrayList<>(formula.materials());
        own.stream()
                .filter(o -> materials.stream().noneMatch(m -> m.key().equals(o.key())))
                .forEach(materials::add);
        return formula.withOils(oils())
                .withAdditions(formula.additions().stream().map(this::addition).toList())
                .withMaterials(materials);
    }

    private List<OilLine> oils() {
        Optional<OilLine> there =
                formula.oils().stream().filter(line -> line.key().equals(in)).findFirst();
        List<OilLine> oils = new ArrayList<>();
        for (OilLine line : formula.oils()) {
            if (line.key().equals(out)) {
                if (there.isEmpty()) {
                    oils.add(new OilLine(in, line.amount()));
                }
            } else if (line.key().equals(in)) {
                oils.add(new OilLine(in, together(line.amount(), amountOut())));
            } else {
                oils.add(line);
            }
        }
        return oils;
    }

    private OilLine.Amount amountOut() {
        return formula.oils().stream()
                .filter(line -> line.key().equals(out))
                .map(OilLine::amount)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(out + " is there"));
    }

    /** What the others leave is the rest again, whichever of the two it was. */
    private static OilLine.Amount together(OilLine.Amount one, OilLine.Amount other) {
        if (one instanceof OilLine.Percent a && other instanceof OilLine.Percent b) {
            return new OilLine.Percent(
                    new Share(a.share().percent().add(b.share().percent())));
        }
        if (one instanceof OilLine.Weight a && other instanceof OilLine.Weight b) {
            return new OilLine.Weight(sum(a.mass(), b.mass()));
        }
        return new OilLine.Rest();
    }

    private static WrittenMass sum(WrittenMass a, WrittenMass b) {
        return a.unit() == b.unit()
                ? new WrittenMass(a.value().add(b.value()), a.unit())
                : new WrittenMass(a.exactGrams().add(b.exactGrams()), MassUnit.GRAM);
    }

    /** What was wetted out with the oil that goes takes the one that comes. */
    private Addition addition(Addition addition) {
        return new Addition(
                addition.of(),
                addition.amount(),
                addition.stage(),
                addition.disperse().map(this::disperse),
                addition.replacesWater());
    }

    private Disperse disperse(Disperse disperse) {
        return disperse.in().equals(out)
                ? new Disperse(in, disperse.liquid(), disperse.toSolid(), disperse.ahead())
                : disperse;
    }
}
