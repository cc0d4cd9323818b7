package lyewright.app;

import java.util.List;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Listening;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.people.KeptOpen;

/** What is said of where the pages are; the door for other devices is opened on the way, where it is to be open. */
final class Told {

    private Told() {}

    static String of(Shop shop, Listening listening, boolean devices, WebServer server) {
        String where = "Lyewright is at " + server.address() + "\n";
        if (listening.doors().signIn()) {
            boolean nobody = shop.always(false).records().passwords().having().isEmpty();
            return where
                    + (nobody
                            ? "Nobody has a password yet, so nobody can sign in: './lyewright password' gives the maker one.\n"
                            : "Everybody signs in with name and password.\n");
        }
        boolean wanted = devices || shop.always(false).records().devices().mayKnock();
        return wanted ? where + opened(shop, devices, server) : where;
    }

    private static String opened(Shop shop, boolean keep, WebServer server) {
        Outcome<List<String>> open = keep
                ? KeptOpen.open(server.network(), shop.always(false).records().devices())
                : server.network().open();
        if (!(open instanceof Outcome.Ok<List<String>> ok)) {
            Problem problem = open.problems().get(0);
            return "Other devices cannot come in: " + problem.sentence() + "\n";
        }
        return "Devices that you let in come by "
                + (ok.value().isEmpty() ? "no network, for there is none now" : String.join(" or ", ok.value()))
                + "\n";
    }
}
