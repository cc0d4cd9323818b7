package lyewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.BandWords;
import lyewright.words.Dates;
import lyewright.words.Labelled;
import lyewright.words.MakingStep;
import lyewright.words.MakingSteps;
import lyewright.words.Safety;
import lyewright.words.SheetCautions;
import lyewright.words.SheetHead;
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
 * @param plan what to weigh
 * @param steps what to do
 * @param surer what the superfat's doubt hangs on
 * @param card for the rack; none for a sheet that is not to be made
 * @param edition of the tables
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
        WeighPlan plan,
        List<MakingStep> steps,
        List<Labelled> surer,
        Optional<RackCard> card,
        String edition,
        boolean lacksLetters) {

    /** Characters that fit the head of a page. */
    private static final int RUNNING = 60;

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
                face,
                sheet.cautions().stream().skip(face.size()).toList(),
                WeighPlan.of(sheet, order.units()),
                MakingSteps.of(sheet, order.units()),
                surer(sheet),
                sheet.stopped() ? Optional.empty() : Optional.of(RackCard.of(sheet)),
                sheet.formula().tables().edition(),
                false);
    }

    /** Of a sheet that is stopped every reason is on its face. */
    private static List<Caution> face(MakingSheet sheet) {
        long stops = sheet.cautions().stream()
                .filter(caution -> caution.level() == Caution.Level.STOP)
                .count();
        long shown = Math.max(stops, SheetCautions.of(sheet).face().size());
        return sheet.cautions().stream().limit(shown).toList();
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

    /** Whether the title is too long for large letters. */
    public boolean longTitle() {
        return !running.equals(title);
    }

    /** How many of them fill one of two columns. */
    public int safetyHalf() {
        return (safety().size() + 1) / 2;
    }

    /** The same, saying that some letters are not in the typeface. */
    SheetLeaf lackingLetters() {
        return new SheetLeaf(
                measures, title, running, version, workshop, mould, printed, stopped, head, face, more, plan, steps,
                surer, card, edition, true);
    }
}
