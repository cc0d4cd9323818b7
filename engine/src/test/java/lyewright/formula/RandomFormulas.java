package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import lyewright.material.Alkali;
import lyewright.measure.Density;
import lyewright.measure.MassUnit;
import lyewright.measure.Share;
import lyewright.measure.Temperature;
import lyewright.measure.TimeSpan;
import lyewright.measure.TimeUnitWritten;
import lyewright.measure.Volume;
import lyewright.measure.VolumeUnit;
import lyewright.measure.WrittenMass;

/**
 * Valid formulas of every shape, the same for the same seed: percent and masses, every alkali and water, dispersions,
 * portions, own materials, comments. Keys are those of the tables. They keep the rules of the file; whether a given one can be
 * made (solubility, a fade that runs dry, more milk than water) is not promised.
 */
public final class RandomFormulas {

    private static final List<String> OILS = List.of(
            "coconut",
            "palm-kernel",
            "babassu",
            "olive-virgin",
            "olive-pomace",
            "sunflower-high-oleic",
            "rapeseed-low-erucic",
            "almond-sweet",
            "castor",
            "shea-butter",
            "cocoa-butter",
            "lard",
            "tallow",
            "beeswax",
            "jojoba",
            "stearic-acid-50");
    private static final List<String> SOLIDS = List.of(
            "sea-salt",
            "green-clay",
            "kaolin",
            "activated-charcoal",
            "colloidal-oats",
            "sugar",
            "mica-white",
            "citric-acid-anhydrous",
            "goat-milk-powder",
            "poppy-seed");
    private static final List<String> LIQUIDS = List.of(
            "goat-milk",
            "coconut-milk",
            "black-tea",
            "aloe-juice",
            "vinegar-5",
            "glycerin",
            "rosemary-oil",
            "lavender-oil");
    private static final List<String> NAMES = List.of(
            "plain",
            "kelp",
            "dark sea",
            "морская пена",
            "رغوة البحر",
            "🌊 wave",
            "no: 2",
            "#1",
            "- dash",
            "a, b {c}",
            "it's",
            "\"quoted\"",
            "yes",
            "010",
            "~",
            "rest",
            "a  b",
            "back\\slash",
            "x.y");
    private static final List<String> REMARKS = List.of(
            " from the notebook", "no space", " # twice", " соль", " 'quotes' \"both\"", "", " a: b", "\ttab", "!");

    private final Random random;

    private RandomFormulas(long seed) {
        random = new Random(seed);
    }

    /**
     * A formula.
     *
     * @param seed decides all of it
     * @return a formula that keeps the rules
     */
    public static Formula of(long seed) {
        return new RandomFormulas(seed).formula();
    }

