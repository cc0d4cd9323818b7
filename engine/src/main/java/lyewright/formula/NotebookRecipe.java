package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.formula.NotebookReader.Spot;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/** The formula that the lines of a notebook come to. */
final class NotebookRecipe {

    /** Stands in where the water is missing or cannot be read; the trouble is noted then. */
    private static final WaterRule SOME_WATER =
            new WaterRule.Weight(new WrittenMass(BigDecimal.ONE, MassUnit.GRAM), false);

    private static final Spot BEGINNING = new Spot(1, "", 0);

    private final NotebookNames names;
    private final Tables tables;
    private final Findings findings;
    private final Map<String, OilLine> oils = new LinkedHashMap<>();
    private final List<Addition> additions = new ArrayList<>();
    private final Map<Alkali, WrittenMass> alkalis = new EnumMap<>(Alkali.class);
    /** On which line each thing stands, by its path. */
    private final Map<String, Integer> seen = new HashMap<>();

    private final NotebookShares shares = new NotebookShares();
    /** Which alkalis stand on a line without an amount, and where. */
    private final Map<Alkali, Spot> named = new EnumMap<>(Alkali.class);

    private final Map<String, List<String>> before = new HashMap<>();
    private final Map<String, String> beside = new HashMap<>();
    private List<String> remarks = new ArrayList<>();
    private @Nullable String name;
    private @Nullable Share superfat;
    private @Nullable WaterRule water;

    NotebookRecipe(NotebookNames names, Tables tables, Findings findings) {
        this.names = names;
        this.tables = tables;
        this.findings = findings;
    }

    void remark(String text) {
        remarks.add(text);
    }

    void name(String text, Spot spot) {
        if (name != null) {
            spot.say(
                    findings,
                    "the recipe has a name already, " + Wording.quote(name),
                    "write one recipe, and one name");
            return;
        }
        name = text;
        stands("recipe", spot);
    }

    /** Notes that something is there, though it cannot be read: that it is missing need not be said. */
    void miss(String what) {
        if (NotebookNames.isWater(what)) {
            findings.expect("water");
        } else if (NotebookNames.alkali(what).isPresent() || NotebookNames.isSuperfat(what)) {
            findings.expect("superfat");
        } else {
            findings.expect("oils");
        }
    }

    void superfat(Quantity amount, Spot spot) {
        Outcome<Share> share = Share.parse(amount.toString());
        if (isTwice("superfat", "superfat", spot)) {
            return;
        }
        stands("superfat", spot.at(amount));
        if (share instanceof Outcome.Ok<Share> ok) {
            superfat = ok.value();
        } else {
            miss(NotebookNames.SUPERFAT);
            spot.at(amount).say(findings, share);
        }
        notBoth(spot);
    }

    /** One of the two follows from the other. */
    private void notBoth(Spot spot) {
        if (seen.containsKey("superfat") && seen.containsKey("alkali")) {
            spot.say(
                    findings,
                    "both a superfat and the alkali are given",
                    "leave one of the lines out: each follows from the other");
        }
    }

    void thing(NotebookLine line, Quantity amount, Spot spot) {
        String typed = line.nameWithout(amount);
        Optional<Alkali> alkali = NotebookNames.alkali(typed);
        boolean water = NotebookNames.isWater(typed);
        if (!alkali.isPresent() && !water) {
            material(typed, line, amount, spot);
        } else if (line.stage().isPresent() && line.stage().get() != Stage.Kind.LYE) {
            miss(typed);
            spot.say(findings, Wording.quote(typed) + " goes into the lye jug", "leave out when it goes in");
        } else if (water) {
            water(amount, spot);
        } else {
            alkali(alkali.get(), amount, spot);
        }
    }

    /** Water by a rule, as a formula file has it: {@code water 33 % lye}, {@code water 2 to 1}. */
    boolean waterRule(String line, Spot spot) {
        int space = line.indexOf(' ');
        if (space < 0 || !NotebookNames.isWater(line.substring(0, space))) {
            return false;
        }
        Outcome<WaterRule> rule = WaterText.parse(line.substring(space + 1));
        if (!(rule instanceof Outcome.Ok<WaterRule> ok) || ok.value() instanceof WaterRule.Weight) {
            return false;
        }
        if (!isTwice("water", "water", spot)) {
            stands("water", spot);
            water = ok.value();
        }
        return true;
    }

