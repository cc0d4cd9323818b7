package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.CautionChange;
import lyewright.makingsheet.CautionChange.Change;
import lyewright.makingsheet.Comparison;
import lyewright.measure.Outcome;
import lyewright.web.Piece;
import lyewright.why.Reason;
import lyewright.why.Why;
import lyewright.words.CompareWords;
import lyewright.words.ComparedShown;
import lyewright.words.MaterialChangeWords;
import lyewright.words.UnitsShown;

/** A comparison as the rows of a page. */
final class CompareTold {

    private static final String NOTHING = "–";

    private final Comparison comparison;
    private final CompareWords words;
    private final Addresses addresses;
    private final ComparedShown shown;
    private final UnitsShown units;

    /** Where a row's figures say why. */
    interface Addresses {

        /** Why a figure of the first or of the second is what it is. */
        String side(boolean first, String figure);

        /** Why a row changes as it does. */
        String change(String row);
    }

    CompareTold(Comparison comparison, Addresses addresses, UnitsShown units) {
        this.comparison = comparison;
        this.addresses = addresses;
        this.words = CompareWords.asWeighed(comparison, units);
        this.shown = new ComparedShown(units);
        this.units = units;
    }

    List<String> summary() {
        List<String> summary = new ArrayList<>(comparison.differs() ? words.summary() : List.of(words.nothing()));
        if (!comparison.premixes().isEmpty()) {
            summary.add(
                    "Of a premix each oil counts with the others: " + String.join(", ", comparison.premixes()) + ".");
        }
        return summary;
    }

    /** Whose figures the same materials have, which no formula's lines tell. */
    List<String> materials() {
        return comparison.materials().stream()
                .map(change -> MaterialChangeWords.fromTo(change) + ".")
                .toList();
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
                        words.shown(group).stream()
                                .filter(Comparison.Row::differs)
                                .map(row -> row(row, a, b))
                                .toList()))
                .filter(group -> !group.rows().isEmpty())
                .toList();
    }

    private static String title(Comparison.Group group) {
        return switch (group) {
            case OILS -> "Shares of the oils, since the one makes more than the other";
            case ADDITIONS -> "Additions for as much of the oils, before weights are rounded";
            case ALKALI_AND_WATER -> "Alkali and water for as much of the oils, before weights are rounded";
            case SUPERFAT_AND_LYE -> "Superfat and lye";
            case FATTY_ACIDS -> "Fatty acids";
            case OIL_VALUES -> "What the oils take";
            case KEEPING -> "Keeping: more is sooner rancid; antioxidants, light, warmth and metals are not in it";
            case CURED_BAR -> "The cured bar";
            case BATCH -> "What comes out";
        };
    }

    private ComparePage.Row row(Comparison.Row row, Why a, Why b) {
        return new ComparePage.Row(
                row.label(),
                shown.unit(row),
                isIndex(row) ? sentence(row, a, b) : "",
                side(row, row.a(), true, a),
                side(row, row.b(), false, b),
                shown.change(row)
                        .map(change -> new Piece(change, addresses.change(row.path())))
                        .orElse(Piece.plain(NOTHING)));
    }

    /** Nothing of what only the other has is no figure. */
    private Piece side(Comparison.Row row, Optional<Double> value, boolean first, Why why) {
        Optional<String> figure = value.flatMap(known -> why.ofComparison(row.path()));
        return figure.map(path -> new Piece(shown.value(row, value.orElseThrow()), addresses.side(first, path)))
                .orElse(Piece.plain(NOTHING));
    }

    /** Few know what it counts. */
    private static boolean isIndex(Comparison.Row row) {
        return row.group() == Comparison.Group.KEEPING && !row.path().equals("keeping.iodineValue");
    }

    /** What it stands for, as its why says. */
    private static String sentence(Comparison.Row row, Why a, Why b) {
        Why why = row.a().isPresent() ? a : b;
        return why.ofComparison(row.path())
                .flatMap(path -> why.reason(path) instanceof Outcome.Ok<Reason> known
                        ? Optional.of(known.value().sentence())
                        : Optional.empty())
                .orElse("");
    }

    /** Notes that stay are not told: they are on either's page. */
    List<ComparePage.CautionLine> cautions() {
        return comparison.cautions().stream()
                .filter(change ->
                        change.change() != Change.STAYS || change.caution().level() != Caution.Level.NOTE)
                .map(this::line)
                .toList();
    }

    private ComparePage.CautionLine line(CautionChange change) {
        Caution caution = units.told(change.caution());
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
