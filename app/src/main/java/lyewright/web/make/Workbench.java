package lyewright.web.make;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.FillText;
import lyewright.fill.Mould;
import lyewright.formula.Formula;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;
import lyewright.records.Records;
import lyewright.records.equipment.KeptMould;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.setting.Workshop;
import lyewright.stock.Expiry;
import lyewright.stock.LotFigures;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.make.MakeChoice.Much;
import lyewright.web.recipe.RecipeSheet;

/** Turns a choice into a sheet, with the balances, jugs and purities of the workshop that is shown. */
public final class Workbench {

    /** What a recipe in percent makes where there is neither mould nor amount. */
    private static final String FIRST_AMOUNT = "1 kg";

    private final Shop shop;

    /** The workbench of a shop. */
    public Workbench(Shop shop) {
        this.shop = shop;
    }

    /**
     * Lays out what was chosen.
     *
     * @param choice which recipe, which mould, how much
     * @return all of it; what is wrong with the choice stands in place of the sheet
     * @throws Refused if there is no such recipe or version
     */
    public Bench lay(MakeChoice choice) {
        return lay(choice, recipe(choice.text(MakeChoice.RECIPE)));
    }

    /** The same to be asked about only: a deleted recipe still has its pages, with their figures. */
    public Bench layEvenDeleted(MakeChoice choice) {
        return lay(choice, evenDeleted(choice.text(MakeChoice.RECIPE)));
    }

    private Bench lay(MakeChoice choice, Recipe recipe) {
        Records records = shop.records();
        RecipeVersion version = version(records, recipe, choice.text(MakeChoice.VERSION));
        Formula formula = version.formula();
        Workshop workshop = shop.workshop();
        List<KeptMould> moulds = records.equipment().moulds();
        MakeChoice whole = completed(choice, version, formula, moulds, workshop);
        Purities purities = RecipeSheet.purities(workshop);
        Equipment equipment = records.equipment().equipment(jugs(whole, formula));
        StockLook stock = StockLook.of(records, LocalDate.now(shop.clock()), whole, Expiry.takenBy(formula));
        Outcome<MakingSheet> sheet = sheet(whole, formula, moulds, purities, equipment);
        Optional<FromCupboard> taken = made(sheet)
                .map(stock::look)
                .map(cupboard -> new FromCupboard(cupboard, LotFigures.of(cupboard, stock.certificates()), stock));
        if (whole.asksForCertificates() && taken.isPresent()) {
            LotFigures certified = taken.get().figures();
            formula = certified.in(formula);
            purities = certified.purities(purities);
            sheet = sheet(whole, formula, moulds, purities, equipment);
            // what is weighed is a little other now, so how much of which lot is too
            taken = made(sheet).map(other -> new FromCupboard(stock.look(other), certified, stock));
        }
        return new Bench(
                whole,
                recipe,
                version,
                records.recipes().versions(recipe.id()),
                formula,
                moulds,
                records.equipment().jugs(),
                shop.names(),
                workshop,
                purities,
                equipment,
                taken,
                sheet);
    }

    private static Optional<MakingSheet> made(Outcome<MakingSheet> sheet) {
        return sheet instanceof Outcome.Ok<MakingSheet> ok ? Optional.of(ok.value()) : Optional.empty();
    }

    /**
     * The figures of a recipe alone, where neither a mould nor an amount is chosen: those that its own page shows.
     *
     * @param choice which recipe and version
     * @return the recipe and its sheet
     * @throws Refused if there is no such recipe or version
     */
    public OfRecipe recipe(MakeChoice choice) {
        Recipe recipe = evenDeleted(choice.text(MakeChoice.RECIPE));
        RecipeVersion version = version(shop.records(), recipe, choice.text(MakeChoice.VERSION));
        return new OfRecipe(
                choice.with(MakeChoice.VERSION, Integer.toString(version.number())),
                recipe,
                version,
                RecipeSheet.of(version.formula(), shop));
    }

    /**
     * A recipe with the figures that its own page shows.
     *
     * @param choice which recipe and version
     * @param recipe the recipe
     * @param version which version
     * @param sheet the sheet, or why there is none
     */
    public record OfRecipe(MakeChoice choice, Recipe recipe, RecipeVersion version, Outcome<MakingSheet> sheet) {}

    private Recipe recipe(String id) {
        Recipe recipe = evenDeleted(id);
        if (recipe.deletedAt().isPresent()) {
            throw notHere(id);
        }
        return recipe;
    }

    /** A deleted recipe still has its page, with its figures. */
    private Recipe evenDeleted(String id) {
        return shop.records().recipes().find(id).orElseThrow(() -> notHere(id));
    }

    private Refused notHere(String id) {
        return shop.notHere(
                "recipe",
                records -> records.recipes()
                        .find(id)
                        .filter(recipe -> recipe.deletedAt().isEmpty())
                        .isPresent(),
                "There is no such recipe.",
                "It may have been deleted. Choose one under Recipes.");
    }

    private static RecipeVersion version(Records records, Recipe recipe, String typed) {
        if (typed.isEmpty()) {
            return recipe.newest();
        }
        int number = typed.matches("[0-9]{1,6}") ? Integer.parseInt(typed) : 0;
        return number == recipe.newest().number()
                ? recipe.newest()
                : records.recipes()
                        .version(recipe.id(), number)
                        .orElseThrow(() -> Refused.notHere(
                                recipe.name() + " has no such version.",
                                "Choose one under Make; the newest is version "
                                        + recipe.newest().number() + "."));
    }

