package lyewright.web.why;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Comparison;
import lyewright.why.Why;
import lyewright.words.Figures;

/** Why a figure changes from one version or recipe to another: the one less the other, each leading to its own why. */
final class ChangeShown {

    private final Comparison.Row row;
    private final Side a;
    private final Side b;

    ChangeShown(Comparison.Row row, Side a, Side b) {
        this.row = row;
        this.a = a;
        this.b = b;
    }

    /**
     * One of the two.
     *
     * @param letter A or B
     * @param name which recipe and version that is
     * @param asked its sheet, and where its figures say why
     */
    record Side(String letter, String name, WhyAsked asked) {

        private ReasonShown.Input input(Comparison.Row row, Optional<Double> value) {
            return new ReasonShown.Input(
                    letter,
                    with(Figures.fixed(value.orElse(0.0), row.decimals()), row.unit()),
                    name,
                    "",
                    Why.of(asked.sheet()).ofComparison(row.path()).map(asked.why()),
                    List.of());
        }
    }

    /** The reason; empty where one of the two has no such figure. */
    Optional<ReasonShown> reason() {
        return row.shownDifference().map(this::reason);
    }

    private ReasonShown reason(BigDecimal change) {
        String shown = with((change.signum() > 0 ? "+" : "") + change.toPlainString(), row.unit());
        return new ReasonShown(
                row.label() + ": the change",
                Optional.of(shown),
                row.path(),
                "What B has more than A, or less, both rounded as they are shown.",
                List.of(new ReasonShown.Step("change", "B − A", shown, "")),
                List.of(),
                List.of(a.input(row, row.a()), b.input(row, row.b())),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static String with(String text, String unit) {
        return unit.isEmpty() ? text : text + " " + unit;
    }
}
