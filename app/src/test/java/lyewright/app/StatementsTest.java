package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.measure.WrittenMass;
import lyewright.records.Places;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.stock.LotStatus;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page asks the database the same number of questions, however much is kept. */
class StatementsTest {

    private static final Logger STATEMENTS = Logger.getLogger("lyewright.records.statements");

    private static final Clock NOW = Clock.fixed(Instant.parse("2026-11-28T09:00:00Z"), ZoneOffset.UTC);

    private static final String BAR = """
            recipe: Bar %d
            use: own
            oils:
              coconut: 40 %%
              olive-virgin: 60 %%
            alkali: sodium
            superfat: 5 %%
            water: 33 %% lye
            """;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void of_any_page_does_not_grow_with_what_is_kept(@TempDir Path home) throws Exception {
        Places places = Places.of(home, Map.of()).orThrow();
        try (Shop shop = Shop.open(places.mine(), places.demo(), NOW).orThrow();
                WebServer server = WebServer.start("127.0.0.1", 0, OwnPages.features(shop, home))
                        .orThrow()) {
            shop.startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
            String own = "http://localhost:" + server.port();
            String recipe = keep(shop, 0, 3);
            KeptLot lot = stock(shop, 0, 3);
            asked(own, recipe, lot); // what is read once and remembered
            Map<String, Integer> few = asked(own, recipe, lot);
            keep(shop, 3, 40);
            stock(shop, 3, 40);
            asked(own, recipe, lot); // the names of what came are read once, too
            Map<String, Integer> many = asked(own, recipe, lot);

            assertThat(few.values()).allSatisfy(count -> assertThat(count).isBetween(1, 40));
            assertThat(many).isEqualTo(few);
        }
    }

    /** Recipes in three versions with a draft, and a jug, a mould and a deleted recipe for each; gives the first. */
    private static String keep(Shop shop, int from, int to) {
        RecipeBook book = shop.records().recipes();
        String first = "";
        for (int i = from; i < to; i++) {
            Formula bar = FormulaFile.read(BAR.formatted(i)).formula().orElseThrow();
            String id = book.add(bar).orThrow().recipeId();
            book.save(id, 1, bar, true, "once more").orThrow();
            book.save(id, 2, bar, true, "and again").orThrow();
            shop.records().drafts().create(Optional.of(id), 3, "{}");
            book.delete(book.add(bar).orThrow().recipeId());
            shop.records()
                    .equipment()
                    .addJug("Jug " + i, WrittenMass.ofGrams("312"), JugUse.LYE_JUG)
                    .orThrow();
            UsualMass usual = new UsualMass(WrittenMass.ofGrams("1500"), id, 1);
            shop.records()
                    .equipment()
                    .addMould(
                            "Mould " + i,
                            new MouldMeasures(Optional.empty(), Optional.empty(), Optional.of(usual), Optional.empty()))
                    .orThrow();
            first = first.isEmpty() ? id : first;
        }
        return first;
    }

    /** Lots of both of the recipes' oils and of things of their own, each from its supplier, some of them old; gives the first. */
    private static KeptLot stock(Shop shop, int from, int to) {
        List<KeptLot> lots = new ArrayList<>();
        for (int i = from; i < to; i++) {
            for (String key : List.of("coconut", "olive-virgin", "thing-" + i)) {
                Identity identity = key.startsWith("thing") ? Identity.none() : Identity.ofKey(key);
                LotSaid said = new LotSaid(
                        "",
                        Optional.empty(),
                        "L" + i,
                        LocalDate.parse("2026-09-01"),
                        Optional.empty(),
                        Optional.of(LocalDate.parse("2026-11-01").plusDays(20L * i)),
                        Optional.empty(),
                        LotStatus.USABLE,
                        Optional.empty(),
                        "");
                Arrival arrival = Arrival.of(ItemSaid.of(key, ItemKind.OIL, identity), said, 250_000);
                lots.addAll(shop.records()
                        .lots()
                        .receive(shop.records().author(), "", new Delivery("Seller " + i, List.of(arrival)))
                        .orThrow());
                shop.records()
                        .lots()
                        .take(
                                shop.records().author(),
                                "",
                                List.of(new Taking(lots.get(0).id(), 10, "")),
                                StockMove.Told.of(MoveKind.LOSS, 0).withWhy("spilt"));
            }
        }
        return lots.get(0);
    }

    private Map<String, Integer> asked(String own, String recipe, KeptLot lot) throws Exception {
        Map<String, Integer> counts = new TreeMap<>();
        for (String page : List.of(
                "/recipes",
                "/recipes?q=olive",
                "/recipes/deleted",
                "/recipes/new",
                "/recipes/import",
                "/recipes/" + recipe,
                "/recipes/" + recipe + "/versions/1",
                "/recipes/" + recipe + "/edit",
                "/recipes/" + recipe + "/compare",
                "/make",
                "/make?recipe=" + recipe,
                "/make/sheet.pdf?recipe=" + recipe,
                "/why?recipe=" + recipe,
                "/stores",
                "/stores/tables",
                "/stores/cupboard",
                "/stores/cupboard/new",
                "/stores/cupboard/" + lot.itemId(),
                "/stores/cupboard/" + lot.itemId() + "/edit",
                "/stores/lots/" + lot.id(),
                "/stores/deliveries/new",
                "/stores/count",
                "/stores/made/new",
                "/stores/suppliers",
                "/make?lots=certificates&recipe=" + recipe,
                "/settings",
                "/notebook")) {
            counts.put(page, statements(own + page));
        }
        return counts;
    }

    private int statements(String page) throws Exception {
        AtomicInteger count = new AtomicInteger();
        Handler listener = new Handler() {
            @Override
            public void publish(LogRecord statement) {
                count.incrementAndGet();
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        listener.setLevel(Level.ALL);
        STATEMENTS.setLevel(Level.FINER);
        STATEMENTS.setUseParentHandlers(false);
        STATEMENTS.addHandler(listener);
        try {
            assertThat(client.send(HttpRequest.newBuilder(URI.create(page)).build(), BodyHandlers.discarding())
                            .statusCode())
                    .as(page)
                    .isEqualTo(200);
        } finally {
            STATEMENTS.removeHandler(listener);
            STATEMENTS.setLevel(null);
            STATEMENTS.setUseParentHandlers(true);
        }
        return count.get();
    }
}
