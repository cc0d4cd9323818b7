package lyewright.web.recipe;

import java.util.Optional;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Drafts;
import lyewright.records.recipe.Kept;

/**
 * Keeps what is typed. A window that finds its own earlier keystroke goes on from there; one that finds another window's does not
 * write over it, but is told.
 */
final class DraftKeeper {

    /** One window has a keystroke and a button under way at most; more than that is another window's doing. */
    private static final int TRIES = 5;

    private final Drafts drafts;
    private final Optional<String> recipeId;

    DraftKeeper(Drafts drafts, Optional<String> recipeId) {
        this.drafts = drafts;
        this.recipeId = recipeId;
    }

    /** What became of what was typed. */
    sealed interface Result {

        /** It is kept. */
        record Done(Typed typed) implements Result {}

        /** Another window changed the draft; nothing was written. */
        record Others(Draft theirs) implements Result {}

        /** Another window saved the draft or threw it away; nothing was written. */
        record Gone() implements Result {}

        /** It is more than a draft holds. */
        record TooLong() implements Result {}
    }

    Result keep(Typed typed) {
        String form = typed.drafted().write();
        if (form.length() > Drafts.LONGEST_FORM) {
            return new Result.TooLong();
        }
        if (!typed.draftId().isEmpty()) {
            return keep(typed, typed.draftId(), typed.revision(), form);
        }
        Draft draft = drafts.create(recipeId, typed.basedOn(), form);
        return draft.form().equals(form)
                ? new Result.Done(typed.keptAs(draft.id(), draft.revision()))
                : goOn(typed, draft, form);
    }

    private Result keep(Typed typed, String id, int revision, String form) {
        Kept kept = drafts.keep(id, revision, form);
        for (int i = 0; i < TRIES && kept instanceof Kept.Conflict conflict; i++) {
            if (!isOwn(typed, conflict.theirs())) {
                return new Result.Others(conflict.theirs());
            }
            if (isNewer(typed, conflict.theirs())) {
                return new Result.Done(typed.keptAs(id, conflict.theirs().revision()));
            }
            kept = drafts.keep(id, conflict.theirs().revision(), form);
        }
        if (kept instanceof Kept.Saved saved) {
            return new Result.Done(typed.keptAs(id, saved.revision()));
        }
        return kept instanceof Kept.Conflict conflict ? new Result.Others(conflict.theirs()) : new Result.Gone();
    }

    /** A draft is there already, though the page knew of none. */
    private Result goOn(Typed typed, Draft draft, String form) {
        return isOwn(typed, draft) ? keep(typed, draft.id(), draft.revision(), form) : new Result.Others(draft);
    }

    private static boolean isOwn(Typed typed, Draft kept) {
        return Drafted.read(kept.form())
                .filter(theirs -> !theirs.window().isEmpty()
                        && theirs.window().equals(typed.drafted().window()))
                .isPresent();
    }

    /** Whether a later keystroke of the same window came before this one. */
    private static boolean isNewer(Typed typed, Draft kept) {
        return Drafted.read(kept.form())
                .filter(theirs -> theirs.serial() > typed.drafted().serial())
                .isPresent();
    }

    /** Writes over whatever another window kept. */
    Result keepOver(Typed typed) {
        Optional<Draft> theirs =
                typed.draftId().isEmpty() ? recipeId.flatMap(drafts::forRecipe) : drafts.find(typed.draftId());
        return theirs.isPresent()
                ? keep(
                        typed,
                        theirs.get().id(),
                        theirs.get().revision(),
                        typed.drafted().write())
                : keep(typed.keptAs("", 0));
    }
}
