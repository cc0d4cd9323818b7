package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.Picture;
import lyewright.picture.SuperfatPicture;
import lyewright.web.Piece;
import lyewright.web.make.FigureLinks;
import lyewright.web.make.Known;
import lyewright.web.make.SheetFigures;
import lyewright.words.Figures;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;
import lyewright.words.UnitsShown;
import lyewright.words.WeighPlan;
import lyewright.words.WeighRow;
import lyewright.words.WeighVessel;

/**
 * What a notebook's recipe comes to.
 *
 * @param superfat in one sentence
 * @param alkali what it takes, where the recipe asks for a superfat; else empty
 * @param howSure the superfat as a band
 * @param takes how much of it the mould takes, or what it makes as it stands
 * @param hasMould whether a mould is said
 * @param intoTheMould what to weigh it for
 * @param bars what comes out; empty where that is not known
 * @param vessels what to weigh, in order
 * @param stopped whether it is not to be made as it stands
 * @param cautions of level care or graver, and that of milk in the lye
 */
public record NotebookResult(
        List<Piece> superfat,
        List<Piece> alkali,
        Picture howSure,
        List<Piece> takes,
        boolean hasMould,
        List<Piece> intoTheMould,
        List<Piece> bars,
        List<WeighVessel> vessels,
        boolean stopped,
        List<Caution> cautions) {

    static final String WHY = "/notebook/why";

    private static final double MILLILITRES = 1000;
    private static final String MILK_IN_LYE = "milk-cold";

    /** What is typed has no address: a figure's path goes with all of it. */
    private static final FigureLinks LINKS = new FigureLinks(UnaryOperator.identity());

    /** Copies its lists. */
    public NotebookResult {
        superfat = List.copyOf(superfat);
        alkali = List.copyOf(alkali);
        takes = List.copyOf(takes);
        intoTheMould = List.copyOf(intoTheMould);
        bars = List.copyOf(bars);
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
        UnitsShown units = bench.units();
        MakingSheet sheet = filled.orElse(paper);
        SheetCautions cautions = SheetCautions.of(sheet, units);
        SheetFigures figures = new SheetFigures(sheet);
        return new NotebookResult(
                LINKS.sentence(
                        SuperfatSaid.of(paper),
                        List.of(Known.percent("superfat.sheetPercent", paper.sheetSuperfatPercent()))),
                SuperfatSaid.alkali(paper, units)
                        .map(text -> alkali(text, paper))
                        .orElse(List.of()),
                SuperfatPicture.of(paper),
                LINKS.sentence(
                        takes(paper, asked, filled, units),
                        List.of(mould(sheet), new Known("sums.litres", litres(sheet), "litres"))),
                filled.isPresent(),
                LINKS.sentence(intoTheMould(sheet, units), List.of(mould(sheet), figures.heldBack())),
                SheetHead.of(sheet, units)
                        .bars()
                        .map(text -> LINKS.sentence(text + ".", figures.bars()))
                        .orElse(List.of()),
                WeighPlan.of(sheet, units).vessels(),
                cautions.stopped(),
                told(sheet, cautions));
    }

    private static List<Piece> alkali(String text, MakingSheet paper) {
        return LINKS.sentence(
                text,
                List.of(
                        Known.grams("alkali.naohGrams", paper.lye().naohGrams()),
                        Known.grams("alkali.kohGrams", paper.lye().kohGrams())));
    }

    private static Known mould(MakingSheet sheet) {
        return Known.grams("totals.mouldGrams", sheet.totals().mould());
    }

    private static double litres(MakingSheet sheet) {
        return sheet.totals().mould() / sheet.batterDensity() / MILLILITRES;
    }

    /** Where the figures on paper say why: asked with all that is typed. */
    public String whyOnPaper() {
        return WHY;
    }

    /** The same of what to weigh, which is for the mould where one is said. */
    public String why() {
        return hasMould ? WHY + "?of=mould" : WHY;
    }

    /** A mass to weigh. */
    public static List<Piece> weigh(WeighRow row) {
        return List.of(LINKS.figure(row.weigh().text(), row.path() + ".weighGrams"));
    }

    /** Notes stay on the full sheet, but for the one that belongs to a choice that is made here. */
    private static List<Caution> told(MakingSheet sheet, SheetCautions cautions) {
        return Stream.concat(
                        cautions.face().stream().filter(caution -> !SheetCautions.isNote(caution)),
                        sheet.cautions().stream().filter(caution -> caution.id().equals(MILK_IN_LYE)))
                .toList();
    }

    private static String takes(
            MakingSheet paper, Optional<AskedMould> asked, Optional<MakingSheet> filled, UnitsShown units) {
        boolean inMasses = paper.formula().writtenOilsGrams().isPresent();
        if (asked.isEmpty() || filled.isEmpty()) {
            return inMasses
                    ? "As it stands it makes " + units.about(paper.totals().mould()) + " of batter, "
                            + Figures.fixed(litres(paper), 2)
                            + " litres."
                    : "It does not say how much it makes.";
        }
        String mass = units.about(filled.get().totals().mould());
        return inMasses
                ? Takes.times(
                        asked.get().called(),
                        filled.get().filled().oilsGrams() / paper.filled().oilsGrams(),
                        mass)
                : Takes.ofShares(asked.get().called(), mass);
    }

    private static String intoTheMould(MakingSheet sheet, UnitsShown units) {
        String mould = units.about(sheet.totals().mould()) + " into the mould";
        double stays = sheet.totals().batch() - sheet.totals().mould();
        return stays >= 0.05 ? mould + "; " + units.about(stays) + " more stays in jugs and tools." : mould + ".";
    }
}
