package lyewright.web.recipe;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeVersion;
import lyewright.web.Answers;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.Refused;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.words.Sentences;

/** The pages of a recipe and of its versions. */
public final class ShowPages {

    private final Shop shop;

    public ShowPages(Shop shop) {
        this.shop = shop;
    }

    private RecipeBook book() {
        return shop.records().recipes();
    }

    void recipe(Context ctx) {
        Recipe recipe = recipe(ctx.pathParam("id"));
        ShowPage page = page(recipe, recipe.newest(), List.of());
        Optional<String> done = Optional.ofNullable(ctx.queryParam("done"))
                .flatMap(what ->
                        Done.sentence(what, page.head().name(), page.head().number()));
        Optional<Notice> notice = done.map(sentence -> Done.NOTEBOOK.is(ctx.queryParam("done"))
                ? new MakeNext(ctx, shop).told(sentence, page.head())
                : Notice.of(sentence));
        Answers.page(ctx, "recipe/show.jte", notice.isEmpty() ? page : telling(page, page.frame(), notice.get()));
    }

    void version(Context ctx) {
        Recipe recipe = recipe(ctx.pathParam("id"));
        Answers.page(ctx, "recipe/show.jte", page(recipe, version(recipe, ctx.pathParam("n")), List.of()));
    }

    /** The recipe's page again, because a photograph that was given is none. */
    public void withPhotographTroubles(Context ctx, String id, List<Problem> problems) {
        Recipe recipe = recipe(id);
        List<String> sentences = problems.stream().map(Sentences::whole).toList();
        Answers.form(ctx, "recipe/show.jte", page(recipe, recipe.newest(), sentences));
    }

    private static ShowPage telling(ShowPage page, Frame frame, Notice notice) {
        return new ShowPage(
                frame.telling(notice),
                page.head(),
                page.look(),
                page.troubles(),
                page.newer(),
                page.old(),
                page.in(),
                page.versions(),
                page.photographTroubles());
    }

    Recipe recipe(String id) {
        return book().find(id).orElseThrow(() -> notHere(shop, id));
    }

    RecipeVersion version(Recipe recipe, String number) {
        return number(number)
                .flatMap(n -> book().version(recipe.id(), n))
                .orElseThrow(() -> Refused.notHere(
                        "This recipe has no version '" + number + "'.", "Its versions stand on the recipe's page."));
    }

    static Optional<Integer> number(String text) {
        return text.matches("[0-9]{1,9}") ? Optional.of(Integer.parseInt(text)) : Optional.empty();
    }

    /** Why there is no recipe of an id: it is in the other workshop, or nowhere. */
    static Refused notHere(Shop shop, String id) {
        return shop.notHere(
                "recipe",
                records -> records.recipes().find(id).isPresent(),
                "There is no recipe at this address.",
                "Look for it in the list of recipes, or among the deleted ones.");
    }

    private ShowPage page(Recipe recipe, RecipeVersion version, List<String> photographTroubles) {
        Formula formula = version.formula();
        Outcome<MakingSheet> made = RecipeSheet.of(formula, shop);
        Optional<MakingSheet> sheet =
                made instanceof Outcome.Ok<MakingSheet> ok ? Optional.of(ok.value()) : Optional.empty();
        Ingredients.Address address =
                new Ingredients.Address(recipe.id(), version.number(), WorkshopUnits.of(shop.workshop()));
        RecipeHead head = RecipeHead.of(recipe, version, formula, shop.clock());
        String title = head.isNewest() ? head.name() : head.name() + ", version " + head.number();
        return new ShowPage(
                shop.frame(title, Section.RECIPES).withStyle("recipe.css"),
                head,
                sheet.map(s -> Look.of(s, address)),
                made.problems().stream().map(Sentences::whole).toList(),
                NewerFigures.of(formula, shop.names()),
                head.isNewest() && head.deleted().isEmpty() ? StockAges.of(shop).of(formula) : List.of(),
                Ingredients.of(formula, sheet, address),
                VersionLine.all(
                        book().versions(recipe.id()),
                        shop.records().signatures().versions(recipe.id()),
                        shop.clock()),
                photographTroubles);
    }
}
