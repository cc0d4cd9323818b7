package lyewright.formula;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    private final List<String> lines;
    private final Tables tables;
    private final NotebookNames names;
    private final Findings findings = new Findings(new HashMap<>());
    private final NotebookRecipe recipe;
    private boolean begun;
    private @Nullable String unit;
    private int unitLine;

    NotebookReader(List<String> lines, Tables tables) {
        this.lines = lines;
        this.tables = tables;
        this.names = NotebookNames.of(tables);
        this.recipe = new NotebookRecipe(names, tables, findings);
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
        return new Read(troubles.isEmpty() ? Optional.of(FormulaFile.settled(raw)) : Optional.empty(), troubles);
    }

    private List<Trouble> troubles() {
        Places places = findings.asPlaces();
        return findings.problems().stream()
                .map(problem -> {
                    Place place = places.of(problem.path());
                    String line = place.line() <= lines.size() ? lines.get(place.line() - 1) : "";
                    return new Trouble(place, line, problem);
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
        String tidy = text.length() > LONGEST_LINE ? "" : Wording.tidy(text);
        if (text.length() > LONGEST_LINE) {
            begun = true;
            say(
                    new Spot(number, text, 0),
                    Wording.quote(text.strip()) + " is a line of over " + LONGEST_LINE + " characters",
                    "write one thing on a line; begin a remark with #");
        } else if (tidy.startsWith("#")) {
            recipe.remark(oneLine(text.strip().substring(1)));
        } else if (!tidy.isEmpty()) {
            entry(tidy, new Spot(number, text, 0));
            begun = true;
        }
    }

    private void entry(String tidy, Spot spot) {
        String unitWord = allIn(tidy);
        if (unitWord != null) {
            unitOfAll(unitWord, spot);
        } else if (tidy.toLowerCase(Locale.ROOT).startsWith(RECIPE)) {
            recipe.name(tidy.substring(RECIPE.length()).strip(), spot);
        } else if (hasNumber(tidy)) {
            if (recipe.waterRule(tidy, spot)) {
                return;
            }
            thing(NotebookLine.of(spot.text()), spot);
        } else if (!begun && !names.isThing(tidy)) {
            recipe.name(tidy, spot);
        } else {
            noAmount(tidy, spot);
        }
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
        sayNoAmount(what, spot);
    }

    private void sayNoAmount(String what, Spot spot) {
        say(
                spot,
                Wording.quote(what) + " has no amount",
                "write it as coconut 350 g; a name of the recipe as recipe: Castile; begin a remark with #");
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
        } else if (measured.size() == 1) {
            measured(line, measured.get(0), spot);
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
            return;
        }
        recipe.thing(line, amount, spot);
    }

    private void bare(NotebookLine line, Quantity amount, Spot spot) {
        String name = line.nameWithout(amount);
        if (NotebookNames.isSuperfat(name) && unit != null && unit.equals(NotebookUnits.PERCENT)) {
            recipe.superfat(amount.in(unit), spot);
        } else if (NotebookNames.isSuperfat(name)) {
            recipe.miss(name);
            say(spot.at(amount), "'" + amount + "' is not a percentage", "write superfat " + amount + " %");
        } else if (unit != null) {
            recipe.thing(line, amount.in(unit), spot);
        } else {
            recipe.miss(name);
            say(
                    spot.at(amount),
                    "'" + amount + "' has no unit",
                    begun
                            ? "write " + amount + " g, or all in grams on a line of its own if no line has a unit"
                            : "write " + amount + " g; if this is the recipe's name, write recipe: before it");
        }
    }

    private void percent(NotebookLine line, Quantity amount, Spot spot) {
        if (NotebookNames.isSuperfat(line.nameWithout(amount))) {
            recipe.superfat(amount, spot);
        } else if (unit != null) {
            measured(line, amount, spot);
        } else {
            recipe.thing(line, amount, spot);
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
