package lyewright.records.recipe;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lyewright.formula.Formula;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.recipe.Imported.What;
import lyewright.records.store.NameOrder;
import org.jdbi.v3.core.Handle;

/** What is done to recipes, within one transaction. */
final class RecipeWriting {

    private final Handle handle;
    private final RecipeRows rows;
    private final long now;
    private final Supplier<String> ids;

    RecipeWriting(Handle handle, long now, Supplier<String> ids) {
        this.handle = handle;
        this.rows = new RecipeRows(handle);
        this.now = now;
        this.ids = ids;
    }

    Outcome<RecipeVersion> add(Formula formula, int number, String why) {
        FormulaText text = FormulaText.of(formula, number);
        String id = ids.get();
        handle.createUpdate("""
                        INSERT INTO recipe (id, name, name_sort, search_text, newest_version, added_epoch_ms, changed_epoch_ms)
                        VALUES (:id, :name, :sort, :search, :number, :now, :now)
                        """)
                .bind("id", id)
                .bind("name", text.name())
                .bind("sort", NameOrder.key(text.name()))
                .bind("search", text.searchText())
                .bind("number", number)
                .bind("now", now)
                .execute();
        insertVersion(id, text, why);
        return written(id, number);
    }

    Outcome<RecipeVersion> save(String recipeId, int basedOn, Formula formula, boolean asNext, String why) {
        return living(recipeId).then(recipe -> {
            RecipeVersion newest = recipe.newest();
            if (newest.number() != basedOn) {
                return Outcome.refused(
                        "version " + newest.number() + " of this recipe was saved while you worked on version "
                                + basedOn,
                        "look at the two beside each other, and save yours as the next version if you still want it");
            }
            boolean next = asNext || newest.madeAt().isPresent();
            return put(recipe, FormulaText.of(formula, next ? newest.number() + 1 : newest.number()), why);
        });
    }

    Outcome<RecipeVersion> rename(String recipeId, String newName) {
        return living(recipeId).then(recipe -> {
            RecipeVersion newest = recipe.newest();
            if (recipe.name().equals(newName)) {
                return Outcome.ok(newest);
            }
            boolean made = newest.madeAt().isPresent();
            int number = made ? newest.number() + 1 : newest.number();
            String why = made ? "renamed from " + recipe.name() : newest.why();
            return put(recipe, FormulaText.of(newest.formula(), newName, number), why);
        });
    }

    Outcome<RecipeVersion> duplicate(String recipeId, String newName) {
        return living(recipeId).then(recipe -> {
            Formula copy = FormulaText.of(recipe.newest().formula(), newName, 1).formula();
            return add(
                    copy,
                    1,
                    "copied from " + recipe.name() + ", version "
                            + recipe.newest().number());
        });
    }

    Outcome<Imported> importFormula(Formula formula) {
        List<String> namesakes = rows.named(formula.recipe());
        if (namesakes.isEmpty()) {
            return add(formula, formula.version(), "imported").then(v -> imported(v, What.NEW_RECIPE));
        }
        FormulaText text = FormulaText.of(formula, formula.version());
        Optional<RecipeVersion> kept = rows.same(formula.recipe(), text);
        if (kept.isPresent()) {
            return imported(kept.get(), What.ALREADY_KEPT);
        }
        if (namesakes.size() > 1) {
            return Outcome.refused(new Problem(
                    "recipe",
                    "there are " + namesakes.size() + " recipes called '" + formula.recipe() + "'",
                    "give the one that is meant a name of its own first"));
        }
        return living(namesakes.get(0)).then(recipe -> next(recipe, formula));
    }

    private Outcome<Imported> next(Recipe recipe, Formula formula) {
        RecipeVersion newest = recipe.newest();
        if (FormulaText.of(formula, newest.number()).text().equals(newest.text())) {
            return imported(newest, What.ALREADY_KEPT);
        }
        return put(recipe, FormulaText.of(formula, newest.number() + 1), "imported")
                .then(version -> imported(version, What.NEXT_VERSION));
    }

    private static Outcome<Imported> imported(RecipeVersion version, What what) {
        return Outcome.ok(new Imported(version, what));
    }

