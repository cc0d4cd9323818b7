package lyewright.app;

import java.net.URI;
import java.util.Optional;
import lyewright.cli.Pages;
import lyewright.measure.Outcome;
import lyewright.web.Certificate;
import lyewright.web.Doors;
import lyewright.web.Listening;

/** Where pages are to be shown, of what was typed. */
final class Reach {

    private static final int HIGHEST_PORT = 65_535;

    private Reach() {}

    static Outcome<Listening> of(Pages.Order order, String certificatePassword) {
        Pages.Others others = order.others();
        if (others.devices() && others.signIn()) {
            return Outcome.refused(
                    "--devices and --sign-in exclude each other",
                    "with --sign-in every device comes by the same door; leave --devices out");
        }
        return address(others.address())
                .then(address -> certificate(order, certificatePassword)
                        .then(certificate -> Outcome.ok(new Listening(
                                order.bind(),
                                order.port(),
                                devicesPort(order),
                                new Doors(others.signIn(), address),
                                certificate))));
    }

    private static int devicesPort(Pages.Order order) {
        int beside = order.port() == 0 || order.port() == HIGHEST_PORT ? 0 : order.port() + 1;
        return order.others().devicesPort().orElse(beside);
    }

    private static Outcome<Optional<URI>> address(Optional<String> typed) {
        if (typed.isEmpty()) {
            return Outcome.ok(Optional.empty());
        }
        try {
            URI uri = URI.create(typed.get().replaceFirst("/$", ""));
            boolean web = "https".equals(uri.getScheme()) || "http".equals(uri.getScheme());
            if (web && uri.getHost() != null && uri.getRawPath().isEmpty() && uri.getRawQuery() == null) {
                return Outcome.ok(Optional.of(uri));
            }
        } catch (IllegalArgumentException e) {
            // said below
        }
        return Outcome.refused(
                "--address '" + typed.get() + "' is no address of a web page's host",
                "write it as in https://soap.example, without a path");
    }

    private static Outcome<Optional<Certificate>> certificate(Pages.Order order, String password) {
        return order.others()
                .certificate()
                .map(file -> Certificate.read(order.folder().resolve(file), password)
                        .then(read -> Outcome.ok(Optional.of(read))))
                .orElseGet(() -> Outcome.ok(Optional.empty()));
    }
}
