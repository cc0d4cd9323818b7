package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.formula.NotebookReader.Spot;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/** The formula that the lines of a notebook come to. */
final class NotebookRecipe {

    private static final Spot BEGINNING = new Spot(1, "", 0);

    /** From so much water on, as a fraction, something is a liquid and not a powder or a paste; common practice, fits the tables. */
    private static final double WATER_OF_LIQUIDS = 0.8;

    private final MaterialNames materials;
    private final NotebookNames names;
    private final Findings findings;
    private final NotebookOffers offers;
    private final NotebookVolumes volumes;
    private final Map<String, OilLine> oils = new LinkedHashMap<>();
    private final List<Addition> additions = new ArrayList<>();
    private final Map<Alkali, WrittenMass> alkalis = new EnumMap<>(Alkali.class);
    /** On which line each thing stands, by its path. */
    private final Map<String, Integer> seen = new HashMap<>();

    private final NotebookShares shares = new NotebookShares();
    private final NotebookWater water = new NotebookWater();
    /** The maker's own that are named, in order. */
    private final Set<String> used = new LinkedHashSet<>();

    /** Which alkalis stand on a line without an amount, and where. */
    private final Map<Alkali, Spot> named = new EnumMap<>(Alkali.class);

    private final Map<String, List<String>> before = new HashMap<>();
    private final Map<String, String> beside = new HashMap<>();
    private List<String> remarks = new ArrayList<>();
    private @Nullable String name;
    private @Nullable Share superfat;
    private AlkaliChoice.@Nullable Stock stock;

    NotebookRecipe(MaterialNames materials, Findings findings, NotebookOffers offers, NotebookVolumes volumes) {
        this.materials = materials;
        this.names = materials.names();
        this.findings = findings;
        this.offers = offers;
        this.volumes = volumes;
    }

