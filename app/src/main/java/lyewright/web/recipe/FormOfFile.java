package lyewright.web.recipe;

import static lyewright.web.recipe.YamlTexts.map;
import static lyewright.web.recipe.YamlTexts.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import lyewright.formula.Comments;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnFigures;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;

/** The form of a formula: the texts of its file, each in its field. */
final class FormOfFile {

    private final Map<String, Object> file;

    private FormOfFile(Map<String, Object> file) {
        this.file = file;
    }

    static FormulaForm read(Formula formula) {
        return new FormOfFile(YamlTexts.read(FormulaFile.write(formula))).form(asTables(formula), formula.comments());
    }

    /** The row of one of the maker's own materials. */
    static MaterialRow material(OwnMaterial own) {
        return read(own.alone()).materials().get(0);
    }

    /** What the formula names of the tables and does not carry. */
    private static List<String> asTables(Formula formula) {
        Set<String> carried = formula.materials().stream().map(OwnMaterial::key).collect(Collectors.toSet());
        return OwnFigures.named(formula).stream()
                .filter(key -> !carried.contains(key) && Tables.bundled().has(key))
                .toList();
    }

    private FormulaForm form(List<String> asTables, Comments remarks) {
        Map<String, Object> process = map(file.get("process"));
        return new FormulaForm(
                text(file, "recipe"),
                text(file, "version"),
                text(file, "use"),
                text(file, "notes"),
                rows("oils", OilRow::new),
                AlkaliLine.print(file.get("alkali")),
                text(file, "superfat"),
                text(file, "water"),
                text(file, "acids"),
                text(file, "cured water"),
                new ProcessFields(
                        text(process, "make"),
                        text(process, "oils"),
                        text(process, "lye"),
                        text(process, "oven"),
                        text(process, "pour")),
                additions(),
                rows("portions", PortionRow::new),
                materials(),
                asTables,
                remarks);
    }

    private <T> List<T> rows(String group, BiFunction<String, String, T> row) {
        List<T> rows = new ArrayList<>();
        map(file.get(group)).forEach((name, amount) -> rows.add(row.apply(name, String.valueOf(amount))));
        return rows;
    }

    private List<AdditionRow> additions() {
        List<AdditionRow> rows = new ArrayList<>();
        if (file.get("additions") instanceof List<?> list) {
            for (Object item : list) {
                Map<String, Object> addition = map(item);
                Map<String, Object> disperse = map(addition.get("disperse"));
                rows.add(new AdditionRow(
                        text(addition, "of"),
                        text(addition, "amount"),
                        text(addition, "stage"),
                        text(disperse, "in"),
                        text(disperse, "ratio"),
                        text(disperse, "ahead"),
                        text(addition, "replaces"),
                        Integer.toString(rows.size())));
            }
        }
        return rows;
    }

    private List<MaterialRow> materials() {
        List<MaterialRow> rows = new ArrayList<>();
        map(file.get("materials")).forEach((key, value) -> {
            Map<String, String> said = new LinkedHashMap<>();
            map(value)
                    .forEach((word, text) ->
                            said.put(word, word.equals(MaterialRow.OILS) ? blend(map(text)) : String.valueOf(text)));
            rows.add(new MaterialRow(key, said));
        });
        return rows;
    }

    private static String blend(Map<String, Object> oils) {
        List<String> lines = new ArrayList<>();
        oils.forEach((oil, share) -> lines.add(oil + ": " + share));
        return String.join("\n", lines);
    }
}
