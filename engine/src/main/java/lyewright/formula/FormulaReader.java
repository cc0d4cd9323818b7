package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.YamlTree.Entries;
import lyewright.formula.YamlTree.Items;
import lyewright.formula.YamlTree.Node;
import lyewright.formula.YamlTree.Text;
import lyewright.material.Alkali;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.Temperature;
import lyewright.measure.TimeSpan;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/**
 * Reads a formula from the tree of its file. What cannot be read is noted and stands in the formula as something harmless,
 * so that the rest can still be judged in the same go.
 */
final class FormulaReader {

    static final String RECIPE = "recipe";
    static final String VERSION = "version";
    static final String USE = "use";
    static final String NOTES = "notes";
    static final String OILS = "oils";
    static final String ALKALI = "alkali";
    static final String SUPERFAT = "superfat";
    static final String WATER = "water";
    static final String ACIDS = "acids";
    static final String CURED_WATER = "cured water";
    static final String PROCESS = "process";
    static final String ADDITIONS = "additions";
    static final String PORTIONS = "portions";
    static final String MATERIALS = "materials";

    static final String MAKE = "make";
    static final String LYE = "lye";
    static final String OVEN = "oven";
    static final String POUR = "pour";

    static final String OF = "of";
    static final String AMOUNT = "amount";
    static final String STAGE = "stage";
    static final String DISPERSE = "disperse";
    static final String REPLACES = "replaces";

    static final String IN = "in";
    static final String RATIO = "ratio";
    static final String AHEAD = "ahead";

    private static final List<String> TOP = List.of(
            RECIPE,
            VERSION,
            USE,
            NOTES,
            OILS,
            ALKALI,
            SUPERFAT,
            WATER,
            ACIDS,
            CURED_WATER,
            PROCESS,
            ADDITIONS,
            PORTIONS,
            MATERIALS);

    /** Stands in for what cannot be read; its problem is already noted, and the rules find nothing wrong with it. */
    private static final WaterRule SOME_WATER = new WaterRule.LyeStrength(Share.ofPercent("33"), false);

    private static final Share SOME_SHARE = Share.ofPercent("0.000000001");

    private static final WrittenMass SOME_MASS = new WrittenMass(BigDecimal.ONE, MassUnit.GRAM);

    private final Findings findings;
    private final Fields top;

    FormulaReader(Entries root, Findings findings) {
        this.findings = findings;
        this.top = Fields.known(findings, "", root, TOP);
    }

    Formula read(Comments comments) {
        Formula formula = new Formula(
                orEmpty(top.needed(RECIPE, "begin the file with recipe: and its name")),
                version(),
                use(),
                notes(),
                oils(),
                alkali(),
                superfat(),
                water(),
                acids(),
                Optional.ofNullable(top.read(CURED_WATER, Share::parse)),
                process(),
                additions(),
                portions(),
                materials(),
                comments);
        expectWhatFollows(formula);
        return formula;
    }

