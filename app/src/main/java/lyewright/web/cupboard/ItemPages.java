package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.formula.MaterialNames;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.NamedMaterials;
import lyewright.records.stock.StockItem;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.OpenedIn;
import lyewright.web.Refused;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Labelled;
import lyewright.words.Sentences;

/** Stocked materials: one with its lots, and the form of one. */
final class ItemPages implements Feature {

    private static final String ALL = "/stores/cupboard";
    private static final String ONE = ALL + "/{id}";

    private final Shop shop;

    ItemPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(ALL + "/new", ctx -> form(ctx, ItemForm.empty(), Optional.empty(), List.of()));
        routes.post(ALL, ctx -> save(ctx, Optional.empty()));
        routes.get(ONE, ctx -> Answers.page(ctx, "cupboard/item.jte", new ItemView(shop).page(item(ctx))));
        routes.get(ONE + "/edit", ctx -> form(ctx, ItemForm.of(item(ctx)), Optional.of(item(ctx)), List.of()));
        routes.post(ONE, ctx -> save(ctx, Optional.of(item(ctx))));
        routes.post(ONE + "/remove", this::remove);
        routes.post(ONE + "/put-back", this::putBack);
    }

    private StockItem item(Context ctx) {
        String id = ctx.pathParam("id");
        return shop.records()
                .items()
                .find(id)
                .orElseThrow(() -> shop.notHere(
                        "material",
                        records -> records.items().find(id).isPresent(),
                        "There is no such material in the cupboard.",
                        "Go back to the cupboard."));
    }

    private void save(Context ctx, Optional<StockItem> before) {
        ItemForm form = ItemForm.sent(ctx);
        if (before.isEmpty()) {
            OpenedIn.check(ctx, shop);
        }
        Outcome<StockItem> saved = form.read().then(said -> kept(before, said));
        if (saved instanceof Outcome.Ok<StockItem> ok) {
            Answers.seeOther(ctx, ALL + "/" + ok.value().id());
        } else {
            form(ctx, form, before, saved.problems());
        }
    }

    private Outcome<StockItem> kept(Optional<StockItem> before, ItemSaid said) {
        return Typed.kept(() -> before.isPresent()
                ? shop.records().items().change(new StockItem(before.get().id(), said))
                : shop.records().items().add(named(said)));
    }

    /** What the tables know by that very name is called so in recipes too, unless another name was typed. */
    private ItemSaid named(ItemSaid said) {
        if (said.identity().materialKey().isPresent()) {
            return said;
        }
        return new NamedMaterials(shop.names())
                .of(said.name())
                .one()
                .filter(known -> known.kind() == said.kind())
                .flatMap(known -> known.identity().materialKey())
                .map(said::calledInRecipes)
                .orElse(said);
    }

    private void remove(Context ctx) {
        StockItem item = item(ctx);
        if (shop.records().lots().of(item.id()).stream().anyMatch(lot -> lot.left() != 0)) {
            throw new Refused(
                    409,
                    "There is some of " + item.name() + " left, so it stays in the cupboard.",
                    "Use its lots up, or write down what became of them.");
        }
        shop.records().items().remove(item.id());
        Answers.seeOther(ctx, ALL + "?removed=" + item.id());
    }

    private void putBack(Context ctx) {
        Outcome<StockItem> back = shop.records().items().putBack(item(ctx).id());
        if (back instanceof Outcome.Ok<StockItem> ok) {
            Answers.seeOther(ctx, ALL + "/" + ok.value().id());
            return;
        }
        Problem problem = back.problems().get(0);
        throw new Refused(409, Sentences.whole(problem.what()), Sentences.whole(problem.remedy()));
    }

    private void form(Context ctx, ItemForm form, Optional<StockItem> of, List<Problem> problems) {
        String title = of.map(StockItem::name).orElse("Something for the cupboard");
        Frame frame = CupboardFrame.of(shop, title);
        String back = of.map(item -> ALL + "/" + item.id()).orElse(ALL);
        List<TextField> identity = Stream.of(
                        TextField.of("inci", "INCI name", "as on its label or safety sheet", form.inci()),
                        TextField.of("cas", "CAS number", "", form.cas()),
                        TextField.of("species", "Plant", "its botanical name", form.species()),
                        TextField.of("part", "Part of the plant", "leaf, flower, peel, seed", form.part()),
                        TextField.of(
                                "productCode",
                                "Product code",
                                "of who sells it, where it has no CAS number",
                                form.productCode()),
                        TextField.of(
                                "certificateVersion",
                                "Certificate's version",
                                "such as IFRA 51",
                                form.certificateVersion()))
                .map(field -> field.with(problems))
                .toList();
        ItemFormPage page = new ItemFormPage(
                frame,
                title,
                back,
                back,
                TextField.of("name", "Name", "what you call it", form.name()).with(problems),
                form.kind(),
                Stream.of(ItemKind.values())
                        .map(kind -> new Labelled(kind.word(), Sentences.upperFirst(kind.word())))
                        .toList(),
                TextField.of(
                                "material",
                                "What recipes call it",
                                "so that a recipe finds its lots; empty for boxes and labels",
                                form.material())
                        .with(problems),
                identity,
                TextField.of(
                                "reorder",
                                "Buy more when less is left than",
                                "such as 500 g, or 50 for what is counted",
                                form.reorder())
                        .with(problems),
                TextField.of(
                                "spoons",
                                "What my spoons hold of it",
                                "level, one on a line, as in teaspoon: 2.1 g",
                                form.spoons())
                        .with(problems),
                TextField.of("notes", "Notes", "", form.notes()).with(problems),
                known(),
                problems.stream()
                        .filter(problem -> List.of("", "kind", "counting").contains(problem.path()))
                        .map(Sentences::whole)
                        .toList(),
                "/stores/alike?of=name&id=" + of.map(StockItem::id).orElse(""),
                identity.stream()
                        .anyMatch(field ->
                                !field.value().isEmpty() || !field.troubles().isEmpty()),
                form.sure()
                        || problems.stream()
                                .anyMatch(problem -> problem.remedy().contains("tick below")),
                form.sure());
        if (problems.isEmpty()) {
            Answers.page(ctx, "cupboard/item-form.jte", page);
        } else {
            Answers.form(ctx, "cupboard/item-form.jte", page);
        }
    }

    private List<Labelled> known() {
        MaterialNames names = shop.names();
        return Stream.concat(
                        Stream.of(
                                new Labelled(Meant.SODIUM, "Sodium hydroxide"),
                                new Labelled(Meant.POTASSIUM, "Potassium hydroxide")),
                        Stream.of(MaterialNames.Place.values())
                                .flatMap(place -> names.all(place).stream())
                                .map(named -> new Labelled(named.key(), named.name())))
                .distinct()
                .toList();
    }
}
