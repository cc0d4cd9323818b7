package lyewright.formula;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.formula.NotebookText.Read;
import lyewright.formula.NotebookText.Trouble;
import lyewright.formula.Places.Place;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.jspecify.annotations.Nullable;

/** Reads the lines of a notebook one after the other: which line is what, and how much it says. */
final class NotebookReader {

    /** A line that is longer is no line of a recipe. */
    private static final int LONGEST_LINE = 300;

    private static final String RECIPE = "recipe:";

    /** What a list has in front of its lines. */
    private static final Pattern BULLET = Pattern.compile(
            "^\\s*(?:[-*+\u2022\u2013\u2014\u00b7\u2023\u25e6\u25aa]|\\(?[0-9]{1,3}[.)])\\s+(?=\\p{L})");

    private static final Pattern COUNTED = Pattern.compile("^\\s*\\(?([0-9]{1,3})[.)]\\s+(?=\\S)");

    private static final int SHOWN_NAME = 40;

    private final List<String> lines;
    private final Tables tables;
    /** Words between how much and of what. */
    private static final Set<String> LITTLE = Set.of("a", "an", "of", "the");

    private final NotebookNames names;
    private final Findings findings = new Findings(new HashMap<>());
    private final NotebookOffers offers = new NotebookOffers();
    private final NotebookVolumes volumes;
    private final NotebookRecipe recipe;
    private final NotebookSpoons spoons;
    private final boolean counted;
    private boolean begun;
    private @Nullable String unit;
    private int unitLine;

    NotebookReader(List<String> lines, MaterialNames materials) {
        this.lines = lines;
        this.tables = materials.tables();
        this.names = materials.names();
        this.volumes = new NotebookVolumes(materials, offers, areInOunces(lines));
        this.recipe = new NotebookRecipe(materials, findings, offers, volumes);
        this.spoons = new NotebookSpoons(materials);
        this.counted = areCounted(lines);
    }

    /** Whether the lines are numbered, so that a number in front of an amount is not taken for one. */
    private static boolean areCounted(List<String> lines) {
        int last = 0;
        for (String line : lines) {
            Matcher number = COUNTED.matcher(line);
            int now = number.find() ? Integer.parseInt(number.group(1)) : 0;
            if (now > 1 && now == last + 1) {
                return true;
            }
            last = line.isBlank() ? last : now;
        }
        return false;
    }

    /** Whether what is weighed is weighed in ounces, as far as the lines say. */
    private static boolean areInOunces(List<String> lines) {
        List<String> units = lines.stream()
                .filter(line -> line.length() <= LONGEST_LINE)
                .flatMap(line -> NotebookLine.of(plainSpaces(line)).numbers().stream())
                .map(Quantity::unit)
                .toList();
        boolean ounces = units.contains("oz") || units.contains("lb");
        return ounces && !units.contains("g") && !units.contains("kg");
    }

    Read read() {
        for (int i = 0; i < lines.size(); i++) {
            noteUnit(plainSpaces(lines.get(i)), i + 1);
        }
        for (int i = 0; i < lines.size(); i++) {
            line(plainSpaces(lines.get(i)), i + 1);
        }
        Formula raw = recipe.formula();
        findings.addConsequences(FormulaRules.check(raw, tables));
        List<Trouble> troubles = troubles();
        return new Read(
                troubles.isEmpty() ? Optional.of(FormulaFile.settled(raw)) : Optional.empty(),
                troubles,
                recipe.nameLine());
    }

    private List<Trouble> troubles() {
        Places places = findings.asPlaces();
        return findings.problems().stream()
                .map(problem -> {
                    Place place = places.of(problem.path());
                    String line = place.line() <= lines.size() ? lines.get(place.line() - 1) : "";
                    boolean ofLine = problem.path().equals("lines." + place.line());
                    return new Trouble(
                            place,
                            line,
                            problem,
                            ofLine ? offers.of(place.line()) : List.of(),
                            ofLine ? offers.unknown(place.line()) : Optional.empty());
                })
                .sorted(Comparator.comparing(Trouble::place))
                .toList();
    }

    private static @Nullable String allIn(String line) {
        String words = Wording.tidy(line).toLowerCase(Locale.ROOT);
        return words.startsWith("all in ") ? words.substring("all in ".length()) : null;
    }

