package lyewright.makingsheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.chemistry.BatchLines;
import lyewright.fill.Fill;
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
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.Temperature;
import lyewright.measure.TimeSpan;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;

/**
 * A formula in the words of a formula file, for tests: sodium, 33 % lye, own use and pure alkali until told otherwise, and
 * no superfat. Changes as it is spoken.
 */
public final class AFormula {

    private static final Purities PURE =
            new Purities(Optional.of(Figure.exact(100, "the test")), Optional.of(Figure.exact(100, "the test")));

    private final List<OilLine> oils = new ArrayList<>();
    private final List<Addition> additions = new ArrayList<>();
    private final List<PortionLine> portions = new ArrayList<>();
    private final List<OwnMaterial> materials = new ArrayList<>();
    private AlkaliChoice alkali = new AlkaliChoice.Single(Alkali.SODIUM);
    private Optional<Share> superfat = Optional.empty();
    private WaterRule water = new WaterRule.LyeStrength(Share.ofPercent("33"), false);
    private Optional<AcidRule> acids = Optional.empty();
    private Optional<Share> curedWater = Optional.empty();
    private Process process = Process.COLD;
    private Use use = Use.OWN;
    private Purities purities = PURE;

    private AFormula() {}

    /** Oils as {@code "coconut", "80 %", "olive-virgin", "rest"} or {@code "coconut", "500 g"}. */
    public static AFormula ofOils(String... keysAndAmounts) {
        AFormula formula = new AFormula();
        for (int i = 0; i < keysAndAmounts.length; i += 2) {
            formula.oils.add(new OilLine(keysAndAmounts[i], oilAmount(keysAndAmounts[i + 1])));
        }
        return formula;
    }

    private static OilLine.Amount oilAmount(String text) {
        if (text.equals("rest")) {
            return new OilLine.Rest();
        }
        return text.endsWith("%")
                ? new OilLine.Percent(Share.parse(text).orThrow())
                : new OilLine.Weight(WrittenMass.parse(text).orThrow());
    }

    public AFormula superfat(String percent) {
        superfat = Optional.of(Share.parse(percent).orThrow());
        return this;
    }

    public AFormula alkali(AlkaliChoice choice) {
        alkali = choice;
        return this;
    }

    public AFormula potassium() {
        return alkali(new AlkaliChoice.Single(Alkali.POTASSIUM));
    }

    public AFormula mixed(String sodium, String potassium, AlkaliChoice.Basis by) {
        return alkali(new AlkaliChoice.Mix(
                Share.parse(sodium).orThrow(), Share.parse(potassium).orThrow(), by));
    }

    /** Sodium hydroxide as a mass of the product, saying so. */
    public AFormula naohAsWeighed(String mass) {
        return naoh(mass, Optional.of(AlkaliChoice.As.WEIGHED));
    }

    /** Sodium hydroxide as a mass of the pure substance. */
    public AFormula naohPure(String mass) {
        return naoh(mass, Optional.of(AlkaliChoice.As.PURE));
    }

    /** Sodium hydroxide as a mass, not saying of what. */
    public AFormula naoh(String mass) {
        return naoh(mass, Optional.empty());
    }

    private AFormula naoh(String mass, Optional<AlkaliChoice.As> as) {
        return alkali(
                new AlkaliChoice.Given(Optional.of(WrittenMass.parse(mass).orThrow()), Optional.empty(), as, false));
    }

    public AFormula stockLye(String key) {
        return alkali(new AlkaliChoice.Stock(key, Optional.empty(), false));
    }

    public AFormula stockLye(String key, String mass) {
        return alkali(
                new AlkaliChoice.Stock(key, Optional.of(WrittenMass.parse(mass).orThrow()), false));
    }

    /** As in a file: {@code 33 % lye}, {@code 33 % lye as weighed}, {@code 26 % of oils}, {@code 2 to 1}, {@code 265 g}. */
    public AFormula water(String text) {
        boolean asWeighed = text.endsWith(" as weighed");
        String rule = asWeighed ? text.substring(0, text.length() - " as weighed".length()) : text;
        if (rule.endsWith("% lye")) {
            water = new WaterRule.LyeStrength(Share.parse(cut(rule, " lye")).orThrow(), asWeighed);
        } else if (rule.endsWith("% of oils")) {
            water = new WaterRule.OfOils(Share.parse(cut(rule, " of oils")).orThrow());
        } else if (rule.contains(" to ")) {
            String[] parts = rule.split(" to ", -1);
            water = new WaterRule.Ratio(new BigDecimal(parts[0]), new BigDecimal(parts[1]), asWeighed);
        } else {
            boolean fixed = rule.endsWith(" fixed");
            water = new WaterRule.Weight(
                    WrittenMass.parse(fixed ? cut(rule, " fixed") : rule).orThrow(), fixed);
        }
        return this;
    }

    private static String cut(String text, String tail) {
        return text.substring(0, text.length() - tail.length());
    }

    public AFormula acids(AcidRule rule) {
        acids = Optional.of(rule);
        return this;
    }

    public AFormula forSale() {
        use = Use.SALE;
        return this;
    }

    public AFormula curedWater(String percent) {
        curedWater = Optional.of(Share.parse(percent).orThrow());
        return this;
    }

    public AFormula blendedAt(String oilsTemperature, String lyeTemperature) {
        process = new Process(
                process.make(),
                Optional.of(Temperature.parse(oilsTemperature).orThrow()),
                Optional.of(Temperature.parse(lyeTemperature).orThrow()),
                process.oven(),
                process.pour());
        return this;
    }

