package lyewright.web.stores;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import lyewright.web.Notice;

/** What was just done to a thing, told once on the page of all, with the way back. */
enum Deed {
    ADDED("was added.", "Take it out again", "remove"),
    CHANGED("was changed.", "Undo the change", "undo"),
    REMOVED("was removed.", "Put it back", "put-back"),
    BACK("is back where it was.", "", ""),
    UNDONE("is as it was before.", "", "");

    private final String words;
    private final String wayBack;
    private final String step;

    Deed(String words, String wayBack, String step) {
        this.words = words;
        this.wayBack = wayBack;
        this.step = step;
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Deed> of(String word) {
        return Arrays.stream(values()).filter(deed -> deed.word().equals(word)).findFirst();
    }

    /** Whether the thing is in the list after it. */
    boolean leavesItThere() {
        return this != REMOVED;
    }

    /** The page of all, telling of it. */
    String address(Thing thing, String id) {
        return "/stores?done=" + word() + "&what=" + thing.word() + "&id=" + id + "#" + thing.many();
    }

    Notice notice(Thing thing, String id, String name) {
        String sentence = name + " " + words;
        return wayBack.isEmpty()
                ? Notice.of(sentence)
                : Notice.withUndo(sentence, wayBack, thing.address() + "/" + id + "/" + step);
    }
}
