package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Comments;
import lyewright.formula.Formula;
import lyewright.formula.MaterialNames;
import lyewright.formula.OwnMaterial;

/**
 * A formula as the texts of the editor's fields: everything that the file can say, as typed, right or wrong. Immutable.
 *
 * @param recipe its name
 * @param version its number; empty means 1
 * @param use own or sale; empty means own
 * @param notes free text, its lines ended by line feeds
 * @param oils each with its amount, in order; empty rows are passed over
 * @param alkali which, or how much, in one line; see {@link AlkaliLine}
 * @param superfat percent; empty where the alkali's mass is given
 * @param water in one line, such as {@code 34 % lye}
 * @param acids compensate or as written; empty means by the use
 * @param curedWater percent of the cured bar; empty means the usual
 * @param process how it is made
 * @param additions everything else, in the order of making
 * @param portions how the batter is shared
 * @param materials what the tables lack
 * @param asTables keys of materials that stay as the tables have them, though the workshop has figures of its own: a formula that
 *     was written without those keeps what it was reckoned with
 * @param remarks the remarks of the file it was read from; an addition's stand at the place that its row {@code was} at
 */
public record FormulaForm(
        String recipe,
        String version,
        String use,
        String notes,
        List<OilRow> oils,
        String alkali,
        String superfat,
        String water,
        String acids,
        String curedWater,
        ProcessFields process,
        List<AdditionRow> additions,
        List<PortionRow> portions,
        List<MaterialRow> materials,
        List<String> asTables,
        Comments remarks) {

    /** The most rows of a kind; the rest of a longer formula is edited as a file. */
    public static final int MOST_ROWS = 200;

    /** Copies its lists. */
    public FormulaForm {
        oils = List.copyOf(oils);
        additions = List.copyOf(additions);
        portions = List.copyOf(portions);
        materials = List.copyOf(materials);
        asTables = List.copyOf(asTables);
    }

    /** The form of a recipe that is not written yet: the usual superfat and lye, and room for some oils. */
    public static FormulaForm blank() {
        return new FormulaForm(
                "",
                "",
                "own",
                "",
                List.of(OilRow.EMPTY, OilRow.EMPTY, OilRow.EMPTY),
                "sodium",
                "5 %",
                "33 % lye",
                "",
                "",
                ProcessFields.EMPTY,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Comments.NONE);
    }

    /** The form that says what a formula says, materials by their keys. */
    public static FormulaForm of(Formula formula) {
        return FormOfFile.read(formula);
    }

    /** The form of what a browser sent; what is not there is empty. */
    public static FormulaForm from(Map<String, List<String>> parameters) {
        return FormFields.form(
                name -> {
                    List<String> values = parameters.getOrDefault(name, List.of());
                    return values.isEmpty() ? "" : values.get(values.size() - 1);
                },
                parameters.keySet());
    }

    /** Every field's name and text, in the order of the page; remarks, where there are some, as one field. */
    public Map<String, String> fields() {
        return FormFields.of(this);
    }

    /** The formula it comes to, or what is wrong with which field. */
    public FormRead read(MaterialNames names) {
        return new FormReading(this, names).read();
    }

    /** The same under another name. */
    FormulaForm called(String name) {
        return with(name, oils, additions, portions, materials);
    }

    /** The same with other oils. */
    FormulaForm withOils(List<OilRow> rows) {
        return with(recipe, rows, additions, portions, materials);
    }

    /** The same with other additions. */
    FormulaForm withAdditions(List<AdditionRow> rows) {
        return with(recipe, oils, rows, portions, materials);
    }

    /** The same with other portions. */
    FormulaForm withPortions(List<PortionRow> rows) {
        return with(recipe, oils, additions, rows, materials);
    }

    /** The same with other materials. */
    FormulaForm withMaterials(List<MaterialRow> rows) {
        return with(recipe, oils, additions, portions, rows);
    }

    /** The same with those materials in rows that another reading of it did not have so. */
    FormulaForm taking(List<OwnMaterial> others, List<OwnMaterial> had) {
        Map<String, MaterialRow> taken = new LinkedHashMap<>();
        others.stream()
                .filter(material -> !had.contains(material))
                .forEach(material -> taken.put(material.key(), FormOfFile.material(material)));
        List<MaterialRow> rows = new ArrayList<>();
        materials.forEach(row ->
                rows.add(Optional.ofNullable(taken.remove(row.key().strip())).orElse(row)));
        rows.addAll(taken.values());
        return withMaterials(rows);
    }

    private FormulaForm with(
            String otherRecipe,
            List<OilRow> otherOils,
            List<AdditionRow> otherAdditions,
            List<PortionRow> otherPortions,
            List<MaterialRow> otherMaterials) {
        return new FormulaForm(
                otherRecipe,
                version,
                use,
                notes,
                otherOils,
                alkali,
                superfat,
                water,
                acids,
                curedWater,
                process,
                otherAdditions,
                otherPortions,
                otherMaterials,
                asTables,
                remarks);
    }
}