    private Formula formula() {
        boolean masses = chance(35);
        List<OwnMaterial> materials = materials();
        List<OilLine> oils = masses ? oilsByMass() : oilsByPercent();
        List<PortionLine> portions = chance(40) ? portions() : List.of();
        AlkaliChoice alkali = alkali(masses, materials);
        Formula plain = new Formula(
                pick("Tideline", "Oat & Linden", "Мыло", "صابون", "Soap 🧼: the second", "100 % olive", "@home"),
                1 + random.nextInt(40),
                pick(Use.OWN, Use.SALE),
                pick(
                        "",
                        "",
                        "Cures eight weeks.",
                        "First line\nsecond: line # kept\n\n  indented\nlast",
                        "ends with a line end\n",
                        " leading\nand trailing \n",
                        "tab\there",
                        "two\n\n",
                        "\n"),
                oils,
                alkali,
                alkali.saysHowMuch() && chance(80) ? Optional.empty() : Optional.of(share(0, 30)),
                water(),
                maybe(40, () -> pick(AcidRule.COMPENSATE, AcidRule.AS_WRITTEN)),
                maybe(40, () -> share(0, 59)),
                process(portions),
                additions(oils, portions),
                portions,
                materials,
                Comments.NONE);
        return chance(50) ? withComments(plain) : plain;
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    @SafeVarargs
    private <T> T pick(T... values) {
        return values[random.nextInt(values.length)];
    }

    private <T> T pick(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> Optional<T> maybe(int percent, Supplier<T> value) {
        return chance(percent) ? Optional.of(value.get()) : Optional.empty();
    }

    /** At least one, no two alike. */
    private List<String> some(List<String> of, int most) {
        List<String> all = new ArrayList<>(of);
        Collections.shuffle(all, random);
        return all.subList(0, 1 + random.nextInt(most));
    }

    /** Above 0, up to two decimals, trailing noughts as they come. */
    private BigDecimal number(int most) {
        int decimals = random.nextInt(3);
        BigDecimal whole = BigDecimal.valueOf(1 + random.nextInt(most * (int) Math.pow(10, decimals)), decimals);
        return whole;
    }

    private Share share(int over, int under) {
        return new Share(number(under - over - 1).add(BigDecimal.valueOf(over)));
    }

    private WrittenMass mass(int most) {
        return new WrittenMass(number(most), pick(MassUnit.values()));
    }

    /** Shares above 0 that add up to 100. */
    private List<Share> hundred(int count) {
        List<Share> shares = new ArrayList<>();
        int left = 10_000;
        for (int i = 0; i < count - 1; i++) {
            int taken = 1 + random.nextInt(left - (count - i));
            left -= taken;
            shares.add(new Share(BigDecimal.valueOf(taken, 2)));
        }
        shares.add(new Share(BigDecimal.valueOf(left, 2)));
        return shares;
    }

    private List<OilLine> oilsByPercent() {
        List<String> keys = some(OILS, 6);
        List<Share> shares = hundred(keys.size());
        int rest = chance(50) ? random.nextInt(keys.size()) : -1;
        List<OilLine> lines = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            lines.add(new OilLine(keys.get(i), i == rest ? new OilLine.Rest() : new OilLine.Percent(shares.get(i))));
        }
        return lines;
    }

    private List<OilLine> oilsByMass() {
        return some(OILS, 6).stream()
                .map(key -> new OilLine(
                        key, new OilLine.Weight(new WrittenMass(number(900), pick(MassUnit.GRAM, MassUnit.OUNCE)))))
                .toList();
    }

    private AlkaliChoice alkali(boolean masses, List<OwnMaterial> materials) {
        Optional<String> lye = materials.stream()
                .filter(own -> own.kind().equals(OwnMaterial.LYE))
                .map(OwnMaterial::key)
                .findFirst();
        if (lye.isPresent() && chance(50)) {
            boolean given = masses && chance(50);
            return new AlkaliChoice.Stock(
                    lye.get(), given ? Optional.of(mass(300)) : Optional.empty(), given && chance(30));
        }
        if (masses && chance(50)) {
            boolean sodium = chance(70);
            return new AlkaliChoice.Given(
                    sodium ? Optional.of(mass(200)) : Optional.empty(),
                    !sodium || chance(30) ? Optional.of(mass(200)) : Optional.empty(),
                    maybe(60, () -> pick(AlkaliChoice.As.values())),
                    chance(20));
        }
        if (chance(40)) {
            List<Share> shares = hundred(2);
            return new AlkaliChoice.Mix(shares.get(0), shares.get(1), pick(AlkaliChoice.Basis.values()));
        }
        return new AlkaliChoice.Single(pick(Alkali.values()));
    }

    private WaterRule water() {
        return switch (random.nextInt(4)) {
            case 0 -> new WaterRule.LyeStrength(share(20, 50), chance(30));
            case 1 -> new WaterRule.OfOils(share(20, 40));
            case 2 -> new WaterRule.Ratio(number(3), number(2), chance(30));
            default -> new WaterRule.Weight(mass(500), chance(20));
        };
    }

    private Temperature temperature() {
        return chance(80)
                ? new Temperature(number(90), Temperature.Scale.C)
                : new Temperature(number(200), Temperature.Scale.F);
    }

    private TimeSpan time() {
        return new TimeSpan(number(30), pick(TimeUnitWritten.values()));
    }

    private Process process(List<PortionLine> portions) {
        if (chance(30)) {
            return Process.COLD;
        }
        Optional<Process.Pour> pour = portions.size() < 2 || chance(40)
                ? Optional.empty()
                : Optional.of(new Process.Pour(
                        portions.get(0).name(), portions.get(1).name(), BigDecimal.valueOf(2 + random.nextInt(99))));
        return new Process(
                pick(Process.Make.values()),
                maybe(60, this::temperature),
                maybe(60, this::temperature),
                maybe(40, () -> new Process.Oven(temperature(), maybe(50, this::time), chance(50))),
                pour);
    }

    private List<PortionLine> portions() {
        List<String> names = some(NAMES, 4);
        List<Share> shares = hundred(names.size());
        int rest = chance(50) ? random.nextInt(names.size()) : -1;
        List<PortionLine> lines = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            lines.add(new PortionLine(names.get(i), i == rest ? Optional.empty() : Optional.of(shares.get(i))));
        }
        return lines;
    }

