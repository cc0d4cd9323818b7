package lyewright.web.recipe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.Addition;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Disperse;
import lyewright.formula.Formula;
import lyewright.formula.OilLine;
import lyewright.formula.Process;
import lyewright.formula.Stage;
import lyewright.formula.Use;
import lyewright.formula.WaterRule;
import lyewright.material.Additive;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.words.UnitsShown;

/** A formula as its maker wrote it, in words. */
final class WrittenWords {

    private WrittenWords() {}

    static String use(Use use) {
        return use == Use.SALE ? "for sale" : "own use";
    }

    /** What a material is called: by the tables, else as the maker calls it. */
    static String name(String key) {
        Tables tables = Tables.bundled();
        return tables.oil(key)
                .map(Oil::name)
                .or(() -> tables.additive(key).map(Additive::name))
                .orElse(key);
    }

    /** All oils on a line, the first ones first: {@code coconut oil 80 %, castor oil 20 %}. */
    static String oils(Formula formula) {
        BigDecimal left = BigDecimal.valueOf(100);
        for (OilLine line : formula.oils()) {
            left = line.amount() instanceof OilLine.Percent percent
                    ? left.subtract(percent.share().percent())
                    : left;
        }
        String rest = left.stripTrailingZeros().toPlainString() + " %";
        return formula.oils().stream()
                .map(line -> Names.inSentence(name(line.key())) + " "
                        + (line.amount() instanceof OilLine.Rest ? rest : amount(line.amount())))
                .collect(Collectors.joining(", "));
    }

    static String amount(OilLine.Amount amount) {
        if (amount instanceof OilLine.Percent percent) {
            return percent.share().toString();
        }
        return amount instanceof OilLine.Weight weight ? weight.mass().toString() : "the rest";
    }

    static String water(WaterRule rule) {
        if (rule instanceof WaterRule.LyeStrength lye) {
            return lye.strength() + " lye" + asWeighed(lye.asWeighed());
        }
        if (rule instanceof WaterRule.OfOils oils) {
            return oils.share() + " of oils";
        }
        if (rule instanceof WaterRule.Ratio ratio) {
            return ratio.parts().toPlainString() + " to " + ratio.toAlkali().toPlainString() + " of alkali"
                    + asWeighed(ratio.asWeighed());
        }
        WaterRule.Weight weight = (WaterRule.Weight) rule;
        return weight.mass() + (weight.fixed() ? " fixed" : "");
    }

    private static String asWeighed(boolean so) {
        return so ? " as weighed" : "";
    }

    static String alkali(Formula formula) {
        String superfat = formula.superfat().map(share -> ", superfat " + share).orElse("");
        AlkaliChoice choice = formula.alkali();
        if (choice instanceof AlkaliChoice.Single single) {
            return single.alkali().word() + superfat;
        }
        if (choice instanceof AlkaliChoice.Mix mix) {
            return "sodium " + mix.sodium() + ", potassium " + mix.potassium() + " by "
                    + mix.by().word() + superfat;
        }
        if (choice instanceof AlkaliChoice.Stock stock) {
            return stock.key() + stock.mass().map(mass -> " " + mass).orElse("") + superfat;
        }
        AlkaliChoice.Given given = (AlkaliChoice.Given) choice;
        List<String> masses = new ArrayList<>();
        given.sodium().ifPresent(mass -> masses.add("sodium " + mass));
        given.potassium().ifPresent(mass -> masses.add("potassium " + mass));
        return String.join(", ", masses) + " "
                + given.as()
                        .map(as -> as == AlkaliChoice.As.PURE ? "pure" : "as weighed")
                        .orElse("as weighed");
    }

    static String stage(Stage stage) {
        return switch (stage.kind()) {
            case LYE -> "in the lye";
            case OILS -> "in the oils";
            case TRACE -> "at trace";
            case EVERY_PORTION -> "in every portion";
            case PORTION -> "in " + stage.portion();
            case TOP -> "on top";
        };
    }

    /** When an addition goes in, and how. */
    static String how(Addition addition) {
        String replaces = addition.replacesWater() ? ", in place of water" : "";
        return stage(addition.stage())
                + replaces
                + addition.disperse().map(WrittenWords::wetted).orElse("");
    }

    private static String wetted(Disperse disperse) {
        return ", wetted out " + disperse.ratioText() + " in " + disperse.in()
                + disperse.ahead().map(time -> " " + time + " ahead").orElse("");
    }

    static String process(Process process, UnitsShown units) {
        List<String> parts = new ArrayList<>();
        parts.add(
                switch (process.make()) {
                    case COLD -> "Cold process";
                    case OVEN -> "Oven process";
                    case COOKED -> "Cooked";
                });
        process.oils().ifPresent(degrees -> parts.add("oils at " + units.degrees(degrees)));
        process.lye().ifPresent(degrees -> parts.add("lye at " + units.degrees(degrees)));
        process.oven().ifPresent(oven -> parts.add("oven " + units.oven(oven)));
        process.pour().ifPresent(pour -> parts.add(pour.toString()));
        return String.join(", ", parts) + ".";
    }

    /** The superfat asked for, where one is. */
    static Optional<String> superfat(Formula formula) {
        return formula.superfat().map(share -> share + " superfat");
    }
}
