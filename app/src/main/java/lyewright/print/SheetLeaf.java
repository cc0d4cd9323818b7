package lyewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.LengthUnit;
import lyewright.picture.Drawing;
import lyewright.picture.FadePicture;
import lyewright.picture.MouldPicture;
import lyewright.picture.Picture;
import lyewright.picture.PortionsPicture;
import lyewright.picture.SuperfatPicture;
import lyewright.words.BandWords;
import lyewright.words.Dates;
import lyewright.words.Labelled;
import lyewright.words.MakingStep;
import lyewright.words.MakingSteps;
import lyewright.words.Safety;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;
import lyewright.words.UnitsShown;
import lyewright.words.WeighPlan;

/**
 * Everything that a printed making sheet shows.
 *
 * @param measures of the paper, as a style sheet writes them
 * @param title the recipe
 * @param running the same, short enough for the head of a page
 * @param version which
 * @param workshop whose, often empty
 * @param mould what it is for, often empty
 * @param printed the day
 * @param stopped whether it is not to be made
 * @param head what it makes
 * @param face cautions on its face, whole
 * @param more all other cautions, whole
 * @param sure a picture of how sure the superfat is
 * @param pictures of the mould, and of portions that are not poured as a fade
 * @param pour a picture of the fade, where there is one
 * @param plan what to weigh
 * @param steps what to do
 * @param surer what the superfat's doubt hangs on
 * @param card for the rack; none for a sheet that is not to be made
 * @param edition of the tables
 * @param lots from which lots it is taken
 * @param lacksLetters whether some letter of it is not in the typeface, and says so
 */
