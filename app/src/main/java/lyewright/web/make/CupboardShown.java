package lyewright.web.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Names;
import lyewright.measure.Problem;
import lyewright.records.stock.StockItem;
import lyewright.stock.Cupboard;
import lyewright.stock.LotFigures;
import lyewright.stock.Variants;
import lyewright.words.GainWords;
import lyewright.words.Labelled;
import lyewright.words.Sentences;
import lyewright.words.UnitsShown;
import lyewright.words.VariantWords;

/**
 * What the cupboard has for a sheet.
 *
 * @param enough whether it has all that the sheet asks for
 * @param says that, or what is short and by how much, in sentences
 * @param troubles why lots that were picked are not taken, in sentences
 * @param alike what is not there, while something that is easily taken for it is, in sentences
 * @param lines what is taken from which lot
 * @param certified what the certificates of these lots do; empty where none has one
 * @param picking how lots are picked by hand; empty where there is nothing to pick
 * @param paper the lots that are taken, as they stand on paper
 * @param taking the form by which all of it is taken, and what was taken before
 */
public record CupboardShown(
        boolean enough,
        List<String> says,
        List<String> troubles,
        List<String> alike,
        List<Line> lines,
        Optional<Certified> certified,
        Optional<Picking> picking,
        List<Labelled> paper,
        Taking taking) {

    /** Each takes as long as drawing the band. */
    private static final int MOST_GAINS = 3;

    /** Copies its lists. */
    public CupboardShown {
        says = List.copyOf(says);
        troubles = List.copyOf(troubles);
        alike = List.copyOf(alike);
        lines = List.copyOf(lines);
        paper = List.copyOf(paper);
    }

    /**
     * The form by which all of it is taken.
     *
     * @param token of the form: of all pages that show the same state of things, one takes; empty where it cannot be taken
     * @param before what was taken before, the newest first
     */
    public record Taking(String token, List<Before> before) {

        /** Copies its list. */
        public Taking {
            before = List.copyOf(before);
        }

        /** The same without the form. */
        Taking shut() {
            return new Taking("", before);
        }

        /** Whether some of it is out still. */
        public boolean isOut() {
            return before.stream().anyMatch(one -> !one.back().isEmpty());
        }
    }

    /**
     * What was taken before.
     *
     * @param says when, by whom and how much, in a sentence
     * @param back where all of it is taken back; empty where it is
     */
    public record Before(String says, String back) {}

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
     * @param several whether there are more than one
     * @param says whose they are, and which lots have none
     * @param address where the sheet is reckoned the other way
     */
    public record Certified(boolean on, boolean several, String says, String address) {}

    /** What the cupboard has for a sheet; nothing to say where it has never held anything that the sheet weighs. */
    static Optional<CupboardShown> of(
            MakingSheet sheet, FromCupboard taken, MakeChoice choice, UnitsShown units, Taking taking) {
        Cupboard cupboard = taken.cupboard();
        LotWords words = new LotWords(units);
        List<Line> lines = cupboard.lines().stream()
                .filter(Cupboard.Line::known)
                .map(line -> line(line, taken, gain(line, sheet, taken), words))
                .toList();
        return lines.isEmpty() && alike(taken).isEmpty()
                ? Optional.empty()
                : Optional.of(new CupboardShown(
                        cupboard.isEnough() && unknown(cupboard).isEmpty(),
                        lines.isEmpty() ? List.of() : says(cupboard, sheet, words),
                        taken.refused().stream().map(Problem::sentence).toList(),
                        alike(taken),
                        lines,
                        certified(taken.figures(), choice),
                        Picking.of(taken, choice, words),
                        words.onPaper(cupboard),
                        TakePages.isTakeable(taken, sheet.stopped()) ? taking : taking.shut()));
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
        return Optional.of(
                new Certified(reckoned.isPresent(), figures.lots().size() > 1, says, "/make?" + other.query()));
    }

    /** Of what is not there, or not enough. */
    private static List<String> alike(FromCupboard taken) {
        return taken.cupboard().lines().stream()
                .filter(line -> !line.known() || line.allocation().shortBy() > 0)
                .flatMap(line -> alike(line.need(), taken.stock()).stream())
                .toList();
    }

    private static Optional<String> alike(Cupboard.Need need, StockLook stock) {
        Variants.Thing wanted = new Variants.Thing(Optional.of(need.key()), need.name(), "", "");
        List<String> others = stock.held().stream()
                .filter(item -> Variants.areConfused(wanted, item.thing()))
                .map(StockItem::name)
                .toList();
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of("There is " + Sentences.row(others) + ", which " + (others.size() == 1 ? "is" : "are")
                        + " not the same as " + Names.inSentence(need.name()) + ".");
    }

    private static List<String> says(Cupboard cupboard, MakingSheet sheet, LotWords words) {
        List<String> says = new ArrayList<>();
        List<String> unknown = unknown(cupboard);
        if (cupboard.isEnough()) {
            says.add(unknown.isEmpty() ? "The cupboard has all of it." : "The cupboard has enough of what it knows.");
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
        if (!unknown.isEmpty()) {
            says.add("It does not know " + Sentences.row(unknown)
                    + ": nothing that recipes call so ever came. See for yourself that there is enough.");
        }
        return says;
    }

    /** What nobody ever received, and of which nobody can say whether it is there. */
    private static List<String> unknown(Cupboard cupboard) {
        return cupboard.lines().stream()
                .filter(line -> !line.known())
                .map(line -> Names.inSentence(line.need().name()))
                .toList();
    }

    /** What certificates of the lots that have none would do for the superfat, for the few oils where it matters. */
    private static Optional<String> gain(Cupboard.Line line, MakingSheet sheet, FromCupboard taken) {
        List<String> lacking = LotWords.without(line, taken.stock().certificates());
        return lacking.isEmpty()
                ? Optional.empty()
                : sheet.band().certificateGains(MOST_GAINS).stream()
                        .filter(gain ->
                                gain.key().equals(line.need().key()) && GainWords.isWorthTelling(sheet.band(), gain))
                        .findFirst()
                        .map(gain -> (lacking.size() == 1
                                        ? "A certificate of lot " + lacking.get(0)
                                        : "Certificates of lots " + Sentences.row(lacking))
                                + " would narrow the superfat " + GainWords.narrowed(sheet.band(), gain) + ".");
    }

    private static Line line(Cupboard.Line line, FromCupboard taken, Optional<String> gain, LotWords words) {
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
                                Optional.ofNullable(taken.stock()
                                                .items()
                                                .get(line.need().key()))
                                        .flatMap(item -> VariantWords.other(item.thing())),
                                LotWords.mixed(line, taken.figures()),
                                LotWords.halfCertified(line, taken.stock().certificates()),
                                gain)
                        .flatMap(Optional::stream)
                        .toList());
    }
}
