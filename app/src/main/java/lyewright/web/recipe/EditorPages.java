package lyewright.web.recipe;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.DraftAt;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Hints;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.recipe.DraftKeeper.Result;
import lyewright.web.recipe.EditorPage.Note;
import lyewright.web.recipe.EditorPage.Of;
import lyewright.web.recipe.EditorPage.Unfinished;
import lyewright.words.Dates;

/** The editor: {@code /recipes/new} and {@code /recipes/{id}/edit}. Its routes go before those of a recipe's own page. */
public final class EditorPages implements Feature {

    private static final String PAGE = "recipe/editor.jte";
    private static final String ANSWER = "recipe/answer.jte";
    private static final String NEW = "/recipes/new";
    private static final int MOST_UNFINISHED = 5;

    private final Shop shop;
    private final Workbench workbench;

    public EditorPages(Shop shop) {
        this.shop = shop;
        this.workbench = new Workbench(shop);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(NEW, this::showNew);
        routes.post(NEW, this::actNew);
        routes.get("/recipes/{id}/edit", this::showEdit);
        routes.post("/recipes/{id}/edit", this::actEdit);
    }

    /** What is typed goes where its page is of, also when another window has since gone into the other workshop. */
    private void actNew(Context ctx) {
        String draft = Optional.ofNullable(ctx.formParam("draft")).orElse("");
        Shop opened = workshopSent(ctx).map(shop::always).orElse(shop);
        Shop holder = draft.isEmpty()
                ? opened
                : opened.holding(records -> records.drafts().find(draft).isPresent());
        in(holder).act(ctx, Optional.empty());
    }

    private void actEdit(Context ctx) {
        String id = ctx.pathParam("id");
        EditorPages there =
                in(shop.holding(records -> records.recipes().find(id).isPresent()));
        there.act(ctx, Optional.of(there.recipe(id)));
    }

    private static Optional<Boolean> workshopSent(Context ctx) {
        String sent = Optional.ofNullable(ctx.formParam("workshop")).orElse("");
        return sent.isEmpty() ? Optional.empty() : Optional.of(sent.equals("demo"));
    }

    private EditorPages in(Shop holder) {
        return holder.showsDemo() == shop.showsDemo() ? this : new EditorPages(holder);
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
        return address(records.drafts().create(Optional.empty(), 0, drafted.write()));
    }

    private static String address(Draft draft) {
        return NEW + "?draft=" + draft.id();
    }

    // Opening

    private void showNew(Context ctx) {
        String id = ctx.queryParam("draft");
        Optional<Draft> draft =
                id == null ? Optional.empty() : records().drafts().find(id);
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
        Answers.page(ctx, PAGE, page(Optional.empty(), typed, note, draft.isPresent() ? "" : "recipe"));
    }

    private void inTheOtherWorkshop(String draft) {
        Predicate<Records> holds = records -> records.drafts().find(draft).isPresent();
        if (!shop.holding(holds).equals(shop)) {
            throw shop.notHere("recipe", holds, "", "");
        }
    }

    private void showEdit(Context ctx) {
        Recipe recipe = recipe(ctx.pathParam("id"));
        Optional<Typed> draft = records().drafts().forRecipe(recipe.id()).flatMap(EditorPages::goOn);
        Typed typed = draft.orElseGet(() -> Typed.opened(
                FormulaForm.of(recipe.newest().formula()),
                recipe.newest().number(),
                isMade(recipe) ? "" : recipe.newest().why()));
        Answers.page(ctx, PAGE, page(Optional.of(recipe), typed, Optional.empty(), ""));
    }

    /** A draft in a window that was just opened; empty where a later release wrote it. */
    private static Optional<Typed> goOn(Draft draft) {
        return Drafted.read(draft.form())
                .map(kept -> new Drafted(kept.form(), kept.file(), kept.why(), Typed.newWindow(), 0))
                .map(kept -> new Typed(kept, draft.id(), draft.revision(), draft.basedOn(), false, ""));
    }

    private Recipe recipe(String id) {
        return records()
                .recipes()
                .find(id)
                .filter(recipe -> recipe.deletedAt().isEmpty())
                .orElseThrow(() -> shop.notHere(
                        "recipe",
                        records -> records.recipes().find(id).isPresent(),
                        "There is no such recipe.",
                        "It may have been deleted; look in the list of recipes."));
    }

    private Records records() {
        return shop.records();
    }

    // What is sent

