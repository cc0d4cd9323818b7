package lyewright.chemistry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.AcidRule;
import lyewright.formula.Addition;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Amount;
import lyewright.formula.Comments;
import lyewright.formula.Disperse;
import lyewright.formula.Formula;
import lyewright.formula.OilLine;
import lyewright.formula.OwnMaterial;
import lyewright.formula.PortionLine;
import lyewright.formula.Process;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.Stage;
import lyewright.formula.Use;
import lyewright.formula.WaterRule;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.Temperature;
import lyewright.measure.WrittenMass;

/** A formula said in the words of the bench, laid out and made with a mass of oils. For tests; changes as it is spoken. */
final class Bench {

    private final List<OilLine> oils = new ArrayList<>();
    private final List<Addition> additions = new ArrayList<>();
    private final List<PortionLine> portions = new ArrayList<>();
    private final List<OwnMaterial> materials = new ArrayList<>();
    private AlkaliChoice alkali = new AlkaliChoice.Single(Alkali.SODIUM);
    private Optional<Share> superfat = Optional.empty();
    private Optional<AcidRule> acids = Optional.empty();
    private WaterRule water = new WaterRule.LyeStrength(Share.ofPercent("33"), false);
    private Optional<Share> curedWater = Optional.empty();
    private Process process = Process.COLD;
    private Use use = Use.OWN;
    private Purities purities =
            new Purities(Optional.of(Figure.exact(100, "the test")), Optional.of(Figure.exact(100, "the test")));

    private Bench() {}

    /** A formula for own use, 33 % lye, pure alkali, sodium, nothing in it yet. */
    static Bench aFormula() {
        return new Bench();
    }

    /** Oils in percent. */
    Bench oil(String key, String percent) {
        oils.add(new OilLine(key, new OilLine.Percent(Share.ofPercent(percent))));
        return this;
    }

    /** Oils in grams. */
    Bench oilGrams(String key, String grams) {
        oils.add(new OilLine(key, new OilLine.Weight(WrittenMass.ofGrams(grams))));
        return this;
    }

    Bench superfat(String percent) {
        superfat = Optional.of(Share.ofPercent(percent));
        return this;
    }

    Bench alkali(AlkaliChoice choice) {
        alkali = choice;
        return this;
    }

    Bench potassium() {
        return alkali(new AlkaliChoice.Single(Alkali.POTASSIUM));
    }

    Bench mix(String sodium, String potassium, AlkaliChoice.Basis by) {
        return alkali(new AlkaliChoice.Mix(Share.ofPercent(sodium), Share.ofPercent(potassium), by));
    }

    /** Sodium hydroxide given in grams, belonging to the mass of oils. */
    Bench naoh(String grams, AlkaliChoice.As as) {
        return alkali(new AlkaliChoice.Given(
                Optional.of(WrittenMass.ofGrams(grams)), Optional.empty(), Optional.of(as), false));
    }

    Bench koh(String grams, AlkaliChoice.As as) {
        return alkali(new AlkaliChoice.Given(
                Optional.empty(), Optional.of(WrittenMass.ofGrams(grams)), Optional.of(as), false));
    }

    /** All alkali from the stock lye of this key, as much as the superfat needs. */
    Bench stock(String key) {
        return alkali(new AlkaliChoice.Stock(key, Optional.empty(), false));
    }

    Bench stockGrams(String key, String grams) {
        return alkali(new AlkaliChoice.Stock(key, Optional.of(WrittenMass.ofGrams(grams)), false));
    }

    Bench purity(double naoh, double koh) {
        purities =
                new Purities(Optional.of(Figure.exact(naoh, "the test")), Optional.of(Figure.exact(koh, "the test")));
        return this;
    }

    Bench purityAssumed() {
        purities = Purities.ASSUMED;
        return this;
    }

    Bench water(WaterRule rule) {
        water = rule;
        return this;
    }

    Bench lye(String percent) {
        return water(new WaterRule.LyeStrength(Share.ofPercent(percent), false));
    }

    Bench waterGrams(String grams) {
        return water(new WaterRule.Weight(WrittenMass.ofGrams(grams), false));
    }

    Bench acids(AcidRule rule) {
        acids = Optional.of(rule);
        return this;
    }

    Bench curedWater(String percent) {
        curedWater = Optional.of(Share.ofPercent(percent));
        return this;
    }

