package lyewright.web.recipe;

import io.javalin.http.Context;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeVersion;
import lyewright.web.Answers;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.words.Sentences;

/** What is done to a recipe from its page with one button. Done twice it is done once. */
final class RecipeWrites {

    private static final String COPY = ", a copy";
    private static final int LONGEST_NAME = 200;

    private final Shop shop;

    RecipeWrites(Shop shop) {
        this.shop = shop;
    }

    private RecipeBook book() {
        return shop.records().recipes();
    }

    private Recipe recipe(Context ctx) {
        return book().find(ctx.pathParam("id")).orElseThrow(() -> ShowPages.notHere(shop, ctx.pathParam("id")));
    }

    void delete(Context ctx) {
        Recipe recipe = recipe(ctx);
        if (recipe.deletedAt().isEmpty()) {
            done(book().delete(recipe.id()));
        }
        Answers.seeOther(ctx, "/recipes?deleted=" + recipe.id());
    }

    void undelete(Context ctx) {
        Recipe recipe = recipe(ctx);
        if (recipe.deletedAt().isPresent()) {
            done(book().undelete(recipe.id()));
        }
        Answers.seeOther(ctx, Done.BACK.address(recipe.id()));
    }

    void duplicate(Context ctx) {
        Recipe recipe = recipe(ctx);
        RecipeVersion copy = done(book().duplicate(recipe.id(), copyOf(recipe.name())));
        Answers.seeOther(ctx, Done.COPIED.address(copy.recipeId()));
    }

    private static String copyOf(String name) {
        int room = LONGEST_NAME - COPY.length();
        return (name.codePointCount(0, name.length()) <= room
                        ? name
                        : name.substring(0, name.offsetByCodePoints(0, room)))
                + COPY;
    }

    /** Saves an old version's formula as the next one. */
    void again(Context ctx) {
        Recipe recipe = recipe(ctx);
        int newest = recipe.newest().number();
        RecipeVersion old = ShowPages.number(ctx.pathParam("n"))
                .flatMap(n -> book().version(recipe.id(), n))
                .orElseThrow(() -> Refused.notHere(
                        "This recipe has no such version.", "Its versions stand on the recipe's page."));
        if (old.number() != newest) {
            done(book().save(recipe.id(), newest, old.formula(), true, "version " + old.number() + " again"));
        }
        Answers.seeOther(ctx, Done.AGAIN.address(recipe.id()));
    }

    /** Takes the workshop's own figures over into the version that was looked at. */
    void takeFiguresOver(Context ctx) {
        Recipe recipe = recipe(ctx);
        if (!String.valueOf(recipe.newest().number()).equals(ctx.pathParam("n"))) {
            throw new Refused(
                    409,
                    "A newer version was saved since this page was shown.",
                    "Look at the recipe again, and take the figures over there.");
        }
        done(NewerFigures.takeOver(shop, recipe));
        Answers.seeOther(ctx, Done.TAKEN.address(recipe.id()));
    }

    private static <T> T done(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return ok.value();
        }
        Problem problem = outcome.problems().get(0);
        throw new Refused(409, Sentences.whole(problem.what()), Sentences.whole(problem.remedy()));
    }
}
