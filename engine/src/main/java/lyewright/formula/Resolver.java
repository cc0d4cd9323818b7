package lyewright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.AlkaliPart;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.formula.ResolvedFormula.PortionPart;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.OilBlend;
import lyewright.material.StockLye;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;

/** Looks one formula up, once. */
final class Resolver {

    private static final double USUAL_TEMPERATURE = 40;

    private final Formula formula;
    private final Tables tables;
    private final Purities purities;
    private final Catalogue catalogue;
    private final List<Problem> problems = new ArrayList<>(0);
    private double writtenOils;

    Resolver(Formula formula, Tables tables, Purities purities) {
        this.formula = formula;
        this.tables = tables;
        this.purities = purities;
        this.catalogue = new Catalogue(formula, tables, problems);
    }

    Outcome<ResolvedFormula> resolve() {
        problems.addAll(FormulaRules.check(formula, tables));
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        List<OilPart> oils = oils();
        AlkaliPart alkali = alkali();
        List<PortionPart> portions = portions();
        List<AdditionPart> additions = additions(oils, portions);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        return Outcome.ok(new ResolvedFormula(
                formula,
                tables,
                purities,
                oils,
                alkali,
                formula.alkali().saysHowMuch()
                        ? Optional.empty()
                        : formula.superfat().map(share -> share.fraction()),
                formula.curedWater().orElse(Formula.USUAL_CURED_WATER).fraction(),
                additions,
                portions,
                formula.inMasses() ? Optional.of(writtenOils) : Optional.empty()));
    }

    private List<OilPart> oils() {
        double[] sizes = oilSizes();
        List<OilPart> parts = new ArrayList<>(sizes.length);
        for (int i = 0; i < sizes.length; i++) {
            String key = formula.oils().get(i).key();
            OilBlend blend = catalogue.oils(key, "oils." + key);
            if (blend != null) {
                parts.add(oilPart(key, blend, sizes[i] / writtenOils));
            }
        }
        return parts;
    }

    /** Each line's size in percent or grams, the rest filled in; their sum is kept. */
    private double[] oilSizes() {
        double[] sizes = new double[formula.oils().size()];
        int rest = -1;
        double sum = 0;
        for (int i = 0; i < sizes.length; i++) {
            OilLine.Amount amount = formula.oils().get(i).amount();
            if (amount instanceof OilLine.Percent percent) {
                sizes[i] = percent.share().percent().doubleValue();
            } else if (amount instanceof OilLine.Weight weight) {
                sizes[i] = weight.mass().grams();
            } else {
                rest = i;
            }
            sum += sizes[i];
        }
        if (rest >= 0) {
            sizes[rest] = 100 - sum;
            sum = 100;
        }
        writtenOils = sum;
        return sizes;
    }

    private static OilPart oilPart(String key, OilBlend blend, double fraction) {
        double saponificationValue = 0;
        double acidPart = 0;
        double volume = 0;
        for (OilBlend.Part part : blend.parts()) {
            saponificationValue += part.fraction() * part.oil().reckoned().milligramsKohPerGram();
            acidPart += part.fraction() * part.oil().reckoned().acidPart();
            volume += part.fraction() / part.oil().density().at(USUAL_TEMPERATURE);
        }
        return new OilPart(key, blend.name(), fraction, blend.parts(), saponificationValue, acidPart, 1 / volume);
    }

    private AlkaliPart alkali() {
        AlkaliChoice choice = formula.alkali();
        if (choice instanceof AlkaliChoice.Single single) {
            return new AlkaliPart(single.alkali() == Alkali.POTASSIUM ? 1 : 0, Optional.empty(), Optional.empty());
        }
        if (choice instanceof AlkaliChoice.Mix mix) {
            return new AlkaliPart(potassiumOf(mix), Optional.empty(), Optional.empty());
        }
        if (choice instanceof AlkaliChoice.Given given) {
            return given(given);
        }
        return stock((AlkaliChoice.Stock) choice);
    }

    private double potassiumOf(AlkaliChoice.Mix mix) {
        double sodium = mix.sodium().fraction();
        double potassium = mix.potassium().fraction();
        if (mix.by() == AlkaliChoice.Basis.AS_WEIGHED) {
            sodium *= purities.fraction(Alkali.SODIUM);
            potassium *= purities.fraction(Alkali.POTASSIUM);
        }
        if (mix.by() != AlkaliChoice.Basis.MOLES) {
            sodium /= Alkali.SODIUM.molarMass();
            potassium /= Alkali.POTASSIUM.molarMass();
        }
        return potassium / (sodium + potassium);
    }

    private AlkaliPart given(AlkaliChoice.Given given) {
        boolean pure = given.as().isPresent() && given.as().get() == AlkaliChoice.As.PURE;
        double sodium = moles(given.sodium(), Alkali.SODIUM, pure);
        double potassium = moles(given.potassium(), Alkali.POTASSIUM, pure);
        double moles = sodium + potassium;
        return new AlkaliPart(potassium / moles, Optional.of(belonging(moles, given.fixed())), Optional.empty());
    }

    private double moles(Optional<WrittenMass> mass, Alkali alkali, boolean pure) {
        if (mass.isEmpty()) {
            return 0;
        }
        return mass.get().grams() * (pure ? 1 : purities.fraction(alkali)) / alkali.molarMass();
    }

