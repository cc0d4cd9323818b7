package lyewright.web.stores;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.KeptJug;
import lyewright.records.setting.Units;
import lyewright.web.Frame;
import lyewright.web.Section;
import lyewright.web.Shop;
import lyewright.web.TextField;

/** Jugs and pots with their empty weights. */
final class JugPages extends ThingPages<KeptJug, JugForm> {

    private static final Map<String, String> FIELDS = Map.of("emptyWeight", "empty");

    JugPages(Shop shop) {
        super(shop, Thing.JUG);
    }

    private EquipmentRegister register() {
        return shop().records().equipment();
    }

    @Override
    void openNew(Context ctx) {
        show(ctx, JugForm.EMPTY, Standing.NEW, List.of());
    }

    @Override
    JugForm sent(Context ctx) {
        return new JugForm(field(ctx, "name"), field(ctx, "empty"), field(ctx, "use"));
    }

    @Override
    JugForm form(KeptJug kept) {
        return JugForm.of(kept);
    }

    @Override
    Outcome<KeptJug> save(Optional<String> id, JugForm form) {
        Outcome<KeptJug> saved = form.read()
                .then(jug -> id.isPresent()
                        ? register().changeJug(id.get(), jug.name(), jug.empty(), jug.use())
                        : register().addJug(jug.name(), jug.empty(), jug.use()));
        return saved instanceof Outcome.Ok<KeptJug>
                ? saved
                : new Outcome.Refused<>(saved.problems().stream()
                        .map(p -> new Problem(FIELDS.getOrDefault(p.path(), p.path()), p.what(), p.remedy()))
                        .toList());
    }

    @Override
    Outcome<KeptJug> restore(String id, KeptJug previous) {
        return register().changeJug(id, previous.name(), previous.emptyWeight(), previous.use());
    }

    @Override
    Optional<KeptJug> find(Records records, String id) {
        return records.equipment().jug(id);
    }

    @Override
    List<KeptJug> all() {
        return register().jugs();
    }

    @Override
    Outcome<KeptJug> remove(String id) {
        return register().removeJug(id);
    }

    @Override
    Outcome<KeptJug> putBack(String id) {
        return register().putBackJug(id);
    }

    @Override
    String idOf(KeptJug kept) {
        return kept.id();
    }

    @Override
    String nameTyped(JugForm form) {
        return form.name();
    }

    @Override
    String nameField() {
        return "name";
    }

    @Override
    String nameOf(KeptJug kept) {
        return kept.name();
    }

    @Override
    void show(Context ctx, JugForm form, Standing standing, List<Problem> problems) {
        String title = standing.isNew() || form.name().isBlank() ? "A jug or a pot" : form.name();
        boolean ounces = shop().workshop().units() == Units.OUNCES;
        Frame frame = shop().frame(title, Section.STORES).withStyle("stores.css");
        JugPage page = new JugPage(
                head(frame, title, form, standing, problems, JugPage.FIELDS),
                TextField.of("name", "Name", "what you call it, as in white jug", form.name())
                        .with(problems),
                TextField.of(
                                "empty",
                                "Its empty weight",
                                "empty and dry, as in " + (ounces ? "11.05 oz" : "312 g"),
                                form.empty())
                        .with(problems),
                form.use(),
                problems.stream()
                        .filter(p -> p.path().equals("use"))
                        .map(Problem::sentence)
                        .toList());
        answer(ctx, "stores/jug.jte", page, problems);
    }
}