    private static String oneLine(String remark) {
        return remark.codePoints()
                .map(c -> Characters.isLineEnd(c) ? ' ' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .stripTrailing();
    }

    /** What is pasted from a page has spaces that do not break; one for one, so that columns stay. */
    private static String plainSpaces(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    /** The unit of all lines may be said on any of them. */
    private void noteUnit(String line, int number) {
        String word = line.length() > LONGEST_LINE ? null : allIn(line);
        if (word != null && unit == null) {
            unit = NotebookUnits.forAll(word);
            unitLine = number;
        }
    }

    private void line(String text, int number) {
        String unlisted = text.length() > LONGEST_LINE ? "" : withoutBullet(text);
        String tidy = Wording.tidy(unlisted);
        if (text.length() > LONGEST_LINE) {
            begun = true;
            say(
                    new Spot(number, text, 0),
                    Wording.quote(text.strip()) + " is a line of over " + LONGEST_LINE + " characters",
                    "write one thing on a line; begin a remark with #");
        } else if (tidy.startsWith("#")) {
            recipe.remark(oneLine(unlisted.strip().substring(1)));
        } else if (!tidy.isEmpty()) {
            entry(tidy, unlisted, new Spot(number, text, 0));
            begun = true;
        }
    }

    /** Spaces in place of what a list has in front of a line, so that columns stay. */
    private String withoutBullet(String text) {
        Matcher bullet = (counted ? COUNTED : BULLET).matcher(text);
        boolean found =
                bullet.find() || (counted && bullet.usePattern(BULLET).reset().find());
        return found ? " ".repeat(bullet.end()) + text.substring(bullet.end()) : text;
    }

    private void entry(String tidy, String unlisted, Spot spot) {
        String unitWord = allIn(tidy);
        if (unitWord != null) {
            unitOfAll(unitWord, spot);
        } else if (tidy.toLowerCase(Locale.ROOT).startsWith(RECIPE)) {
            recipe.name(tidy.substring(RECIPE.length()).strip(), spot);
        } else if (!begun && isName(tidy, unlisted, spot)) {
            recipe.name(tidy, spot);
        } else if (!hasNumber(tidy)) {
            noAmount(tidy, spot);
        } else if (!recipe.waterRule(tidy, spot)) {
            thing(NotebookLine.of(unlisted), spot);
        }
    }

    /** Whether the first line is the recipe's name: it has no amount, and is not simply all that was typed so far. */
    private boolean isName(String tidy, String unlisted, Spot spot) {
        NotebookLine line = NotebookLine.of(unlisted);
        boolean named = lines.stream().anyMatch(NotebookReader::saysName);
        boolean more = lines.stream().skip(spot.number()).anyMatch(NotebookReader::saysSomething);
        if (named
                || !more
                || (TradeWords.alkali(tidy).isPresent() && lines.stream().noneMatch(NotebookReader::saysAlkali))) {
            return !hasNumber(tidy) && !names.isThing(tidy);
        }
        if (!line.measured().isEmpty()
                || !line.percents().isEmpty()
                || NotebookWater.rule(tidy).isPresent()) {
            return false;
        }
        if (isWeighedOddly(tidy)) {
            return false;
        }
        String words = line.nameWithoutBare();
        return line.bare().isEmpty() ? Called.words(tidy).stream().anyMatch(word -> true) : isOnlyAName(words);
    }

    /** Whether it names a thing and says how much in a way that cannot be read: olive 5oo g, half a kilo of olive. */
    private boolean isWeighedOddly(String tidy) {
        Set<String> words = Called.words(tidy);
        String thing = words.stream()
                .filter(word -> !NotebookUnits.saysHowMuch(word) && !LITTLE.contains(word))
                .collect(Collectors.joining(" "));
        return words.stream().anyMatch(NotebookUnits::saysHowMuch) && !thing.isEmpty() && names.isNearly(thing);
    }

    /** Whether words beside a number without a unit are far from everything that could be weighed. */
    private boolean isOnlyAName(String words) {
        return !words.isEmpty()
                && !TradeWords.isSuperfat(words)
                && !TradeWords.isWater(words)
                && TradeWords.alkali(words).isEmpty()
                && NotebookLine.of(words).numbers().isEmpty()
                && !names.isNearly(words);
    }

    private static boolean saysName(String line) {
        return Wording.tidy(line).toLowerCase(Locale.ROOT).startsWith(RECIPE);
    }

    private static boolean saysSomething(String line) {
        String tidy = Wording.tidy(line);
        return !tidy.isEmpty() && !tidy.startsWith("#");
    }

    private static boolean saysAlkali(String line) {
        NotebookLine taken = NotebookLine.of(line.length() > LONGEST_LINE ? "" : plainSpaces(line));
        return taken.numbers().stream()
                .anyMatch(amount -> TradeWords.alkali(taken.nameWithout(amount)).isPresent());
    }

    private void unitOfAll(String word, Spot spot) {
        if (NotebookUnits.forAll(word) == null) {
            say(
                    spot,
                    Wording.quote(word) + " is not a unit for all",
                    "write all in grams, all in oz or all in percent");
        } else if (spot.number() != unitLine) {
            say(spot, "the unit of all is said on line " + unitLine + " already", "say it once");
        }
    }

    private static boolean hasNumber(String tidy) {
        return tidy.chars().anyMatch(c -> Character.isDigit(c) || Character.getType(c) == Character.OTHER_NUMBER);
    }

    private void noAmount(String what, Spot spot) {
        recipe.miss(what);
        if (recipe.alkaliAlone(what, spot)) {
            return;
        }
        // a pinch of salt, half a cup of honey
        boolean spoons = Called.words(what).stream().anyMatch(NotebookUnits::isUnsure);
        if (spoons) {
            say(spot, Wording.quote(what) + " does not say how much it weighs", "weigh it once, and write g or oz");
        } else {
            say(
                    spot,
                    Wording.quote(what) + " has no amount",
                    "write it as coconut 350 g; a name of the recipe as recipe: Castile; begin a remark with #");
        }
        offerName(spot);
    }

    private void thing(NotebookLine line, Spot spot) {
        List<Quantity> measured = line.measured();
        List<Quantity> percents = line.percents();
        if (measured.size() > 1) {
            recipe.miss(line.nameWithout(measured.get(0)));
            say(
                    spot.at(measured.get(1)),
                    "'" + measured.get(0) + "' and '" + measured.get(1) + "' are two amounts",
                    "write one of them");
            if (measured.size() == 2) {
                offers.without(spot, measured.get(1), measured.get(0).toString());
                offers.without(spot, measured.get(0), measured.get(1).toString());
            }
        } else if (measured.size() == 1) {
            measured(line, measured.get(0), spot);
        } else if (line.times().isPresent()) {
            recipe.miss(line.nameWithoutBare());
            say(
                    spot,
                    Wording.quote(line.times().get()) + " does not say how much it weighs",
                    "write its weight, as in soda 71 g");
        } else if (line.bare().size() == 1) {
            bare(line, line.bare().get(0), spot);
        } else if (percents.size() == 1 && line.bare().isEmpty()) {
            percent(line, percents.get(0), spot);
        } else {
            noAmount(Wording.tidy(spot.text()), spot);
        }
    }

    private void measured(NotebookLine line, Quantity amount, Spot spot) {
        if (unit != null) {
            recipe.miss(line.nameWithout(amount));
            say(
                    spot.at(amount),
                    "'" + amount + "' has a unit of its own, but line " + unitLine + " says it for all",
                    "leave the unit out here, or write one on every line and take line " + unitLine + " out");
        } else if (TradeWords.isSuperfat(line.nameWithout(amount))) {
            recipe.miss(TradeWords.SUPERFAT);
            say(spot.at(amount), "'" + amount + "' is not a percentage", "write superfat " + amount.number() + " %");
            offers.amount(spot, amount, amount.number() + " %", amount.number() + " %");
        } else if (NotebookUnits.isUnsure(amount.unit())
                && spoons.weighed(line, amount).isPresent()) {
            NotebookSpoons.Weighed by = spoons.weighed(line, amount).get();
            recipe.remark(by.remark());
            weighed(line, by.amount(), spot);
        } else if (isNoWeight(amount, spot)) {
            recipe.miss(line.nameWithout(amount));
            volumes.offer(line, amount, spot);
        } else {
            weighed(line, amount, spot);
        }
    }

    /** Says of spoons and the like what is wrong with them. */
    private boolean isNoWeight(Quantity amount, Spot spot) {
        String quoted = "'" + amount + "'";
        if (amount.unit().equals(NotebookUnits.GRAIN_OR_GRAM)) {
            say(spot.at(amount), quoted + " may be grams or grains", "write " + amount.number() + " g, if grams");
            offers.amount(spot, amount, "Grams", amount.number() + " g");
        } else if (amount.unit().startsWith("part")) {
            say(spot.at(amount), quoted + " is no weight", "write each oil in percent, or weigh it and write g or oz");
        } else if (NotebookUnits.isFluid(amount.unit())) {
            say(
                    spot.at(amount),
                    quoted + " is a volume, and fluid ounces differ from country to country",
                    "weigh it and write g or oz, or write ml");
        } else if (NotebookUnits.isUnsure(amount.unit())) {
            say(
                    spot.at(amount),
                    quoted + " is no weight: how much that weighs depends on what is in it",
                    "weigh it once, and write g or oz");
        } else {
            return false;
        }
        return true;
    }

    /** A thing and its amount, unless that is a thousand to some and one to others. */
    private void weighed(NotebookLine line, Quantity amount, Spot spot) {
        if (!NotebookUnits.isThousandOrOne(amount.number())) {
            recipe.thing(line, amount, spot);
            return;
        }
        recipe.miss(line.nameWithout(amount));
        Quantity thousand = amount.as(amount.number().replace(",", ""));
        Quantity one = amount.as(new BigDecimal(amount.number().replace(',', '.'))
                .stripTrailingZeros()
                .toPlainString());
        say(spot.at(amount), "'" + amount + "' may be " + thousand + " or " + one, "write " + thousand + ", or " + one);
        for (Quantity meant : List.of(thousand, one)) {
            offers.amount(spot, amount, meant.toString(), unit == null ? meant.toString() : meant.number());
        }
    }

    private void bare(NotebookLine line, Quantity amount, Spot spot) {
        String name = line.nameWithout(amount);
        if (TradeWords.isSuperfat(name)) {
            recipe.superfat(amount.in(NotebookUnits.PERCENT), spot);
        } else if (unit != null) {
            weighed(line, amount.in(unit), spot);
        } else {
            recipe.miss(name);
            noUnit(name, amount, spot);
        }
    }

    private void noUnit(String name, Quantity amount, Spot spot) {
        say(
                spot.at(amount),
                "'" + amount + "' has no unit",
                begun
                        ? "write " + amount + " g, or all in grams on a line of its own if no line has a unit"
                        : "write " + amount + " g; if this is the recipe's name, write recipe: before it");
        offers.amount(spot, amount, amount + " grams", amount + " g");
        offers.amount(spot, amount, amount + " ounces", amount + " oz");
        if (!name.isEmpty()) {
            offerName(spot);
        }
    }

    /** The first line may be a name after all. */
    private void offerName(Spot spot) {
        String whole = Wording.tidy(spot.text());
        if (!begun && whole.length() <= SHOWN_NAME) {
            offers.add(spot, "It is the recipe's name", "recipe: " + whole);
        }
    }

    private void percent(NotebookLine line, Quantity amount, Spot spot) {
        if (TradeWords.isSuperfat(line.nameWithout(amount))) {
            recipe.superfat(amount, spot);
        } else if (unit != null) {
            measured(line, amount, spot);
        } else {
            weighed(line, amount, spot);
        }
    }

    private void say(Spot spot, String what, String remedy) {
        spot.say(findings, what, remedy);
    }

    /** A place in a line, and the whole line. */
    record Spot(int number, String text, int offset) {

        Spot at(Quantity quantity) {
            return new Spot(number, text, quantity.start());
        }

        /** From 1, in characters as a person counts them; white space at the beginning is not meant. */
        Place place() {
            int at = offset;
            while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
                at++;
            }
            return new Place(number, 1 + text.codePointCount(0, at));
        }

        void say(Findings findings, String what, String remedy) {
            findings.addAt(place(), "lines." + number, what, remedy);
        }

        void say(Findings findings, Outcome<?> refused) {
            refused.problems().forEach(problem -> say(findings, problem.what(), problem.remedy()));
        }
    }
}