    /** What nobody said yet: the newest version, the first mould full, the recipe's own masses, or a kilogram. */
    private static MakeChoice completed(
            MakeChoice choice, RecipeVersion version, Formula formula, List<KeptMould> moulds, Workshop workshop) {
        MakeChoice whole = choice.with(MakeChoice.VERSION, Integer.toString(version.number()));
        if (!whole.has(MakeChoice.HOLD_BACK)) {
            whole = whole.with(MakeChoice.HOLD_BACK, workshop.holdBack());
        }
        if (whole.has(MakeChoice.MUCH)) {
            return whole;
        }
        if (whole.has(MakeChoice.MOULD)) {
            return whole.with(MakeChoice.MUCH, Much.FULL.word());
        }
        if (formula.inMasses()) {
            return whole.with(MakeChoice.MUCH, Much.WRITTEN.word());
        }
        return moulds.isEmpty()
                ? whole.with(MakeChoice.MUCH, Much.TOTAL.word()).with(MakeChoice.AMOUNT, FIRST_AMOUNT)
                : whole.with(MakeChoice.MOULD, moulds.get(0).id()).with(MakeChoice.MUCH, Much.FULL.word());
    }

    /** Jugs of portions that this recipe has not are left over from another recipe. */
    private static Map<String, String> jugs(MakeChoice choice, Formula formula) {
        return choice.jugs().entrySet().stream()
                .filter(jug -> !jug.getKey().startsWith("jug ")
                        || formula.portions().stream()
                                .anyMatch(portion -> jug.getKey().equals("jug " + portion.name())))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Outcome<MakingSheet> sheet(
            MakeChoice choice, Formula formula, List<KeptMould> moulds, Purities purities, Equipment equipment) {
        Outcome<ChosenMould> mould = mould(choice, moulds, purities);
        Outcome<Fill> fill = mould.then(chosen -> ChosenFill.read(choice, chosen.mould(), chosen.cut()));
        return fill.then(asked -> made(formula, purities, asked, equipment, choice));
    }

    /** A mould and how it is cut. */
    private record ChosenMould(Mould mould, Optional<CutPlan> cut) {}

    private static Outcome<ChosenMould> mould(MakeChoice choice, List<KeptMould> moulds, Purities purities) {
        if (choice.mouldIsTyped()) {
            return at(MakeChoice.INSIDE, inside(choice.text(MakeChoice.INSIDE)))
                    .then(mould -> Outcome.ok(new ChosenMould(mould, Optional.empty())));
        }
        String id = choice.text(MakeChoice.MOULD);
        if (id.isEmpty()) {
            return Outcome.ok(new ChosenMould(Mould.UNKNOWN, Optional.empty()));
        }
        return moulds.stream()
                .filter(kept -> kept.id().equals(id))
                .findFirst()
                .map(kept -> at(MakeChoice.MOULD, kept.mould(Tables.bundled(), purities))
                        .then(mould -> Outcome.ok(new ChosenMould(mould, kept.cutPlan()))))
                .orElseGet(() -> Outcome.refused(new Problem(
                        MakeChoice.MOULD, "that mould is not among the workshop's", "choose another, or type it")));
    }

    private static Outcome<Mould> inside(String typed) {
        if (typed.isBlank()) {
            return Outcome.refused(
                    "it is not said how large the mould is", "write it as 300x80x65mm, 300x76mm, 12x95ml or 1.2 l");
        }
        if (FillText.mass(typed) instanceof Outcome.Ok<WrittenMass> mass) {
            return Outcome.refused(
                    mass.value() + " is how much to make, not how large the mould is",
                    "choose 'so much in the mould' and type it there, or write '" + mass.value()
                            + " water' if that is the water which fills it");
        }
        return FillText.mould(typed);
    }

    private static <T> Outcome<T> at(String field, Outcome<T> outcome) {
        return outcome instanceof Outcome.Ok
                ? outcome
                : new Outcome.Refused<>(outcome.problems().stream()
                        .map(problem -> new Problem(field, problem.what(), problem.remedy()))
                        .toList());
    }

    /** The sheet of a formula in place of the recipe's, filled alike. */
    static Outcome<MakingSheet> made(
            Formula formula, Purities purities, Fill fill, Equipment equipment, MakeChoice choice) {
        Outcome<ResolvedFormula> resolved = ResolvedFormula.of(formula, Tables.bundled(), purities);
        if (!(resolved instanceof Outcome.Ok<ResolvedFormula> ok)) {
            return ofRecipe(resolved.problems());
        }
        if (fill.target() instanceof Fill.AsWritten
                && ok.value().writtenOilsGrams().isEmpty()) {
            return Outcome.refused(new Problem(
                    MakeChoice.MUCH,
                    "the recipe is in percent, so it does not say how much to make",
                    "choose another way"));
        }
        Outcome<MakingSheet> sheet = MakingSheet.of(ok.value(), fill, equipment);
        return sheet instanceof Outcome.Ok
                ? sheet
                : new Outcome.Refused<>(sheet.problems().stream()
                        .map(problem -> problem.path().isEmpty()
                                ? new Problem(ruling(choice), problem.what(), problem.remedy())
                                : ofRecipe(problem))
                        .toList());
    }

    /** The field that a fill as a whole was asked for in. */
    private static String ruling(MakeChoice choice) {
        return choice.much().filter(Much::needsAmount).isPresent()
                ? MakeChoice.AMOUNT
                : choice.mouldIsTyped() ? MakeChoice.INSIDE : MakeChoice.MOULD;
    }

    private static <T> Outcome<T> ofRecipe(List<Problem> problems) {
        return new Outcome.Refused<>(problems.stream().map(Workbench::ofRecipe).toList());
    }

    /** What is wrong in the recipe is mended in the recipe: no field of this page is to blame. */
    private static Problem ofRecipe(Problem problem) {
        return new Problem("", problem.what(), problem.remedy());
    }
}
