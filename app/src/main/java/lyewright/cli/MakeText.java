package lyewright.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.fill.Shape;
import lyewright.formula.Disperse;
import lyewright.formula.Process;
import lyewright.formula.Stage;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.FadingPour;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.makingsheet.UsualPractice;
import lyewright.makingsheet.Weighing;
import lyewright.material.AdditiveKind;
import lyewright.measure.Temperature;
import lyewright.measure.TimeSpan;

/** The part of a sheet that is followed step by step once everything is weighed. */
final class MakeText {

    private static final int INDENT = 5;

    /** The cooling time of common practice is to this temperature, °C. */
    private static final double FORTY = 40;

    private static final double NEAR = 5;

    private final SheetView view;
    private final MakingSheet sheet;
    private final Process process;
    private final Practices practices;
    private final UsualPractice kind;
    private final Page page;
    private final boolean portions;
    private int steps;

    MakeText(SheetView view, Page page) {
        this.view = view;
        this.sheet = view.sheet();
        this.process = sheet.formula().formula().process();
        this.practices = new Practices(sheet.formula().tables(), inFahrenheit(process));
        this.kind = sheet.practice();
        this.page = page;
        this.portions = !sheet.formula().portions().isEmpty();
    }

    private static boolean inFahrenheit(Process process) {
        return process.oils()
                .or(process::lye)
                .filter(t -> t.scale() == Temperature.Scale.F)
                .isPresent();
    }

    void write() {
        page.heading("Make");
        WeighText.notToBeMade(view.sheet(), page);
        wetOutAhead();
        meltOils();
        dissolveAlkali();
        cool();
        blend();
        stirIn();
        if (portions) {
            shareOut();
        }
        if (!sheet.fade().isEmpty()) {
            fade();
        }
        pour();
        additions("On top, in the mould:", view.additionsAt(Stage.Kind.TOP));
        warm();
        cut();
        cure();
        page.line("     " + Practices.MEANING);
    }

    private void step(String text) {
        steps++;
        page.hanging(Widths.right(steps + ".", 3) + "  ", text);
    }

    private void wetOutAhead() {
        List<Weighing> wet = new ArrayList<>(view.where(line -> line.kind() == BatchLine.Kind.ADDITION).stream()
                .filter(w -> view.liquidOf(w).isPresent())
                .toList());
        if (wet.isEmpty()) {
            return;
        }
        wet.sort(Comparator.comparingDouble((Weighing w) -> -hoursAhead(w)));
        step("Ahead of time, stir each powder into its liquid until no lump is left, and cover it:");
        TextTable table = new TextTable(
                        INDENT, TextTable.words(""), TextTable.figures(""), TextTable.words(""), TextTable.words(""))
                .untitled();
        for (Weighing powder : wet) {
            view.liquidOf(powder)
                    .ifPresent(liquid -> table.row(
                            called(powder),
                            Figures.on(powder.balance(), powder.weigh()),
                            "in " + Figures.on(liquid.balance(), liquid.weigh()) + " of " + lowerFirst(liquid.name())
                                    + " (" + disperse(powder).ratioText() + ")",
                            disperse(powder).ahead().map(a -> a + " ahead").orElse("")));
        }
        page.table(table);
    }

    private Disperse disperse(Weighing powder) {
        return view.formula()
                .additions()
                .get(powder.line().place())
                .written()
                .disperse()
                .orElseThrow(() -> new IllegalStateException(powder.name() + " has a liquid but no dispersing"));
    }

    private double hoursAhead(Weighing powder) {
        return disperse(powder).ahead().map(TimeSpan::hours).orElse(0.0);
    }

    private static String called(Weighing weighing) {
        return weighing.portion().isEmpty() ? weighing.name() : weighing.name() + ", for " + weighing.portion();
    }

    private void meltOils() {
        List<Weighing> oils = view.where(
                line -> line.kind() == BatchLine.Kind.OIL && line.stage().kind() == Stage.Kind.OILS);
        step("Melt the oils in their pot (" + Figures.sum(oils) + ") and bring them to "
                + degrees(process.oils(), kind.blend()) + ".");
        additions("Stir into the oils, in this order:", view.additionsAt(Stage.Kind.OILS));
    }

    private String degrees(Optional<Temperature> written, String practice) {
        return written.map(Practices::degrees).orElseGet(() -> practices.text(practice));
    }

    private void dissolveAlkali() {
        additions("Stir into the lye jug before any alkali, in this order:", view.additionsAt(Stage.Kind.LYE));
        List<Weighing> alkali = view.where(line -> line.kind() == BatchLine.Kind.ALKALI);
        List<Weighing> wet = view.where(line -> line.inLyeJug() && line.kind() != BatchLine.Kind.ALKALI);
        boolean stock = view.formula().alkali().stock().isPresent();
        String what = list(alkali);
        if (stock) {
            step(
                    wet.isEmpty()
                            ? "The lye is ready made: " + what + ". Pour it slowly; it burns like fresh lye."
                            : "Pour the stock lye, " + what + ", into " + jug(wet)
                                    + ", and stir. Never the other way round.");
            return;
        }
        step("Stir the alkali, " + what + ", a little at a time into " + jug(wet)
                + ". Alkali into water, never water onto alkali. It heats by itself" + heats()
                + " and steams: lean back.");
    }