    /** Whether a line is an alkali's name and nothing else: then the superfat says how much. */
    boolean alkaliAlone(String line, Spot spot) {
        Optional<Alkali> alkali = NotebookNames.alkali(line);
        alkali.ifPresent(which -> named.putIfAbsent(which, spot));
        return alkali.isPresent();
    }

    private void water(Quantity given, Spot spot) {
        if (isTwice("water", "water", spot)) {
            return;
        }
        stands("water", spot.at(given));
        if (given.isPercent()) {
            water = SOME_WATER;
            shares.water(given, spot, this::mass);
            return;
        }
        // a millilitre of water weighs a gram, near enough for any balance of a soap maker
        Quantity amount =
                given.unit().equals("ml") ? given.in("g") : given.unit().equals("l") ? given.in("kg") : given;
        if (!amount.equals(given)) {
            beside.put("water", " typed: " + given);
        }
        WrittenMass mass = mass(amount, "water", spot);
        water = mass == null ? SOME_WATER : new WaterRule.Weight(mass, false);
    }

    private void alkali(Alkali alkali, Quantity amount, Spot spot) {
        if (isTwice("alkali." + alkali.word(), "this alkali", spot)) {
            return;
        }
        boolean first = !seen.containsKey("alkali");
        stands("alkali." + alkali.word(), spot.at(amount));
        stands("alkali", spot.at(amount));
        if (amount.isPercent() && NotebookNames.isSolutionToo(spot.text())) {
            miss(alkali.key());
            shares.missAlkali();
            spot.at(amount)
                    .say(
                            findings,
                            "'" + amount + "' of lye may be the alkali or its solution",
                            "write sodium hydroxide " + amount + ", or water " + amount + " lye");
            return;
        }
        WrittenMass mass = amount.isPercent() ? shares.alkali(amount, spot, this::mass) : mass(amount, "alkali", spot);
        if (mass == null) {
            miss(alkali.key());
        } else {
            alkalis.put(alkali, mass);
        }
        if (first) {
            notBoth(spot);
        }
    }

    /** A mass; null, and noted, where it is none. */
    private @Nullable WrittenMass mass(Quantity amount, String of, Spot spot) {
        if (NotebookUnits.isVolume(amount.unit())) {
            spot.at(amount)
                    .say(
                            findings,
                            "'" + amount + "' is a volume, but " + of + " is weighed",
                            "weigh it and write g, kg, oz or lb");
            return null;
        }
        Outcome<WrittenMass> mass = WrittenMass.parse(amount.toString());
        spot.at(amount).say(findings, mass);
        return mass instanceof Outcome.Ok<WrittenMass> ok ? ok.value() : null;
    }

    private void material(String typed, NotebookLine line, Quantity amount, Spot spot) {
        Outcome<String> found = names.key(typed);
        if (!(found instanceof Outcome.Ok<String> key)) {
            miss(typed);
            spot.say(findings, found);
        } else if (tables.oil(key.value()).isEmpty()) {
            addition(typed, key.value(), line.stage().orElse(Stage.Kind.TRACE), amount, spot);
        } else if (line.stage().filter(stage -> stage != Stage.Kind.OILS).isPresent()) {
            miss(typed);
            spot.say(
                    findings,
                    Wording.quote(typed) + " belongs to the oils, which go into one pot",
                    "leave out when it goes in, so that its alkali is counted");
        } else {
            oil(typed, key.value(), amount, spot);
        }
    }

    private void oil(String typed, String key, Quantity amount, Spot spot) {
        String path = "oils." + key;
        if (isTwice(path, key.equals(typed) ? key : Wording.quote(typed) + ", which is " + key + ",", spot)) {
            return;
        }
        if (seen.putIfAbsent("oils", spot.number()) == null) {
            findings.placeOf("oils", spot.at(amount).place());
        }
        stands(path, spot.at(amount));
        asTyped(path, typed, key);
        if (amount.unit().equals(NotebookUnits.PERCENT)) {
            oilShare(key, typed, amount, spot);
            return;
        }
        WrittenMass mass = mass(amount, "an oil", spot);
        if (mass == null) {
            miss(typed);
        } else {
            oils.put(key, new OilLine(key, new OilLine.Weight(mass)));
        }
    }

    private void oilShare(String key, String typed, Quantity amount, Spot spot) {
        Outcome<Share> share = Share.parse(amount.number() + " %");
        if (share instanceof Outcome.Ok<Share> ok) {
            oils.put(key, new OilLine(key, new OilLine.Percent(ok.value())));
        } else {
            miss(typed);
            spot.at(amount).say(findings, share);
        }
    }

