package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.material.KeptMaterial;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.stock.LotStatus;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.OpenedIn;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.web.recipe.RecipeSheet;
import lyewright.words.Labelled;
import lyewright.words.Sentences;

/** Stock lye and premixed oils: lots that are made here of other lots. */
final class MadePages implements Feature {

    static final String ADDRESS = "/stores/made";

    private static final int PARTS = 5;

    private final Shop shop;

    MadePages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(
                ADDRESS + "/new",
                ctx -> show(
                        ctx,
                        MadeForm.empty(PARTS, LocalDate.now(shop.clock())),
                        UUID.randomUUID().toString(),
                        List.of()));
        routes.post(ADDRESS, this::make);
    }

    private void make(Context ctx) {
        MadeForm form = MadeForm.sent(ctx, PARTS);
        String token = Typed.line(ctx, "token");
        OpenedIn.check(ctx, shop);
        Records records = shop.records();
        Outcome<MadeForm.Read> read = form.read(
                records.items().list(),
                records.materials().list().stream().map(KeptMaterial::material).toList(),
                lots(),
                RecipeSheet.purities(shop.workshop()),
                LocalDate.now(shop.clock()));
        Outcome<Optional<KeptLot>> made = read.then(
                ready -> Typed.kept(() -> records.lots().make(records.author(), token, ready.made(), ready.from())));
        if (made instanceof Outcome.Ok<Optional<KeptLot>> ok) {
            ok.value().flatMap(lot -> lot.said().certificate()).ifPresent(this::nameForRecipes);
            Answers.seeOther(ctx, ok.value().map(lot -> LotDone.made(lot.id())).orElse("/stores/cupboard?made=0"));
        } else {
            show(
                    ctx,
                    form,
                    token,
                    made.problems().stream().map(MadeForm::onTheForm).toList());
        }
    }

    /** So that recipes can name it from now on; one of the maker's own of that name is left as it is. */
    private void nameForRecipes(OwnMaterial made) {
        if (shop.records().materials().findKey(made.key()).isEmpty()) {
            // what this lot's certificates say stays with the lot
            shop.records().materials().add(made.bySharesAlone());
        }
    }

    private Map<String, KeptLot> lots() {
        return shop.records().lots().held().stream().collect(Collectors.toMap(KeptLot::id, Function.identity()));
    }

    private void show(Context ctx, MadeForm form, String token, List<Problem> problems) {
        MadePage page = new MadePage(
                CupboardFrame.of(shop, "Made here"),
                token,
                TextField.of(
                                "name",
                                "What it is",
                                "what recipes will call it, as in stock-lye or house-blend",
                                form.name())
                        .with(problems),
                IntStream.range(0, PARTS)
                        .mapToObj(i -> new MadePage.Part(
                                i + 1,
                                form.parts().get(i).lot(),
                                TextField.of(
                                                "from." + i + ".amount",
                                                "How much of it",
                                                "",
                                                form.parts().get(i).amount())
                                        .with(problems)))
                        .toList(),
                choices(),
                TextField.of("water", "Water", "for stock lye: how much; empty for oils", form.water())
                        .with(problems),
                TextField.of("day", "Made on", "", form.day()).with(problems),
                TextField.of(
                                "bestBefore",
                                "Best before",
                                "of oils, left empty: the earliest of what goes in",
                                form.bestBefore())
                        .with(problems),
                DeliveryPage.Ask.of(form.far(), "bestBefore", DeliveryReading.FAR, problems),
                form.sure()
                        || problems.stream().anyMatch(problem -> problem.path().equals("sure")),
                form.sure(),
                problems.stream()
                        .filter(problem -> MadeForm.hasNoField(problem.path()))
                        .map(Sentences::whole)
                        .toList());
        if (problems.isEmpty()) {
            Answers.page(ctx, "cupboard/made.jte", page);
        } else {
            Answers.form(ctx, "cupboard/made.jte", page);
        }
    }

    private List<Labelled> choices() {
        Units units = shop.workshop().units();
        Map<String, StockItem> items =
                shop.records().items().list().stream().collect(Collectors.toMap(StockItem::id, Function.identity()));
        List<Labelled> choices = new ArrayList<>(List.of(new Labelled("", "choose a lot")));
        for (KeptLot lot : shop.records().lots().held()) {
            StockItem item = items.get(lot.itemId());
            if (item != null && lot.said().status() == LotStatus.USABLE && MadeForm.canBePart(item.said(), lot)) {
                choices.add(new Labelled(
                        lot.id(),
                        item.name() + ", lot " + lot.said().ownCode() + ", "
                                + Amounts.said(Counting.MASS, lot.left(), units)));
            }
        }
        return choices;
    }
}
