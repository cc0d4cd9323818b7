package lyewright.records.recipe;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lyewright.formula.Formula;
import lyewright.formula.FormulaRules;
import lyewright.formula.NameRules;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Deed;
import lyewright.records.people.Signed;
import lyewright.records.store.Database;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/**
 * The recipes and their versions. A recipe's name is the name in its newest version. Two recipes may have the same name, as two
 * jars may have the same label: lists say so, and tell them apart by when they were first saved.
 *
 * <p>A version may be saved over until a batch is made from it; from then on it is never altered, and saving makes the next.
 */
public final class RecipeBook {

    private static final int LONGEST_WHY = 2000;

    private static final Deed KEPT = Deed.kept(Deed.Thing.RECIPE);

    private final Database database;

    /** The recipes of a database; the records open it. */
    public RecipeBook(Database database) {
        this.database = database;
    }

    // Reading

    /** Recipes by name, those deleted apart. */
    public Page<RecipeSummary> list(Search search) {
        return database.read(handle -> new RecipeRows(handle).list(search));
    }

    /** Recipes with a word in their name, their oils' keys or their notes, the ones changed last first. */
    public List<RecipeSummary> lastChanged(String word, int most) {
        return database.read(handle -> new RecipeRows(handle).lastChanged(word, most));
    }

    /** Recipes that were deleted, the last one first. */
    public Page<DeletedRecipe> deleted(int page, int size) {
        return database.read(handle -> new RecipeRows(handle).deleted(Search.all(page, size)));
    }

    /** A recipe, deleted or not. */
    public Optional<Recipe> find(String id) {
        return database.read(handle -> new RecipeRows(handle).find(id));
    }

    /** What some recipes are called, deleted or not, by their ids; those that are not there are left out. */
    public Map<String, String> names(Collection<String> ids) {
        return ids.isEmpty() ? Map.of() : database.read(handle -> new RecipeRows(handle).names(ids));
    }

    /** One version of a recipe. */
    public Optional<RecipeVersion> version(String recipeId, int number) {
        return database.read(handle -> new RecipeRows(handle).version(recipeId, number));
    }

    /** A recipe's versions, the newest first. */
    public List<VersionHeader> versions(String recipeId) {
        return database.read(handle -> new RecipeRows(handle).versions(recipeId));
    }

    // Writing

    /** Keeps a new recipe as its version 1. */
    public Outcome<RecipeVersion> add(Formula formula) {
        return kept(
                formula,
                () -> Signed.decide(
                        database,
                        KEPT,
                        RecipeBook::version,
                        handle -> writing(handle).add(formula, 1, "")));
    }

    /** Keeps a new recipe as its version 1 and lets go of the draft it was typed in, unless another window was at it. */
    public Outcome<RecipeVersion> add(Formula formula, DraftAt draft) {
        return kept(
                formula,
                () -> Signed.decide(
                        database,
                        KEPT,
                        RecipeBook::version,
                        handle -> DraftRows.settle(handle, draft)
                                .then(settled -> writing(handle).add(formula, 1, ""))));
    }

    /**
     * Saves a recipe. The newest version is written over, unless a batch was made from it or the next is asked for.
     *
     * @param recipeId which recipe
     * @param basedOn the version that was the newest when the change began
     * @param formula what it is to be
     * @param asNext whether to make the next version in any case
     * @param why why, perhaps empty
     * @return the version that holds it, or why not: the recipe is gone, or somebody else saved a newer version
     */
    public Outcome<RecipeVersion> save(String recipeId, int basedOn, Formula formula, boolean asNext, String why) {
        return kept(
                formula,
                why,
                () -> Signed.decide(
                        database,
                        KEPT,
                        RecipeBook::version,
                        handle -> writing(handle).save(recipeId, basedOn, formula, asNext, why)));
    }

