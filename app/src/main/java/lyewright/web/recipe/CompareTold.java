package lyewright.web.recipe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.CautionChange;
import lyewright.makingsheet.CautionChange.Change;
import lyewright.makingsheet.Comparison;
import lyewright.words.CompareWords;
import lyewright.words.Figures;

/** A comparison as the rows of a page. */
final class CompareTold {

    private final Comparison comparison;
    private final CompareWords words;

    CompareTold(Comparison comparison) {
        this.comparison = comparison;
        this.words = new CompareWords(comparison);
    }

    List<String> summary() {
        List<String> summary = new ArrayList<>(comparison.differs() ? words.summary() : List.of(words.nothing()));
        if (!comparison.premixes().isEmpty()) {
            summary.add(
                    "Of a premix each oil counts with the others: " + String.join(", ", comparison.premixes()) + ".");
        }
        return summary;
    }

    Optional<String> same() {
        return comparison.differs() ? words.same() : Optional.empty();
    }

    List<ComparePage.Group> groups() {
        return Arrays.stream(Comparison.Group.values())
                .map(group -> new ComparePage.Group(
                        title(group),
                        comparison.of(group).stream()
                                .filter(Comparison.Row::differs)
                                .map(CompareTold::row)
                                .toList()))
                .filter(group -> !group.rows().isEmpty())
                .toList();
    }

    private static String title(Comparison.Group group) {
        return switch (group) {
            case OILS -> "Oils";
            case ADDITIONS -> "Additions, for 1 kg of oils";
            case ALKALI_AND_WATER -> "Alkali and water, for 1 kg of oils";
            case SUPERFAT_AND_LYE -> "Superfat and lye";
            case FATTY_ACIDS -> "Fatty acids";
            case OIL_VALUES -> "What the oils take";
            case KEEPING -> "Keeping";
            case CURED_BAR -> "The cured bar";
            case BATCH -> "What comes out";
        };
    }

    private static ComparePage.Row row(Comparison.Row row) {
        return new ComparePage.Row(
                row.label(),
                row.unit(),
                value(row.a(), row.decimals()),
                value(row.b(), row.decimals()),
                row.shownDifference().map(CompareTold::signed).orElse("–"));
    }

    private static String value(Optional<Double> value, int decimals) {
        return value.map(v -> Figures.fixed(v, decimals)).orElse("–");
    }

    private static String signed(BigDecimal change) {
        return (change.signum() > 0 ? "+" : "") + change.toPlainString();
    }

    /** Notes that stay are not told: they are on either's page. */
    List<ComparePage.CautionLine> cautions() {
        return comparison.cautions().stream()
                .filter(change ->
                        change.change() != Change.STAYS || change.caution().level() != Caution.Level.NOTE)
                .map(CompareTold::line)
                .toList();
    }

    private static ComparePage.CautionLine line(CautionChange change) {
        Caution caution = change.caution();
        return new ComparePage.CautionLine(
                verb(change.change()),
                caution.level().word(),
                caution.text(),
                change.change() == Change.GOES ? "" : caution.remedy());
    }

    private static String verb(Change change) {
        return switch (change) {
            case COMES -> "Comes with B";
            case GOES -> "Goes with B";
            case GRAVER -> "Graver in B";
            case MILDER -> "Milder in B";
            case CHANGES -> "Differs";
            case STAYS -> "In both";
        };
    }
}
