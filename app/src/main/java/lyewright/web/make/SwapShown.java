package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.makingsheet.CautionChange;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;
import lyewright.material.Names;
import lyewright.picture.ComparePicture;
import lyewright.picture.Picture;
import lyewright.web.Piece;
import lyewright.why.Why;
import lyewright.words.CompareWords;
import lyewright.words.ComparedShown;
import lyewright.words.UnitsShown;

/**
 * What another oil would do, as it stands on the page.
 *
 * @param out name of the oil that goes
 * @param in name of the oil that comes
 * @param summary in sentences
 * @param superfats how sure both superfats are
 * @param acids both fatty acids
 * @param cautions that come, go or change
 * @param rows every figure that changes
 * @param newest whether the recipe's newest version is shown, which alone can be gone on from
 */
public record SwapShown(
        String out,
        String in,
        List<String> summary,
        Picture superfats,
        Picture acids,
        List<Changed> cautions,
        List<Figure> rows,
        boolean newest) {

    /** Copies its lists. */
    public SwapShown {
        summary = List.copyOf(summary);
        cautions = List.copyOf(cautions);
        rows = List.copyOf(rows);
    }

    /**
     * A caution that is not the same in both.
     *
     * @param how what becomes of it
     * @param level how grave it is
     * @param text what it says
     */
    public record Changed(String how, String level, String text) {}

    /**
     * A figure that changes.
     *
     * @param label what it is called
     * @param unit its unit, or empty
     * @param from as it is
     * @param to as it would be
     * @param by the change, with its sign
     */
    public record Figure(String label, String unit, Piece from, Piece to, Piece by) {}

    static SwapShown of(Swap swap, boolean newest, MakeChoice choice, UnitsShown units) {
        Comparison comparison = swap.comparison();
        ComparedShown shown = new ComparedShown(units);
        CompareWords words = CompareWords.asWeighed(comparison, units);
        Why from = Why.of(comparison.a());
        Why to = Why.of(comparison.b());
        List<Figure> rows = new ArrayList<>();
        for (Group group : List.of(
                Group.ALKALI_AND_WATER,
                Group.SUPERFAT_AND_LYE,
                Group.OIL_VALUES,
                Group.FATTY_ACIDS,
                Group.KEEPING,
                Group.CURED_BAR,
                Group.BATCH)) {
            words.shown(group).stream()
                    .filter(Row::differs)
                    .map(row -> new Figure(
                            row.label(),
                            shown.unit(row),
                            piece(shown, row, row.a(), from, choice::why),
                            piece(shown, row, row.b(), to, choice::whyOfSwap),
                            shown.change(row)
                                    .map(change -> new Piece(change, choice.whyOfChange(row.path())))
                                    .orElse(Piece.plain(""))))
                    .forEach(rows::add);
        }
        return new SwapShown(
                Names.inSentence(swap.out()),
                swap.in(),
                words.summary(),
                ComparePicture.superfats(comparison.a(), "With " + swap.out(), comparison.b(), "With " + swap.in()),
                ComparePicture.fattyAcids(comparison.a(), "With " + swap.out(), comparison.b(), "With " + swap.in()),
                comparison.cautions().stream()
                        .filter(change -> change.change() != CautionChange.Change.STAYS)
                        .map(change -> changed(change, units))
                        .toList(),
                rows,
                newest);
    }

    private static Changed changed(CautionChange change, UnitsShown units) {
        String how = switch (change.change()) {
            case COMES -> "Comes";
            case GOES -> "Goes";
            case GRAVER -> "Graver";
            case MILDER -> "Milder";
            case CHANGES, STAYS -> "Changes";
        };
        return new Changed(
                how,
                change.caution().level().word(),
                units.told(change.caution()).text());
    }

    /** Nothing of what only the other has is no figure. */
    private static Piece piece(
            ComparedShown shown, Row row, Optional<Double> value, Why why, UnaryOperator<String> address) {
        return value.flatMap(known -> why.ofComparison(row.path())
                        .map(path -> new Piece(shown.value(row, known), address.apply(path))))
                .orElse(Piece.plain("none"));
    }
}
