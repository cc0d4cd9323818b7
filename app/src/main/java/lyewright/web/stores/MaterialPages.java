package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lyewright.formula.MaterialNames;
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
            Answers.page(ctx, "stores/material-shown.jte", shown(sent(ctx)));
        });
        super.routes(routes);
    }

    private MaterialShown shown(MaterialForm form) {
        return MaterialShown.of(form, MaterialReading.read(form, kept(), tables), tables);
    }

    @Override
    void openNew(Context ctx) {
        Optional<String> word = Optional.ofNullable(ctx.queryParam("kind"));
        Optional<String> key =
                Optional.ofNullable(ctx.queryParam("key")).map(k -> k.length() > 200 ? k.substring(0, 200) : k);
        Optional<MaterialKind> kind = word.map(w -> w.equals("tables") ? "" : w)
                .flatMap(MaterialKind::of)
                .or(() -> key.map(k -> MaterialKind.OF_TABLES));
        if (kind.equals(Optional.of(MaterialKind.OF_TABLES))
                && !key.map(tables::has).orElse(false)) {
            which(ctx, key.orElse("").strip());
        } else if (kind.isPresent()) {
            show(ctx, MaterialForm.empty(kind.get(), key.orElse("")), Standing.NEW, List.of());
        } else {
            Answers.page(ctx, "stores/kinds.jte", kinds());
        }
    }

    /** Which of the tables' materials: a name that is one's leads on, one of several is asked about. */
    private void which(Context ctx, String typed) {
        MaterialNames names = MaterialNames.of(tables);
        List<MaterialNames.Named> meant = typed.isEmpty() ? List.of() : names.meant(typed);
        boolean sure = Arrays.stream(MaterialNames.Place.values())
                .anyMatch(place -> names.key(typed, place) instanceof Outcome.Ok);
        if (sure && meant.size() == 1) {
            show(ctx, MaterialForm.empty(MaterialKind.OF_TABLES, meant.get(0).key()), Standing.NEW, List.of());
            return;
        }
        Frame frame = shop().frame("Which material is it?", Section.STORES).withStyle("stores.css");
        Answers.page(ctx, "stores/which.jte", WhichPage.of(frame, typed, meant, names));
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

    private String title(MaterialForm form, Standing standing) {
        if (form.kind() == MaterialKind.OF_TABLES && tables.has(form.key().strip())) {
            return MaterialNames.of(tables).name(form.key().strip()).orElse(form.key());
        }
        return standing.isNew() || form.key().isBlank() ? form.kind().label() : form.key();
    }

    @Override
    void show(Context ctx, MaterialForm form, Standing standing, List<Problem> problems) {
        String title = title(form, standing);
        Frame frame = shop().frame(title, Section.STORES).withStyle("stores.css");
        MaterialView view = new MaterialView(form, problems, tables);
        FormHead head = head(frame, title, form, standing, problems, view.fields());
        answer(ctx, "stores/material.jte", view.page(head, shown(form)), problems);
    }
}