    private List<Addition> additions(List<OilLine> oils, List<PortionLine> portions) {
        List<Addition> additions = new ArrayList<>();
        for (int i = random.nextInt(6); i > 0; i--) {
            Stage stage = chance(40) && !portions.isEmpty()
                    ? Stage.portion(pick(portions).name())
                    : Stage.of(pick(
                            Stage.Kind.LYE,
                            Stage.Kind.OILS,
                            Stage.Kind.TRACE,
                            Stage.Kind.TOP,
                            Stage.Kind.EVERY_PORTION));
            boolean liquid = chance(40);
            boolean replaces = liquid && stage.kind() != Stage.Kind.TOP && chance(30);
            boolean disperses = !liquid && stage.kind() != Stage.Kind.TOP && chance(40);
            additions.add(new Addition(
                    pick(liquid ? LIQUIDS : SOLIDS),
                    amount(stage),
                    stage,
                    disperses ? Optional.of(disperse(oils)) : Optional.empty(),
                    replaces));
        }
        return additions;
    }

    private Amount amount(Stage stage) {
        boolean inPortion = stage.kind() == Stage.Kind.PORTION || stage.kind() == Stage.Kind.EVERY_PORTION;
        Amount.Base base = inPortion && chance(50) ? Amount.Base.PORTION_OILS : Amount.Base.OILS;
        return switch (random.nextInt(5)) {
            case 0 -> new Amount.Percent(share(0, 60), base);
            case 1 -> new Amount.Percent(share(0, 20), Amount.Base.BATCH);
            case 2 ->
                new Amount.Per(mass(30), pick(MassUnit.GRAM, MassUnit.KILOGRAM, MassUnit.OUNCE, MassUnit.POUND), base);
            case 3 -> new Amount.Bulk(new Volume(number(50), pick(VolumeUnit.values())), chance(30));
            default -> new Amount.Weight(mass(50), chance(30));
        };
    }

    private Disperse disperse(List<OilLine> oils) {
        return new Disperse(
                pick("water", "oil", "glycerin", pick(oils).key()),
                number(5),
                chance(80) ? BigDecimal.ONE : number(3),
                maybe(40, this::time));
    }

