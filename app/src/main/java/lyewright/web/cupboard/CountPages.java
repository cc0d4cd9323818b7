package lyewright.web.cupboard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.records.store.NameOrder;
import lyewright.stock.SaidAmount;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.OpenedIn;
import lyewright.web.Shop;
import lyewright.web.TextField;
import lyewright.words.Sentences;

/** Counting the cupboard: what is left empty was not counted. */
final class CountPages implements Feature {

    private static final String ADDRESS = "/stores/count";

    /** Of the material that was looked for. */
    private static final String FOUND = "found";

    private static final int MOST_FOUND = 20;

    /** A difference of less than this share of what the book says is told by nobody; our own choice. */
    private static final double SMALL = 0.02;

    private final Shop shop;

    CountPages(Shop shop) {
        this.shop = shop;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get(
                ADDRESS,
                ctx -> show(
                        ctx,
                        UUID.randomUUID().toString(),
                        Optional.ofNullable(ctx.queryParam(FOUND)).orElse("").strip(),
                        Map.of(),
                        List.of()));
        routes.post(ADDRESS, this::count);
    }

    private Map<String, StockItem> items() {
        return shop.records().items().list().stream().collect(Collectors.toMap(StockItem::id, Function.identity()));
    }

    /** What holds something by the book, and the emptied lots of what was found again. */
    private List<KeptLot> lots(String found) {
        List<KeptLot> lots = new ArrayList<>(shop.records().lots().held());
        lots.addAll(emptied(found));
        return lots;
    }

    private List<KeptLot> emptied(String found) {
        String looked = NameOrder.folded(found);
        return looked.isBlank()
                ? List.of()
                : shop.records().items().list().stream()
                        .filter(item -> NameOrder.folded(item.name()).contains(looked))
                        .limit(MOST_FOUND)
                        .flatMap(item -> shop.records().lots().of(item.id()).stream())
                        .filter(lot -> lot.left() == 0)
                        .sorted(Comparator.comparing((KeptLot lot) -> lot.said().received())
                                .reversed())
                        .limit(MOST_FOUND)
                        .toList();
    }

    private void show(Context ctx, String token, String found, Map<String, String> typed, List<Problem> problems) {
        Map<String, StockItem> items = items();
        Units units = shop.workshop().units();
        List<CountPage.Line> lines = lots(found).stream()
                .filter(lot -> items.containsKey(lot.itemId()))
                .sorted(Comparator.comparing((KeptLot lot) -> name(items, lot))
                        .thenComparing(lot -> lot.said().ownCode()))
                .map(lot -> new CountPage.Line(
                        lot.id() + ".called",
                        name(items, lot),
                        lot.said().ownCode(),
                        Amounts.said(counting(items, lot), lot.left(), units),
                        TextField.of(
                                        lot.id() + ".counted",
                                        "There is",
                                        "",
                                        typed.getOrDefault(lot.id() + ".counted", ""))
                                .with(problems),
                        TextField.of(
                                        lot.id() + ".why",
                                        "What explains it",
                                        "",
                                        typed.getOrDefault(lot.id() + ".why", ""))
                                .with(problems)))
                .toList();
        CountPage page = new CountPage(
                CupboardFrame.of(shop, "Count the cupboard"),
                token,
                lines,
                found,
                found.isEmpty() || !emptied(found).isEmpty()
                        ? ""
                        : "No lot of “" + found + "” is used up. What never came is received as a delivery.",
                problems.size(),
                problems.stream()
                        .filter(problem -> problem.path().isEmpty())
                        .map(Sentences::whole)
                        .toList());
        if (problems.isEmpty()) {
            Answers.page(ctx, "cupboard/count.jte", page);
        } else {
            Answers.form(ctx, "cupboard/count.jte", page);
        }
    }

    private static String name(Map<String, StockItem> items, KeptLot lot) {
        return Optional.ofNullable(items.get(lot.itemId())).map(StockItem::name).orElse("");
    }

    private static Counting counting(Map<String, StockItem> items, KeptLot lot) {
        return Optional.ofNullable(items.get(lot.itemId())).orElseThrow().said().counting();
    }

    private void count(Context ctx) {
        OpenedIn.check(ctx, shop);
        String token = Typed.line(ctx, "token");
        Map<String, StockItem> items = items();
        Map<String, String> typed = new LinkedHashMap<>();
        Map<String, Long> counted = new LinkedHashMap<>();
        Map<String, String> why = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        String found = Typed.line(ctx, FOUND).strip();
        for (KeptLot lot : lots(found)) {
            String said = Typed.line(ctx, lot.id() + ".counted");
            String because = Typed.line(ctx, lot.id() + ".why").strip();
            typed.put(lot.id() + ".counted", said);
            typed.put(lot.id() + ".why", because);
            StockItem item = items.get(lot.itemId());
            if (!said.isBlank() && item != null) {
                Outcome<SaidAmount> read = DeliveryReading.amount(said, Optional.of(item.said()));
                read.problems().forEach(problem -> problems.add(problem.within(lot.id() + ".counted")));
                if (read instanceof Outcome.Ok<SaidAmount> ok) {
                    counted.put(lot.id(), ok.value().amount());
                    why.put(lot.id(), because);
                    unexplained(lot, ok.value().amount(), because).ifPresent(problems::add);
                }
            }
        }
        if (problems.isEmpty() && counted.isEmpty()) {
            problems.add(new Problem("", "nothing was counted", "write what there is beside at least one lot"));
        }
        Outcome<List<Long>> done = problems.isEmpty() ? kept(token, counted, why) : new Outcome.Refused<>(problems);
        if (done instanceof Outcome.Ok<List<Long>> ok) {
            Answers.seeOther(ctx, "/stores/cupboard?counted=" + ok.value().size());
        } else {
            show(ctx, token, found, typed, done.problems());
        }
    }

    /** What is gone, or came from nowhere, needs a word; what sticks to a tub does not. */
    private static Optional<Problem> unexplained(KeptLot lot, long counted, String why) {
        boolean small = Math.abs(counted - lot.left()) <= SMALL * Math.abs(lot.left());
        return small || !why.isEmpty()
                ? Optional.empty()
                : Optional.of(new Problem(
                        lot.id() + ".why",
                        "that is not what the book says, and nothing explains it",
                        "write what may have happened; “do not know” will do"));
    }

    private Outcome<List<Long>> kept(String token, Map<String, Long> counted, Map<String, String> why) {
        return Typed.kept(() -> {
            Outcome<List<Long>> done =
                    shop.records().lots().count(shop.records().author(), token, counted, why);
            return done instanceof Outcome.Ok
                    ? done
                    : new Outcome.Refused<>(done.problems().stream()
                            .map(problem -> problem.path().contains(".")
                                    ? problem
                                    : new Problem(problem.path() + ".counted", problem.what(), problem.remedy()))
                            .toList());
        });
    }
}
