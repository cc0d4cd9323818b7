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
import lyewright.web.Piece;
import lyewright.why.Why;
import lyewright.words.CompareWords;
import lyewright.words.Figures;

/** A comparison as the rows of a page. */
final class CompareTold {

    private static final String NOTHING = "–";

    private final Comparison comparison;
    private final CompareWords words;
    private final Addresses addresses;

    /** Where a row's figures say why. */
    interface Addresses {

        /** Why a figure of the first or of the second is what it is. */
        String side(boolean first, String figure);

        /** Why a row changes as it does. */
        String change(String row);
    }

    CompareTold(Comparison comparison, Addresses addresses) {
        this.comparison = comparison;
        this.addresses = addresses;
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
        Why a = Why.of(comparison.a());
        Why b = Why.of(comparison.b());
        return Arrays.stream(Comparison.Group.values())
                .map(group -> new ComparePage.Group(
                        title(group),
                        comparison.of(group).stream()
                                .filter(Comparison.Row::differs)
                                .map(row -> row(row, a, b))
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

    private ComparePage.Row row(Comparison.Row row, Why a, Why b) {
        return new ComparePage.Row(
                row.label(),
                row.unit(),
                side(row, row.a(), true, a),
                side(row, row.b(), false, b),
                row.shownDifference()
                        .map(change -> new Piece(signed(change), addresses.change(row.path())))
                        .orElse(Piece.plain(NOTHING)));
    }

    /** Nothing of what only the other has is no figure. */
    private Piece side(Comparison.Row row, Optional<Double> value, boolean first, Why why) {
        Optional<String> figure = value.flatMap(known -> why.ofComparison(row.path()));
        return figure.map(path ->
                        new Piece(Figures.fixed(value.orElseThrow(), row.decimals()), addresses.side(first, path)))
                .orElse(Piece.plain(NOTHING));
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