    Outcome<Recipe> delete(String recipeId) {
        return living(recipeId).then(recipe -> {
            handle.createUpdate("UPDATE recipe SET deleted_epoch_ms = :now WHERE id = :id")
                    .bind("now", now)
                    .bind("id", recipeId)
                    .execute();
            return found(recipeId);
        });
    }

    Outcome<Recipe> undelete(String recipeId) {
        handle.createUpdate("UPDATE recipe SET deleted_epoch_ms = NULL WHERE id = :id")
                .bind("id", recipeId)
                .execute();
        return found(recipeId);
    }

    Outcome<RecipeVersion> markMade(String recipeId, int number) {
        handle.createUpdate("""
                        UPDATE recipe_version SET made_epoch_ms = :now
                        WHERE recipe_id = :recipe AND number = :number AND made_epoch_ms IS NULL
                        """)
                .bind("now", now)
                .bind("recipe", recipeId)
                .bind("number", number)
                .execute();
        return written(recipeId, number);
    }

    Outcome<Recipe> setPhotograph(String recipeId, Optional<String> hash) {
        if (hash.isPresent() && !isKept(hash.get())) {
            return Outcome.refused("that photograph is not kept here", "choose the picture again");
        }
        handle.createUpdate("UPDATE recipe SET photograph_sha256 = :hash, changed_epoch_ms = :now WHERE id = :id")
                .bind("hash", hash.orElse(null))
                .bind("now", now)
                .bind("id", recipeId)
                .execute();
        return found(recipeId);
    }

    private boolean isKept(String hash) {
        return handle.createQuery("SELECT count(*) FROM photograph WHERE sha256 = :hash")
                        .bind("hash", hash)
                        .mapTo(Integer.class)
                        .one()
                == 1;
    }

    /** Writes a version, over the one of its number where there is one, and makes it the recipe's newest. */
    private Outcome<RecipeVersion> put(Recipe recipe, FormulaText text, String why) {
        int number = text.formula().version();
        if (number == recipe.newest().number()) {
            updateVersion(recipe.id(), text, why);
        } else {
            insertVersion(recipe.id(), text, why);
        }
        handle.createUpdate("""
                        UPDATE recipe SET name = :name, name_sort = :sort, search_text = :search, newest_version = :number,
                          changed_epoch_ms = :now
                        WHERE id = :id
                        """)
                .bind("name", text.name())
                .bind("sort", NameOrder.key(text.name()))
                .bind("search", text.searchText())
                .bind("number", number)
                .bind("now", now)
                .bind("id", recipe.id())
                .execute();
        return written(recipe.id(), number);
    }

    private void insertVersion(String recipeId, FormulaText text, String why) {
        version(recipeId, text, why, """
                INSERT INTO recipe_version (recipe_id, number, made_for, formula_text, why, saved_epoch_ms)
                VALUES (:recipe, :number, :use, :text, :why, :now)
                """);
    }

    private void updateVersion(String recipeId, FormulaText text, String why) {
        version(recipeId, text, why, """
                UPDATE recipe_version SET made_for = :use, formula_text = :text, why = :why, saved_epoch_ms = :now
                WHERE recipe_id = :recipe AND number = :number
                """);
    }

    private void version(String recipeId, FormulaText text, String why, String sql) {
        handle.createUpdate(sql)
                .bind("recipe", recipeId)
                .bind("number", text.formula().version())
                .bind("use", text.formula().use().word())
                .bind("text", text.text())
                .bind("why", why)
                .bind("now", now)
                .execute();
    }

    private Outcome<Recipe> living(String recipeId) {
        return rows.find(recipeId)
                .filter(recipe -> recipe.deletedAt().isEmpty())
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused(
                        "this recipe is not there any more",
                        "look among the deleted ones, where it can be brought back"));
    }

    private Outcome<Recipe> found(String recipeId) {
        return rows.find(recipeId)
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("there is no such recipe", "go back to the list of recipes"));
    }

    private Outcome<RecipeVersion> written(String recipeId, int number) {
        return rows.version(recipeId, number)
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("there is no such version", "go back to the recipe"));
    }
}
