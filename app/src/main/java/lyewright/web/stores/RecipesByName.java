package lyewright.web.stores;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.measure.Outcome;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.recipe.Search;

/** Finds the recipe version that a maker means by its name, and says a version's name. */
final class RecipesByName {

    private static final int OFFERED = 50;

    private static final Pattern VERSION =
            Pattern.compile("(.+?)[,\\s]+(?:version|v)\\.?\\s*([0-9]{1,6})", Pattern.CASE_INSENSITIVE);

    private final RecipeBook recipes;

    RecipesByName(RecipeBook recipes) {
        this.recipes = recipes;
    }

    /** One version of a recipe. */
    record Version(String recipeId, int number) {}

    /** The version that is meant: of a name alone the newest. */
    Outcome<Version> named(String typed) {
        String whole = typed.strip();
        List<RecipeSummary> exact = called(whole);
        if (exact.isEmpty()) {
            Matcher numbered = VERSION.matcher(whole);
            if (numbered.matches()) {
                return one(numbered.group(1).strip(), called(numbered.group(1).strip()))
                        .then(recipe -> version(recipe, Integer.parseInt(numbered.group(2))));
            }
        }
        return one(whole, exact).then(recipe -> Outcome.ok(new Version(recipe.id(), recipe.newestVersion())));
    }

    private List<RecipeSummary> called(String name) {
        return recipes.list(new Search(name, 1, Search.LARGEST_PAGE)).items().stream()
                .filter(recipe -> recipe.name().equalsIgnoreCase(name))
                .toList();
    }

    private static Outcome<RecipeSummary> one(String name, List<RecipeSummary> called) {
        if (called.isEmpty()) {
            return Outcome.refused(
                    "there is no recipe called '" + clipped(name) + "'",
                    "write its name as it stands in the list of recipes, with a version if it was not the newest");
        }
        return called.size() == 1
                ? Outcome.ok(called.get(0))
                : Outcome.refused(
                        called.size() + " recipes are called '" + clipped(name) + "'",
                        "give one of them another name first");
    }

    private Outcome<Version> version(RecipeSummary recipe, int number) {
        return recipes.version(recipe.id(), number).isPresent()
                ? Outcome.ok(new Version(recipe.id(), number))
                : Outcome.refused(
                        "'" + recipe.name() + "' has no version " + number,
                        "its newest is version " + recipe.newestVersion());
    }

    private static String clipped(String name) {
        return name.length() > 60 ? name.substring(0, 60) + "…" : name;
    }

    /** What a version is called. */
    String nameOf(UsualMass usual) {
        return namesOf(List.of(usual)).getOrDefault(usual, "");
    }

    /** What versions are called, all asked for at once. */
    Map<UsualMass, String> namesOf(List<UsualMass> usuals) {
        Map<String, String> names =
                recipes.names(usuals.stream().map(UsualMass::recipeId).toList());
        return usuals.stream()
                .distinct()
                .collect(Collectors.toMap(
                        usual -> usual,
                        usual -> names.getOrDefault(usual.recipeId(), "A recipe that is gone") + ", version "
                                + usual.version()));
    }

    /** Names to choose from while typing. */
    List<String> offered() {
        return recipes.list(Search.all(1, OFFERED)).items().stream()
                .map(recipe -> recipe.name() + ", version " + recipe.newestVersion())
                .toList();
    }
}
