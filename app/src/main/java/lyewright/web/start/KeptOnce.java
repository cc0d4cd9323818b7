package lyewright.web.start;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lyewright.formula.Formula;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.recipe.RecipeVersion;

/**
 * The recipes that forms were kept as lately. A button pressed twice, or a form sent again because no answer came, is answered with
 * the recipe that the first one made. Forgotten when the program ends: then it is a form like any other.
 */
final class KeptOnce {

    /** So many forms back it remembers. */
    private static final int MOST = 200;

    private final Map<Sent, String> recipes = new LinkedHashMap<>();

    /**
     * What came from a form.
     *
     * @param token the form's; empty where it has none, and then nothing is remembered
     * @param formula what was to be kept: whoever goes back and types something else means another recipe
     */
    record Sent(String token, Formula formula) {}

    /**
     * The recipe of a form, which is made once. One at a time, so that two that come together make one.
     *
     * @param records of the workshop that is shown
     * @param sent what came
     * @param adding makes it
     * @return the recipe's id, or why there is none
     */
    synchronized Outcome<String> keep(Records records, Sent sent, Supplier<Outcome<RecipeVersion>> adding) {
        Optional<String> there = Optional.ofNullable(recipes.get(sent))
                .filter(id -> records.recipes().find(id).isPresent());
        if (there.isPresent()) {
            return Outcome.ok(there.get());
        }
        return adding.get().then(version -> {
            remember(sent, version.recipeId());
            return Outcome.ok(version.recipeId());
        });
    }

    private void remember(Sent sent, String id) {
        if (!sent.token().isEmpty()) {
            recipes.put(sent, id);
            if (recipes.size() > MOST) {
                recipes.remove(recipes.keySet().iterator().next());
            }
        }
    }
}
