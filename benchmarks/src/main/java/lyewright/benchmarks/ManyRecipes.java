package lyewright.benchmarks;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.records.Records;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;

/** Fills a workshop's folder with recipes and versions, all invented and the same ones every time. */
final class ManyRecipes {

    private static final List<String> OILS = List.of(
            "coconut",
            "olive-virgin",
            "castor",
            "shea-butter",
            "palm-kernel",
            "rapeseed-low-erucic",
            "sunflower",
            "cocoa-butter");

    private static final List<String> FIRST =
            List.of("Tide", "Harbour", "Linden", "Gorse", "Slate", "Heather", "Kelp", "Rope", "Lantern", "Drift");

    private static final List<String> SECOND =
            List.of("line", "walk", "bar", "stone", "light", "wash", "shore", "step", "mist", "bell");

    private ManyRecipes() {}

    /**
     * Fills a folder.
     *
     * @param folder a new one
     * @param recipes how many
     * @param versions how many of each
     */
    static void fill(Path folder, int recipes, int versions) {
        try (Records records =
                Records.open(OtherPlace.of(folder), Clock.systemUTC()).orThrow()) {
            records.settings()
                    .save(new Workshop(
                            "Many recipes (invented)",
                            Units.GRAMS,
                            Degrees.CELSIUS,
                            "GBP",
                            Market.GB,
                            Paper.A4,
                            Optional.empty(),
                            Optional.empty(),
                            Workshop.USUAL_HOLD_BACK));
            for (int recipe = 0; recipe < recipes; recipe++) {
                add(records.recipes(), recipe, versions);
            }
        }
    }

    private static void add(RecipeBook book, int recipe, int versions) {
        RecipeVersion newest = book.add(formula(recipe, 0)).orThrow();
        for (int version = 1; version < versions; version++) {
            newest = book.save(newest.recipeId(), newest.number(), formula(recipe, version), true, "tried again")
                    .orThrow();
        }
    }

    private static Formula formula(int recipe, int version) {
        Random random = new Random(1000L * recipe + version);
        List<String> oils = new ArrayList<>(OILS).subList(0, 3 + random.nextInt(OILS.size() - 3));
        String lines = oils.stream()
                .map(oil -> "  " + oil + ": " + (50 + random.nextInt(300)) + " g\n")
                .collect(Collectors.joining());
        String text = "recipe: " + name(recipe) + "\nuse: own\nnotes: Invented, number " + recipe + ".\noils:\n" + lines
                + "alkali: sodium\nsuperfat: " + (3 + random.nextInt(6)) + " %\nwater: 33 % lye\n";
        return FormulaFile.read(text).formula().orElseThrow();
    }

    private static String name(int recipe) {
        return FIRST.get(recipe % 10) + SECOND.get(recipe / 10 % 10) + (recipe >= 100 ? " " + recipe / 100 : "");
    }
}