    /** What alkali goes into. */
    private static String jug(List<Weighing> wet) {
        if (wet.isEmpty()) {
            return "the lye jug, which holds no water to dissolve it in";
        }
        if (wet.size() == 1) {
            return "the " + list(wet) + " in the lye jug";
        }
        StringBuilder names = new StringBuilder();
        for (Weighing weighing : wet) {
            names.append(names.isEmpty() ? "" : " + ").append(lowerFirst(weighing.name()));
        }
        return "the lye jug, which holds " + Figures.sum(wet) + ": " + names;
    }

    private String heats() {
        return milkInJug()
                ? ", but milk must stay cold: stand the jug in ice" + Practices.MARK + ". It spits"
                : ", to " + practices.text("lye-peak") + ",";
    }

    private boolean milkInJug() {
        return sheet.formula().additions().stream()
                .anyMatch(a -> a.stage() == Stage.Kind.LYE && a.material().kind() == AdditiveKind.MILK);
    }

    private static String list(List<Weighing> weighings) {
        StringBuilder text = new StringBuilder();
        for (Weighing weighing : weighings) {
            text.append(text.isEmpty() ? "" : " and ")
                    .append(Figures.on(weighing.balance(), weighing.weigh()))
                    .append(" of ")
                    .append(lowerFirst(weighing.name()));
        }
        return text.toString();
    }

    private void cool() {
        String to = degrees(process.lye(), kind.blend());
        boolean toForty = process.lye().isPresent()
                ? Math.abs(process.lye().get().celsius() - FORTY) <= NEAR
                : kind.blend().equals("blend-plain") || kind.blend().equals("blend-salt");
        String takes = toForty ? "; half a kilogram takes " + practices.text("lye-cooling") : "";
        if (sheet.formula().alkali().stock().isPresent()) {
            step("Bring the lye to " + to + "; from stock it is hardly warm.");
        } else if (milkInJug()) {
            step("Keep the lye in its ice until it is used.");
        } else {
            step("Let the lye cool to " + to + takes + ".");
        }
    }

    private void blend() {
        List<Weighing> lye = view.where(BatchLine::inLyeJug);
        List<Weighing> pot = view.where(line -> line.stage().kind() == Stage.Kind.OILS);
        step("Pour all the lye (" + Figures.sum(lye) + ") into the oil pot (" + Figures.sum(pot)
                + "), never the oils into the lye. " + until() + " " + window());
    }

    private String until() {
        boolean stiffens = kind.blend().equals("blend-shaving");
        String cooked = process.make() == Process.Make.COOKED ? " Cover, and cook it through." : "";
        return stiffens
                ? "Stir hard until it is even; it stiffens at once." + cooked
                : "Blend in short bursts to a light trace." + cooked;
    }

    private String window() {
        return process.make() == Process.Make.COOKED
                ? ""
                : "The batter can be worked for " + practices.text(kind.window()) + ".";
    }

    private void stirIn() {
        List<Weighing> whole = new ArrayList<>(view.additionsAt(Stage.Kind.TRACE));
        if (!portions) {
            whole.addAll(view.additionsAt(Stage.Kind.EVERY_PORTION));
        }
        additions("Stir into the batter, in this order:", whole);
    }

    private void additions(String text, List<Weighing> additions) {
        if (additions.isEmpty()) {
            return;
        }
        step(text);
        TextTable table = new TextTable(INDENT, TextTable.words(""), TextTable.figures("")).untitled();
        for (Weighing addition : additions) {
            List<Weighing> both = view.withLiquid(addition);
            table.row(
                    both.size() > 1 ? addition.name() + ", wetted out" : addition.name(),
                    both.size() > 1 ? Figures.sum(both) : Figures.on(addition.balance(), addition.weigh()));
        }
        page.table(table);
    }

    private void shareOut() {
        Balance under = portionBalance();
        step("Share the batter out by weight, then stir into each portion, in this order:");
        TextTable table = new TextTable(
                INDENT,
                TextTable.words(""),
                TextTable.figures("add"),
                TextTable.figures("reads"),
                TextTable.figures("g/kg oils"),
                TextTable.figures("g/kg own oils"));
        for (int p = 0; p < sheet.portions().size(); p++) {
            PortionSheet portion = sheet.portions().get(p);
            table.across("");
            table.across(portionHeading(portion, under));
            table.row(
                    "batter",
                    Figures.on(under, portion.baseBatterGrams()),
                    Figures.on(under, portion.emptyGrams() + portion.baseBatterGrams()),
                    "",
                    "");
            for (PortionSheet.PortionAddition addition : portion.additions()) {
                table.row(
                        nameOf(addition, p),
                        Figures.fixed(addition.grams() + addition.liquidGrams(), 1) + " g",
                        Figures.on(under, addition.readingGrams()),
                        Figures.fixed(addition.gramsPerKilogramOils(), 1),
                        Figures.fixed(addition.gramsPerKilogramPortionOils(), 1));
            }
        }
        page.table(table);
    }

