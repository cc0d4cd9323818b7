package lyewright.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lyewright.chemistry.BatchLine;
import lyewright.formula.Process;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.FadingPour;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.makingsheet.Weighing;

/** What goes into each portion, and how a fading pour is poured, as tables. */
final class PortionSteps {

    private final SheetView view;
    private final UnitsShown units;
    private final MakingSheet sheet;

    PortionSteps(SheetView view, UnitsShown units) {
        this.view = view;
        this.units = units;
        this.sheet = view.sheet();
    }

    StepTable shareOut() {
        Balance under = portionBalance();
        List<StepTable.Group> groups = new ArrayList<>();
        for (int p = 0; p < sheet.portions().size(); p++) {
            PortionSheet portion = sheet.portions().get(p);
            groups.add(new StepTable.Group(heading(portion, under), rows(portion, p, under)));
        }
        return new StepTable(
                List.of(
                        StepTable.words(""),
                        StepTable.figures("add"),
                        StepTable.figures("reads"),
                        StepTable.figures(units.ounces() ? "oz/lb oils" : "g/kg oils"),
                        StepTable.figures(units.ounces() ? "oz/lb own oils" : "g/kg own oils")),
                groups);
    }

    private List<List<String>> rows(PortionSheet portion, int place, Balance under) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "batter",
                units.on(under, portion.baseBatterGrams()),
                units.on(under, portion.emptyGrams() + portion.baseBatterGrams()),
                "",
                ""));
        for (PortionSheet.PortionAddition addition : portion.additions()) {
            rows.add(List.of(
                    nameOf(addition, place),
                    units.tenths(under, addition.grams() + addition.liquidGrams()),
                    units.on(under, addition.readingGrams()),
                    units.forOils(addition.gramsPerKilogramOils()),
                    units.forOils(addition.gramsPerKilogramPortionOils())));
        }
        return rows;
    }

    private String heading(PortionSheet portion, Balance under) {
        String jug = portion.emptyGrams() > 0 ? "jug " + units.on(under, portion.emptyGrams()) + " empty" : "jug tared";
        return "Portion " + portion.name() + ": " + Figures.upTo(portion.sharePercent(), 2) + " % of the batter, " + jug
                + ", " + units.about(portion.totalGrams()) + " in the end, water "
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

    StepTable fade() {
        Balance under = portionBalance();
        List<List<String>> rows = new ArrayList<>();
        for (FadingPour.Layer layer : sheet.fade()) {
            rows.add(List.of(
                    String.valueOf(layer.layer()),
                    units.about(under, layer.jugBeforeGrams()),
                    units.about(under, layer.pourGrams()),
                    Figures.percent(layer.colourPercent(), 1),
                    layer.addPlainGrams() > 0 ? units.about(under, layer.addPlainGrams()) : ""));
        }
        return StepTable.of(
                List.of(
                        StepTable.figures("layer"),
                        StepTable.figures("in the jug"),
                        StepTable.figures("pour"),
                        StepTable.figures("colour in it"),
                        StepTable.figures("then stir in")),
                rows);
    }

    /** Portions that take no part in the fade. */
    List<String> outsideFade(Process.Pour pour) {
        return sheet.portions().stream()
                .map(PortionSheet::name)
                .filter(name -> !name.equals(pour.coloured()) && !name.equals(pour.plain()))
                .toList();
    }
}