    Bench made(Process.Make make) {
        process = new Process(make, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        return this;
    }

    Bench forSale() {
        use = Use.SALE;
        return this;
    }

    Bench temperatures(String oilsCelsius, String lyeCelsius) {
        process = new Process(
                Process.Make.COLD,
                Optional.of(new Temperature(new BigDecimal(oilsCelsius), Temperature.Scale.C)),
                Optional.of(new Temperature(new BigDecimal(lyeCelsius), Temperature.Scale.C)),
                Optional.empty(),
                Optional.empty());
        return this;
    }

    Bench portion(String name, String percent) {
        portions.add(new PortionLine(name, Optional.of(Share.ofPercent(percent))));
        return this;
    }

    Bench own(OwnMaterial material) {
        materials.add(material);
        return this;
    }

    /** An addition in percent of the oils. */
    Bench add(String key, String percent, Stage stage) {
        return add(new Addition(key, ofOils(percent), stage, Optional.empty(), false));
    }

    /** A liquid in percent of the oils, at stage lye, in place of so much water. */
    Bench replaceWater(String key, String percent) {
        return add(new Addition(key, ofOils(percent), Stage.of(Stage.Kind.LYE), Optional.empty(), true));
    }

    /** An addition in percent of the oils, wetted out with so many parts of a liquid. */
    Bench disperse(String key, String percent, Stage stage, String in, String parts) {
        Disperse disperse = new Disperse(in, new BigDecimal(parts), BigDecimal.ONE, Optional.empty());
        return add(new Addition(key, ofOils(percent), stage, Optional.of(disperse), false));
    }

    Bench add(Addition addition) {
        additions.add(addition);
        return this;
    }

    private static Amount ofOils(String percent) {
        return new Amount.Percent(Share.ofPercent(percent), Amount.Base.OILS);
    }

    Formula formula() {
        return new Formula(
                "Test bar",
                1,
                use,
                "",
                oils,
                alkali,
                superfat,
                water,
                acids,
                curedWater,
                process,
                additions,
                portions,
                materials,
                Comments.NONE);
    }

    /** Looked up, or why not. */
    Outcome<ResolvedFormula> lookedUp() {
        return ResolvedFormula.of(formula(), Tables.bundled(), purities);
    }

    Outcome<BatchLines> laidOut() {
        return lookedUp().then(BatchLines::of);
    }

    /** Made with so many grams of oils, nothing rounded. */
    Made made(double oilGrams) {
        BatchLines batch = laidOut().orThrow();
        return new Made(batch, batch.massesAt(oilGrams));
    }

    /** One batch with the grams of each of its lines. */
    static final class Made {

        private final BatchLines batch;
        private final double[] masses;

        private Made(BatchLines batch, double[] masses) {
            this.batch = batch;
            this.masses = masses;
        }

        BatchLines batch() {
            return batch;
        }

        /** Grams by line. */
        double[] masses() {
            return masses.clone();
        }

        /** What it comes to. */
        Reaction reaction() {
            return Reaction.of(batch.lines(), masses);
        }

        double superfat() {
            return reaction().superfatPercent();
        }

        /** Grams of all lines with this key, dispersing liquids included. */
        double grams(String key) {
            double sum = 0;
            for (int i = 0; i < masses.length; i++) {
                sum += batch.lines().get(i).key().equals(key) ? masses[i] : 0;
            }
            return sum;
        }

        /** Grams of all lines of this kind. */
        double grams(BatchLine.Kind kind) {
            double sum = 0;
            for (int i = 0; i < masses.length; i++) {
                sum += batch.lines().get(i).kind() == kind ? masses[i] : 0;
            }
            return sum;
        }

        /** Grams of a kind of line with this key. */
        double grams(BatchLine.Kind kind, String key) {
            double sum = 0;
            for (int i = 0; i < masses.length; i++) {
                BatchLine line = batch.lines().get(i);
                sum += line.kind() == kind && line.key().equals(key) ? masses[i] : 0;
            }
            return sum;
        }

        double total() {
            double sum = 0;
            for (double m : masses) {
                sum += m;
            }
            return sum;
        }

        /** The water that the formula's rule asks for. */
        double waterByRule() {
            double oils = grams(BatchLine.Kind.OIL) + oilsUsedForDispersing();
            return batch.waterByRule().at(oils, total());
        }

        private double oilsUsedForDispersing() {
            double sum = 0;
            for (ResolvedFormula.OilPart oil : batch.formula().oils()) {
                sum += grams(BatchLine.Kind.DISPERSING_LIQUID, oil.key());
            }
            return sum;
        }

        /** Poured, cut, cured. */
        List<Composition> composition() {
            return Composition.of(batch, masses);
        }

        Composition poured() {
            return composition().get(0);
        }

        Composition cut() {
            return composition().get(1);
        }

        Composition cured() {
            return composition().get(2);
        }

        double millilitres() {
            return BatterVolume.millilitres(batch, masses);
        }

        double density() {
            return BatterVolume.density(batch, masses);
        }
    }
}
