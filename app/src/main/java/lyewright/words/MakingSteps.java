package lyewright.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.fill.Shape;
import lyewright.formula.Disperse;
import lyewright.formula.Process;
import lyewright.formula.Stage;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.UsualPractice;
import lyewright.makingsheet.Weighing;
import lyewright.measure.TimeSpan;

/** What is done step by step once everything is weighed. */
public final class MakingSteps {

    private final SheetView view;
    private final UnitsShown units;
    private final MakingSheet sheet;
    private final Process process;
    private final Practices practices;
    private final UsualPractice kind;
    private final boolean portions;
    private final List<MakingStep> steps = new ArrayList<>();

    private MakingSteps(SheetView view, UnitsShown units) {
        this.view = view;
        this.units = units;
        this.sheet = view.sheet();
        this.process = sheet.formula().formula().process();
        this.practices = Practices.of(sheet, units);
        this.kind = sheet.practice();
        this.portions = !sheet.formula().portions().isEmpty();
    }

    /**
     * The steps of a sheet, in order. Figures marked {@link Practices#MARK} are common practice.
     *
     * @param sheet the sheet
     * @return the steps; a stopped sheet has them too, and whoever shows them says that it is stopped
     */
    public static List<MakingStep> of(MakingSheet sheet) {
        return of(sheet, UnitsShown.METRIC);
    }

    /**
     * The same in the units that are wanted.
     *
     * @param sheet the sheet
     * @param units of masses and temperatures
     * @return the steps
     */
    public static List<MakingStep> of(MakingSheet sheet, UnitsShown units) {
        return new MakingSteps(new SheetView(sheet), units).all();
    }

    private List<MakingStep> all() {
        wetOutAhead();
        meltOils();
        lye();
        blend();
        stirIn();
        portions();
        pour();
        additions("On top, in the mould:", view.additionsAt(Stage.Kind.TOP));
        warm();
        cut();
        cure();
        return List.copyOf(steps);
    }

    private void step(String text) {
        steps.add(new MakingStep(steps.size() + 1, text.strip(), Optional.empty()));
    }

    private void step(String text, StepTable table) {
        steps.add(new MakingStep(steps.size() + 1, text.strip(), Optional.of(table)));
    }

    private void wetOutAhead() {
        List<Weighing> wet = new ArrayList<>(view.where(line -> line.kind() == BatchLine.Kind.ADDITION).stream()
                .filter(w -> view.liquidOf(w).isPresent())
                .toList());
        if (wet.isEmpty()) {
            return;
        }
        wet.sort(Comparator.comparingDouble((Weighing w) -> -hoursAhead(w)));
        List<List<String>> rows = new ArrayList<>();
        for (Weighing powder : wet) {
            view.liquidOf(powder)
                    .ifPresent(liquid -> rows.add(List.of(
                            called(powder),
                            units.on(powder.balance(), powder.weigh()),
                            "in " + units.on(liquid.balance(), liquid.weigh()) + " of "
                                    + StepWords.lowerFirst(liquid.name()) + " ("
                                    + disperse(powder).ratioText() + ")",
                            disperse(powder).ahead().map(a -> a + " ahead").orElse(""))));
        }
        step(
                "Ahead of time, stir each powder into its liquid until no lump is left, and cover it:",
                StepTable.of(
                        List.of(StepTable.words(""), StepTable.figures(""), StepTable.words(""), StepTable.words("")),
                        rows));
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
        step("Melt the oils in their pot (" + units.sumInBrackets(oils) + ") and bring them to "
                + practices.degrees(process.oils(), kind.blend()) + ".");
        additions("Stir into the oils, in this order:", view.additionsAt(Stage.Kind.OILS));
    }

    private void lye() {
        LyeSteps lye = new LyeSteps(view, units, practices);
        additions(
                "In the lye jug, before any alkali, stir in this order"
                        + (hasColdMilk() ? "; milk goes in frozen:" : ":"),
                view.additionsAt(Stage.Kind.LYE));
        step(lye.dissolve());
        step(lye.cool());
    }

    /** Its caution says why, but freezing it has to be thought of the day before. */
    private boolean hasColdMilk() {
        return sheet.cautions().stream().anyMatch(caution -> caution.id().equals("milk-cold"));
    }

    private void blend() {
        List<Weighing> lye = view.where(BatchLine::inLyeJug);
        List<Weighing> pot = view.where(line -> line.stage().kind() == Stage.Kind.OILS);
        step("Pour all the lye (" + units.sumInBrackets(lye) + ") into the oil pot (" + units.sumInBrackets(pot)
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
        List<List<String>> rows = new ArrayList<>();
        for (Weighing addition : additions) {
            List<Weighing> both = view.withLiquid(addition);
            rows.add(List.of(
                    both.size() > 1 ? addition.name() + ", wetted out" : addition.name(),
                    both.size() > 1 ? units.sum(both) : units.on(addition.balance(), addition.weigh())));
        }
        step(text, StepTable.of(List.of(StepTable.words(""), StepTable.figures("")), rows));
    }

    private void portions() {
        PortionSteps portionSteps = new PortionSteps(view, units);
        if (portions) {
            step(
                    "Share the batter out by weight, then stir into each portion, in this order:",
                    portionSteps.shareOut());
        }
        if (sheet.fade().isEmpty()) {
            return;
        }
        Process.Pour pour = process.pour().orElseThrow(() -> new IllegalStateException("layers without a pour"));
        step(
                "Pour the fade from the " + pour.coloured() + " jug, layer by layer, stirring " + pour.plain()
                        + " into it after each:",
                portionSteps.fade());
        List<String> others = portionSteps.outsideFade(pour);
        if (!others.isEmpty()) {
            step("Pour what the fade leaves out: " + String.join(", ", others) + ".");
        }
    }

    private void pour() {
        double poured = sheet.totals().mould() - grams(view.additionsAt(Stage.Kind.TOP));
        String into = view.additionsAt(Stage.Kind.TOP).isEmpty() ? "" : " before the toppings";
        double left = sheet.totals().batch() - sheet.totals().mould();
        String stays = left > 0 ? "; about " + units.about(left) + " stays behind" : "";
        String what = sheet.fade().isEmpty() ? "Pour into the mould: " : "In the mould now: ";
        step(what + units.about(poured) + into + stays + ".");
    }

    private static double grams(List<Weighing> weighings) {
        return weighings.stream().mapToDouble(w -> w.weigh().grams()).sum();
    }

    private void warm() {
        if (process.oven().isPresent()) {
            step("Put the mould into the oven: " + units.oven(process.oven().get()) + ".");
        } else if (process.make() == Process.Make.OVEN) {
            step("Put the mould into an oven at " + practices.text("oven") + ", switched off as it goes in.");
        } else {
            step("Leave the mould level and undisturbed at room temperature.");
        }
    }

    private void cut() {
        boolean cavities = sheet.fill()
                .mould()
                .shape()
                .filter(s -> s instanceof Shape.Cavities)
                .isPresent();
        String bars = sheet.bars()
                .map(b -> " " + b.count() + " bars of " + units.about(b.cutGrams()) + ".")
                .orElse("");
        step((cavities ? "Out of the cavities after " : "Cut after ") + practices.text(kind.cut())
                + ", gloves on: it is still caustic." + bars);
    }

    private void cure() {
        String to = sheet.bars()
                .map(b -> ", to about " + units.about(b.curedGrams()) + " a bar at "
                        + Figures.upTo(100 * sheet.formula().curedWater(), 1) + " % water")
                .orElse("");
        step("Cure on a rack, air all round, " + practices.text(kind.cure()) + to + ".");
    }
}
