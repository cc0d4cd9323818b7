package lyewright.web.recipe;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Predicate;
import lyewright.formula.Formula;
import lyewright.records.Records;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Recipe;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.OpenedIn;
import lyewright.web.Shop;
import lyewright.web.recipe.EditorPage.Note;

/** The editor: {@code /recipes/new} and {@code /recipes/{id}/edit}. Its routes go before those of a recipe's own page. */
public final class EditorPages implements Feature {

    private final Shop shop;
    private final EditorView view;

    public EditorPages(Shop shop) {
        this.shop = shop;
        this.view = new EditorView(shop, new Workbench(shop));
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(EditorView.NEW, this::showNew);
        routes.post(EditorView.NEW, this::actNew);
        routes.get("/recipes/{id}/edit", this::showEdit);
        routes.post("/recipes/{id}/edit", this::actEdit);
    }

    /** What is typed goes where its page is of, also when another window has since gone into the other workshop. */
    private void actNew(Context ctx) {
        String draft = Optional.ofNullable(ctx.formParam("draft")).orElse("");
        Optional<Shop> holder = draft.isEmpty()
                ? Optional.empty()
                : shop.found(records -> records.drafts().find(draft).isPresent());
        new EditorActs(holder.orElseGet(() -> OpenedIn.of(ctx, shop))).act(ctx, Optional.empty());
    }

    private void actEdit(Context ctx) {
        String id = ctx.pathParam("id");
        Shop holder = shop.holding(records -> records.recipes().find(id).isPresent());
        new EditorActs(holder).act(ctx, Optional.of(recipe(holder, id)));
    }

    /**
     * Begins a new recipe of a formula that is there already, such as one read from a notebook.
     *
     * @param records where to keep it
     * @param formula what it says so far
     * @return the address where it goes on
     */
    public static String begin(Records records, Formula formula) {
        Drafted drafted = new Drafted(FormulaForm.of(formula), "", "", Typed.newWindow(), 0);
        return EditorView.address(records.drafts().create(Optional.empty(), 0, drafted.write()));
    }

    private void showNew(Context ctx) {
        String id = ctx.queryParam("draft");
        Optional<Draft> draft =
                id == null ? Optional.empty() : shop.records().drafts().find(id);
        if (draft.isPresent() && draft.get().recipeId().isPresent()) {
            Answers.seeOther(ctx, "/recipes/" + draft.get().recipeId().get() + "/edit");
            return;
        }
        if (id != null && draft.isEmpty()) {
            inTheOtherWorkshop(id);
        }
        Optional<Note> note = id != null && draft.isEmpty()
                ? Optional.of(new Note("What was typed here is saved or thrown away already.", "", ""))
                : Optional.empty();
        Typed typed = draft.flatMap(EditorPages::goOn).orElseGet(() -> Typed.opened(FormulaForm.blank(), 0, ""));
        Answers.page(ctx, EditorView.PAGE, view.page(Optional.empty(), typed, note, draft.isPresent() ? "" : "recipe"));
    }

    private void inTheOtherWorkshop(String draft) {
        Predicate<Records> holds = records -> records.drafts().find(draft).isPresent();
        if (!shop.holding(holds).equals(shop)) {
            throw shop.notHere("recipe", holds, "", "");
        }
    }

    private void showEdit(Context ctx) {
        Recipe recipe = recipe(shop, ctx.pathParam("id"));
        Optional<Typed> draft = shop.records().drafts().forRecipe(recipe.id()).flatMap(EditorPages::goOn);
        Typed typed = draft.orElseGet(() -> Typed.opened(
                FormulaForm.of(recipe.newest().formula()), recipe.newest().number(), ""));
        Answers.page(ctx, EditorView.PAGE, view.page(Optional.of(recipe), typed, Optional.empty(), ""));
    }

    /** A draft in a window that was just opened; empty where a later release wrote it. */
    private static Optional<Typed> goOn(Draft draft) {
        return Drafted.read(draft.form())
                .map(kept -> new Drafted(kept.form(), kept.file(), kept.why(), Typed.newWindow(), 0))
                .map(kept -> new Typed(kept, draft.id(), draft.revision(), draft.basedOn(), false, ""));
    }

    private static Recipe recipe(Shop in, String id) {
        return in.records()
                .recipes()
                .find(id)
                .filter(recipe -> recipe.deletedAt().isEmpty())
                .orElseThrow(() -> in.notHere(
                        "recipe",
                        records -> records.recipes().find(id).isPresent(),
                        "There is no such recipe.",
                        "It may have been deleted; look in the list of recipes."));
    }
}
