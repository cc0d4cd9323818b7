package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.FadePicture;
import lyewright.picture.MouldPicture;
import lyewright.picture.Picture;
import lyewright.picture.PortionsPicture;
import lyewright.picture.SuperfatPicture;
import lyewright.records.setting.Workshop;
import lyewright.web.Piece;
import lyewright.web.WorkshopUnits;
import lyewright.words.BandWords;
import lyewright.words.ChemistryWords;
import lyewright.words.Labelled;
import lyewright.words.RoomLeft;
import lyewright.words.Safety;
import lyewright.words.Sentences;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;
import lyewright.words.UnitsShown;
import lyewright.words.WeighPlan;

/**
 * A sheet as it stands on the page.
 *
 * @param head what it makes
 * @param lines the same in lines, its figures leading to their reasons
 * @param howSure how sure the superfat is, likewise
 * @param cautions in the order in which they are told
 * @param vessels what is weighed
 * @param portions whether some of it is for one portion only
 * @param taring how to tare, and which way to err
 * @param balances which are meant
 * @param room vessels that must not be heavy
 * @param safety the cautions that are on every sheet
 * @param steps of making
 * @param chemistry why it asks for what it asks
 * @param band how sure the superfat is
 * @param mould the mould and its cut, where its measures are known
 * @param batter how the batter is shared out and poured
 * @param edition of the tables
 */
public record SheetShown(
        SheetHead head,
        List<LineShown> lines,
        List<Piece> howSure,
        SheetCautions cautions,
        List<VesselShown> vessels,
        boolean portions,
        String taring,
        String balances,
        List<RoomLeft> room,
        List<Labelled> safety,
        List<StepShown> steps,
        List<LineShown> chemistry,
        Picture band,
        Optional<Picture> mould,
        List<Picture> batter,
        String edition) {

    private static final String HOW_SURE = "How sure";

    /** Copies its lists. */
    public SheetShown {
        lines = List.copyOf(lines);
        howSure = List.copyOf(howSure);
        vessels = List.copyOf(vessels);
        room = List.copyOf(room);
        safety = List.copyOf(safety);
        steps = List.copyOf(steps);
        chemistry = List.copyOf(chemistry);
        batter = List.copyOf(batter);
    }

    static SheetShown of(MakingSheet sheet, MakeChoice choice, Workshop workshop) {
        UnitsShown units = WorkshopUnits.of(workshop);
        FigureLinks links = new FigureLinks(choice::why);
        SheetFigures figures = new SheetFigures(sheet);
        SheetHead head = SheetHead.of(sheet, units);
        WeighPlan plan = WeighPlan.of(sheet, units);
        return new SheetShown(
                head,
                head.lines().stream()
                        .filter(line -> !line.label().equals(HOW_SURE))
                        .map(line ->
                                new LineShown(line.label(), links.sentence(line.text(), figures.head(line.label()))))
                        .toList(),
                links.sentence(head.howSure(), figures.head(HOW_SURE)),
                SheetCautions.of(sheet, units),
                plan.vessels().stream()
                        .map(vessel -> VesselShown.of(vessel, links))
                        .toList(),
                plan.portions(),
                plan.taring(),
                plan.balances(),
                plan.room(),
                Safety.LINES,
                StepsShown.of(sheet, units, links),
                chemistry(sheet, units, links, figures),
                SuperfatPicture.of(sheet),
                MouldPicture.of(sheet, WorkshopUnits.lengths(workshop.units())),
                Stream.of(PortionsPicture.of(sheet, units.mass()), FadePicture.of(sheet, units.mass()))
                        .flatMap(Optional::stream)
                        .toList(),
                sheet.formula().tables().edition());
    }

    private static List<LineShown> chemistry(
            MakingSheet sheet, UnitsShown units, FigureLinks links, SheetFigures figures) {
        BandWords band = new BandWords(sheet.band());
        List<LineShown> lines = new ArrayList<>();
        Labelled superfat = ChemistryWords.superfat(sheet);
        lines.add(new LineShown(superfat.label(), links.sentence(superfat.text(), figures.chemistry("Superfat"))));
        lines.add(new LineShown("How far off", links.sentence(Sentences.whole(band.inNumbers()), figures.howFarOff())));
        band.hangsOn()
                .ifPresent(text -> lines.add(new LineShown("It hangs on", links.sentence(text, figures.hangsOn()))));
        band.takenAsExact().ifPresent(text -> lines.add(new LineShown("Taken as exact", List.of(Piece.plain(text)))));
        band.certificate()
                .ifPresent(
                        text -> lines.add(new LineShown("A certificate", links.sentence(text, figures.certificate()))));
        for (Labelled line : ChemistryWords.of(sheet, units)) {
            lines.add(new LineShown(line.label(), links.sentence(line.text(), figures.chemistry(line.label()))));
        }
        return lines;
    }
}
