package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.material.KeptMaterial;
import lyewright.records.material.OwnMaterials;
import lyewright.web.Answers;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.web.stores.MaterialKind.Family;

/** Materials of the maker's own: what kind first, then only what that kind needs. */
final class MaterialPages extends ThingPages<KeptMaterial, MaterialForm> {

    private final Tables tables = Tables.bundled();

    MaterialPages(Shop shop) {
        super(shop, Thing.MATERIAL);
    }

    private OwnMaterials door() {
        return shop().records().materials();
    }

    private List<OwnMaterial> kept() {
        return door().list().stream().map(KeptMaterial::material).toList();
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.post(Thing.MATERIAL.address() + "/shown", ctx -> {
            MaterialForm form = sent(ctx);
            MaterialShown shown = MaterialShown.of(form, MaterialReading.read(form, kept(), tables), tables);
            Answers.page(ctx, "stores/material-shown.jte", shown);
        });
        super.routes(routes);
    }

    @Override
    void openNew(Context ctx) {
        Optional<String> word = Optional.ofNullable(ctx.queryParam("kind"));
        Optional<String> key =
                Optional.ofNullable(ctx.queryParam("key")).map(k -> k.length() > 200 ? k.substring(0, 200) : k);
        Optional<MaterialKind> kind = word.map(w -> w.equals("tables") ? "" : w)
                .flatMap(MaterialKind::of)
                .or(() -> key.map(k -> MaterialKind.OF_TABLES));
        if (kind.isPresent()) {
            show(ctx, MaterialForm.empty(kind.get(), key.orElse("")), Standing.NEW, List.of());
        } else {
            Answers.page(ctx, "stores/kinds.jte", kinds());
        }
    }

    private KindsPage kinds() {
        Frame frame = shop().frame("A new material", Section.STORES).withStyle("stores.css");
        return new KindsPage(
                frame,
                "What is it?",
                List.of(
                        group("For the oils and the lye", kind -> kind.family() != Family.ADDITION),
                        group("Something added", kind -> kind.family() == Family.ADDITION)));
    }

    private static KindsPage.Group group(String label, Predicate<MaterialKind> belongs) {
        return new KindsPage.Group(
                label,
                Arrays.stream(MaterialKind.values())
                        .filter(belongs)
                        .map(kind -> new KindsPage.Kind(
                                kind.label(),
                                kind.what(),
                                Thing.MATERIAL.address() + "/new?kind="
                                        + (kind.word().isEmpty() ? "tables" : kind.word()),
                                Optional.empty()))
                        .toList());
    }

    @Override
    MaterialForm sent(Context ctx) {
        MaterialKind kind = MaterialKind.of(field(ctx, "kind")).orElse(MaterialKind.OTHER);
        return MaterialForm.sent(kind, name -> field(ctx, name));
    }

    @Override
    MaterialForm form(KeptMaterial kept) {
        return MaterialForm.of(kept.material());
    }

    @Override
    Outcome<KeptMaterial> save(Optional<String> id, MaterialForm form) {
        List<OwnMaterial> others = door().list().stream()
                .filter(kept -> !id.equals(Optional.of(kept.id())))
                .map(KeptMaterial::material)
                .toList();
        MaterialReading.Read read = MaterialReading.read(form, others, tables);
        if (read.material().isEmpty()) {
            return new Outcome.Refused<>(read.problems());
        }
        return id.isPresent()
                ? door().change(id.get(), read.material().get())
                : door().add(read.material().get());
    }

    @Override
    Outcome<KeptMaterial> restore(String id, KeptMaterial previous) {
        return door().change(id, previous.material());
    }

    @Override
    Optional<KeptMaterial> find(Records records, String id) {
        return records.materials().find(id);
    }

    @Override
    List<KeptMaterial> all() {
        return door().list();
    }

    @Override
    Outcome<KeptMaterial> remove(String id) {
        return door().remove(id);
    }