    private AlkaliPart stock(AlkaliChoice.Stock choice) {
        StockLye lye = catalogue.lye(choice.key());
        if (lye == null) {
            return new AlkaliPart(0, Optional.empty(), Optional.empty());
        }
        double molesPerGram = lye.strength().middle() / 100 / lye.alkali().molarMass();
        Optional<Linear> moles = choice.mass().map(mass -> belonging(mass.grams() * molesPerGram, choice.fixed()));
        return new AlkaliPart(lye.alkali() == Alkali.POTASSIUM ? 1 : 0, moles, Optional.of(lye));
    }

    /** A quantity written beside oils in masses goes with them unless it is fixed; beside percent it stays. */
    private Linear belonging(double quantity, boolean fixed) {
        return formula.inMasses() && !fixed ? Linear.ofOils(quantity / writtenOils) : Linear.fixed(quantity);
    }

    private List<PortionPart> portions() {
        List<PortionLine> lines = formula.portions();
        if (lines.isEmpty()) {
            return List.of();
        }
        double named = 0;
        for (PortionLine line : lines) {
            named += line.share().isPresent() ? line.share().get().fraction() : 0;
        }
        List<PortionPart> parts = new ArrayList<>(lines.size());
        for (PortionLine line : lines) {
            parts.add(new PortionPart(
                    line.name(), line.share().isPresent() ? line.share().get().fraction() : 1 - named));
        }
        return parts;
    }

    private List<AdditionPart> additions(List<OilPart> oils, List<PortionPart> portions) {
        List<AdditionPart> parts = new ArrayList<>(formula.additions().size());
        for (int i = 0; i < formula.additions().size(); i++) {
            Addition written = formula.additions().get(i);
            Additive material = catalogue.additive(written.of(), i);
            if (material != null) {
                Linear mass = mass(written, material, portions);
                parts.add(new AdditionPart(written, i, material, mass, liquid(written, oils)));
            }
        }
        return parts;
    }

    private Linear mass(Addition written, Additive material, List<PortionPart> portions) {
        Amount amount = written.amount();
        if (amount instanceof Amount.Percent percent) {
            double fraction = percent.share().fraction();
            return percent.base() == Amount.Base.BATCH
                    ? new Linear(0, 0, fraction)
                    : Linear.ofOils(fraction * oilsOf(percent.base(), written.stage(), portions));
        }
        if (amount instanceof Amount.Per per) {
            return Linear.ofOils(per.fraction() * oilsOf(per.base(), written.stage(), portions));
        }
        if (amount instanceof Amount.Weight weight) {
            return belonging(weight.mass().grams(), weight.fixed());
        }
        Amount.Bulk bulk = (Amount.Bulk) amount;
        return belonging(bulk.volume().millilitres() * material.gramsPerMillilitre(), bulk.fixed());
    }

    /** The fraction of all oils that a rate is of: a portion's oils are its share of all oils. */
    private static double oilsOf(Amount.Base base, Stage stage, List<PortionPart> portions) {
        if (base == Amount.Base.PORTION_OILS && stage.kind() == Stage.Kind.PORTION) {
            for (PortionPart portion : portions) {
                if (portion.name().equals(stage.portion())) {
                    return portion.fraction();
                }
            }
        }
        return 1;
    }

    private Optional<DispersingLiquid> liquid(Addition written, List<OilPart> oils) {
        if (written.disperse().isEmpty()) {
            return Optional.empty();
        }
        Disperse disperse = written.disperse().get();
        return switch (disperse.in()) {
            case Disperse.WATER ->
                Optional.of(new DispersingLiquid("water", DispersingLiquid.From.WATER, -1, disperse.ratio()));
            case Disperse.GLYCERIN ->
                Optional.of(new DispersingLiquid("glycerin", DispersingLiquid.From.EXTRA, -1, disperse.ratio()));
            case Disperse.OIL -> Optional.of(oilLiquid(plentifulLiquidOil(oils), oils, disperse));
            default -> Optional.of(oilLiquid(line(disperse.in(), oils), oils, disperse));
        };
    }

    private static DispersingLiquid oilLiquid(int line, List<OilPart> oils, Disperse disperse) {
        String key = oils.isEmpty() ? "oil" : oils.get(line).key();
        return new DispersingLiquid(key, DispersingLiquid.From.OILS, line, disperse.ratio());
    }

    private static int line(String key, List<OilPart> oils) {
        for (int i = 0; i < oils.size(); i++) {
            if (oils.get(i).key().equals(key)) {
                return i;
            }
        }
        return 0;
    }

    /** The most plentiful oil that pours at room temperature; where none does, the most plentiful of all. */
    private static int plentifulLiquidOil(List<OilPart> oils) {
        int best = 0;
        double bestSize = -1;
        for (int i = 0; i < oils.size(); i++) {
            OilPart part = oils.get(i);
            // whatever pours beats whatever does not, by more than any fraction can
            double size = part.fraction() + (pours(part) ? 1 : 0);
            if (size > bestSize) {
                bestSize = size;
                best = i;
            }
        }
        return best;
    }

    /** Whether more than half of it pours: a premix does as most of it does. */
    private static boolean pours(OilPart part) {
        double pouring = 0;
        for (OilBlend.Part inIt : part.parts()) {
            pouring += inIt.oil().pours() ? inIt.fraction() : 0;
        }
        return pouring > 0.5;
    }
}