    /** A part that could not be read at all is missed elsewhere too; that need not be said as well. */
    private void expectWhatFollows(Formula formula) {
        if (formula.alkali() instanceof AlkaliChoice.Stock && findings.has(MATERIALS)) {
            findings.expect(ALKALI);
        }
        boolean portionsLost = formula.portions().isEmpty() && findings.has(PORTIONS);
        boolean oilsLost = formula.oils().isEmpty() && findings.has(OILS);
        for (int i = 0; i < formula.additions().size(); i++) {
            String path = Places.join(ADDITIONS, Integer.toString(i));
            if (portionsLost) {
                findings.expect(Places.join(path, STAGE));
            }
            if (oilsLost) {
                findings.expect(Places.join(path, DISPERSE) + "." + IN);
            }
        }
        if (portionsLost) {
            findings.expect(Places.join(PROCESS, POUR));
        }
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private int version() {
        String text = top.text(VERSION);
        if (text == null) {
            return 1;
        }
        boolean digits = text.length() <= 9 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        if (!digits) {
            findings.add(VERSION, Wording.quote(text) + " is not a version", "write a whole number from 1, such as 3");
            return 1;
        }
        return Integer.parseInt(text);
    }

    private Use use() {
        String word = top.text(USE);
        Use use = word == null ? null : Words.choose(findings, USE, word, Use.values(), Use::word);
        return use == null ? Use.OWN : use;
    }

    /** Notes are kept as they stand, line ends and all. */
    private String notes() {
        Node node = top.node(NOTES);
        if (node instanceof Text text) {
            return text.text();
        }
        return orEmpty(top.text(NOTES));
    }

    private List<OilLine> oils() {
        Entries map = top.map(OILS, "write each oil on a line of its own, as in coconut: 80 %");
        if (map == null) {
            return List.of();
        }
        Fields fields = Fields.open(findings, OILS, map);
        Map<String, OilLine.Amount> read = new LinkedHashMap<>();
        for (String key : fields.names()) {
            OilLine.Amount amount = fields.read(key, AmountText::ofOil);
            if (amount != null) {
                read.put(key, amount);
            }
        }
        OilLine.Amount unread = unreadOil(read.values());
        return fields.names().stream()
                .map(key -> new OilLine(key, read.getOrDefault(key, unread)))
                .toList();
    }

    /** What stands in for an oil's amount that cannot be read: of the kind that the others are of. */
    private static OilLine.Amount unreadOil(Collection<OilLine.Amount> read) {
        boolean percent = read.stream().anyMatch(amount -> !(amount instanceof OilLine.Weight));
        return percent ? new OilLine.Percent(SOME_SHARE) : new OilLine.Weight(SOME_MASS);
    }

    private AlkaliChoice alkali() {
        AlkaliChoice choice = AlkaliReader.read(top);
        return choice == null ? new AlkaliChoice.Single(Alkali.SODIUM) : choice;
    }

    /** A superfat may be left out where the alkali is given; when the alkali could not be read, nobody can tell. */
    private Optional<Share> superfat() {
        Share share = top.read(SUPERFAT, Share::parse);
        if (share == null && !top.has(SUPERFAT) && findings.has(ALKALI)) {
            findings.expect(SUPERFAT);
        }
        return Optional.ofNullable(share);
    }

    private WaterRule water() {
        if (!top.has(WATER) && !findings.expects(WATER)) {
            findings.add(WATER, "the formula does not say its water", "write it, as in water: 33 % lye");
        }
        WaterRule rule = top.read(WATER, WaterText::parse);
        return rule == null ? SOME_WATER : rule;
    }

    private Optional<AcidRule> acids() {
        String word = top.text(ACIDS);
        return word == null
                ? Optional.empty()
                : Optional.ofNullable(
                        Words.choose(findings, ACIDS, Wording.tidy(word), AcidRule.values(), AcidRule::word));
    }

    private Process process() {
        Entries map = top.map(PROCESS, "write it as {make: cold, oils: 38 C, lye: 38 C}");
        if (map == null) {
            return Process.COLD;
        }
        Fields fields = Fields.known(findings, PROCESS, map, List.of(MAKE, OILS, LYE, OVEN, POUR));
        String word = fields.text(MAKE);
        Process.Make make = word == null
                ? null
                : Words.choose(findings, fields.at(MAKE), word, Process.Make.values(), Process.Make::word);
        return new Process(
                make == null ? Process.Make.COLD : make,
                Optional.ofNullable(fields.read(OILS, Temperature::parse)),
                Optional.ofNullable(fields.read(LYE, Temperature::parse)),
                Optional.ofNullable(fields.read(OVEN, MakingText::oven)),
                Optional.ofNullable(fields.readNames(POUR, MakingText::pour)));
    }

    private List<Addition> additions() {
        Node node = top.node(ADDITIONS);
        if (node == null || top.isAbsent(ADDITIONS)) {
            return List.of();
        }
        if (!(node instanceof Items list)) {
            findings.add(ADDITIONS, "'additions' must be a list", "begin each addition with '- of:' and its name");
            return List.of();
        }
        List<Addition> additions = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            additions.add(addition(list.items().get(i), Places.join(ADDITIONS, Integer.toString(i))));
        }
        return additions;
    }