    /** Saves a recipe and lets go of the draft it was typed in, unless another window was at it. */
    public Outcome<RecipeVersion> save(
            String recipeId, int basedOn, Formula formula, boolean asNext, String why, DraftAt draft) {
        return kept(
                formula,
                why,
                () -> Signed.decide(
                        database,
                        KEPT,
                        RecipeBook::version,
                        handle -> DraftRows.settle(handle, draft)
                                .then(settled -> writing(handle).save(recipeId, basedOn, formula, asNext, why))));
    }

    /**
     * Takes a formula file in. A recipe of its name gets it as the next version, unless it is kept already: with the same number, or
     * as the newest version but for the number. Nothing is written over. A name that is new makes a new recipe, which keeps the
     * file's number.
     */
    public Outcome<Imported> importFormula(Formula formula) {
        return kept(
                formula,
                () -> Signed.decide(
                        database,
                        KEPT,
                        imported -> version(imported.version()),
                        handle -> writing(handle).importFormula(formula)));
    }

    /** Gives a recipe another name: in its newest version, or in a next one where a batch was made from that. */
    public Outcome<RecipeVersion> rename(String recipeId, String newName) {
        return named(
                newName,
                () -> Signed.decide(
                        database,
                        KEPT,
                        RecipeBook::version,
                        handle -> writing(handle).rename(recipeId, newName)));
    }

    /** Makes a new recipe of another's newest version. */
    public Outcome<RecipeVersion> duplicate(String recipeId, String newName) {
        return named(
                newName,
                () -> Signed.decide(
                        database,
                        KEPT,
                        RecipeBook::version,
                        handle -> writing(handle).duplicate(recipeId, newName)));
    }

    /** Takes a recipe out of the lists. {@link #undelete} brings it back as it was. */
    public Outcome<Recipe> delete(String recipeId) {
        return Signed.decide(
                database,
                Deed.removed(Deed.Thing.RECIPE),
                recipe -> Signed.Subject.of(recipe.id()),
                handle -> writing(handle).delete(recipeId));
    }

    /** Brings a deleted recipe back. */
    public Outcome<Recipe> undelete(String recipeId) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.RECIPE),
                recipe -> Signed.Subject.of(recipe.id()),
                handle -> writing(handle).undelete(recipeId));
    }

    /** Notes that a batch was made from a version: from now on it is never altered. Noting it again changes nothing. */
    public Outcome<RecipeVersion> markMade(String recipeId, int number) {
        return Signed.decide(
                database,
                new Deed(Deed.Thing.RECIPE, Deed.Act.MADE),
                RecipeBook::version,
                handle -> writing(handle).markMade(recipeId, number));
    }

    /** Gives a recipe a photograph that is kept already, or none. */
    public Outcome<Recipe> setPhotograph(String recipeId, Optional<String> hash) {
        return Signed.decide(
                database,
                KEPT,
                recipe -> Signed.Subject.of(recipe.id()),
                handle -> writing(handle).setPhotograph(recipeId, hash));
    }

    private static Signed.Subject version(RecipeVersion version) {
        return new Signed.Subject(version.recipeId(), OptionalInt.of(version.number()));
    }

    private RecipeWriting writing(Handle handle) {
        return new RecipeWriting(handle, database.now(), database::newId);
    }

    private interface Action<T> {
        Outcome<T> act();
    }

    /** A formula that breaks the rules would not read back, and one with a name that nobody sees would not be found again. */
    private static <T> Outcome<T> kept(Formula formula, Action<T> action) {
        List<Problem> problems = new ArrayList<>(FormulaRules.check(formula, Tables.bundled()));
        problems.addAll(NameRules.check(formula));
        return problems.isEmpty() ? action.act() : new Outcome.Refused<>(problems);
    }

    private static <T> Outcome<T> kept(Formula formula, String why, Action<T> action) {
        Optional<Problem> trouble = Typed.text("why", "the reason", why, LONGEST_WHY);
        return trouble.isPresent() ? Outcome.refused(trouble.get()) : kept(formula, action);
    }

    private static <T> Outcome<T> named(String name, Action<T> action) {
        Optional<Problem> trouble = Typed.name("name", "the recipe's name", name);
        return trouble.isPresent() ? Outcome.refused(trouble.get()) : action.act();
    }
}
