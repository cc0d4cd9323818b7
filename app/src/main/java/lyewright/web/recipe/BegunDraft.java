package lyewright.web.recipe;

import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.measure.Outcome;
import lyewright.records.Records;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Recipe;

/** A changed recipe that another page begins, to be gone on with in the editor. */
public final class BegunDraft {

    private BegunDraft() {}

    /**
     * Begins a draft of a recipe's newest version.
     *
     * @param records where it is kept
     * @param recipe the recipe
     * @param formula what it begins with
     * @param why why it will be saved
     * @return the editor's address; refused where something is being typed already, which is not written over
     */
    public static Outcome<String> of(Records records, Recipe recipe, Formula formula, String why) {
        String form = new Drafted(FormulaForm.of(formula), "", why, "", 0).write();
        Draft draft = records.drafts()
                .create(Optional.of(recipe.id()), recipe.newest().number(), form);
        return draft.form().equals(form)
                ? Outcome.ok("/recipes/" + recipe.id() + "/edit")
                : Outcome.refused(
                        recipe.name() + " has changes that are not saved yet",
                        "save them or throw them away in the editor, then come back");
    }
}
