package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
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
            asked(own, recipe); // what is read once and remembered
            Map<String, Integer> few = asked(own, recipe);
            keep(shop, 3, 40);
            Map<String, Integer> many = asked(own, recipe);

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

    private Map<String, Integer> asked(String own, String recipe) throws Exception {
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
