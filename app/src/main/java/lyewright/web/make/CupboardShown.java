package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Problem;
import lyewright.stock.Cupboard;
import lyewright.stock.LotFigures;
import lyewright.words.Labelled;
import lyewright.words.Sentences;
import lyewright.words.UnitsShown;

/**
 * What the cupboard has for a sheet.
 *
 * @param enough whether it has all that it keeps and the sheet asks for
 * @param says that, or what is short and by how much, in sentences
 * @param troubles why lots that were picked are not taken, in sentences
 * @param lines what is taken from which lot
 * @param certified what the certificates of these lots do; empty where none has one
 * @param picking how lots are picked by hand; empty where there is nothing to pick
 * @param paper the lots that are taken, as they stand on paper
 */
public record CupboardShown(
        boolean enough,
        List<String> says,
        List<String> troubles,
        List<Line> lines,
        Optional<Certified> certified,
        Optional<Picking> picking,
        List<Labelled> paper) {

    /** Copies its lists. */
    public CupboardShown {
        says = List.copyOf(says);
        troubles = List.copyOf(troubles);
        lines = List.copyOf(lines);
        paper = List.copyOf(paper);
    }

    /**
     * A material.
     *
     * @param name what it is called
     * @param address its page in the cupboard
     * @param need how much is weighed
     * @param lots from which lots, and what is short
     * @param isShort whether something is
     * @param notes what else is to be said of these lots
     */
    public record Line(String name, String address, String need, String lots, boolean isShort, List<String> notes) {

        /** Copies its list. */
        public Line {
            notes = List.copyOf(notes);
        }
    }

    /**
     * What certificates do.
     *
     * @param on whether they are reckoned with
     * @param says whose they are, and which lots have none
     * @param address where the sheet is reckoned the other way
     */
    public record Certified(boolean on, String says, String address) {}

    /** What the cupboard has for a sheet; nothing to say where it has never held anything that the sheet weighs. */
    static Optional<CupboardShown> of(MakingSheet sheet, FromCupboard taken, MakeChoice choice, UnitsShown units) {
        Cupboard cupboard = taken.cupboard();
        LotWords words = new LotWords(units);
        List<Line> lines = cupboard.lines().stream()
                .filter(Cupboard.Line::known)
                .map(line -> line(line, taken, words))
                .toList();
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new CupboardShown(
                        cupboard.isEnough(),
                        says(cupboard, sheet, words),
                        taken.refused().stream().map(Problem::sentence).toList(),
                        lines,
                        certified(taken.figures(), choice),
                        Picking.of(taken, choice, words),
                        words.onPaper(cupboard)));
    }

    /** Whose certificates a sheet is reckoned with, in a sentence; empty where it is not, or none counts. */
    static Optional<String> reckonedWith(LotFigures figures, MakeChoice choice) {
        return figures.any() && choice.asksForCertificates()
                ? Optional.of(
                        "Reckoned with " + certificates(figures) + ", which the superfat and how sure it is follow.")
                : Optional.empty();
    }

    private static String certificates(LotFigures figures) {
        return (figures.lots().size() == 1 ? "the certificate of lot " : "the certificates of lots ")
                + Sentences.row(figures.lots());
    }

    private static Optional<Certified> certified(LotFigures figures, MakeChoice choice) {
        if (!figures.any()) {
            return Optional.empty();
        }
        Optional<String> reckoned = reckonedWith(figures, choice);
        String says = reckoned.orElseGet(() ->
                Sentences.upperFirst(certificates(figures)) + " would say more exactly" + " what superfat this has.");
        MakeChoice other = reckoned.isPresent()
                ? choice.without(MakeChoice.LOTS)
                : choice.with(MakeChoice.LOTS, MakeChoice.CERTIFICATES);
        return Optional.of(new Certified(reckoned.isPresent(), says, "/make?" + other.query()));
    }

    private static List<String> says(Cupboard cupboard, MakingSheet sheet, LotWords words) {
        List<String> says = new ArrayList<>();
        if (cupboard.isEnough()) {
            says.add("The cupboard has all of it.");
        } else {
            says.add("Short of "
                    + Sentences.row(cupboard.shortages().stream()
                            .map(line -> words.mass(line.allocation().shortBy()) + " of "
                                    + line.need().name())
                            .toList())
                    + ".");
            sheet.bars().ifPresent(bars -> {
                long allowed = cupboard.barsAllowed(bars.count());
                says.add(
                        allowed == 0
                                ? "Not one bar can be made of what there is."
                                : "What there is would do for " + allowed + (allowed == 1 ? " bar" : " bars")
                                        + " of these " + bars.count() + ".");
            });
        }
        return says;
    }

    private static Line line(Cupboard.Line line, FromCupboard taken, LotWords words) {
        String address = Optional.ofNullable(
                        taken.stock().items().get(line.need().key()))
                .map(item -> "/stores/cupboard/" + item.id())
                .orElse("/stores/cupboard");
        return new Line(
                line.need().name(),
                address,
                words.mass(line.need().amount()),
                words.taken(line),
                line.allocation().shortBy() > 0,
                Stream.of(
                                LotWords.mixed(line, taken.figures()),
                                LotWords.halfCertified(line, taken.stock().certificates()))
                        .flatMap(Optional::stream)
                        .toList());
    }
}
