package lyewright.web.recipe;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.records.Place;
import lyewright.records.recipe.Recipe;
import lyewright.records.setting.Units;
import lyewright.web.Answers;
import lyewright.web.Feature;
import lyewright.web.Shop;
import lyewright.web.WebServer;

/** A workshop with the editor's pages and nothing else, so that a page that it leads on to is a plain text. */
final class EditorBench implements AutoCloseable {

    /** Five oils, salt and clay in one of two portions; invented. */
    static final String TIDELINE = """
            recipe: Tideline
            use: sale
            oils:
              coconut: 60 %
              olive-virgin: 20 %
              shea-butter: 8 %
              sunflower-high-oleic: 6 %
              castor: rest
            alkali: sodium
            superfat: 15 %
            water: 34 % lye
            additions:
              - of: green-clay
                amount: 12 g per kg portion oils
                stage: portion kelp
                disperse: {in: water, ratio: 3 to 1, ahead: 1 h}
              # from the west shore
              - of: sea-salt
                amount: 60 % of oils
                stage: every portion
            portions:
              plain: 60 %
              kelp: rest
            """;

    private final Path home;
    private Shop shop;
    private WebServer server;

    EditorBench(Path home) {
        this.home = home;
        shop = open();
        shop.startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        server = serve(0);
    }

    private Shop open() {
        return Shop.open(
                        new Place.Folder(home.resolve("mine")),
                        new Place.Folder(home.resolve("demo")),
                        Clock.systemUTC())
                .orThrow();
    }

    private WebServer serve(int port) {
        List<Feature> features = new ArrayList<>(List.of(new EditorPages(shop)));
        features.add(routes -> {
            routes.get("/recipes", ctx -> ctx.result("the recipes"));
            routes.get(
                    "/recipes/{id}",
                    ctx -> ctx.result(shop.records()
                            .recipes()
                            .find(ctx.pathParam("id"))
                            .map(recipe -> recipe.newest().text())
                            .orElse("none")));
            routes.post("/elsewhere", ctx -> Answers.seeOther(ctx, "/recipes"));
        });
        return WebServer.start("127.0.0.1", port, features).orThrow();
    }

    Shop shop() {
        return shop;
    }

    String address(String path) {
        return server.address() + path;
    }

    /** Keeps the recipe that the editor is tried on. */
    Recipe tideline() {
        Formula formula = FormulaFile.read(TIDELINE).formula().orElseThrow();
        String id = shop.records().recipes().add(formula).orThrow().recipeId();
        return shop.records().recipes().find(id).orElseThrow();
    }

    /** Stops it and starts it again, on what is kept. */
    void startAgain() {
        int port = server.port();
        close();
        shop = open();
        server = serve(port);
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