    @Override
    Outcome<KeptMaterial> putBack(String id) {
        return door().putBack(id);
    }

    @Override
    String idOf(KeptMaterial kept) {
        return kept.id();
    }

    @Override
    String nameTyped(MaterialForm form) {
        return form.key();
    }

    @Override
    String nameField() {
        return "key";
    }

    @Override
    String nameOf(KeptMaterial kept) {
        return kept.key();
    }

    @Override
    void show(Context ctx, MaterialForm form, Standing standing, List<Problem> problems) {
        String title = standing.isNew() || form.key().isBlank() ? form.kind().label() : form.key();
        Frame frame = shop().frame(title, Section.STORES).withStyle("stores.css");
        List<MaterialField> asked = asked(form);
        List<MaterialField> folded = folded(form, asked);
        Set<String> fields = new HashSet<>(Set.of("key"));
        asked.forEach(field -> fields.add(field.path()));
        folded.forEach(field -> fields.add(field.path()));
        FormHead head = head(frame, title, form, standing, problems, fields);
        answer(ctx, "stores/material.jte", page(head, form, asked, folded, problems), problems);
    }

    /** Of a material of the tables, what its own kind needs. */
    private List<MaterialField> asked(MaterialForm form) {
        if (form.kind() != MaterialKind.OF_TABLES) {
            return form.kind().asked();
        }
        return kindInTables(form).map(MaterialKind::asked).orElse(form.kind().asked());
    }

    private Optional<MaterialKind> kindInTables(MaterialForm form) {
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

    private List<MaterialField> folded(MaterialForm form, List<MaterialField> asked) {
        MaterialKind kind =
                form.kind() == MaterialKind.OF_TABLES ? kindInTables(form).orElse(form.kind()) : form.kind();
        List<MaterialField> folded = new ArrayList<>(kind.folded());
        folded.removeAll(asked);
        for (MaterialField field : MaterialField.values()) {
            if (form.says(field) && !asked.contains(field) && !folded.contains(field)) {
                folded.add(field);
            }
        }
        return folded;
    }

    private MaterialPage page(
            FormHead head,
            MaterialForm form,
            List<MaterialField> asked,
            List<MaterialField> folded,
            List<Problem> problems) {
        boolean ofTables = form.kind() == MaterialKind.OF_TABLES;
        boolean lye = form.kind() == MaterialKind.LYE;
        boolean acid = asked.contains(MaterialField.ACID) || folded.contains(MaterialField.ACID);
        TextField key = TextField.of(
                "key",
                ofTables ? "Its key in the tables" : "What recipes shall call it",
                ofTables ? "as in olive-virgin" : "as in house-olive",
                form.key());
        List<TextField> foldedFields =
                folded.stream().map(field -> textField(field, form, problems)).toList();
        return new MaterialPage(
                head,
                form.kind().word(),
                form.kind().label(),
                form.kind().what(),
                key.with(problems),
                asked.stream().map(field -> textField(field, form, problems)).toList(),
                foldedFields,
                folded.stream().anyMatch(form::says)
                        || foldedFields.stream().anyMatch(f -> !f.troubles().isEmpty()),
                lye ? form.alkali() : "",
                ofTables ? keys() : List.of(),
                acid ? List.copyOf(tables.acidNames()) : List.of(),
                MaterialShown.of(form, MaterialReading.read(form, kept(), tables), tables));
    }

    private List<String> keys() {
        Set<String> keys = new TreeSet<>();
        tables.oils().forEach(oil -> keys.add(oil.key()));
        tables.additives().forEach(add -> keys.add(add.key()));
        return List.copyOf(keys);
    }

    private static TextField textField(MaterialField field, MaterialForm form, List<Problem> problems) {
        TextField text = TextField.of(field.path(), field.label(), field.hint(), form.text(field))
                .with(problems);
        return text;
    }
}
