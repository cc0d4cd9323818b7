package lyewright.web.make;

import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.MaterialNames;
import lyewright.formula.Purities;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.records.equipment.KeptJug;
import lyewright.records.equipment.KeptMould;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.recipe.VersionHeader;
import lyewright.records.setting.Workshop;

/**
 * A choice with everything that the workshop has for it, and the sheet that comes of it.
 *
 * @param choice what was chosen; where nothing was, what is usual stands in
 * @param recipe the recipe
 * @param version which version of it
 * @param versions all of them, the newest first
 * @param formula what that version says, and the certificates of the lots that are taken where these are asked for
 * @param moulds of the register
 * @param jugs of the register
 * @param names what oils may be called, the workshop's own materials included
 * @param workshop its settings
 * @param purities of its alkalis
 * @param equipment what it weighs with
 * @param taken what the cupboard gives; empty where there is no sheet
 * @param sheet the sheet, or every problem with the name of its field; the empty name for the recipe itself
 */
public record Bench(
        MakeChoice choice,
        Recipe recipe,
        RecipeVersion version,
        List<VersionHeader> versions,
        Formula formula,
        List<KeptMould> moulds,
        List<KeptJug> jugs,
        MaterialNames names,
        Workshop workshop,
        Purities purities,
        Equipment equipment,
        Optional<FromCupboard> taken,
        Outcome<MakingSheet> sheet) {

    /** Copies its lists. */
    public Bench {
        versions = List.copyOf(versions);
        moulds = List.copyOf(moulds);
        jugs = List.copyOf(jugs);
    }

    /** The sheet with the other oil, where one is asked for. */
    public Outcome<MakingSheet> swapped() {
        return sheet.then(made ->
                Swap.of(this, made).then(swap -> Outcome.ok(swap.comparison().b())));
    }

    Optional<KeptMould> mould() {
        return moulds.stream()
                .filter(mould -> mould.id().equals(choice.text(MakeChoice.MOULD)))
                .findFirst();
    }
}
