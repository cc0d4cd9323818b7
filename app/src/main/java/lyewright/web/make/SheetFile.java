package lyewright.web.make;

import java.time.Clock;
import java.time.LocalDate;
import lyewright.makingsheet.MakingSheet;
import lyewright.print.PaperOrder;
import lyewright.print.PaperSize;
import lyewright.print.SheetPaper;
import lyewright.records.setting.Paper;
import lyewright.web.FileNames;
import lyewright.web.WorkshopUnits;
import lyewright.web.make.MakeChoice.Much;

/**
 * A sheet as a file to print.
 *
 * @param name a file name that any computer takes
 * @param pdf its bytes
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SheetFile(String name, byte[] pdf) {

    static SheetFile of(Bench bench, MakingSheet sheet, Paper paper, Clock clock) {
        String version = Integer.toString(bench.version().number());
        PaperOrder order = new PaperOrder(
                paper == Paper.A4 ? PaperSize.A4 : PaperSize.LETTER,
                bench.workshop().name(),
                bench.recipe().name(),
                version,
                LocalDate.now(clock),
                WorkshopUnits.of(bench.workshop()),
                mould(bench),
                lots(bench));
        return new SheetFile(
                FileNames.plain(bench.recipe().name(), "sheet") + "-" + version + ".pdf", SheetPaper.pdf(sheet, order));
    }

    private static PaperOrder.Lots lots(Bench bench) {
        LotWords words = new LotWords(WorkshopUnits.of(bench.workshop()));
        return bench.taken()
                .map(taken -> new PaperOrder.Lots(
                        words.onPaper(taken.cupboard()),
                        CupboardShown.reckonedWith(taken.figures(), bench.choice())
                                .orElse("")))
                .orElse(PaperOrder.Lots.NONE);
    }

    private static String mould(Bench bench) {
        MakeChoice choice = bench.choice();
        String mould = bench.mould().map(kept -> kept.name()).orElse(choice.text(MakeChoice.INSIDE));
        String much = choice.much()
                .map(way -> way.needsAmount() ? choice.text(MakeChoice.AMOUNT) + said(way) : "")
                .orElse("");
        return mould.isEmpty() || much.isEmpty() ? mould + much : mould + ", " + much;
    }

    private static String said(Much way) {
        return switch (way) {
            case OILS -> " of oils";
            case CURED -> ", as cured";
            case BARS -> ", as cut";
            default -> "";
        };
    }
}
