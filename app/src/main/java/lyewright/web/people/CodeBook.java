package lyewright.web.people;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import lyewright.records.people.Person;
import lyewright.records.store.Author;

/**
 * The codes that makers show, each for one device of one person. A code lives ten minutes and is good once; five wrong ones, from
 * wherever, end all that are open. They are kept in memory alone: a restart ends them.
 */
final class CodeBook {

    static final Duration LIVES = Duration.ofMinutes(10);

    /** Of a hundred million codes. */
    private static final int MOST_WRONG = 5;

    private static final int CODES = 100_000_000;

    /** Ended ones are remembered, to tell whoever still looks at them, but not without end. */
    private static final int MOST_REMEMBERED = 50;

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Clock clock;
    private final Map<String, Shown> shown = new LinkedHashMap<>();
    private int wrong;

    CodeBook(Clock clock) {
        this.clock = clock;
    }

    /** What became of a code. */
    enum Fate {
        OPEN,
        USED,
        OVER,
        VOID
    }

    /**
     * A code that is shown.
     *
     * @param ref its page's name
     * @param code eight digits
     * @param person whose device it is for
     * @param by the maker who shows it
     * @param until how long it lives
     * @param fate what became of it
     * @param told the device that used it, or where the wrong ones came from
     */
    record Shown(String ref, String code, Person person, Author by, Instant until, Fate fate, String told) {

        private Shown with(Fate next, String about) {
            return new Shown(ref, code, person, by, until, next, about);
        }
    }

    synchronized Shown show(Person person, Author by) {
        String code = String.format(Locale.ROOT, "%08d", RANDOM.nextInt(CODES));
        Shown made = new Shown(
                UUID.randomUUID().toString(), code, person, by, clock.instant().plus(LIVES), Fate.OPEN, "");
        // the maker looks at one page at a time; what they showed before for the same person ends
        shown.replaceAll((ref, one) ->
                one.fate() == Fate.OPEN && one.person().id().equals(person.id()) ? one.with(Fate.OVER, "") : one);
        shown.put(made.ref(), made);
        if (shown.size() > MOST_REMEMBERED) {
            shown.remove(shown.keySet().iterator().next());
        }
        wrong = 0;
        return made;
    }

    synchronized Optional<Shown> look(String ref) {
        endOld();
        return Optional.ofNullable(shown.get(ref));
    }

    /**
     * Uses a code up.
     *
     * @param typed as it was typed
     * @param device what the device is to be called
     * @param from where it was typed
     * @return the code; empty where there is none such
     */
    synchronized Optional<Shown> use(String typed, String device, String from) {
        endOld();
        String digits = typed.replaceAll("[\\s.-]", "");
        Optional<Shown> found = shown.values().stream()
                .filter(one -> one.fate() == Fate.OPEN && one.code().equals(digits))
                .findFirst();
        if (found.isPresent()) {
            wrong = 0;
            shown.put(found.get().ref(), found.get().with(Fate.USED, device));
        } else if (++wrong >= MOST_WRONG) {
            shown.replaceAll((ref, one) -> one.fate() == Fate.OPEN ? one.with(Fate.VOID, from) : one);
        }
        return found;
    }

    /** A code whose device could not be let in after all is open again, unless another was shown for the same person meanwhile. */
    synchronized void giveBack(Shown code) {
        boolean another = shown.values().stream()
                .anyMatch(one -> one.fate() == Fate.OPEN
                        && one.person().id().equals(code.person().id()));
        shown.computeIfPresent(code.ref(), (ref, used) -> another ? used : code);
    }

    private void endOld() {
        Instant now = clock.instant();
        shown.replaceAll(
                (ref, one) -> one.fate() == Fate.OPEN && !now.isBefore(one.until()) ? one.with(Fate.OVER, "") : one);
    }
}
