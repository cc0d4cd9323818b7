package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lyewright.material.NearestKey;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/**
 * What must hold of a formula before anything is looked up: shares add up, names agree, nothing is missing. Every problem
 * has the path that the entry has in a formula file. Stateless for its callers; safe to call from any thread.
 */
public final class FormulaRules {

    /** The most oils, additions, portions or own materials that a formula may have. */
    static final int MOST_LINES = 500;

    /** The longest notes, in UTF-16 units. */
    static final int LONGEST_NOTES = 20_000;

    private static final BigDecimal HUNDRED = Share.WHOLE.percent();
    private static final BigDecimal MOST_CURED_WATER = new BigDecimal(60);

    private final Formula formula;
    private final Predicate<String> tableKeys;
    private final Predicate<String> tableOils;
    private @Nullable List<Problem> found;

    private FormulaRules(Formula formula, Predicate<String> tableKeys, Predicate<String> tableOils) {
        this.formula = formula;
        this.tableKeys = tableKeys;
        this.tableOils = tableOils;
    }

    /**
     * Judges a formula without knowing the tables: any own material may be one of theirs, so that its kind and
     * saponification value may be left out.
     *
     * @param formula the formula
     * @return all that is wrong, in the order of the file; empty when nothing is
     */
    public static List<Problem> check(Formula formula) {
        return check(formula, key -> true);
    }

    /**
     * Judges a formula.
     *
     * @param formula the formula
     * @param tableKeys whether the tables have a key; its kind and saponification value may then be left out
     * @return all that is wrong, in the order of the file; empty when nothing is
     */
    public static List<Problem> check(Formula formula, Predicate<String> tableKeys) {
        return new FormulaRules(formula, tableKeys, tableKeys).check();
    }

    /**
     * Judges a formula beside the tables it will be looked up in: stricter than by keys alone, for an oil of the maker's
     * own under the key of something that is no oil needs its saponification value.
     *
     * @param formula the formula
     * @param tables the tables
     * @return all that is wrong, in the order of the file; empty when nothing is
     */
    public static List<Problem> check(Formula formula, Tables tables) {
        return new FormulaRules(formula, tables::has, key -> tables.oil(key).isPresent()).check();
    }

    private List<Problem> check() {
        identity();
        oils();
        alkali();
        superfat();
        water();
        curedWater();
        new MakingRules(formula, this::add).check();
        portions();
        materials();
        return found == null ? List.of() : List.copyOf(found);
    }

    private void add(String path, String what, String remedy) {
        if (found == null) {
            found = new ArrayList<>();
        }
        found.add(new Problem(path, what, remedy));
    }

    private void identity() {
        String trouble = Characters.troubleWithName(formula.recipe());
        if (trouble != null) {
            add("recipe", "the recipe's name " + trouble, "write a name of one line");
        }
        if (formula.version() < 1) {
            add("version", "version " + formula.version() + " is not possible", "count versions from 1");
        }
        String notes = formula.notes();
        if (notes.length() > LONGEST_NOTES) {
            add("notes", "the notes are longer than " + LONGEST_NOTES + " characters", "keep the rest elsewhere");
        } else if (Characters.firstForbidden(notes, Characters.Lines.LINE_FEEDS) >= 0) {
            add("notes", "the notes have a control character in them", "take it out");
        }
    }

    private boolean isTooMany(int count, String path) {
        if (count > MOST_LINES) {
            add(path, "there are " + count + " " + path, "write at most " + MOST_LINES);
        }
        return count > MOST_LINES;
    }

    private boolean nameIsWrong(String name, String path, String whose) {
        String trouble = Characters.troubleWithName(name);
        if (trouble != null) {
            add(path, whose + " " + trouble, "write a name of one line");
        }
        return trouble != null;
    }

    private static String at(String path, String name) {
        return name.isEmpty() ? path : path + "." + name;
    }

    private void oils() {
        List<OilLine> oils = formula.oils();
        if (oils.isEmpty()) {
            add("oils", "there are no oils", "list at least one, as in olive-virgin: 100 %");
            return;
        }
        if (isTooMany(oils.size(), "oils")) {
            return;
        }
        for (int i = 0; i < oils.size(); i++) {
            oil(oils, i);
        }
        if (!formula.inMasses()) {
            oilsAddUp(oils);
        }
    }

