package lyewright.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import lyewright.cli.Pages;
import lyewright.measure.Outcome;
import lyewright.records.Home;
import lyewright.records.Places;
import lyewright.web.Doors;
import lyewright.web.Feature;
import lyewright.web.Listening;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.csv.CsvPages;
import lyewright.web.cupboard.CupboardPages;
import lyewright.web.ledger.LedgerPages;
import lyewright.web.make.MakePages;
import lyewright.web.people.PeoplePages;
import lyewright.web.people.Porter;
import lyewright.web.photograph.PhotographPages;
import lyewright.web.recipe.EditorPages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.setting.SettingPages;
import lyewright.web.start.Start;
import lyewright.web.stores.StoresPages;
import lyewright.web.why.WhyPages;

/** The workshop's pages, shown by this process until it is stopped. */
final class OwnPages implements Pages {

    private static final String CERTIFICATE_PASSWORD = "LYEWRIGHT_CERTIFICATE_PASSWORD";

    @Override
    public Outcome<Shown> show(Order order) {
        Log.quiet();
        Path home = Home.resolve(order.home(), order.folder());
        return Reach.of(
                        order,
                        Optional.ofNullable(System.getenv(CERTIFICATE_PASSWORD)).orElse(""))
                .then(listening -> Places.of(home, System.getenv())
                        .then(places -> Shop.open(places.mine(), places.demo(), Clock.system(ZoneId.systemDefault())))
                        .then(shop -> serve(shop, home, order, listening)));
    }

    private static Outcome<Shown> serve(Shop shop, Path home, Order order, Listening listening) {
        Log.into(home);
        AtomicReference<WebServer> running = new AtomicReference<>();
        PeoplePages people =
                new PeoplePages(shop, listening.doors(), () -> running.get().network());
        Outcome<WebServer> started = WebServer.start(listening, new Porter(shop), features(shop, home, people));
        if (!(started instanceof Outcome.Ok<WebServer> ok)) {
            shop.close();
            return new Outcome.Refused<>(started.problems());
        }
        WebServer server = ok.value();
        running.set(server);
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
        String told = Told.of(shop, listening, order.others().devices(), server);
        if (order.browser()) {
            Browser.open(server.address());
        }
        return Outcome.ok(new Running(told, home, stopped));
    }

    /** All of them, for this computer alone. */
    static List<Feature> features(Shop shop, Path home) {
        return features(shop, home, new PeoplePages(shop, new Doors(false, Optional.empty()), () -> {
            throw new IllegalStateException("there is no door for other devices");
        }));
    }

    static List<Feature> features(Shop shop, Path home, PeoplePages people) {
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
                people,
                new SettingPages(shop, home));
    }

    /** Pages that are there until the process is asked to end. */
    private record Running(String where, Path home, CountDownLatch stopped) implements Shown {

        @Override
        public String told() {
            return where + "The workshop is kept in " + home + ". Ctrl-C stops it.\n";
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
