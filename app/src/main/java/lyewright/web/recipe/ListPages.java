package lyewright.web.recipe;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.records.recipe.DeletedRecipe;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Page;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.recipe.Search;
import lyewright.web.Answers;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.words.Dates;

/** The list of recipes, and that of deleted ones. */
final class ListPages {

    private static final int ON_A_PAGE = 24;

    private static final int MOST_DRAFTS = 12;

    /** More than anybody types into a search. */
    private static final int LONGEST_SEARCH = 200;

    private final Shop shop;

    ListPages(Shop shop) {
        this.shop = shop;
    }

    void list(Context ctx) {
        String words = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        String asked = words.length() > LONGEST_SEARCH ? words.substring(0, LONGEST_SEARCH) : words;
        Page<RecipeSummary> page = shop.records().recipes().list(new Search(asked, pageNumber(ctx), ON_A_PAGE));
        String address = "/recipes" + (asked.isEmpty() ? "" : "?q=" + RecipeSheet.encoded(asked));
        StockAges ages = StockAges.of(shop);
        ListPage model = new ListPage(
                frame(ctx),
                asked,
                page.items().stream()
                        .map(summary -> RecipeCard.of(summary, ages, shop.clock()))
                        .toList(),
                drafts(asked, page.number()),
                new ListPage.Pager(page.number(), page.pages(), page.total(), address));
        boolean part = Answers.isInPlace(ctx) && ctx.header("HX-History-Restore-Request") == null;
        Answers.page(ctx, part ? "recipe/found.jte" : "recipe/list.jte", model);
    }

    /** Of recipes that have never been saved; those of a kept recipe stand with it. */
    private List<ListPage.DraftCard> drafts(String words, int page) {
        if (!words.isEmpty() || page > 1) {
            return List.of();
        }
        return shop.records().drafts().ofNewRecipes(MOST_DRAFTS).stream()
                .map(draft -> new ListPage.DraftCard(
                        "/recipes/new?draft=" + draft.id(), name(draft), Dates.day(draft.changedAt(), shop.clock())))
                .toList();
    }

    private static String name(Draft draft) {
        return Drafted.read(draft.form())
                .map(drafted -> drafted.form().recipe())
                .filter(name -> !name.isBlank())
                .orElse("A recipe without a name");
    }

    private static int pageNumber(Context ctx) {
        return Optional.ofNullable(ctx.queryParam("page"))
                .flatMap(ShowPages::number)
                .orElse(1);
    }

    private Frame frame(Context ctx) {
        Frame frame = shop.frame("Recipes", Section.RECIPES).withStyle("recipe.css");
        return Optional.ofNullable(ctx.queryParam("deleted"))
                .flatMap(id -> shop.records().recipes().find(id))
                .filter(recipe -> recipe.deletedAt().isPresent())
                .map(recipe -> frame.telling(gone(recipe)))
                .orElse(frame);
    }

    private static Notice gone(Recipe recipe) {
        return Notice.withUndo(recipe.name() + " is deleted.", "Put it back", "/recipes/" + recipe.id() + "/undelete");
    }

    void deleted(Context ctx) {
        Page<DeletedRecipe> page = shop.records().recipes().deleted(pageNumber(ctx), ON_A_PAGE);
        Answers.page(
                ctx,
                "recipe/deleted.jte",
                new DeletedPage(
                        shop.frame("Deleted recipes", Section.RECIPES).withStyle("recipe.css"),
                        page.items().stream()
                                .map(recipe -> new DeletedPage.Line(
                                        recipe.id(),
                                        recipe.name(),
                                        recipe.newestVersion(),
                                        Dates.day(recipe.deletedAt(), shop.clock())))
                                .toList(),
                        new ListPage.Pager(page.number(), page.pages(), page.total(), "/recipes/deleted")));
    }
}
