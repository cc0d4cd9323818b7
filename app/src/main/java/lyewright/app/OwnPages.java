package lyewright.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import lyewright.cli.Pages;
import lyewright.measure.Outcome;
import lyewright.records.Home;
import lyewright.records.Places;
import lyewright.web.Feature;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.csv.CsvPages;
import lyewright.web.cupboard.CupboardPages;
import lyewright.web.ledger.LedgerPages;
import lyewright.web.make.MakePages;
import lyewright.web.photograph.PhotographPages;
import lyewright.web.recipe.EditorPages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.setting.SettingPages;
import lyewright.web.start.Start;
import lyewright.web.stores.StoresPages;
import lyewright.web.why.WhyPages;

/** The workshop's pages, shown by this process until it is stopped. */
final class OwnPages implements Pages {

    @Override
    public Outcome<Shown> show(Order order) {
        Log.quiet();
        Path home = Home.resolve(order.home(), order.folder());
        return Places.of(home, System.getenv())
                .then(places -> Shop.open(places.mine(), places.demo(), Clock.system(ZoneId.systemDefault())))
                .then(shop -> serve(shop, home, order));
    }

    private static Outcome<Shown> serve(Shop shop, Path home, Order order) {
        Log.into(home);
        Outcome<WebServer> started = WebServer.start(order.bind(), order.port(), features(shop, home));
        if (!(started instanceof Outcome.Ok<WebServer> ok)) {
            shop.close();
            return new Outcome.Refused<>(started.problems());
        }
        WebServer server = ok.value();
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            server.close();
                            shop.close();
                            stopped.countDown();
                        },
                        "stop"));
        if (order.practise()) {
            new Practice(server.address()).run();
            stopped.countDown();
        }
        if (order.browser()) {
            Browser.open(server.address());
        }
        return Outcome.ok(new Running(server.address(), home, stopped));
    }

    static List<Feature> features(Shop shop, Path home) {
        return List.of(
                new Start(shop),
                new PhotographPages(shop),
                new EditorPages(shop),
                new RecipePages(shop),
                new MakePages(shop),
                new WhyPages(shop),
                new StoresPages(shop),
                new CsvPages(shop),
                new CupboardPages(shop),
                new LedgerPages(shop),
                new SettingPages(shop, home));
    }

    /** Pages that are there until the process is asked to end. */
    private record Running(String address, Path home, CountDownLatch stopped) implements Shown {

        @Override
        public String told() {
            return "Lyewright is at " + address + "\nThe workshop is kept in " + home + ". Ctrl-C stops it.\n";
        }

        @Override
        public void untilStopped() {
            try {
                stopped.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
