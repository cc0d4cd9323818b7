package lyewright.cli;

import lyewright.chemistry.BatchLine;
import lyewright.fill.Shape;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.formula.Stage;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Weighing;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.OilKind;

/**
 * Which rows of common practice fit a sheet: ids of the tables' practices. Thresholds are those of the cautions: common
 * practice.
 *
 * @param blend temperature for blending
 * @param window how long there is to work
 * @param cut when to cut, or to take it out of cavities
 * @param cure how long to cure
 */
record BarKind(String blend, String window, String cut, String cure) {

    private static final double SALT_BAR = 25;
    private static final double MUCH_SALT = 50;
    private static final double MOST_SALT = 80;
    private static final double HARD_ACID = 0.2;
    private static final double MOSTLY_POTASSIUM = 33;
    private static final double MOSTLY_OLIVE = 0.7;

    static BarKind of(MakingSheet sheet) {
        double salt = saltPercent(sheet);
        boolean saltBar = salt >= SALT_BAR;
        boolean milk = sheet.formula().additions().stream()
                .anyMatch(a -> a.material().kind() == AdditiveKind.MILK && a.stage() != Stage.Kind.TOP);
        return new BarKind(
                blend(sheet, saltBar, milk),
                saltBar ? "window-salt" : "window-plain",
                cut(sheet, salt, milk),
                saltBar ? "cure-salt" : olive(sheet) >= MOSTLY_OLIVE ? "cure-olive" : "cure-plain");
    }

    private static double saltPercent(MakingSheet sheet) {
        double grams = 0;
        for (Weighing weighing :
                new SheetView(sheet).where(line -> line.kind() == BatchLine.Kind.ADDITION && !line.onTop())) {
            Additive material =
                    sheet.formula().additions().get(weighing.line().place()).material();
            grams += material.kind() == AdditiveKind.SALT ? weighing.weigh().grams() : 0;
        }
        return 100 * grams / sheet.totals().oils();
    }

    private static double olive(MakingSheet sheet) {
        return sheet.formula().oils().stream()
                .filter(oil -> oil.key().startsWith("olive"))
                .mapToDouble(OilPart::fraction)
                .sum();
    }

    private static String blend(MakingSheet sheet, boolean saltBar, boolean milk) {
        double hardAcid = sheet.formula().oils().stream()
                .filter(oil -> oil.parts().get(0).oil().kind() == OilKind.FATTY_ACID)
                .mapToDouble(OilPart::fraction)
                .sum();
        if (hardAcid >= HARD_ACID || sheet.lye().potassiumMolesPercent() >= MOSTLY_POTASSIUM) {
            return "blend-shaving";
        }
        if (milk) {
            return "blend-milk";
        }
        if (sheet.formula().oils().stream().anyMatch(oil -> oil.key().equals("beeswax"))) {
            return "blend-beeswax";
        }
        return saltBar ? "blend-salt" : "blend-plain";
    }

    private static String cut(MakingSheet sheet, double salt, boolean milk) {
        boolean cavities = sheet.fill()
                .mould()
                .shape()
                .filter(s -> s instanceof Shape.Cavities)
                .isPresent();
        if (cavities) {
            return salt >= SALT_BAR ? "out-of-cavities-salt" : "out-of-cavities-plain";
        }
        Process process = sheet.formula().formula().process();
        boolean gelled = process.make() != Process.Make.COLD || process.oven().isPresent();
        if (salt < SALT_BAR) {
            return gelled && !milk ? "cut-plain-gelled" : "cut-plain-ungelled";
        }
        if (milk || !gelled) {
            return "cut-salt-ungelled";
        }
        return salt < MUCH_SALT ? "cut-salt-25-50" : salt <= MOST_SALT ? "cut-salt-50-80" : "cut-salt-100";
    }
}