    private void addition(String typed, String key, Stage.Kind stage, Quantity amount, Spot spot) {
        if (amount.isPercent()) {
            shares.addition(additions.size(), amount, spot);
        }
        Outcome<Amount> read =
                AmountText.ofAddition(amount.isPercent() ? amount.in("g").toString() : amount.toString());
        if (!(read instanceof Outcome.Ok<Amount> ok)) {
            spot.at(amount).say(findings, read);
            return;
        }
        String path = "additions." + additions.size();
        stands(path, spot.at(amount));
        asTyped(path + ".of", typed, key);
        additions.add(new Addition(key, ok.value(), Stage.of(stage), Optional.empty(), false));
    }

    private void asTyped(String path, String typed, String key) {
        if (!names.isKey(typed, key)) {
            beside.put(path, " typed: " + typed);
        }
    }

    private boolean isTwice(String path, String what, Spot spot) {
        Integer line = seen.get(path);
        if (line != null) {
            spot.say(findings, what + " stands on line " + line + " already", "make one line of the two");
        }
        return line != null;
    }

    private void stands(String path, Spot spot) {
        seen.putIfAbsent(path, spot.number());
        findings.placeOf(path, spot.place());
        if (!remarks.isEmpty()) {
            before.computeIfAbsent(path.startsWith("alkali") ? "alkali" : path, at -> new ArrayList<>())
                    .addAll(remarks);
            remarks = new ArrayList<>();
        }
    }

    Formula formula() {
        complain();
        if (shares.areOfTheWhole()) {
            shares.becomeMasses(oils, additions, alkalis, before, findings);
            water = shares.water().map(this::waterOf).orElse(water);
        } else {
            shares.sayOfWhat(findings);
        }
        return new Formula(
                name == null ? "" : name,
                1,
                Use.OWN,
                "",
                List.copyOf(oils.values()),
                choice(),
                Optional.ofNullable(superfat),
                water == null ? SOME_WATER : water,
                Optional.empty(),
                Optional.empty(),
                Process.COLD,
                additions,
                List.of(),
                List.of(),
                new Comments(before, beside, remarks));
    }

    private WaterRule waterOf(WrittenMass mass) {
        return new WaterRule.Weight(mass, false);
    }

    private AlkaliChoice choice() {
        if (alkalis.isEmpty()) {
            return new AlkaliChoice.Single(
                    named.size() == 1 ? named.keySet().iterator().next() : Alkali.SODIUM);
        }
        return new AlkaliChoice.Given(
                Optional.ofNullable(alkalis.get(Alkali.SODIUM)),
                Optional.ofNullable(alkalis.get(Alkali.POTASSIUM)),
                Optional.of(AlkaliChoice.As.WEIGHED),
                false);
    }

    /** What is missing, in the words of a notebook. */
    private void complain() {
        if (name == null) {
            missing(
                    "recipe",
                    "the recipe has no name",
                    "write it on the first line; one with a number in it as recipe: Bar 2");
        }
        if (oils.isEmpty()) {
            missing("oils", "there are no oils", "write at least one, as in coconut 350 g");
        }
        alkalisAlone();
        if (alkalis.isEmpty() && superfat == null) {
            missing("superfat", "neither soda nor a superfat is given", "write soda 71 g, or superfat 5 %");
        }
        if (water == null) {
            missing("water", "the recipe does not say its water", "write it, as in water 155 g");
        }
    }

    private void alkalisAlone() {
        boolean both = named.size() > 1;
        boolean followsFromSuperfat = seen.containsKey("superfat") && !seen.containsKey("alkali") && !both;
        if (followsFromSuperfat) {
            return;
        }
        named.forEach((alkali, spot) -> spot.say(
                findings,
                Wording.quote(Wording.tidy(spot.text())) + " has no amount",
                both
                        ? "write how much of each; shares of the two go into a formula file"
                        : "write it as soda 71 g, or give a superfat instead, as in superfat 5 %"));
        if (!named.isEmpty()) {
            findings.expect("superfat");
        }
    }

    private void missing(String path, String what, String remedy) {
        if (!findings.expects(path)) {
            findings.addAt(BEGINNING.place(), path, what, remedy);
            findings.expect(path);
        }
    }
}