    private Addition addition(Node node, String path) {
        if (!(node instanceof Entries map)) {
            findings.add(
                    path, "an addition needs its names", "write of:, amount: and stage:, each on a line of its own");
            return new Addition(
                    "", new Amount.Weight(SOME_MASS, false), Stage.of(Stage.Kind.TRACE), Optional.empty(), false);
        }
        Fields fields = Fields.known(findings, path, map, List.of(OF, AMOUNT, STAGE, DISPERSE, REPLACES));
        String of = fields.needed(OF, "name the material, as in of: sea-salt");
        fields.require(AMOUNT, "say how much, as in amount: 2 % of oils");
        Amount amount = fields.read(AMOUNT, AmountText::ofAddition);
        fields.require(STAGE, "say when it goes in, as in stage: trace");
        Stage stage = fields.readNames(STAGE, MakingText::stage);
        return new Addition(
                orEmpty(of),
                amount == null ? new Amount.Weight(SOME_MASS, false) : amount,
                stage == null ? Stage.of(Stage.Kind.TRACE) : stage,
                disperse(fields),
                replacesWater(fields));
    }

    private boolean replacesWater(Fields fields) {
        String word = fields.text(REPLACES);
        if (word != null && !word.equals(WATER)) {
            findings.add(
                    fields.at(REPLACES), "a liquid cannot replace " + Wording.quote(word), "write replaces: water");
        }
        return word != null;
    }

    private Optional<Disperse> disperse(Fields addition) {
        String example = "write it as {in: water, ratio: 3 to 1}";
        Entries map = addition.map(DISPERSE, example);
        if (addition.isAbsent(DISPERSE)) {
            addition.text(DISPERSE);
        }
        if (map == null) {
            return Optional.empty();
        }
        Fields fields = Fields.known(findings, addition.at(DISPERSE), map, List.of(IN, RATIO, AHEAD));
        String in = fields.needed(IN, example);
        fields.require(RATIO, example);
        WaterText.Ratio ratio = fields.read(RATIO, FormulaReader::plainRatio);
        TimeSpan ahead = fields.read(AHEAD, TimeSpan::parse);
        return in == null || ratio == null
                ? Optional.empty()
                : Optional.of(new Disperse(in, ratio.first(), ratio.second(), Optional.ofNullable(ahead)));
    }

    private static Outcome<WaterText.Ratio> plainRatio(String text) {
        return WaterText.ratio(text)
                .then(ratio -> ratio.rest().isEmpty()
                        ? Outcome.ok(ratio)
                        : Outcome.refused(Wording.quote(text) + " is not a ratio", "write it as 3 to 1"));
    }

    private List<PortionLine> portions() {
        Entries map = top.map(PORTIONS, "write each portion with its share, as in plain: 60 %");
        List<PortionLine> lines = new ArrayList<>();
        if (map != null) {
            Fields fields = Fields.open(findings, PORTIONS, map);
            for (String name : fields.names()) {
                List<Share> share = fields.read(name, AmountText::shareOrRest);
                lines.add(new PortionLine(
                        name,
                        share == null ? Optional.of(SOME_SHARE) : share.stream().findFirst()));
            }
        }
        return lines;
    }

    private List<OwnMaterial> materials() {
        Entries map = top.map(MATERIALS, "write each material's name, and below it what is known of it");
        List<OwnMaterial> materials = new ArrayList<>();
        if (map != null) {
            Fields fields = Fields.open(findings, MATERIALS, map);
            for (String key : fields.names()) {
                Entries own = fields.map(key, "write its kind below its name, as in kind: oil");
                if (own != null) {
                    materials.add(MaterialReader.read(findings, fields.at(key), key, own));
                } else if (fields.isAbsent(key)) {
                    findings.add(
                            fields.at(key),
                            "nothing is said of " + Wording.quote(key),
                            "write its kind below its name, or take the line out");
                }
            }
        }
        return materials;
    }
}
