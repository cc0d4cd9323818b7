package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.Picture;
import lyewright.picture.SuperfatPicture;
import lyewright.words.Figures;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;
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
 * @param cautions of level care or graver, and that of milk in the lye
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
    private static final String MILK_IN_LYE = "milk-cold";

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
     * @param bench whose units it is said in
     */
    static NotebookResult of(MakingSheet paper, Optional<AskedMould> asked, Optional<MakingSheet> filled, Bench bench) {
        MakingSheet sheet = filled.orElse(paper);
        SheetCautions cautions = SheetCautions.of(sheet);
        return new NotebookResult(
                SuperfatSaid.of(paper),
                SuperfatSaid.alkali(paper, bench),
                SuperfatPicture.of(paper),
                takes(paper, asked, filled, bench),
                filled.isPresent(),
                intoTheMould(sheet, bench),
                SheetHead.of(sheet).bars(),
                WeighPlan.of(sheet).vessels(),
                cautions.stopped(),
                told(sheet, cautions));
    }

    /** Notes stay on the full sheet, but for the one that belongs to a choice that is made here. */
    private static List<Caution> told(MakingSheet sheet, SheetCautions cautions) {
        return Stream.concat(
                        cautions.face().stream().filter(caution -> !SheetCautions.isNote(caution)),
                        sheet.cautions().stream().filter(caution -> caution.id().equals(MILK_IN_LYE)))
                .toList();
    }

    private static String takes(
            MakingSheet paper, Optional<AskedMould> asked, Optional<MakingSheet> filled, Bench bench) {
        boolean inMasses = paper.formula().writtenOilsGrams().isPresent();
        if (asked.isEmpty() || filled.isEmpty()) {
            return inMasses
                    ? "As it stands it makes " + bench.about(paper.totals().mould()) + " of batter, "
                            + Figures.fixed(paper.totals().mould() / paper.batterDensity() / MILLILITRES, 2)
                            + " litres."
                    : "It does not say how much it makes.";
        }
        String mass = bench.about(filled.get().totals().mould());
        return inMasses
                ? Takes.times(
                        asked.get().called(),
                        filled.get().filled().oilsGrams() / paper.filled().oilsGrams(),
                        mass)
                : Takes.ofShares(asked.get().called(), mass);
    }

    private static String intoTheMould(MakingSheet sheet, Bench bench) {
        String mould = bench.about(sheet.totals().mould()) + " into the mould";
        double stays = sheet.totals().batch() - sheet.totals().mould();
        return stays >= 0.05 ? mould + "; " + bench.about(stays) + " more stays in jugs and tools." : mould + ".";
    }
}
