package lyewright.web.recipe;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.formula.Formula;
import lyewright.formula.MaterialChange;
import lyewright.formula.MaterialNames;
import lyewright.formula.OwnFigures;
import lyewright.formula.OwnMaterial;
import lyewright.material.Names;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.web.Shop;
import lyewright.words.MaterialChangeWords;

/**
 * Where the workshop's own figures are others than those that a formula carries, or where it carries none. Every page reckons a
 * formula with what it carries, and says so where that is no longer what the workshop has.
 *
 * @param sentences what differs, each with both figures
 * @param materials names of the materials, within a sentence
 */
public record NewerFigures(List<String> sentences, String materials) {

    /** The longest reason that is kept with a version. */
    private static final int LONGEST_WHY = 2000;

    static final NewerFigures NONE = new NewerFigures(List.of(), "");

    /** Copies its list. */
    public NewerFigures {
        sentences = List.copyOf(sentences);
    }

    /**
     * Of a formula.
     *
     * @param formula a formula
     * @param names the workshop's own materials
     * @return what differs; empty where nothing does
     */
    public static NewerFigures of(Formula formula, MaterialNames names) {
        List<MaterialChange> changes = MaterialChange.between(formula, taken(formula, names), Tables.bundled());
        return new NewerFigures(
                changes.stream()
                        .map(change -> MaterialChangeWords.carriedAndKept(change) + ".")
                        .toList(),
                changes.stream()
                        .map(change -> Names.inSentence(change.name()))
                        .distinct()
                        .collect(Collectors.joining(", ")));
    }

    /** Whether nothing differs. */
    public boolean isEmpty() {
        return sentences.isEmpty();
    }

    /** The formula with the figures that the workshop has now. */
    static Formula taken(Formula formula, MaterialNames names) {
        // of what only came nothing is known but its kind, and that takes nothing away from what a recipe carries
        return OwnFigures.takenOver(
                formula, key -> names.own(key).filter(own -> !own.equals(OwnMaterial.of(own.key(), own.kind()))));
    }

    /**
     * Saves a recipe's newest version with the figures that the workshop has now: over it where nothing was made from it, else as
     * the next.
     *
     * @param shop the workshop
     * @param recipe one of its recipes
     * @return the version that has them, or why not
     */
    public static Outcome<RecipeVersion> takeOver(Shop shop, Recipe recipe) {
        RecipeVersion newest = recipe.newest();
        if (recipe.draftId().isPresent()) {
            return Outcome.refused(
                    recipe.name() + " has changes that are not saved yet",
                    "take the figures over in the editor, where those changes are");
        }
        Formula taken = taken(newest.formula(), shop.names());
        return taken.equals(newest.formula())
                ? Outcome.ok(newest)
                : shop.records()
                        .recipes()
                        .save(
                                recipe.id(),
                                newest.number(),
                                taken,
                                false,
                                why(newest, of(newest.formula(), shop.names()).materials()));
    }

    /** A version that is written over keeps the reason that it has. */
    private static String why(RecipeVersion newest, String materials) {
        String own = "own figures of " + materials + " taken over";
        String both = newest.madeAt().isPresent() || newest.why().isBlank() ? own : newest.why() + "; " + own;
        return both.length() <= LONGEST_WHY ? both : "own figures taken over";
    }
}
