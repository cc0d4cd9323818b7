package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.Supplier;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Notice;
import lyewright.web.OpenedIn;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Sentences;

/** Who sells materials. */
final class SupplierPages implements Feature {

    private static final String ALL = "/stores/suppliers";
    private static final String ONE = ALL + "/{id}";

    private static final String REMOVED = "removed";
    private static final String BACK = "back";
    private static final String STAYS_OUT = "stays-out";

    private final Shop shop;

    SupplierPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ALL, ctx -> show(ctx, new Supplier("", "", "", ""), List.of()));
        routes.post(ALL, ctx -> save(ctx, Optional.empty()));
        routes.get(ONE, ctx -> show(ctx, supplier(ctx), List.of()));
        routes.post(ONE, ctx -> save(ctx, Optional.of(supplier(ctx))));
        routes.post(ONE + "/remove", ctx -> {
            shop.records().suppliers().remove(supplier(ctx).id());
            Answers.seeOther(ctx, ALL + "?" + REMOVED + "=" + ctx.pathParam("id"));
        });
        routes.post(ONE + "/put-back", this::putBack);
    }

    private void putBack(Context ctx) {
        Supplier supplier = supplier(ctx);
        Outcome<Supplier> back = Typed.kept(() -> shop.records().suppliers().putBack(supplier.id()));
        Answers.seeOther(ctx, ALL + "?" + (back instanceof Outcome.Ok ? BACK : STAYS_OUT) + "=" + supplier.id());
    }

    private Supplier supplier(Context ctx) {
        String id = ctx.pathParam("id");
        return shop.records()
                .suppliers()
                .find(id)
                .orElseThrow(() -> shop.notHere(
                        "supplier",
                        records -> records.suppliers().find(id).isPresent(),
                        "There is no such supplier.",
                        "Go back to the suppliers."));
    }

    private void save(Context ctx, Optional<Supplier> before) {
        Supplier typed = new Supplier(
                before.map(Supplier::id).orElse(""),
                Typed.line(ctx, "name").strip(),
                Typed.line(ctx, "contact").strip(),
                Typed.line(ctx, "notes").strip());
        if (before.isEmpty()) {
            OpenedIn.check(ctx, shop);
        }
        Outcome<Supplier> saved = Typed.kept(() -> typed.id().isEmpty()
                ? shop.records().suppliers().add(typed.name(), typed.contact(), typed.notes())
                : shop.records().suppliers().change(typed));
        if (saved instanceof Outcome.Ok) {
            Answers.seeOther(ctx, ALL);
        } else {
            show(ctx, typed, saved.problems());
        }
    }

    private void show(Context ctx, Supplier typed, List<Problem> problems) {
        boolean fresh = typed.id().isEmpty();
        Frame frame = CupboardFrame.of(shop, "Suppliers");
        SuppliersPage page = new SuppliersPage(
                told(ctx).map(frame::telling).orElse(frame),
                shop.records().suppliers().list().stream()
                        .map(one ->
                                new SuppliersPage.Line(one.name(), ALL + "/" + one.id(), one.contact(), one.notes()))
                        .toList(),
                new SuppliersPage.Form(
                        fresh ? "Add a supplier" : typed.name(),
                        fresh ? ALL : ALL + "/" + typed.id(),
                        fresh,
                        TextField.of("name", "Name", "", typed.name()).with(problems),
                        TextField.of("contact", "How to reach them", "address, telephone, web", typed.contact())
                                .with(problems),
                        TextField.of("notes", "Notes", "", typed.notes()).with(problems),
                        problems.stream()
                                .filter(problem -> problem.path().isEmpty())
                                .map(Sentences::whole)
                                .toList(),
                        fresh ? "" : ALL + "/" + typed.id() + "/remove"));
        if (problems.isEmpty()) {
            Answers.page(ctx, "cupboard/suppliers.jte", page);
        } else {
            Answers.form(ctx, "cupboard/suppliers.jte", page);
        }
    }

    /** What has just been done, as the address says. */
    private Optional<Notice> told(Context ctx) {
        return named(ctx, REMOVED)
                .map(gone -> out(gone, gone.name() + " is out of the list; lots go on naming them."))
                .or(() -> named(ctx, BACK).map(back -> Notice.of(back.name() + " is in the list again.")))
                .or(() -> named(ctx, STAYS_OUT)
                        .map(gone -> out(
                                gone,
                                gone.name()
                                        + " stays out of the list: another is called so by now. Give that one another"
                                        + " name first, then put this one back; lots go on naming it meanwhile.")));
    }

    private Optional<Supplier> named(Context ctx, String what) {
        return Optional.ofNullable(ctx.queryParam(what))
                .flatMap(id -> shop.records().suppliers().find(id));
    }

    private static Notice out(Supplier gone, String sentence) {
        return Notice.withUndo(sentence, "Put it back", ALL + "/" + gone.id() + "/put-back");
    }
}