    public AFormula make(Process.Make make) {
        process = new Process(make, process.oils(), process.lye(), process.oven(), process.pour());
        return this;
    }

    public AFormula oven(String temperature) {
        process = new Process(
                process.make(),
                process.oils(),
                process.lye(),
                Optional.of(new Process.Oven(Temperature.parse(temperature).orThrow(), Optional.empty(), true)),
                process.pour());
        return this;
    }

    public AFormula fade(String plain, String coloured, int layers) {
        process = new Process(
                process.make(),
                process.oils(),
                process.lye(),
                process.oven(),
                Optional.of(new Process.Pour(plain, coloured, BigDecimal.valueOf(layers))));
        return this;
    }

    /** As in a file: {@code "green-clay", "12 g per kg portion oils", "portion kelp"}. */
    public AFormula add(String of, String amount, String stage) {
        additions.add(new Addition(of, amount(amount), stage(stage), Optional.empty(), false));
        return this;
    }

    /** The addition just added is wetted out first. */
    public AFormula dispersed(String in, String ratio) {
        return dispersed(in, ratio, Optional.empty());
    }

    public AFormula dispersed(String in, String ratio, String ahead) {
        return dispersed(in, ratio, Optional.of(TimeSpan.parse(ahead).orThrow()));
    }

    private AFormula dispersed(String in, String ratio, Optional<TimeSpan> ahead) {
        String[] parts = ratio.split(" to ", -1);
        Disperse disperse = new Disperse(in, new BigDecimal(parts[0]), new BigDecimal(parts[1]), ahead);
        Addition last = last();
        additions.add(
                new Addition(last.of(), last.amount(), last.stage(), Optional.of(disperse), last.replacesWater()));
        return this;
    }

    /** The addition just added takes the place of so much water. */
    public AFormula replacingWater() {
        Addition last = last();
        additions.add(new Addition(last.of(), last.amount(), last.stage(), last.disperse(), true));
        return this;
    }

    private Addition last() {
        return additions.remove(additions.size() - 1);
    }

    private static Stage stage(String text) {
        if (text.startsWith("portion ")) {
            return Stage.portion(text.substring("portion ".length()));
        }
        return Stage.of(Stage.Kind.valueOf(text.replace(' ', '_').toUpperCase(Locale.ROOT)));
    }

    private static Amount amount(String text) {
        if (text.contains("% of ")) {
            String[] parts = text.split(" of ", -1);
            return new Amount.Percent(Share.parse(parts[0]).orThrow(), base(parts[1]));
        }
        if (text.contains(" per ")) {
            String[] parts = text.split(" per ", -1);
            int space = parts[1].indexOf(' ');
            return new Amount.Per(
                    WrittenMass.parse(parts[0]).orThrow(),
                    unit(parts[1].substring(0, space)),
                    base(parts[1].substring(space + 1)));
        }
        boolean fixed = text.endsWith(" fixed");
        String size = fixed ? cut(text, " fixed") : text;
        return size.endsWith("l")
                ? new Amount.Bulk(Volume.parse(size).orThrow(), fixed)
                : new Amount.Weight(WrittenMass.parse(size).orThrow(), fixed);
    }

    private static Amount.Base base(String word) {
        return Amount.Base.valueOf(word.replace(' ', '_').toUpperCase(Locale.ROOT));
    }

    private static MassUnit unit(String symbol) {
        for (MassUnit unit : MassUnit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new IllegalArgumentException(symbol);
    }

    /** As {@code "plain", "60 %", "kelp", "rest"}. */
    public AFormula portions(String... namesAndShares) {
        for (int i = 0; i < namesAndShares.length; i += 2) {
            String share = namesAndShares[i + 1];
            portions.add(new PortionLine(
                    namesAndShares[i],
                    share.equals("rest")
                            ? Optional.empty()
                            : Optional.of(Share.parse(share).orThrow())));
        }
        return this;
    }

    public AFormula own(OwnMaterial material) {
        materials.add(material);
        return this;
    }

    /** Sodium hydroxide of a purity that nobody could type as such, as a lot's certificate once could say. */
    public AFormula certifiedSodium(double percent) {
        purities = new Purities(Optional.of(Figure.exact(percent, "a certificate")), purities.potassium());
        return this;
    }

    /** As on the command line: {@code naoh=98.5,koh=90}. */
    public AFormula purities(String text) {
        purities = Purities.parse(text).orThrow();
        return this;
    }

    public AFormula puritiesAssumed() {
        purities = Purities.ASSUMED;
        return this;
    }

    public Formula formula() {
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

    public ResolvedFormula resolved() {
        return ResolvedFormula.of(formula(), Tables.bundled(), purities).orThrow();
    }

    public Outcome<BatchLines> laidOut() {
        return BatchLines.of(resolved());
    }

    public BatchLines batch() {
        return laidOut().orThrow();
    }

    public Outcome<MakingSheet> trySheet(Fill fill, Equipment equipment) {
        return MakingSheet.of(resolved(), fill, equipment);
    }

    public MakingSheet sheet(Fill fill, Equipment equipment) {
        return trySheet(fill, equipment).orThrow();
    }

    public MakingSheet sheet(Fill fill) {
        return sheet(fill, Equipment.USUAL);
    }
}
