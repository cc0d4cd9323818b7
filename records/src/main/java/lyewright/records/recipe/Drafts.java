package lyewright.records.recipe;

import java.util.List;
import java.util.Optional;
import lyewright.records.store.Database;

/**
 * What is being typed, kept with every keystroke's pause: it outlives the browser and the application. A recipe has one draft at
 * most, so that two windows on it see each other.
 */
public final class Drafts {

    /** The longest form that is kept, in UTF-16 units. */
    public static final int LONGEST_FORM = 1_000_000;

    private final Database database;

    /** The drafts of a database; the records open it. */
    public Drafts(Database database) {
        this.database = database;
    }

    /**
     * Begins a draft, or gives the one that the recipe has already.
     *
     * @param recipeId the recipe it will change; empty for a new one
     * @param basedOn the version it begins from; 0 for a new recipe
     * @param form the form
     * @return the draft; a recipe that is not there is the caller's fault
     */
    public Draft create(Optional<String> recipeId, int basedOn, String form) {
        bounded(form);
        return database.write(handle -> DraftRows.create(handle, database.newId(), recipeId, basedOn, form, stamp()));
    }

    /** A recipe's draft. */
    public Optional<Draft> forRecipe(String recipeId) {
        return database.read(handle -> DraftRows.forRecipe(handle, recipeId));
    }

    /** A draft by its id. */
    public Optional<Draft> find(String id) {
        return database.read(handle -> DraftRows.find(handle, id));
    }

    /** Keeps what was typed since, unless another window kept something meanwhile. */
    public Kept keep(String id, int expectedRevision, String form) {
        bounded(form);
        return database.write(handle -> DraftRows.keep(handle, id, expectedRevision, form, stamp()));
    }

    /** Throws a draft away. */
    public void discard(String id) {
        database.write(handle -> DraftRows.discard(handle, id));
    }

    /** Every draft, the one changed last first. */
    public List<Draft> all() {
        return database.read(DraftRows::all);
    }

    /** Drafts of recipes that were never saved, the one changed last first, and no more than so many. */
    public List<Draft> ofNewRecipes(int most) {
        return database.read(handle -> DraftRows.ofNewRecipes(handle, most));
    }

    private DraftRows.Stamp stamp() {
        return new DraftRows.Stamp(database.now(), database.author());
    }

    private static void bounded(String form) {
        if (form.length() > LONGEST_FORM || form.indexOf('\0') >= 0) {
            throw new IllegalArgumentException(
                    "a form of " + form.length() + " characters, or with a NUL, is not kept");
        }
    }
}
