package lyewright.web.why;

import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Comparison;
import lyewright.why.Why;
import lyewright.words.ComparedShown;

/** Why a figure changes from one version or recipe to another: the one less the other, each leading to its own why. */
final class ChangeShown {

    private final Comparison.Row row;
    private final ComparedShown shown;
    private final Side a;
    private final Side b;

    ChangeShown(Comparison.Row row, ComparedShown shown, Side a, Side b) {
        this.row = row;
        this.shown = shown;
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

        private ReasonShown.Input input(Comparison.Row row, ComparedShown shown, Optional<Double> value) {
            return new ReasonShown.Input(
                    letter,
                    WhyUnits.with(shown.value(row, value.orElse(0.0)), shown.unit(row)),
                    name,
                    "",
                    Why.of(asked.sheet()).ofComparison(row.path()).map(asked.why()),
                    List.of());
        }
    }

    /** The reason; empty where one of the two has no such figure. */
    Optional<ReasonShown> reason() {
        return shown.change(row).map(this::reason);
    }

    private ReasonShown reason(String change) {
        String by = WhyUnits.with(change, shown.unit(row));
        return new ReasonShown(
                row.label() + ": the change",
                Optional.of(by),
                row.path(),
                "What B has more than A, or less, both rounded as they are shown.",
                List.of(new ReasonShown.Step("", "B − A", by, "")),
                List.of(),
                List.of(a.input(row, shown, row.a()), b.input(row, shown, row.b())),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }
}