    private void oil(List<OilLine> oils, int i) {
        OilLine line = oils.get(i);
        String key = line.key();
        if (nameIsWrong(key, at("oils", key), "the name of an oil")) {
            return;
        }
        for (int j = 0; j < i; j++) {
            if (oils.get(j).key().equals(key)) {
                add(at("oils", key), Wording.quote(key) + " is listed twice", "make one line of the two");
            }
        }
        OilLine.Amount amount = line.amount();
        if (isNothing(amount)) {
            add(at("oils", key), "the amount of " + Wording.quote(key) + " is 0", "write more than 0, or leave it out");
        }
        if (amount instanceof OilLine.Weight != formula.inMasses()) {
            add(
                    at("oils", key),
                    amount instanceof OilLine.Rest
                            ? Wording.quote(key) + " is rest among masses"
                            : Wording.quote(key) + " is "
                                    + (formula.inMasses() ? "percent among masses" : "a mass among percent"),
                    "write all oils in percent, or all as masses");
        }
    }

    private static boolean isNothing(OilLine.Amount amount) {
        return (amount instanceof OilLine.Percent percent
                        && percent.share().percent().signum() == 0)
                || (amount instanceof OilLine.Weight weight
                        && weight.mass().value().signum() == 0);
    }

    private void oilsAddUp(List<OilLine> oils) {
        BigDecimal sum = BigDecimal.ZERO;
        String rest = null;
        for (int i = 0; i < oils.size(); i++) {
            OilLine line = oils.get(i);
            if (line.amount() instanceof OilLine.Percent percent) {
                sum = sum.add(percent.share().percent());
            } else if (line.amount() instanceof OilLine.Weight) {
                return;
            } else if (rest != null) {
                add(at("oils", line.key()), "two oils are rest", "write the share of one of them");
                return;
            } else {
                rest = line.key();
            }
        }
        addsUp("oils", "the oils", sum, rest);
    }

    /** Shares must come to 100 exactly, or leave something for the one that takes the rest. */
    private void addsUp(String path, String what, BigDecimal sum, @Nullable String rest) {
        int over = sum.compareTo(HUNDRED);
        if (rest == null && over != 0) {
            add(
                    path,
                    what + " add up to " + sum.toPlainString() + " %",
                    "change the shares until they add up to 100 %");
        } else if (rest != null && over >= 0) {
            add(
                    at(path, rest),
                    "nothing is left for " + Wording.quote(rest) + ": the others add up to " + sum.toPlainString()
                            + " %",
                    "make the other shares smaller");
        }
    }

    private void alkali() {
        AlkaliChoice choice = formula.alkali();
        if (choice.saysHowMuch() && !formula.oils().isEmpty() && !formula.inMasses()) {
            add(
                    "alkali",
                    "the alkali is a mass, but the oils are percent",
                    "write the oils as masses too, or give a superfat instead");
        }
        if (choice instanceof AlkaliChoice.Mix mix) {
            mix(mix);
        } else if (choice instanceof AlkaliChoice.Given given) {
            given(given);
        } else if (choice instanceof AlkaliChoice.Stock stock) {
            stock(stock);
        }
    }

    private void mix(AlkaliChoice.Mix mix) {
        BigDecimal sum = mix.sodium().percent().add(mix.potassium().percent());
        if (sum.compareTo(HUNDRED) != 0) {
            add(
                    "alkali",
                    "the two alkalis add up to " + sum.toPlainString() + " %",
                    "change the shares until they add up to 100 %");
        } else if (mix.sodium().percent().signum() == 0
                || mix.potassium().percent().signum() == 0) {
            add(
                    "alkali",
                    "one of the two alkalis is 0 %",
                    "write alkali: " + (mix.sodium().percent().signum() == 0 ? "potassium" : "sodium"));
        }
    }

    private void given(AlkaliChoice.Given given) {
        if (given.sodium().isEmpty() && given.potassium().isEmpty()) {
            add("alkali", "no alkali is given", "write the mass of sodium or of potassium");
        }
        if (isZero(given.sodium()) || isZero(given.potassium())) {
            add("alkali", "an alkali's mass is 0", "leave it out, or write more than 0");
        }
    }

    private static boolean isZero(Optional<WrittenMass> mass) {
        return mass.isPresent() && mass.get().value().signum() == 0;
    }

    private void stock(AlkaliChoice.Stock stock) {
        String key = stock.key();
        if (isZero(stock.mass())) {
            add(at("alkali", key), "the mass of " + Wording.quote(key) + " is 0", "write more than 0");
        }
        if (key.equals("sodium") || key.equals("potassium") || key.equals("by") || key.equals("as")) {
            add("alkali", Wording.quote(key) + " cannot be a stock lye's name", "call it something else");
            return;
        }
        List<String> known = new ArrayList<>(List.of("sodium", "potassium"));
        for (OwnMaterial own : formula.materials()) {
            if (own.kind().equals(OwnMaterial.LYE)) {
                if (own.key().equals(key)) {
                    return;
                }
                known.add(own.key());
            }
        }
        List<String> near = NearestKey.among(key, known);
        add(
                "alkali",
                Wording.quote(key) + " is neither sodium, potassium nor a stock lye of this formula",
                near.isEmpty()
                        ? "write sodium or potassium, or describe the lye under materials with kind: lye"
                        : "did you mean " + near.get(0) + "?");
    }