    private List<OwnMaterial> materials() {
        Set<String> kinds = new LinkedHashSet<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            kinds.add(pick("oil", "wax", "lye", "oils", "liquid", "milk", "coconut"));
        }
        return kinds.stream().map(this::material).toList();
    }

    private OwnMaterial material(String kind) {
        Optional<WrittenFigure> none = Optional.empty();
        boolean oil = kind.equals("oil") || kind.equals("wax") || kind.equals("coconut");
        boolean watery = kind.equals("liquid") || kind.equals("milk");
        // fat whose saponification value is not given is refused where it would take alkali
        boolean fatty = watery && chance(50);
        return new OwnMaterial(
                kind.equals("coconut") ? kind : pick("house-", "дом ", "🌿 ") + kind,
                kind.equals("coconut") ? pick("", "oil") : kind,
                oil ? Optional.of(figure(150, 50)) : none,
                oil && chance(30) ? Optional.of(figure(1, 9)) : none,
                oil && chance(30) ? Optional.of(figure(50, 60)) : none,
                maybe(30, () -> new Density(BigDecimal.valueOf(900 + random.nextInt(400), 3))),
                watery ? Optional.of(figure(50, 20)) : none,
                fatty ? Optional.of(figure(1, 5)) : none,
                fatty || (watery && chance(20)) ? Optional.of(figure(180, 60)) : none,
                watery && chance(50) ? Optional.of(figure(1, 5)) : none,
                watery && chance(50) ? Optional.of(figure(1, 5)) : none,
                watery && chance(40)
                        ? Optional.of(new OwnMaterial.Acid(figure(1, 5), pick("acetic acid", "citric acid anhydrous")))
                        : Optional.empty(),
                kind.equals("lye")
                        ? Optional.of(new OwnMaterial.Strength(figure(30, 20), pick(Alkali.values())))
                        : Optional.empty(),
                kind.equals("oils") ? blend() : List.of(),
                chance(20) ? "Olea Europaea Fruit Oil" : "",
                chance(20) ? "8001-25-0" : "",
                chance(30) ? "Northquay Oils (invented)" : "",
                chance(50) ? pick("certificate L-204", "Lot #7: sheet", "письмо") : "");
    }

    private List<OwnMaterial.BlendPart> blend() {
        List<String> keys = some(OILS, 3);
        List<Share> shares = hundred(keys.size());
        List<OwnMaterial.BlendPart> parts = new ArrayList<>();
        for (int i = 0; i < keys.size(); i++) {
            parts.add(new OwnMaterial.BlendPart(
                    keys.get(i), shares.get(i), chance(30) ? Optional.of(figure(185, 10)) : Optional.empty()));
        }
        return parts;
    }

    /** From {@code low} to {@code low + width}, at least 1. */
    private WrittenFigure figure(int low, int width) {
        BigDecimal first = BigDecimal.valueOf(low).add(number(width - 2));
        return switch (random.nextInt(3)) {
            case 0 -> new WrittenFigure(first, WrittenFigure.Form.EXACT, first);
            case 1 ->
                new WrittenFigure(first, WrittenFigure.Form.PLUS_MINUS, BigDecimal.valueOf(random.nextInt(100), 2));
            default ->
                new WrittenFigure(first, WrittenFigure.Form.TO, first.add(BigDecimal.valueOf(random.nextInt(20), 1)));
        };
    }

    /** Comments where the normal form has a line for them. */
    private Formula withComments(Formula plain) {
        Map<String, List<String>> before = new HashMap<>();
        Map<String, String> beside = new HashMap<>();
        if (chance(40)) {
            before.put("", List.of(" Gannet Stair Soap", " demo data, invented"));
        }
        for (String path : linesOf(plain)) {
            boolean item = path.matches("additions\\.[0-9]+");
            boolean firstOfItem = path.matches("additions\\.[0-9]+\\.of");
            if (!firstOfItem && chance(15)) {
                before.put(path, chance(70) ? List.of(pick(REMARKS)) : List.of(pick(REMARKS), pick(REMARKS)));
            }
            if (!item && chance(15)) {
                beside.put(path, pick(REMARKS));
            }
        }
        return plain.withComments(
                new Comments(before, beside, chance(30) ? List.of(" the end", pick(REMARKS)) : List.of()));
    }

    private static List<String> linesOf(Formula f) {
        List<String> paths = new ArrayList<>(List.of("recipe", "version", "use", "oils", "alkali", "water"));
        f.oils().forEach(line -> paths.add("oils." + line.key()));
        f.superfat().ifPresent(s -> paths.add("superfat"));
        f.process().oils().ifPresent(t -> paths.addAll(List.of("process", "process.make", "process.oils")));
        if (f.alkali() instanceof AlkaliChoice.Mix) {
            paths.addAll(List.of("alkali.by", "alkali.potassium"));
        }
        for (int i = 0; i < f.additions().size(); i++) {
            String item = "additions." + i;
            paths.addAll(List.of(item, item + ".of", item + ".amount", item + ".stage"));
            if (f.additions().get(i).disperse().isPresent()) {
                paths.addAll(List.of(item + ".disperse", item + ".disperse.in", item + ".disperse.ratio"));
            }
        }
        f.portions().forEach(line -> paths.add("portions." + line.name()));
        for (OwnMaterial own : f.materials()) {
            paths.add("materials." + own.key());
            own.saponificationValue().ifPresent(v -> paths.add("materials." + own.key() + ".saponification value"));
            own.oils().forEach(part -> paths.add("materials." + own.key() + ".oils." + part.key()));
        }
        return paths;
    }
}
