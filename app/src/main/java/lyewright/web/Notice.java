package lyewright.web;

import java.util.Optional;

/**
 * What has just been done, told once at the top of a page, with a way back where there is one.
 *
 * @param sentence what was done
 * @param undo the way back, if there is one
 * @param next where to go on, if that is plain
 */
public record Notice(String sentence, Optional<Undo> undo, Optional<Next> next) {

    /**
     * A way back: a form of one button.
     *
     * @param label what the button says
     * @param address where it posts to
     */
    public record Undo(String label, String address) {}

    /**
     * Where to go on.
     *
     * @param label what the button says
     * @param address where it leads
     */
    public record Next(String label, String address) {}

    /** Only told. */
    public static Notice of(String sentence) {
        return new Notice(sentence, Optional.empty(), Optional.empty());
    }

    /** Told, with where to go on. */
    public static Notice withNext(String sentence, String label, String address) {
        return new Notice(sentence, Optional.empty(), Optional.of(new Next(label, address)));
    }

    /** Told, with a way back. */
    public static Notice withUndo(String sentence, String label, String address) {
        return new Notice(sentence, Optional.of(new Undo(label, address)), Optional.empty());
    }
}