    private void superfat() {
        if (formula.superfat().isPresent()) {
            BigDecimal percent = formula.superfat().get().percent();
            if (percent.compareTo(HUNDRED) >= 0) {
                add(
                        "superfat",
                        "a superfat of " + percent.toPlainString() + " % is not possible",
                        "it must be under 100 %; bars usually have 5 to 8 %");
            }
        } else if (!formula.alkali().saysHowMuch()) {
            add(
                    "superfat",
                    "the formula gives neither a superfat nor the mass of its alkali",
                    "write superfat: 5 %, or the alkali as a mass");
        }
    }

    private void water() {
        WaterRule rule = formula.water();
        boolean nothing;
        if (rule instanceof WaterRule.LyeStrength lye) {
            nothing = lye.strength().percent().signum() == 0;
            if (lye.strength().percent().compareTo(HUNDRED) >= 0) {
                add(
                        "water",
                        "a lye of " + lye.strength() + " leaves no water",
                        "write a strength under 100 %; 28 to 33 % is usual");
            }
        } else if (rule instanceof WaterRule.OfOils ofOils) {
            nothing = ofOils.share().percent().signum() == 0;
        } else if (rule instanceof WaterRule.Ratio ratio) {
            nothing = ratio.parts().signum() == 0 || ratio.toAlkali().signum() == 0;
        } else {
            nothing = ((WaterRule.Weight) rule).mass().value().signum() == 0;
        }
        if (nothing) {
            add(
                    "water",
                    "'" + WaterText.print(rule) + "' has a 0 in it, but alkali needs water",
                    "write more than 0; 33 % lye is usual");
        }
    }

    private void curedWater() {
        if (formula.curedWater().isPresent()
                && formula.curedWater().get().percent().compareTo(MOST_CURED_WATER) >= 0) {
            add(
                    "cured water",
                    "a cured bar with " + formula.curedWater().get() + " water is not possible",
                    "write less than 60 %; 8 to 14 % is usual");
        }
    }

    private void portions() {
        List<PortionLine> portions = formula.portions();
        if (portions.isEmpty() || isTooMany(portions.size(), "portions")) {
            return;
        }
        BigDecimal sum = BigDecimal.ZERO;
        String rest = null;
        for (int i = 0; i < portions.size(); i++) {
            PortionLine portion = portions.get(i);
            portion(portions, i);
            if (portion.share().isPresent()) {
                sum = sum.add(portion.share().get().percent());
            } else if (rest != null) {
                add(at("portions", portion.name()), "two portions are rest", "write the share of one of them");
                return;
            } else {
                rest = portion.name();
            }
        }
        addsUp("portions", "the portions", sum, rest);
    }

    private void portion(List<PortionLine> portions, int i) {
        PortionLine portion = portions.get(i);
        String name = portion.name();
        if (nameIsWrong(name, at("portions", name), "the name of a portion")) {
            return;
        }
        for (int j = 0; j < i; j++) {
            if (portions.get(j).name().equals(name)) {
                add(at("portions", name), Wording.quote(name) + " is listed twice", "give each portion its own name");
            }
        }
        if (portion.share().isPresent() && portion.share().get().percent().signum() == 0) {
            add(at("portions", name), Wording.quote(name) + " is 0 %", "leave the line out, or write more than 0");
        }
    }

    private void materials() {
        List<OwnMaterial> materials = formula.materials();
        if (materials.isEmpty() || isTooMany(materials.size(), "materials")) {
            return;
        }
        for (int i = 0; i < materials.size(); i++) {
            OwnMaterial own = materials.get(i);
            if (nameIsWrong(own.key(), at("materials", own.key()), "the name of a material")) {
                continue;
            }
            for (int j = 0; j < i; j++) {
                if (materials.get(j).key().equals(own.key())) {
                    add(
                            at("materials", own.key()),
                            Wording.quote(own.key()) + " is listed twice",
                            "make one of the two");
                }
            }
            new MaterialRules(own, at("materials", own.key()), this::add)
                    .check(tableKeys.test(own.key()), tableOils.test(own.key()));
        }
    }
}
