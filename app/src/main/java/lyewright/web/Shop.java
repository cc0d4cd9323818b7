package lyewright.web;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lyewright.measure.Outcome;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import org.jspecify.annotations.Nullable;

/**
 * The workshop that the pages show: the maker's own, or the demo one beside it. Both are kept; only one is shown at a time.
 */
public final class Shop implements AutoCloseable {

    private final Records mine;
    private final Place demoPlace;
    private final Clock clock;

    private volatile @Nullable Records demo;
    private volatile boolean showingDemo;

    private Shop(Records mine, Place demoPlace, Clock clock) {
        this.mine = mine;
        this.demoPlace = demoPlace;
        this.clock = clock;
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
        return Records.open(mine, clock).then(records -> Outcome.ok(new Shop(records, demo, clock)));
    }

    /** What is kept of the workshop that is shown. */
    public Records records() {
        Records shown = showingDemo ? demo : mine;
        return shown == null ? mine : shown;
    }

    /** The clock that dates are taken from. */
    public Clock clock() {
        return clock;
    }

    /** Whether the demo workshop is shown. */
    public boolean showsDemo() {
        return showingDemo;
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
    public synchronized Outcome<Workshop> startMine(Workshop workshop) {
        Outcome<Workshop> kept = mine.settings().save(workshop);
        showingDemo = showingDemo && kept instanceof Outcome.Refused;
        return kept;
    }

    /** Shows the maker's own workshop again. */
    public synchronized void backToMine() {
        showingDemo = false;
    }

    /** Whether the maker's own workshop has been started. */
    public boolean hasMine() {
        return mine.settings().workshop().isPresent();
    }

    /**
     * Shows the demo workshop.
     *
     * @param fill puts its recipes and equipment into it, the first time
     * @return nothing of interest, or why it cannot be shown
     */
    public synchronized Outcome<Records> lookRound(Consumer<Records> fill) {
        Records open = demo;
        if (open == null) {
            Outcome<Records> opened = Records.open(demoPlace, clock);
            if (!(opened instanceof Outcome.Ok<Records> ok)) {
                return opened;
            }
            open = ok.value();
            demo = open;
        }
        if (open.settings().workshop().isEmpty()) {
            fill.accept(open);
        }
        showingDemo = true;
        return Outcome.ok(open);
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
        return new Frame(title, Optional.of(section), name, showingDemo, List.of(), List.of(), List.of());
    }

    @Override
    public synchronized void close() {
        Records open = demo;
        if (open != null) {
            open.close();
        }
        mine.close();
    }
}
