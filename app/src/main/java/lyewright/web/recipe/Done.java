package lyewright.web.recipe;

import java.util.Optional;
import lyewright.web.Answers;
import org.jspecify.annotations.Nullable;

/** What has just been done to a recipe, as the address of its page says it after a write. */
enum Done {
    NEW("new", "%s is a new recipe: there was none of its name."),
    NEXT("next", "The file is kept as version %2$d of %1$s; the versions before it stay as they were."),
    KEPT("kept", "Nothing was written: version %2$d of %1$s holds just this already."),
    COPIED("copied", "This is the copy. Give it a name of its own in the editor."),
    SAVED(Answers.SAVED, "%1$s is saved, as version %2$d."),
    BACK("back", "%s is back."),
    AGAIN("again", "The old version is the newest again, as version %2$d; all others stay."),
    TAKEN("own-figures", "Version %2$d of %1$s has the workshop's own figures now."),
    NOTEBOOK("notebook", "Kept."),
    PHOTOGRAPH("photograph", "The photograph is kept."),
    NO_PHOTOGRAPH("no-photograph", "The photograph was taken off. Give it again to have it back.");

    private final String word;
    private final String sentence;

    Done(String word, String sentence) {
        this.word = word;
        this.sentence = sentence;
    }

    boolean is(@Nullable String asked) {
        return word.equals(asked);
    }

    String address(String recipeId) {
        return "/recipes/" + recipeId + "?done=" + word;
    }

    /** The sentence of a word; none for a word that somebody made up. */
    static Optional<String> sentence(String word, String name, int number) {
        for (Done done : values()) {
            if (done.word.equals(word)) {
                return Optional.of(String.format(done.sentence, name, number));
            }
        }
        return Optional.empty();
    }
}
