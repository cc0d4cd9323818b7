package lyewright.web;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import lyewright.formula.MaterialNames;
import lyewright.measure.Outcome;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;

/**
 * The workshop that the pages show: the maker's own, or the demo one beside it. Both are kept; only one is shown at a time. Ids
 * are unique over both, so that a page which is still open keeps to the workshop that it is of: see {@link #holding}.
 */
public final class Shop implements AutoCloseable {

    private final Both both;
    private final Optional<Boolean> always;

    private Shop(Both both, Optional<Boolean> always) {
        this.both = both;
        this.always = always;
    }

    /**
     * Opens the maker's own.
     *
     * @param mine where it is kept
     * @param demo where the demo workshop is kept once someone looks round it
     * @param clock tells what time it is, and in which zone dates are written
     * @return the shop, or why it cannot be opened
     */
    public static Outcome<Shop> open(Place mine, Place demo, Clock clock) {
        return Records.open(mine, clock)
                .then(records -> Outcome.ok(new Shop(new Both(records, demo, clock), Optional.empty())));
    }

    /** What is kept of the workshop that is shown; who asks for the page that is being answered signs what is written there. */
    public Records records() {
        return showsDemo() ? kind() : kind().as(Visitor.now().author());
    }

    private Records kind() {
        Records demo = both.demo();
        return showsDemo() && demo != null ? demo : both.mine;
    }

    /** The names that may be typed there. */
    public MaterialNames names() {
        return both.names.of(kind());
    }

    /** The clock that dates are taken from. */
    public Clock clock() {
        return both.clock;
    }

    /** Whether the demo workshop is shown. It is for the desk alone: whoever is let in by another door works in the maker's own. */
    public boolean showsDemo() {
        return both.demo() != null && Visitor.now().isAtDesk() && always.orElseGet(both::showingDemo);
    }

    /** Whether this is the workshop that pages show unless they are of the other. */
    public boolean isShown() {
        return showsDemo() == (both.showingDemo() && Visitor.now().isAtDesk());
    }

    /**
     * One of the two, whichever is shown.
     *
     * @param demo whether it is the demo workshop; the maker's own stands in where nobody ever looked round that
     * @return the shop that shows always that one
     */
    public Shop always(boolean demo) {
        if (demo) {
            both.demoIfThere();
        }
        return new Shop(both, Optional.of(demo));
    }

    /** The same one always, whatever another window does meanwhile. */
    public Shop held() {
        return always(showsDemo());
    }

    /** Whether there are two, so that a form for something new has to say which it is for. */
    boolean hasBoth() {
        return Visitor.now().isAtDesk() && both.demoIfThere() != null;
    }

    /**
     * The workshop that something is in.
     *
     * @param holds whether it is in these records
     * @return the other workshop if it is there and not in the one that is shown; else the one that is shown
     */
    public Shop holding(Predicate<Records> holds) {
        if (holds.test(records())) {
            return this;
        }
        Shop other = always(!showsDemo());
        return other.showsDemo() != showsDemo() && holds.test(other.records()) ? other : this;
    }

    /**
     * The workshop that something is in, whichever is shown.
     *
     * @param holds whether it is in these records
     * @return that one; empty where it is in neither
     */
    public Optional<Shop> found(Predicate<Records> holds) {
        Shop holder = holding(holds);
        return holds.test(holder.records()) ? Optional.of(holder.held()) : Optional.empty();
    }

    /**
     * Why something is not here: it is in the other workshop, or nowhere.
     *
     * @param thing what it is, such as "recipe"
     * @param holds whether it is in these records
     * @param what what is wrong if it is nowhere, a sentence
     * @param remedy what to do then, a sentence
     * @return the refusal
     */
    public Refused notHere(String thing, Predicate<Records> holds, String what, String remedy) {
        Shop holder = holding(holds);
        if (holder.equals(this)) {
            return Refused.notHere(what, remedy);
        }
        String there = holder.called("the demo workshop");
        String here = showsDemo() ? "looking round the demo workshop" : "in " + called("");
        return Refused.elsewhere(
                "This " + thing + " is in " + there + "; you are " + here + ".", there, holder.showsDemo());
    }

    String called(String demo) {
        String name = workshop().name();
        return showsDemo() ? demo : name.isEmpty() ? "your own workshop" : name;
    }

    /** Whether there is a workshop to show: the maker's own has a name, or someone looks round the demo. */
    public boolean started() {
        return kept().isPresent();
    }

    /** Name, units and the like of the workshop that is shown; before the first start the usual ones without a name. */
    public Workshop workshop() {
        return kept().orElseGet(() -> usual("", Units.GRAMS));
    }

    /**
     * A workshop of which no more is known than its name and its units: all else follows from where such units are used.
     *
     * @param name what it is called
     * @param units what it weighs in
     * @return the workshop
     */
    public static Workshop usual(String name, Units units) {
        boolean ounces = units == Units.OUNCES;
        return new Workshop(
                name,
                units,
                ounces ? Degrees.FAHRENHEIT : Degrees.CELSIUS,
                ounces ? "USD" : "GBP",
                ounces ? Market.US : Market.GB,
                ounces ? Paper.LETTER : Paper.A4,
                Optional.empty(),
                Optional.empty(),
                Workshop.USUAL_HOLD_BACK);
    }

    private Optional<Workshop> kept() {
        return records().settings().workshop();
    }

    /**
     * Keeps what the maker's own workshop is set to, and shows it from now on.
     *
     * @param workshop its name and the rest
     * @return the workshop, or why it is not kept; then nothing else is shown than before
     */
    public Outcome<Workshop> startMine(Workshop workshop) {
        return both.startMine(workshop);
    }

    /** Shows the maker's own workshop again. */
    public void backToMine() {
        both.backToMine();
    }

    /** Whether the maker's own workshop has been started. */
    public boolean hasMine() {
        return both.mine.settings().workshop().isPresent();
    }

    /**
     * Shows the demo workshop.
     *
     * @param fill puts its recipes and equipment into it, the first time
     * @return nothing of interest, or why it cannot be shown
     */
    public Outcome<Records> lookRound(Consumer<Records> fill) {
        return both.lookRound(fill);
    }

    /**
     * What stands around a page.
     *
     * @param title of the page
     * @param section which part it belongs to
     * @return the frame
     */
    public Frame frame(String title, Section section) {
        Optional<String> name = kept().map(Workshop::name);
        return new Frame(title, Optional.of(section), name, showsDemo(), List.of(), List.of(), List.of());
    }

    @Override
    public void close() {
        both.close();
    }
}