    /** Whether a name stands in the text. */
    int nameLine() {
        return seen.getOrDefault("recipe", 0);
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
        if (TradeWords.isWater(what)) {
            findings.expect("water");
        } else if (TradeWords.alkali(what).isPresent() || TradeWords.isSuperfat(what)) {
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
            miss(TradeWords.SUPERFAT);
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
        Optional<Alkali> alkali = TradeWords.alkali(typed);
        boolean isWater = TradeWords.isWater(typed) && materials.own(typed).isEmpty();
        if (!alkali.isPresent() && !isWater) {
            material(typed, line, amount, spot);
        } else if (line.stage().isPresent() && line.stage().get() != Stage.Kind.LYE) {
            miss(typed);
            spot.say(findings, Wording.quote(typed) + " goes into the lye jug", "leave out when it goes in");
        } else if (isWater) {
            water(typed, amount, spot);
        } else {
            alkali(alkali.get(), amount, spot);
        }
    }

    /** Water by a rule, as a formula file has it: {@code water 33 % lye}, {@code water 2 to 1}. */
    boolean waterRule(String line, Spot spot) {
        Optional<WaterRule> rule = NotebookWater.rule(line);
        if (rule.isPresent() && !isTwice("water", "water", spot)) {
            stands("water", spot);
            water.set(rule.get());
        }
        return rule.isPresent();
    }

    /** Whether a line is an alkali's name and nothing else: then the superfat says how much. */
    boolean alkaliAlone(String line, Spot spot) {
        Optional<Alkali> alkali = TradeWords.alkali(line);
        alkali.ifPresent(which -> named.putIfAbsent(which, spot));
        return alkali.isPresent();
    }

    private void water(String typed, Quantity given, Spot spot) {
        Optional<String> steeped = TradeWords.steeped(typed);
        boolean more = seen.containsKey("water") && water.takesMore(steeped.isPresent()) && !given.isPercent();
        if (!more && isTwice("water", "water", spot)) {
            return;
        }
        stands("water", spot.at(given));
        if (given.isPercent()) {
            water.set(NotebookWater.SOME);
            shares.water(given, spot, this::mass);
            return;
        }
        // a millilitre of water weighs a gram, near enough for any balance of a soap maker
        Quantity amount =
                given.unit().equals("ml") ? given.in("g") : given.unit().equals("l") ? given.in("kg") : given;
        if (more || steeped.isPresent() || !amount.equals(given)) {
            String said = (steeped.isPresent() ? typed + " " : "") + given;
            beside.merge("water", " typed: " + said, (before, now) -> before + "; " + said);
        }
        water.add(mass(amount, "water", spot), steeped.isPresent());
    }

    private void alkali(Alkali alkali, Quantity amount, Spot spot) {
        if (isTwice("alkali." + alkali.word(), "this alkali", spot)) {
            return;
        }
        if (stock != null) {
            spot.say(findings, "alkali stands beside a stock lye", "write one of them");
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
            offers.add(spot, "the alkali is " + amount + " of all", "sodium hydroxide " + amount);
            offers.add(spot, "the lye is " + amount + " strong", "water " + amount + " lye");
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
        Meant meant = names.find(typed, any -> true);
        if (!meant.isOne()) {
            miss(typed);
            unclear(typed, meant, line, amount, spot);
            return;
        }
        String key = meant.key();
        if (materials.own(key).isPresent()) {
            used.add(key);
        }
        if (isLye(key)) {
            stock(key, amount, spot);
        } else if (!materials.belongs(key, MaterialNames.Place.OILS)) {
            addition(typed, key, line, amount, spot);
        } else if (line.stage().filter(stage -> stage != Stage.Kind.OILS).isPresent()) {
            miss(typed);
            spot.say(
                    findings,
                    Wording.quote(typed) + " belongs to the oils, which go into one pot",
                    "leave out when it goes in, so that its alkali is counted");
        } else {
            oil(typed, key, line, amount, spot);
        }
    }

    /** A name that is not one material: said, with what it may be. */
    private void unclear(String typed, Meant meant, NotebookLine line, Quantity amount, Spot spot) {
        boolean known = meant.how() != Meant.How.UNKNOWN && meant.how() != Meant.How.NEAR;
        if (!known && TradeWords.isInfusion(typed)) {
            spot.say(
                    findings,
                    Wording.quote(typed) + " is not known; what is steeped in water counts as water",
                    "write water (" + typed + ")");
            offers.name(spot, line, amount, typed, "As water", "water (" + typed + ")");
        } else {
            spot.say(findings, names.refused(typed, meant));
        }
        meant.keys().forEach(key -> offers.name(spot, line, amount, typed, names.title(key), names.said(key)));
        if (!known) {
            offers.unknown(spot, typed);
        }
    }

    private boolean isLye(String key) {
        return materials
                .own(key)
                .filter(own -> own.kind().equals(OwnMaterial.LYE))
                .isPresent();
    }

    private void stock(String key, Quantity amount, Spot spot) {
        if (seen.containsKey("alkali")) {
            spot.say(findings, "a stock lye stands beside other alkali", "write one of them");
            return;
        }
        stands("alkali", spot.at(amount));
        WrittenMass mass = mass(amount, "lye", spot);
        if (mass == null) {
            findings.expect("superfat");
        } else {
            stock = new AlkaliChoice.Stock(key, Optional.of(mass), false);
        }
        notBoth(spot);
    }

    private void oil(String typed, String key, NotebookLine line, Quantity amount, Spot spot) {
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
            volumes.offer(line, amount, spot);
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

    private void addition(String typed, String key, NotebookLine line, Quantity amount, Spot spot) {
        if (line.stage().isEmpty() && isLiquid(key)) {
            askWhen(typed, key, spot);
            return;
        }
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
        if (line.isAsWater()) {
            water.isTakenBy(additions.size());
        }
        Stage stage = Stage.of(line.stage().orElse(Stage.Kind.TRACE));
        additions.add(new Addition(key, ok.value(), stage, Optional.empty(), false));
    }

    /** Milk, and drinks that mostly go into the lye: nearly all water, so that it matters much whether the lye has it. */
    private boolean isLiquid(String key) {
        Optional<Additive> ofTables = materials.tables().additive(key);
        Optional<OwnMaterial> own = materials.own(key);
        if (own.isEmpty() || own.get().kind().isEmpty()) {
            return ofTables.filter(NotebookRecipe::goesIntoLye).isPresent();
        }
        boolean watery =
                own.get().water().isEmpty() || own.get().water().get().first().doubleValue() / 100 >= WATER_OF_LIQUIDS;
        return watery && own.get().kind().equals(AdditiveKind.MILK.word());
    }

    private static boolean goesIntoLye(Additive additive) {
        boolean usually = additive.kind() == AdditiveKind.LIQUID
                && additive.usualDose().isPresent()
                && additive.usualDose().get().stage().equals("lye");
        return (additive.kind() == AdditiveKind.MILK || usually)
                && additive.makeup().water() >= WATER_OF_LIQUIDS;
    }

    private double gramsPerMillilitre(Addition addition) {
        return materials
                .tables()
                .additive(addition.of())
                .map(Additive::gramsPerMillilitre)
                .orElse(1.0);
    }

    private boolean isMilk(String key) {
        return materials
                .own(key)
                .map(OwnMaterial::kind)
                .filter(kind -> !kind.isEmpty())
                .or(() -> materials.tables().additive(key).map(add -> add.kind().word()))
                .filter(AdditiveKind.MILK.word()::equals)
                .isPresent();
    }

    private void askWhen(String typed, String key, Spot spot) {
        boolean milk = isMilk(key);
        spot.say(
                findings,
                "it is not said when " + Wording.quote(typed) + " goes in",
                "write " + NotebookLine.AS_WATER + " behind it" + (milk ? " and freeze it first" : "")
                        + ", or at trace");
        offers.end(
                spot,
                milk ? "In the lye, as part of its water: freeze it first" : "In the lye, as part of its water",
                NotebookLine.AS_WATER);
        offers.end(spot, "Stirred in at trace", "at trace");
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
            shares.water().ifPresent(mass -> water.set(new WaterRule.Weight(mass, false)));
        } else {
            shares.sayOfWhat(findings, offers);
        }
        WaterRule rule = withLye(water.settle(additions, this::gramsPerMillilitre));
        return new Formula(
                name == null ? "" : name,
                1,
                Use.OWN,
                "",
                List.copyOf(oils.values()),
                choice(),
                Optional.ofNullable(superfat),
                rule,
                Optional.empty(),
                Optional.empty(),
                Process.COLD,
                additions,
                List.of(),
                carried(),
                new Comments(before, beside, remarks));
    }

    /** Water typed beside a weighed stock lye is what goes in with it; the recipe's water is both, and a remark says so. */
    private WaterRule withLye(WaterRule said) {
        AlkaliChoice.Stock lye = stock;
        if (lye == null || !(said instanceof WaterRule.Weight jug) || !water.isSaid()) {
            return said;
        }
        BigDecimal lyesOwn = materials
                .own(lye.key())
                .flatMap(OwnMaterial::strength)
                .map(strength -> waterOf(lye, strength))
                .orElse(BigDecimal.ZERO);
        WaterRule both = NotebookWater.withLye(said, lyesOwn);
        if (both instanceof WaterRule.Weight all && !all.equals(said)) {
            beside.putIfAbsent("water", " " + jug.mass() + " as typed, the rest is the lye's own");
        }
        return both;
    }

    private static BigDecimal waterOf(AlkaliChoice.Stock lye, OwnMaterial.Strength strength) {
        BigDecimal grams = lye.mass().map(WrittenMass::exactGrams).orElse(BigDecimal.ZERO);
        return grams.multiply(BigDecimal.valueOf(100).subtract(strength.pure().central()))
                .movePointLeft(2);
    }

    /** The maker's own that are named, and what those are mixed from: the recipe stays what it was. */
    private List<OwnMaterial> carried() {
        Map<String, OwnMaterial> carried = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>(used);
        while (!open.isEmpty()) {
            String key = open.removeFirst();
            Optional<OwnMaterial> own = carried.containsKey(key) ? Optional.empty() : materials.own(key);
            own.ifPresent(material -> {
                carried.put(key, material);
                material.oils().forEach(part -> open.addLast(part.key()));
            });
        }
        return List.copyOf(carried.values());
    }

    private AlkaliChoice choice() {
        if (stock != null) {
            return stock;
        }
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
            missing("recipe", "the recipe has no name", "write it on the first line, or anywhere as recipe: Bar 2");
        }
        if (oils.isEmpty()) {
            missing("oils", "there are no oils", "write at least one, as in coconut 350 g");
        }
        alkalisAlone();
        if (alkalis.isEmpty() && stock == null && superfat == null) {
            missing("superfat", "neither soda nor a superfat is given", "write soda 71 g, or superfat 5 %");
        }
        if (!water.isSaid()) {
            missing(
                    "water",
                    "the recipe does not say its water",
                    stock == null
                            ? "write it, as in water 155 g"
                            : "write what goes in beside the lye's own, as in water 155 g, or water 0 g for none");
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