public record SheetLeaf(
        String measures,
        String title,
        String running,
        String version,
        String workshop,
        String mould,
        String printed,
        boolean stopped,
        SheetHead head,
        List<Caution> face,
        List<Caution> more,
        Drawing sure,
        List<Picture> pictures,
        Optional<Drawing> pour,
        WeighPlan plan,
        List<MakingStep> steps,
        List<Labelled> surer,
        Optional<RackCard> card,
        String edition,
        PaperOrder.Lots lots,
        boolean lacksLetters) {

    /** Characters that fit the head of a page. */
    private static final int RUNNING = 60;

    private static final int SAFETY_COLUMNS = 2;

    /** Letters of a step on a line. */
    private static final int STEP_LETTERS = 80;

    /** Lines of steps that surely fit a page of either paper. */
    private static final int PAGE_OF_STEPS = 34;

    private static final String LAYERS = "layer";

    static SheetLeaf of(MakingSheet sheet, PaperOrder order) {
        SheetHead head = SheetHead.of(sheet, order.units());
        List<Caution> face = face(sheet);
        String title = order.title().isBlank() ? head.recipe() : order.title();
        return new SheetLeaf(
                order.size().measures(),
                title,
                running(title),
                order.version().isBlank() ? head.version() : order.version(),
                order.workshop(),
                order.mould(),
                Dates.day(order.printedOn()),
                sheet.stopped(),
                head,
                face.stream().map(order.units()::told).toList(),
                sheet.cautions().stream()
                        .filter(caution -> !face.contains(caution))
                        .map(order.units()::told)
                        .toList(),
                SuperfatPicture.of(sheet).drawing(),
                pictures(sheet, order.units()),
                FadePicture.of(sheet, order.units().mass()).map(Picture::drawing),
                WeighPlan.of(sheet, order.units()),
                MakingSteps.of(sheet, order.units()),
                surer(sheet),
                sheet.stopped() ? Optional.empty() : Optional.of(RackCard.of(sheet)),
                sheet.formula().tables().edition(),
                order.lots(),
                false);
    }

    /** What is only good to know is told further down; of a sheet that is stopped every reason is on its face. */
    private static List<Caution> face(MakingSheet sheet) {
        long stops = sheet.cautions().stream()
                .filter(caution -> caution.level() == Caution.Level.STOP)
                .count();
        return sheet.cautions().stream()
                .limit(Math.max(stops, SheetCautions.of(sheet).face().size()))
                .filter(caution -> !SheetCautions.isNote(caution))
                .toList();
    }

    private static List<Picture> pictures(MakingSheet sheet, UnitsShown units) {
        LengthUnit lengths = units.ounces() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        return Stream.of(
                        MouldPicture.of(sheet, lengths),
                        sheet.fade().isEmpty() ? PortionsPicture.of(sheet, units.mass()) : Optional.<Picture>empty())
                .flatMap(Optional::stream)
                .toList();
    }

    private static String running(String title) {
        return title.codePointCount(0, title.length()) <= RUNNING
                ? title
                : title.substring(0, title.offsetByCodePoints(0, RUNNING)) + "…";
    }

    private static List<Labelled> surer(MakingSheet sheet) {
        BandWords words = new BandWords(sheet.band());
        List<Labelled> lines = new ArrayList<>();
        words.hangsOn().ifPresent(text -> {
            lines.add(new Labelled("How far off", words.inNumbers() + "."));
            lines.add(new Labelled("It hangs on", text + "."));
        });
        words.takenAsExact().ifPresent(text -> lines.add(new Labelled("Taken as exact", text + ".")));
        words.certificate().ifPresent(text -> lines.add(new Labelled("A certificate", text)));
        return lines;
    }

    /** The cautions of every sheet, but for what is said at its foot. */
    public List<Labelled> safety() {
        return Safety.LINES.stream()
                .filter(line -> !line.equals(Safety.SELLING))
                .toList();
    }

    /** What else there is to know, in words for the face: {@code 2 notes}; empty without any. */
    public String moreToKnow() {
        long notes = more.stream().filter(SheetCautions::isNote).count();
        long cautions = more.size() - notes;
        String noted = notes == 0 ? "" : notes == 1 ? "1 note" : notes + " notes";
        String more = cautions == 0 ? "" : cautions == 1 ? "1 more caution" : cautions + " more cautions";
        return more.isEmpty() || noted.isEmpty() ? more + noted : more + " and " + noted;
    }

    /** Whether the title is too long for large letters. */
    public boolean longTitle() {
        return !running.equals(title);
    }

    /** What to put on, which stands where the alkali is weighed too. */
    public Labelled wear() {
        return Safety.LINES.get(0);
    }

    /** Lots in columns. */
    public List<List<Labelled>> lotColumns() {
        return Columns.of(
                lots.taken(),
                SAFETY_COLUMNS,
                line -> line.label().length() + line.text().length());
    }

    /** The same in columns, the longest of them as short as can be. */
    public List<List<Labelled>> safetyColumns() {
        return Columns.of(
                safety(),
                SAFETY_COLUMNS,
                line -> line.label().length() + line.text().length());
    }

    /**
     * Whether the steps stand on one page: wherever they surely fit one, since nobody turns a sheet with wet gloves
     * between one step and the next.
     */
    public boolean stepsTogether() {
        return pour.isEmpty() && steps.stream().mapToInt(SheetLeaf::lines).sum() <= PAGE_OF_STEPS;
    }

    private static int lines(MakingStep step) {
        int rows = step.table().stream()
                .flatMap(table -> table.groups().stream())
                .mapToInt(group -> 1 + group.rows().size())
                .sum();
        return 1 + step.text().length() / STEP_LETTERS + 2 * rows;
    }

    /** What a step that pours layers looks like in the mould. */
    public Optional<Drawing> beside(MakingStep step) {
        return step.table()
                        .filter(table -> table.columns().get(0).title().equals(LAYERS))
                        .isPresent()
                ? pour
                : Optional.empty();
    }

    /** The same, saying that some letters are not in the typeface. */
    SheetLeaf lackingLetters() {
        return new SheetLeaf(
                measures, title, running, version, workshop, mould, printed, stopped, head, face, more, sure, pictures,
                pour, plan, steps, surer, card, edition, lots, true);
    }
}
