package lyewright.web;

import java.time.Clock;
import java.util.function.Consumer;
import lyewright.measure.Outcome;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.setting.Workshop;
import org.jspecify.annotations.Nullable;

/** The two workshops, whichever is shown. Which one is is forgotten when the application ends; what is in them is not. */
final class Both implements AutoCloseable {

    final Records mine;
    final Clock clock;
    final KnownNames names = new KnownNames();

    private final Place demoPlace;

    private volatile @Nullable Records demo;
    private volatile boolean showingDemo;

    Both(Records mine, Place demoPlace, Clock clock) {
        this.mine = mine;
        this.demoPlace = demoPlace;
        this.clock = clock;
    }

    /** The demo workshop as far as it is open; null where nobody looked round it or came back to a page of it since the start. */
    @Nullable
    Records demo() {
        return demo;
    }

    boolean showingDemo() {
        return demo != null && showingDemo;
    }

    /** The demo workshop where somebody looked round it before, perhaps before the application was started; null where not. */
    @Nullable
    Records demoIfThere() {
        Records open = demo;
        if (open != null) {
            return open;
        }
        synchronized (this) {
            return demo != null || !Records.areIn(demoPlace) ? demo : opened(records -> {});
        }
    }

    private @Nullable Records opened(Consumer<Records> fill) {
        return lookedAt(fill) instanceof Outcome.Ok<Records> ok ? ok.value() : null;
    }

    private Outcome<Records> lookedAt(Consumer<Records> fill) {
        Records open = demo;
        Outcome<Records> opened = open != null ? Outcome.ok(open) : Records.open(demoPlace, clock);
        return opened.then(records -> {
            demo = records;
            if (records.settings().workshop().isEmpty()) {
                fill.accept(records);
            }
            return Outcome.ok(records);
        });
    }

    synchronized Outcome<Records> lookRound(Consumer<Records> fill) {
        if (!Visitor.now().isAtDesk()) {
            return Outcome.refused(
                    "it is shown at the computer itself alone",
                    "look round it there; here you are in your own workshop");
        }
        return lookedAt(fill).then(records -> {
            showingDemo = true;
            return Outcome.ok(records);
        });
    }

    synchronized Outcome<Workshop> startMine(Workshop workshop) {
        Outcome<Workshop> kept = mine.as(Visitor.now().author()).settings().save(workshop);
        if (kept instanceof Outcome.Ok) {
            backToMine();
        }
        return kept;
    }

    /** Whoever is at another device is in it already, and what the desk shows is not theirs to say. */
    synchronized void backToMine() {
        showingDemo = showingDemo && !Visitor.now().isAtDesk();
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
