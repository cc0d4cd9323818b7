package lyewright.web.start;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.records.Records;
import lyewright.records.material.OwnMaterials;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.recipe.Search;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.web.Shop;

/**
 * Fills the demo workshop, Gannet Stair Soap in Port Ellery, through the same doors as a maker's own. Everything in it is
 * invented, and its recipes say so.
 */
public final class DemoWorkshop {

    /** What it is called. */
    public static final String NAME = "Gannet Stair Soap";

    private DemoWorkshop() {}

    /**
     * Puts in whatever is not there yet. Its name comes last, so that what was not finished, as when the disk was full, is
     * filled up the next time.
     *
     * @param records those of the demo workshop
     */
    public static void fill(Records records) {
        materials(records.materials());
        recipes(records.recipes());
        new DemoEquipment(records).fill();
        new DemoStock(records, LocalDate.now(ZoneId.systemDefault())).fill();
        new DemoDocuments(records).fill();
        records.settings().save(settings()).orThrow();
    }

    /** Those that its recipes name, one of them with a certificate. */
    private static void materials(OwnMaterials materials) {
        for (DemoRecipes recipe : DemoRecipes.values()) {
            recipe.newest().materials().stream()
                    .filter(material -> materials.findKey(material.key()).isEmpty())
                    .forEach(material -> materials.add(material).orThrow());
        }
    }

    private static void recipes(RecipeBook book) {
        Set<String> there = book.list(Search.all(1, Search.LARGEST_PAGE)).items().stream()
                .map(RecipeSummary::name)
                .collect(Collectors.toSet());
        for (DemoRecipes recipe : DemoRecipes.values()) {
            if (!there.contains(recipe.newest().recipe())) {
                recipe.keep(book);
            }
        }
    }

    private static Workshop settings() {
        Workshop usual = Shop.usual(NAME, Units.GRAMS);
        return new Workshop(
                usual.name(),
                usual.units(),
                usual.degrees(),
                usual.currency(),
                usual.market(),
                usual.paper(),
                Optional.of("98.6 ± 0.4"),
                Optional.of("90 ± 1"),
                usual.holdBack());
    }
}
