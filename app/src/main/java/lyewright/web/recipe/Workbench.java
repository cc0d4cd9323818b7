package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.MaterialNames;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.records.setting.Workshop;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.words.UnitsShown;

/** What the editor reckons with: the names that may be typed, the balances and the alkali at hand. Safe for several threads. */
final class Workbench {

    private static final double ONE_KILOGRAM = 1000;

    private final Shop shop;

    Workbench(Shop shop) {
        this.shop = shop;
    }

    /**
     * What a form comes to.
     *
     * @param read the form, with what is wrong
     * @param figures what it comes to, if it can be reckoned
     */
    record Reckoned(FormRead read, Optional<EditorFigures> figures) {}

    /** The names that may be typed. */
    MaterialNames names() {
        return shop.names();
    }

    /** What a form comes to; a recipe that has no name yet is reckoned all the same. */
    Reckoned reckon(FormRead read, Drafted drafted) {
        FormRead whole = named(read, drafted);
        if (whole.formula().isEmpty()) {
            return new Reckoned(read, Optional.empty());
        }
        Outcome<MakingSheet> sheet = sheet(whole.formula().get());
        UnitsShown units = WorkshopUnits.of(shop.workshop());
        return sheet instanceof Outcome.Ok<MakingSheet> ok
                ? new Reckoned(read, Optional.of(EditorFigures.of(ok.value(), whole.places(), units)))
                : new Reckoned(read.and(sheet.problems()), Optional.empty());
    }

    private FormRead named(FormRead read, Drafted drafted) {
        return read.problems().keySet().equals(Set.of("recipe")) && !drafted.isFile()
                ? drafted.form().called("a recipe").read(names())
                : read;
    }

    /** Of the fields, or of the file. */
    FormRead read(Drafted drafted) {
        return drafted.isFile()
                ? FileReading.read(drafted.file())
                : drafted.form().read(names());
    }

    /** The sheet whose figures are shown while somebody types. */
    Outcome<MakingSheet> sheet(Drafted drafted) {
        FormRead read = named(read(drafted), drafted);
        return read.formula()
                .map(this::sheet)
                .orElseGet(() -> new Outcome.Refused<>(
                        read.problems().values().stream().flatMap(List::stream).toList()));
    }

    private Outcome<MakingSheet> sheet(Formula formula) {
        Fill fill = formula.inMasses() ? Fill.AS_WRITTEN : Fill.oilMass(ONE_KILOGRAM);
        return ResolvedFormula.of(formula, Tables.bundled(), purities(shop.workshop()))
                .then(resolved -> MakingSheet.of(
                        resolved, fill, shop.records().equipment().equipment()));
    }

    private static Purities purities(Workshop workshop) {
        List<String> given = new ArrayList<>();
        workshop.sodiumPurity().ifPresent(purity -> given.add("naoh=" + purity));
        workshop.potassiumPurity().ifPresent(purity -> given.add("koh=" + purity));
        return given.isEmpty()
                ? Purities.ASSUMED
                : Purities.parse(String.join(",", given)) instanceof Outcome.Ok<Purities> ok
                        ? ok.value()
                        : Purities.ASSUMED;
    }
}
