package lyewright.web.recipe;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.RecordsTrouble;
import lyewright.records.recipe.DraftAt;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.web.Answers;
import lyewright.web.Shop;
import lyewright.web.recipe.DraftKeeper.Result;

/** What is typed and pressed in the editor's page of one workshop: kept, saved, thrown away, shown as a file. */
final class EditorActs {

    private static final String ANSWER = "recipe/answer.jte";

    private final Shop shop;
    private final Workbench workbench;
    private final EditorView view;

    /** Those of a workshop, whichever is shown. */
    EditorActs(Shop shop) {
        this.shop = shop.held();
        this.workbench = new Workbench(this.shop);
        this.view = new EditorView(this.shop, workbench);
    }

    private Records records() {
        return shop.records();
    }

    void act(Context ctx, Optional<Recipe> recipe) {
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
            case "own-figures" -> takeFiguresOver(ctx, recipe, typed);
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
            ctx.header("HX-Replace-Url", EditorView.NEW + "?draft=" + kept.draftId());
        }
        Answers.page(ctx, ANSWER, view.page(recipe, kept, view.note(result), ""));
    }

    private void answer(Context ctx, Optional<Recipe> recipe, Typed typed, Result result, String focus) {
        Typed kept = result instanceof Result.Done done ? done.typed() : typed;
        Answers.page(ctx, EditorView.PAGE, view.page(recipe, kept, view.note(result), focus));
    }

    private void refuse(Context ctx, Optional<Recipe> recipe, Typed typed, Problem problem) {
        EditorPage page = view.page(recipe, typed, Optional.empty(), "").refused(List.of(problem));
        if (Answers.isInPlace(ctx) && typed.pressed().isEmpty()) {
            Answers.page(ctx, ANSWER, page);
        } else {
            Answers.form(ctx, EditorView.PAGE, page);
        }
    }

    private static String theirs(Optional<Recipe> recipe, Typed typed) {
        return recipe.map(r -> "/recipes/" + r.id() + "/edit")
                .orElseGet(() ->
                        typed.draftId().isEmpty() ? EditorView.NEW : EditorView.NEW + "?draft=" + typed.draftId());
    }

    private void discard(Context ctx, Optional<Recipe> recipe, Typed typed) {
        if (!typed.draftId().isEmpty()) {
            records().drafts().discard(typed.draftId());
        }
        Answers.seeOther(ctx, EditorView.leave(recipe));
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
        EditorPage page = view.page(recipe, kept, Optional.empty(), "");
        if (page.read().formula().isEmpty()) {
            Answers.form(ctx, EditorView.PAGE, page.atFirstTrouble());
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
            Answers.seeOther(ctx, Done.SAVED.address(ok.value().recipeId()));
        } else {
            Answers.form(ctx, EditorView.PAGE, page.refused(saved.problems()));
        }
    }

    /** A version that is written over keeps its reason unless another is given; one that follows it has its own. */
    private static String reason(Recipe recipe, Typed typed) {
        String why = typed.drafted().why();
        boolean writesOver = !typed.asNext() && !EditorView.isMade(recipe);
        return why.isBlank() && writesOver ? recipe.newest().why() : why;
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

    /** The workshop's own figures become rows of the form, or entries of the file. */
    private void takeFiguresOver(Context ctx, Optional<Recipe> recipe, Typed typed) {
        Drafted drafted = typed.drafted();
        Optional<Formula> formula = workbench.read(drafted).formula();
        Typed taken = formula.map(read -> {
                    Formula with = NewerFigures.taken(read, workbench.names());
                    return drafted.isFile()
                            ? typed.withFile(FormulaFile.write(with))
                            : typed.with(drafted.form().taking(with.materials(), read.materials()));
                })
                .orElse(typed);
        keepAndShow(ctx, recipe, taken, "");
    }

    private void asForm(Context ctx, Optional<Recipe> recipe, Typed typed) {
        Optional<Formula> formula = FormulaFile.read(typed.drafted().file()).formula();
        keepAndShow(ctx, recipe, formula.map(f -> typed.with(FormulaForm.of(f))).orElse(typed), "");
    }
}