    private void act(Context ctx, Optional<Recipe> recipe) {
        Typed typed = Typed.of(ctx);
        Optional<Problem> tooMuch = FormFields.tooMuch(ctx.formParamMap());
        if (tooMuch.isPresent()) {
            refuse(ctx, recipe, typed, tooMuch.get());
            return;
        }
        try {
            act(ctx, recipe, typed);
        } catch (RecordsTrouble e) {
            // a full disk must not cost what was typed
            refuse(ctx, recipe, typed, e.problem());
        }
    }

    private void act(Context ctx, Optional<Recipe> recipe, Typed typed) {
        switch (typed.pressed()) {
            case "" -> keystroke(ctx, recipe, typed);
            case "save" -> save(ctx, recipe, typed);
            case "discard" -> discard(ctx, recipe, typed);
            case "theirs" -> Answers.seeOther(ctx, theirs(recipe, typed));
            case "mine" -> answer(ctx, recipe, typed, keeper(recipe).keepOver(typed), "");
            case "as-file" -> asFile(ctx, recipe, typed);
            case "as-form" -> asForm(ctx, recipe, typed);
            default -> {
                Optional<FormRows.Moved> moved =
                        FormRows.pressed(typed.drafted().form(), typed.pressed());
                Typed changed = moved.map(m -> typed.with(m.form())).orElse(typed);
                keepAndShow(
                        ctx, recipe, changed, moved.map(FormRows.Moved::focus).orElse(""));
            }
        }
    }

    private DraftKeeper keeper(Optional<Recipe> recipe) {
        return new DraftKeeper(records().drafts(), recipe.map(Recipe::id));
    }

    private void keepAndShow(Context ctx, Optional<Recipe> recipe, Typed typed, String focus) {
        answer(ctx, recipe, typed, keeper(recipe).keep(typed), focus);
    }

    private void keystroke(Context ctx, Optional<Recipe> recipe, Typed typed) {
        if (!Answers.isInPlace(ctx)) {
            keepAndShow(ctx, recipe, typed, "");
            return;
        }
        Result result = keeper(recipe).keep(typed);
        Typed kept = result instanceof Result.Done done ? done.typed() : typed;
        if (recipe.isEmpty() && typed.draftId().isEmpty() && !kept.draftId().isEmpty()) {
            ctx.header("HX-Replace-Url", NEW + "?draft=" + kept.draftId());
        }
        Answers.page(ctx, ANSWER, page(recipe, kept, note(result), ""));
    }

    private void answer(Context ctx, Optional<Recipe> recipe, Typed typed, Result result, String focus) {
        Typed kept = result instanceof Result.Done done ? done.typed() : typed;
        Answers.page(ctx, PAGE, page(recipe, kept, note(result), focus));
    }

    private void refuse(Context ctx, Optional<Recipe> recipe, Typed typed, Problem problem) {
        EditorPage page = page(recipe, typed, Optional.empty(), "").refused(List.of(problem));
        if (Answers.isInPlace(ctx) && typed.pressed().isEmpty()) {
            Answers.page(ctx, ANSWER, page);
        } else {
            Answers.form(ctx, PAGE, page);
        }
    }

    private Optional<Note> note(Result result) {
        if (result instanceof Result.Others others) {
            return Optional.of(new Note(
                    "Another window changed this recipe at "
                            + Dates.minute(others.theirs().changedAt(), shop.clock())
                            + ". What you type here is not kept until you choose one of the two.",
                    "Take the other's",
                    "Keep mine"));
        }
        if (result instanceof Result.Gone) {
            return Optional.of(new Note(
                    "Another window saved what was typed, or threw it away. What you type here is not kept until you choose.",
                    "Look at what is saved",
                    "Keep mine"));
        }
        return result instanceof Result.TooLong
                ? Optional.of(new Note("This is more than can be kept while you type. Shorten it, or save it.", "", ""))
                : Optional.empty();
    }

    private static String theirs(Optional<Recipe> recipe, Typed typed) {
        return recipe.map(r -> "/recipes/" + r.id() + "/edit")
                .orElseGet(() -> typed.draftId().isEmpty() ? NEW : NEW + "?draft=" + typed.draftId());
    }

    private void discard(Context ctx, Optional<Recipe> recipe, Typed typed) {
        if (!typed.draftId().isEmpty()) {
            records().drafts().discard(typed.draftId());
        }
        Answers.seeOther(ctx, leave(recipe));
    }

    private static String leave(Optional<Recipe> recipe) {
        return recipe.map(r -> "/recipes/" + r.id()).orElse("/recipes");
    }

    // Saving

