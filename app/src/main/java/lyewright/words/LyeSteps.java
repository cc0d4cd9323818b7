package lyewright.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchLine;
import lyewright.formula.Process;
import lyewright.formula.Stage;
import lyewright.makingsheet.Weighing;
import lyewright.material.AdditiveKind;
import lyewright.measure.Temperature;

/** How the lye is made and cooled, in sentences. */
final class LyeSteps {

    /** The cooling time of common practice is to this temperature, °C. */
    private static final double FORTY = 40;

    private static final double NEAR = 5;

    /** What the cooling time of common practice is of, grams. */
    private static final double HALF_A_KILOGRAM = 500;

    private final SheetView view;
    private final UnitsShown units;
    private final Practices practices;
    private final Process process;
    private final String usualBlend;

    LyeSteps(SheetView view, UnitsShown units, Practices practices) {
        this.view = view;
        this.units = units;
        this.practices = practices;
        this.process = view.formula().formula().process();
        this.usualBlend = view.sheet().practice().blend();
    }

    String dissolve() {
        List<Weighing> wet = view.where(line -> line.inLyeJug() && line.kind() != BatchLine.Kind.ALKALI).stream()
                .filter(weighing -> weighing.weigh().grams() > 0)
                .toList();
        String what = StepWords.list(view.where(line -> line.kind() == BatchLine.Kind.ALKALI), units);
        if (stock()) {
            return wet.isEmpty()
                    ? "The lye is ready made: " + what + ". Pour it slowly; it burns like fresh lye."
                    : "Pour the stock lye, " + what + ", into " + jug(wet) + ", and stir. Never the other way round.";
        }
        return "Stir the alkali, " + what + ", a little at a time into " + jug(wet)
                + ". Alkali into water, never water onto alkali. It heats by itself" + heats()
                + " and steams: lean back.";
    }

    private boolean stock() {
        return view.formula().alkali().stock().isPresent();
    }

    /** What alkali goes into. */
    private String jug(List<Weighing> wet) {
        if (wet.isEmpty()) {
            return "the lye jug, which holds no water to dissolve it in";
        }
        if (wet.size() == 1) {
            return "the " + StepWords.list(wet, units) + " in the lye jug";
        }
        return "the lye jug, which holds " + units.sum(wet) + ": "
                + wet.stream().map(w -> StepWords.lowerFirst(w.name())).collect(Collectors.joining(" + "));
    }

    private String heats() {
        return milkInJug()
                ? ", but milk must stay cold: stand the jug in ice" + Practices.MARK + ". It spits"
                : ", to " + practices.text("lye-peak") + ",";
    }

    private boolean milkInJug() {
        return view.formula().additions().stream()
                .anyMatch(a -> a.stage() == Stage.Kind.LYE && a.material().kind() == AdditiveKind.MILK);
    }

    String cool() {
        String to = practices.degrees(process.lye(), usualBlend);
        if (stock()) {
            return "Bring the lye to " + to + "; from stock it is hardly warm.";
        }
        if (milkInJug()) {
            return "Keep the lye in its ice until it is used.";
        }
        String takes = toForty()
                ? "; " + (units.ounces() ? units.about(HALF_A_KILOGRAM) : "half a kilogram") + " takes "
                        + practices.text("lye-cooling")
                : "";
        return "Let the lye cool to " + to + takes + ".";
    }

    private boolean toForty() {
        Optional<Temperature> written = process.lye();
        return written.isPresent()
                ? Math.abs(written.get().celsius() - FORTY) <= NEAR
                : usualBlend.equals("blend-plain") || usualBlend.equals("blend-salt");
    }
}
