package lyewright.web.stores;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.web.TextField;

/** Lays a material's form out: only what its kind needs, the rest folded away. */
final class MaterialView {

    private final MaterialForm form;
    private final List<Problem> problems;
    private final Tables tables;
    private final List<MaterialField> asked;
    private final List<MaterialField> folded;

    MaterialView(MaterialForm form, List<Problem> problems, Tables tables) {
        this.form = form;
        this.problems = problems;
        this.tables = tables;
        this.asked = whatIsAsked();
        this.folded = whatIsFolded();
    }

    /** The paths that have a field of their own on the page. */
    Set<String> fields() {
        Set<String> fields = new HashSet<>(Set.of("key"));
        asked.forEach(field -> fields.add(field.path()));
        folded.forEach(field -> fields.add(field.path()));
        return fields;
    }

    /** The kind that a material of the tables is of, else that which was chosen. */
    private MaterialKind kind() {
        return form.kind() == MaterialKind.OF_TABLES
                ? kindInTables(form.key().strip(), tables).orElse(form.kind())
                : form.kind();
    }

    /** Of a material of the tables, what its own kind needs. */
    private List<MaterialField> whatIsAsked() {
        return kind().asked();
    }

    /** What a material of the tables is. */
    static Optional<MaterialKind> kindInTables(String key, Tables tables) {
        return tables.oil(key)
                .map(oil -> switch (oil.kind()) {
                    case TRIGLYCERIDE -> MaterialKind.OIL;
                    case WAX -> MaterialKind.WAX;
                    case FATTY_ACID -> MaterialKind.FATTY_ACID;
                })
                .or(() -> tables.additive(key)
                        .flatMap(add -> MaterialKind.of(add.kind().word())));
    }

    private List<MaterialField> whatIsFolded() {
        List<MaterialField> rest = new ArrayList<>(kind().folded());
        rest.removeAll(asked);
        for (MaterialField field : MaterialField.values()) {
            if (form.says(field) && !asked.contains(field) && !rest.contains(field)) {
                rest.add(field);
            }
        }
        return rest;
    }

    /** The page; the fields that are not asked for stand folded away, open where they say something. */
    MaterialPage page(FormHead head, MaterialShown shown) {
        boolean ofTables = form.kind() == MaterialKind.OF_TABLES;
        boolean lye = form.kind() == MaterialKind.LYE;
        boolean acid = asked.contains(MaterialField.ACID) || folded.contains(MaterialField.ACID);
        TextField key = TextField.of(
                "key",
                ofTables ? "Its key in the tables" : "What recipes shall call it",
                form.kind().example(),
                form.key());
        List<TextField> foldedFields =
                folded.stream().map(field -> textField(field)).toList();
        return new MaterialPage(
                head,
                form.kind().word(),
                form.kind().label(),
                form.kind().what(),
                key.with(problems),
                asked.stream().map(field -> textField(field)).toList(),
                foldedFields,
                (ofTables && asked.stream().noneMatch(MaterialField::isFigure))
                        || folded.stream().anyMatch(form::says)
                        || foldedFields.stream().anyMatch(f -> !f.troubles().isEmpty()),
                lye ? form.alkali() : "",
                ofTables && !tables.has(form.key().strip()) ? keys() : List.of(),
                ofTables && tables.has(form.key().strip()),
                acid ? List.copyOf(tables.acidNames()) : List.of(),
                shown);
    }

    private List<String> keys() {
        Set<String> keys = new TreeSet<>();
        tables.oils().forEach(oil -> keys.add(oil.key()));
        tables.additives().forEach(add -> keys.add(add.key()));
        return List.copyOf(keys);
    }

    private TextField textField(MaterialField field) {
        String hint = field == MaterialField.DENSITY ? kind().exampleOfDensity() : field.hint();
        return TextField.of(field.path(), field.label(), hint, form.text(field)).with(problems);
    }
}