    private void save(Context ctx, Optional<Recipe> recipe, Typed typed) {
        Result result = keeper(recipe).keep(typed);
        if (!(result instanceof Result.Done done)) {
            ctx.status(HttpStatus.CONFLICT);
            answer(ctx, recipe, typed, result, "");
            return;
        }
        Typed kept = done.typed();
        EditorPage page = page(recipe, kept, Optional.empty(), "");
        if (page.read().formula().isEmpty()) {
            Answers.form(ctx, PAGE, page.atFirstTrouble());
            return;
        }
        Formula formula = page.read().formula().get();
        DraftAt draft = new DraftAt(kept.draftId(), kept.revision());
        Outcome<RecipeVersion> saved = recipe.isEmpty()
                ? records().recipes().add(formula, draft)
                : records()
                        .recipes()
                        .save(
                                recipe.get().id(),
                                kept.basedOn(),
                                formula,
                                kept.asNext(),
                                reason(recipe.get(), kept),
                                draft);
        if (saved instanceof Outcome.Ok<RecipeVersion> ok) {
            Answers.seeOther(ctx, saved(ok.value().recipeId()));
        } else {
            Answers.form(ctx, PAGE, page.refused(saved.problems()));
        }
    }

    private static boolean isMade(Recipe recipe) {
        return recipe.newest().madeAt().isPresent();
    }

    /** The reason that stood in the field is that of the version that stays, not of the one that follows it. */
    private static String reason(Recipe recipe, Typed typed) {
        String why = typed.drafted().why();
        return typed.asNext() && !isMade(recipe) && why.equals(recipe.newest().why()) ? "" : why;
    }

    /** In the other workshop its page is not shown at once, so that the address carries on that it is saved. */
    private String saved(String recipeId) {
        return shop.isShown() ? "/recipes/" + recipeId : Done.SAVED.address(recipeId);
    }

    // Fields or file

    private void asFile(Context ctx, Optional<Recipe> recipe, Typed typed) {
        FormRead read = typed.drafted().form().read(workbench.names());
        if (read.formula().isEmpty()) {
            keepAndShow(ctx, recipe, typed, read.problems().keySet().iterator().next());
            return;
        }
        keepAndShow(ctx, recipe, typed.withFile(FormulaFile.write(read.formula().get())), FormFields.FILE);
    }

    private void asForm(Context ctx, Optional<Recipe> recipe, Typed typed) {
        Optional<Formula> formula = FormulaFile.read(typed.drafted().file()).formula();
        keepAndShow(ctx, recipe, formula.map(f -> typed.with(FormulaForm.of(f))).orElse(typed), "");
    }

    // The page

    private EditorPage page(Optional<Recipe> recipe, Typed typed, Optional<Note> note, String focus) {
        Drafted drafted = typed.drafted();
        FormRead read = workbench.read(drafted);
        Workbench.Reckoned reckoned = workbench.reckon(read, drafted);
        Of of = recipe.map(r -> new Of(r.name(), typed.basedOn(), isMade(r))).orElse(Of.NEW);
        Map<String, String> fields = drafted.form().fields();
        return new EditorPage(
                frame(of, typed),
                recipe.map(r -> "/recipes/" + r.id() + "/edit").orElse(NEW),
                leave(recipe),
                of,
                drafted.form(),
                fields,
                drafted.isFile() ? Optional.of(drafted.file()) : Optional.empty(),
                reckoned.read(),
                reckoned.figures(),
                new EditorPage.Kept(
                        typed.draftId(),
                        typed.revision(),
                        drafted.window(),
                        drafted.serial(),
                        drafted.why(),
                        typed.asNext(),
                        shop.showsDemo() ? "demo" : "mine"),
                note,
                workbench.names(),
                focus,
                false,
                recipe.isEmpty() && typed.draftId().isEmpty() ? unfinished() : List.of(),
                Hints.of(shop.workshop().units()));
    }

    private Frame frame(Of of, Typed typed) {
        String title = of.isNew()
                ? typed.name().isEmpty() ? "A new recipe" : typed.name() + ", a new recipe"
                : "Change " + of.name();
        return shop.frame(title, Section.RECIPES)
                .with(List.of("editor.css", "why.css"), List.of("editor.js", "why.js"));
    }

    private List<Unfinished> unfinished() {
        return records().drafts().ofNewRecipes(MOST_UNFINISHED).stream()
                .flatMap(draft -> Drafted.read(draft.form()).stream()
                        .map(kept -> new Unfinished(
                                kept.form().recipe().isBlank()
                                        ? "A recipe without a name"
                                        : kept.form().recipe(),
                                address(draft),
                                Dates.minute(draft.changedAt(), shop.clock()))))
                .toList();
    }
}