    private static String portionHeading(PortionSheet portion, Balance under) {
        String jug =
                portion.emptyGrams() > 0 ? "jug " + Figures.on(under, portion.emptyGrams()) + " empty" : "jug tared";
        return "Portion " + portion.name() + ": " + Figures.upTo(portion.sharePercent(), 2) + " % of the batter, " + jug
                + ", " + Figures.about(portion.totalGrams()) + " in the end, water "
                + Figures.percent(portion.waterPercentOfOils(), 1) + " of its oils, superfat "
                + Figures.percent(portion.superfatPercent(), 1);
    }

    private String nameOf(PortionSheet.PortionAddition addition, int portion) {
        String name = view.additionsOf(portion).stream()
                .filter(w -> w.line().key().equals(addition.of()))
                .map(Weighing::name)
                .findFirst()
                .orElse(addition.of());
        return addition.liquidGrams() > 0 ? name + ", wetted out" : name;
    }

    /** The balance that carries the oil pot carries a portion's jug. */
    private Balance portionBalance() {
        return view.where(line -> line.kind() == BatchLine.Kind.OIL).stream()
                .map(Weighing::balance)
                .max(Comparator.comparingDouble(b -> b.capacity().grams()))
                .orElseGet(() -> sheet.equipment().balances().get(0));
    }

    private void fade() {
        Process.Pour pour = process.pour().orElseThrow(() -> new IllegalStateException("layers without a pour"));
        step("Pour the fade from the " + pour.coloured() + " jug, layer by layer, stirring " + pour.plain()
                + " into it after each:");
        TextTable table = new TextTable(
                INDENT,
                TextTable.figures("layer"),
                TextTable.figures("in the jug"),
                TextTable.figures("pour"),
                TextTable.figures("colour in it"),
                TextTable.figures("then stir in"));
        for (FadingPour.Layer layer : sheet.fade()) {
            table.row(
                    String.valueOf(layer.layer()),
                    Figures.about(layer.jugBeforeGrams()),
                    Figures.about(layer.pourGrams()),
                    Figures.percent(layer.colourPercent(), 1),
                    layer.addPlainGrams() > 0 ? Figures.about(layer.addPlainGrams()) : "");
        }
        page.table(table);
        List<String> others = sheet.portions().stream()
                .map(PortionSheet::name)
                .filter(name -> !name.equals(pour.coloured()) && !name.equals(pour.plain()))
                .toList();
        if (!others.isEmpty()) {
            step("Pour what the fade leaves out: " + String.join(", ", others) + ".");
        }
    }

    private void pour() {
        double poured = sheet.totals().mould() - grams(view.additionsAt(Stage.Kind.TOP));
        String into = view.additionsAt(Stage.Kind.TOP).isEmpty() ? "" : " before the toppings";
        double left = sheet.totals().batch() - sheet.totals().mould();
        String stays = left > 0 ? "; about " + Figures.about(left) + " stays behind" : "";
        String what = sheet.fade().isEmpty() ? "Pour into the mould: " : "In the mould now: ";
        step(what + Figures.about(poured) + into + stays + ".");
    }

    private static double grams(List<Weighing> weighings) {
        return weighings.stream().mapToDouble(w -> w.weigh().grams()).sum();
    }

    private void warm() {
        if (process.oven().isPresent()) {
            step("Put the mould into the oven: "
                    + degreeSigns(process.oven().get().toString()) + ".");
        } else if (process.make() == Process.Make.OVEN) {
            step("Put the mould into an oven at " + practices.text("oven") + ", switched off as it goes in.");
        } else {
            step("Leave the mould level and undisturbed at room temperature.");
        }
    }

    private static String degreeSigns(String text) {
        return text.replace(" C", " °C").replace(" F", " °F").replace(" then off", ", then off");
    }

    private void cut() {
        boolean cavities = sheet.fill()
                .mould()
                .shape()
                .filter(s -> s instanceof Shape.Cavities)
                .isPresent();
        String bars = sheet.bars()
                .map(b -> " " + b.count() + " bars of " + Figures.about(b.cutGrams()) + ".")
                .orElse("");
        step((cavities ? "Out of the cavities after " : "Cut after ") + practices.text(kind.cut())
                + ", gloves on: it is still caustic." + bars);
    }

    private void cure() {
        String to = sheet.bars()
                .map(b -> ", to about " + Figures.about(b.curedGrams()) + " a bar at "
                        + Figures.upTo(100 * sheet.formula().curedWater(), 1) + " % water")
                .orElse("");
        step("Cure on a rack, air all round, " + practices.text(kind.cure()) + to + ".");
    }

    /** A name inside a sentence; one that is all capitals or has a capital further on keeps its own. */
    private static String lowerFirst(String name) {
        boolean plain =
                name.length() > 1 && Character.isUpperCase(name.charAt(0)) && Character.isLowerCase(name.charAt(1));
        return plain ? Character.toLowerCase(name.charAt(0)) + name.substring(1) : name;
    }
}
