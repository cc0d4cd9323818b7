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

    /** Of a material of the tables, what its own kind needs. */
    private List<MaterialField> whatIsAsked() {
        if (form.kind() != MaterialKind.OF_TABLES) {
            return form.kind().asked();
        }
        return kindInTables().map(MaterialKind::asked).orElse(form.kind().asked());
    }

    private Optional<MaterialKind> kindInTables() {
        String key = form.key().strip();
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
        MaterialKind kind =
                form.kind() == MaterialKind.OF_TABLES ? kindInTables().orElse(form.kind()) : form.kind();
        List<MaterialField> rest = new ArrayList<>(kind.folded());
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
                ofTables ? "as in olive-virgin" : "as in house-olive",
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
                folded.stream().anyMatch(form::says)
                        || foldedFields.stream().anyMatch(f -> !f.troubles().isEmpty()),
                lye ? form.alkali() : "",
                ofTables ? keys() : List.of(),
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
        return TextField.of(field.path(), field.label(), field.hint(), form.text(field))
                .with(problems);
    }
}
