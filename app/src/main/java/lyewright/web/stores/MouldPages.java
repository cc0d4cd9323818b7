package lyewright.web.stores;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.picture.Drawing;
import lyewright.records.Records;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.KeptMould;
import lyewright.records.setting.Units;
import lyewright.web.Answers;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.TextField;

/** Moulds: what kind first, then only what that kind needs. */
final class MouldPages extends ThingPages<KeptMould, MouldForm> {

    MouldPages(Shop shop) {
        super(shop, Thing.MOULD);
    }

    private EquipmentRegister register() {
        return shop().records().equipment();
    }

    private RecipesByName recipes() {
        return new RecipesByName(shop().records().recipes());
    }

    private Units units() {
        return shop().workshop().units();
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.post(Thing.MOULD.address() + "/shown", ctx -> {
            MouldForm form = sent(ctx);
            Answers.page(ctx, "stores/mould-shown.jte", shown(form));
        });
        super.routes(routes);
    }

    private MouldShown shown(MouldForm form) {
        return MouldShown.of(form, MouldReading.read(form, recipes()), units());
    }

    @Override
    void openNew(Context ctx) {
        Optional<MouldKind> kind =
                MouldKind.of(Optional.ofNullable(ctx.queryParam("kind")).orElse(""));
        if (kind.isPresent()) {
            show(ctx, MouldForm.empty(kind.get()), Standing.NEW, List.of());
        } else {
            Answers.page(ctx, "stores/kinds.jte", kinds());
        }
    }

    private KindsPage kinds() {
        Frame frame = shop().frame("A new mould", Section.STORES).withStyle("stores.css");
        List<KindsPage.Kind> kinds = Arrays.stream(MouldKind.values())
                .map(kind -> new KindsPage.Kind(
                        kind.label(), kind.what(), Thing.MOULD.address() + "/new?kind=" + kind.word(), drawing(kind)))
                .toList();
        return new KindsPage(frame, "What kind of mould is it?", List.of(new KindsPage.Group("", kinds)));
    }

    private Optional<Drawing> drawing(MouldKind kind) {
        MouldForm example = new MouldForm(
                kind,
                "",
                kind.sizeExample(units()),
                kind.isCut() ? kind.barExample(units()) : "",
                "",
                "",
                "",
                "",
                "",
                "");
        return shown(example).picture().map(picture -> picture.drawing());
    }

    @Override
    MouldForm sent(Context ctx) {
        MouldKind kind = MouldKind.of(field(ctx, "kind")).orElse(MouldKind.LOAF);
        return MouldForm.sent(kind, name -> field(ctx, name));
    }

    @Override
    MouldForm form(KeptMould kept) {
        return MouldForm.of(kept, kept.measures().usual().map(recipes()::nameOf).orElse(""));
    }

    @Override
    Outcome<KeptMould> save(Optional<String> id, MouldForm form) {
        MouldReading.Read read = MouldReading.read(form, recipes());
        String name = form.name().strip();
        if (read.measures().isEmpty()) {
            List<Problem> all = new ArrayList<>();
            if (name.isEmpty()) {
                all.add(new Problem("name", "the mould's name is empty", "write a name"));
            }
            all.addAll(read.problems());
            return new Outcome.Refused<>(all);
        }
        Outcome<KeptMould> saved = id.isPresent()
                ? register().changeMould(id.get(), name, read.measures().get())
                : register().addMould(name, read.measures().get());
        return saved instanceof Outcome.Ok<KeptMould>
                ? saved
                : new Outcome.Refused<>(MouldReading.atFields(saved.problems()));
    }

    @Override
    Outcome<KeptMould> restore(String id, KeptMould previous) {
        return register().changeMould(id, previous.name(), previous.measures());
    }

    @Override
    Optional<KeptMould> find(Records records, String id) {
        return records.equipment().mould(id);
    }

    @Override
    List<KeptMould> all() {
        return register().moulds();
    }

    @Override
    Outcome<KeptMould> remove(String id) {
        return register().removeMould(id);
    }

    @Override
    Outcome<KeptMould> putBack(String id) {
        return register().putBackMould(id);
    }

    @Override
    String idOf(KeptMould kept) {
        return kept.id();
    }

    @Override
    String nameTyped(MouldForm form) {
        return form.name();
    }

    @Override
    String nameField() {
        return "name";
    }

    @Override
    String nameOf(KeptMould kept) {
        return kept.name();
    }

    @Override
    void show(Context ctx, MouldForm form, Standing standing, List<Problem> problems) {
        String title = standing.isNew() ? "A new mould: " + form.kind().label().toLowerCase(Locale.ROOT) : form.name();
        Frame frame =
                shop().frame(title.isBlank() ? "Mould" : title, Section.STORES).withStyle("stores.css");
        FormHead head = head(frame, title, form, standing, problems, MouldPage.FIELDS);
        answer(ctx, "stores/mould.jte", page(head, form, problems), problems);
    }

    private MouldPage page(FormHead head, MouldForm form, List<Problem> problems) {
        MouldKind kind = form.kind();
        boolean ounces = units() == Units.OUNCES;
        List<TextField> losses = new ArrayList<>(List.of(
                TextField.of(
                        "blade",
                        "A cut takes",
                        "of a wire nothing; of a saw perhaps " + (ounces ? "1/16 in" : "1.5 mm"),
                        form.blade()),
                TextField.of("ends", "Cut off each end", "", form.ends())));
        if (kind.hasTop()) {
            losses.add(TextField.of("trim", "Planed off the top", "", form.trim()));
        }
        List<TextField> fills = List.of(
                TextField.of(
                        "water",
                        "Water that fills it",
                        "fill it to the brim and weigh the water, as in " + (ounces ? "54.9 oz" : "1557 g"),
                        form.water()),
                TextField.of(
                        "usual",
                        "What it usually takes",
                        "batter in the mould, as in " + (ounces ? "56 oz" : "1580 g"),
                        form.usual()),
                TextField.of(
                        "usualOf",
                        "Measured with the recipe",
                        "its name; with a version if it was not the newest",
                        form.usualOf()));
        return new MouldPage(
                head,
                kind,
                TextField.of("name", "Name", "what you call it", form.name()).with(problems),
                TextField.of("size", kind.sizeLabel(), "as in " + kind.sizeExample(units()), form.size())
                        .with(problems),
                TextField.of("bar", kind == MouldKind.SLAB ? "A bar" : "A bar's thickness", barHint(kind), form.bar())
                        .with(problems),
                losses.stream().map(field -> field.with(problems)).toList(),
                fills.stream().map(field -> field.with(problems)).toList(),
                form.hasLosses(),
                form.hasFills() || kind == MouldKind.UNMEASURED,
                recipes().offered(),
                shown(form));
    }

    private String barHint(MouldKind kind) {
        return kind.isCut() ? "as in " + kind.barExample(units()) + "; leave it out if you do not cut by measure" : "";
    }
}
