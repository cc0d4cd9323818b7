package lyewright.web.start;

import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.words.Figures;
import lyewright.words.UnitsShown;

/** A superfat in one sentence, as one maker says it to another. */
final class SuperfatSaid {

    private SuperfatSaid() {}

    static String of(MakingSheet sheet) {
        String giveOrTake = giveOrTake(half(sheet.band()));
        String figure = Figures.fixed(Math.abs(sheet.sheetSuperfatPercent()), 1);
        if (figure.equals("0.0")) {
            return "This has no superfat at all, " + giveOrTake + ".";
        }
        return sheet.sheetSuperfatPercent() < 0
                ? "This has alkali for " + figure + " % more than these oils take, " + giveOrTake + "."
                : "This is " + article(figure) + " " + figure + " % superfat, " + giveOrTake + ".";
    }

    /** What a recipe that asks for a superfat did not say itself. */
    static Optional<String> alkali(MakingSheet sheet, UnitsShown units) {
        if (sheet.askedSuperfatPercent().isEmpty()) {
            return Optional.empty();
        }
        double soda = sheet.lye().naohGrams();
        double potash = sheet.lye().kohGrams();
        String both = soda > 0 && potash > 0 ? " and " : "";
        return Optional.of("It takes "
                + (soda > 0 ? units.tenths(soda) + " of soda" : "")
                + both
                + (potash > 0 ? units.tenths(potash) + " of potash" : "")
                + ".");
    }

    /** As read: an eight, an eleven, an eighteen, an eighty. */
    static String article(String figure) {
        boolean vowel = figure.startsWith("8") || figure.startsWith("11.") || figure.startsWith("18.");
        return vowel ? "an" : "a";
    }

    /** Half of where it lies 19 times in 20. */
    private static double half(SuperfatBand band) {
        return (band.highPercent() - band.lowPercent()) / 2;
    }

    /** To a wording that nobody takes for more exact than it is. */
    static String giveOrTake(double half) {
        if (half < 0.15) {
            return "give or take a tenth of a point";
        }
        if (half < 0.375) {
            return "give or take a quarter of a point";
        }
        if (half < 0.75) {
            return "give or take half a point";
        }
        if (half < 1.25) {
            return "give or take a point";
        }
        return half < 1.75
                ? "give or take a point and a half"
                : "give or take " + Figures.upTo(Math.round(2 * half) / 2.0, 1) + " points";
    }
}
