package lyewright.web.recipe;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.picture.ComparePicture;
import lyewright.picture.Picture;
import lyewright.picture.RecipeMark;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.recipe.Search;
import lyewright.records.recipe.VersionHeader;
import lyewright.web.Answers;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.words.Dates;
import lyewright.words.Sentences;
import lyewright.words.UnitsShown;

/** Two versions of a recipe, or two recipes, beside each other, each with the sheet that its own page shows. */
final class ComparePages {

    private final Shop shop;
    private final ShowPages show;

    ComparePages(Shop shop, ShowPages show) {
        this.shop = shop;
        this.show = show;
    }

    private record Pick(Recipe recipe, RecipeVersion version, Formula formula) {

        static Pick of(Recipe recipe, RecipeVersion version) {
            return new Pick(recipe, version, version.formula());
        }

        RecipeSheet.Version of() {
            return new RecipeSheet.Version(recipe.id(), version.number());
        }

        String words() {
            return formula.recipe() + ", version " + version.number();
        }

        CompareTyped.Side typed(MakingSheet sheet, UnitsShown units) {
            return new CompareTyped.Side(formula, sheet, new Ingredients.Address(recipe.id(), version.number(), units));
        }

        String address() {
            boolean newest = version.number() == recipe.newest().number();
            return "/recipes/" + recipe.id() + (newest ? "" : "/versions/" + version.number());
        }
    }

    /** The versions of one recipe; the newest and the one before it where none are named. */
    void versions(Context ctx) {
        Recipe recipe = show.recipe(ctx.pathParam("id"));
        List<VersionHeader> all = shop.records().recipes().versions(recipe.id());
        String before = String.valueOf(all.get(Math.min(1, all.size() - 1)).number());
        String newest = String.valueOf(all.get(0).number());
        String a = asked(ctx, "a").orElse(before);
        String b = asked(ctx, "b").orElse(newest);
        Pick first = Pick.of(recipe, show.version(recipe, a));
        Pick second = Pick.of(recipe, show.version(recipe, b));
        List<ComparePage.Option> options = all.stream()
                .map(version -> new ComparePage.Option(
                        String.valueOf(version.number()),
                        "version " + version.number() + ", " + Dates.day(version.savedAt(), shop.clock())))
                .toList();
        Answers.page(
                ctx,
                "recipe/compare.jte",
                page(
                        recipe.name() + ": what changed",
                        first,
                        second,
                        new ComparePage.Choice(
                                "/recipes/" + recipe.id() + "/compare", options, a, b, Optional.empty())));
    }

    /** Two recipes in their newest versions, or one to which a second is to be chosen. */
    void recipes(Context ctx) {
        Recipe one = show.recipe(asked(ctx, "a").orElse(""));
        Optional<Recipe> asked = asked(ctx, "b").map(show::recipe);
        if (asked.isEmpty()) {
            ask(ctx, one);
            return;
        }
        Recipe other = asked.get();
        Pick first = Pick.of(one, one.newest());
        Pick second = Pick.of(other, other.newest());
        Answers.page(
                ctx,
                "recipe/compare.jte",
                page(
                        "Two recipes beside each other",
                        first,
                        second,
                        new ComparePage.Choice(
                                "/recipes/compare",
                                recipeOptions(one, other),
                                one.id(),
                                other.id(),
                                Optional.empty())));
    }

    /** Nothing stands beside it yet: the other is asked for, its own former version is offered. */
    private void ask(Context ctx, Recipe one) {
        List<ComparePage.Option> options = new ArrayList<>(List.of(new ComparePage.Option("", "choose a recipe")));
        options.addAll(recipeOptions(one, one));
        boolean former = shop.records().recipes().versions(one.id()).size() > 1;
        ComparePage.Choice choice = new ComparePage.Choice(
                "/recipes/compare",
                options,
                one.id(),
                "",
                former ? Optional.of("/recipes/" + one.id() + "/compare") : Optional.empty());
        Answers.page(
                ctx,
                "recipe/compare.jte",
                ComparePage.of(
                        shop.frame(one.name() + " beside another", Section.RECIPES)
                                .withStyle("recipe.css"),
                        List.of(),
                        choice));
    }

    /** As many as a list can show; the two that are compared in any case. */
    private List<ComparePage.Option> recipeOptions(Recipe one, Recipe other) {
        List<ComparePage.Option> options = new ArrayList<>();
        shop.records().recipes().list(Search.all(1, Search.LARGEST_PAGE)).items().stream()
                .map(recipe -> new ComparePage.Option(recipe.id(), recipe.name()))
                .forEach(options::add);
        for (Recipe recipe : List.of(one, other)) {
            ComparePage.Option own = new ComparePage.Option(recipe.id(), recipe.name());
            if (options.stream().noneMatch(option -> option.value().equals(own.value()))) {
                options.add(own);
            }
        }
        return options;
    }

    private static Optional<String> asked(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).filter(text -> !text.isBlank());
    }

    private ComparePage page(String title, Pick a, Pick b, ComparePage.Choice choice) {
        Outcome<MakingSheet> sheetA = RecipeSheet.of(a.formula(), shop);
        Outcome<MakingSheet> sheetB = RecipeSheet.of(b.formula(), shop);
        Frame plain = shop.frame(title, Section.RECIPES);
        Frame frame = plain.with(List.of("recipe.css", "compare.css", "why.css"), List.of("why.js"));
        if (!(sheetA instanceof Outcome.Ok<MakingSheet> okA) || !(sheetB instanceof Outcome.Ok<MakingSheet> okB)) {
            List<String> troubles = new ArrayList<>();
            sheetA.problems().forEach(problem -> troubles.add(a.words() + ": " + Sentences.whole(problem)));
            sheetB.problems().forEach(problem -> troubles.add(b.words() + ": " + Sentences.whole(problem)));
            return ComparePage.of(frame, troubles, choice);
        }
        UnitsShown units = WorkshopUnits.of(shop.workshop());
        CompareTold told = new CompareTold(Comparison.of(okA.value(), okB.value()), addresses(a, b), units);
        return new ComparePage(
                frame,
                List.of(side("A", a, okA.value(), units), side("B", b, okB.value(), units)),
                List.of(),
                told.summary(),
                pictures(okA.value(), okB.value()),
                CompareTyped.of(a.typed(okA.value(), units), b.typed(okB.value(), units)),
                told.materials(),
                told.groups(),
                told.same(),
                told.cautions(),
                choice);
    }

    private static CompareTold.Addresses addresses(Pick a, Pick b) {
        return new CompareTold.Addresses() {
            @Override
            public String side(boolean first, String figure) {
                RecipeSheet.Version of = (first ? a : b).of();
                return RecipeSheet.why(of.recipeId(), of.number(), figure);
            }

            @Override
            public String change(String row) {
                return RecipeSheet.whyItChanges(a.of(), b.of(), row);
            }
        };
    }

    private static CompareSide side(String letter, Pick pick, MakingSheet sheet, UnitsShown units) {
        return new CompareSide(
                letter,
                pick.formula().recipe(),
                pick.version().number(),
                pick.address(),
                WrittenWords.use(pick.formula().use()),
                WrittenWords.oils(pick.formula()),
                RecipeSheet.basis(sheet, units),
                RecipeMark.of(pick.formula()),
                sheet.stopped());
    }

    private static List<Picture> pictures(MakingSheet a, MakingSheet b) {
        return List.of(ComparePicture.superfats(a, "A", b, "B"), ComparePicture.fattyAcids(a, "A", b, "B"));
    }
}
