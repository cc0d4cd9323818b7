package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.Picture;
import lyewright.picture.SuperfatPicture;
import lyewright.words.Figures;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;
import lyewright.words.UnitsShown;
import lyewright.words.WeighPlan;
import lyewright.words.WeighVessel;

/**
 * What a notebook's recipe comes to.
 *
 * @param superfat in one sentence
 * @param alkali what it takes, where the recipe asks for a superfat
 * @param howSure the superfat as a band
 * @param takes how much of it the mould takes, or what it makes as it stands
 * @param hasMould whether a mould is said
 * @param intoTheMould what to weigh it for
 * @param bars what comes out, where that is known
 * @param vessels what to weigh, in order
 * @param stopped whether it is not to be made as it stands
 * @param cautions of level care or graver
 */
public record NotebookResult(
        String superfat,
        Optional<String> alkali,
        Picture howSure,
        String takes,
        boolean hasMould,
        String intoTheMould,
        Optional<String> bars,
        List<WeighVessel> vessels,
        boolean stopped,
        List<Caution> cautions) {

    private static final double MILLILITRES = 1000;

    /** Copies its lists. */
    public NotebookResult {
        vessels = List.copyOf(vessels);
        cautions = List.copyOf(cautions);
    }

    /**
     * Of two sheets.
     *
     * @param paper of the recipe as it stands
     * @param asked the mould, if one is said
     * @param filled the sheet for that mould
     * @param units that masses are said in
     */
    static NotebookResult of(
            MakingSheet paper, Optional<AskedMould> asked, Optional<MakingSheet> filled, UnitsShown units) {
        MakingSheet sheet = filled.orElse(paper);
        SheetCautions cautions = SheetCautions.of(sheet);
        return new NotebookResult(
                SuperfatSaid.of(paper),
                SuperfatSaid.alkali(paper),
                SuperfatPicture.of(paper),
                takes(paper, asked, filled, units),
                filled.isPresent(),
                intoTheMould(sheet, units),
                SheetHead.of(sheet, units).bars(),
                WeighPlan.of(sheet, units).vessels(),
                cautions.stopped(),
                cautions.face().stream()
                        .filter(caution -> !SheetCautions.isNote(caution))
                        .toList());
    }

    private static String takes(
            MakingSheet paper, Optional<AskedMould> asked, Optional<MakingSheet> filled, UnitsShown units) {
        boolean inMasses = paper.formula().writtenOilsGrams().isPresent();
        if (asked.isEmpty() || filled.isEmpty()) {
            return inMasses
                    ? "As it stands it makes " + units.about(paper.totals().mould()) + " of batter, "
                            + Figures.fixed(paper.totals().mould() / paper.batterDensity() / MILLILITRES, 2)
                            + " litres."
                    : "It does not say how much it makes.";
        }
        String takes = asked.get().takes();
        return inMasses
                ? takes + " "
                        + times(filled.get().filled().oilsGrams()
                                / paper.filled().oilsGrams()) + " of it."
                : takes + " " + units.about(filled.get().totals().mould()) + " of it.";
    }

    private static String times(double ratio) {
        return Figures.fixed(ratio, ratio < 0.95 ? 2 : ratio < 9.95 ? 1 : 0);
    }

    private static String intoTheMould(MakingSheet sheet, UnitsShown units) {
        String mould = units.about(sheet.totals().mould()) + " into the mould";
        double stays = sheet.totals().batch() - sheet.totals().mould();
        return stays >= 0.05 ? mould + "; " + units.about(stays) + " more stays in jugs and tools." : mould + ".";
    }
}
