package lyewright.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.HandlerType;
import java.net.BindException;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import lyewright.measure.Outcome;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The server of the pages: for this computer, and for other devices as far as a maker lets them in. */
public final class WebServer implements AutoCloseable {

    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "::1");

    /** A form of a hundred oils and additions is far smaller; files are sent in parts and have a limit of their own. */
    private static final long LARGEST_FORM = 4L << 20;

    static final long LARGEST_UPLOAD = 64L << 20;

    private final Javalin javalin;
    private final NetworkDoor network;
    private final String address;

    private WebServer(Javalin javalin, NetworkDoor network, Listening listening) {
        this.javalin = javalin;
        this.network = network;
        boolean secret = listening.doors().signIn() && listening.certificate().isPresent();
        this.address = listening
                .doors()
                .address()
                .filter(said -> listening.doors().signIn())
                .map(said -> said + "/")
                .orElseGet(() -> (secret ? "https" : "http") + "://localhost:" + javalin.port() + "/");
    }

    /**
     * Starts it for this computer alone.
     *
     * @param bind the address to listen at: one of this computer's own
     * @param port from 0, which takes a free one, to 65535
     * @param features whose pages it serves
     * @return the running server, or why it does not run
     */
    public static Outcome<WebServer> start(String bind, int port, List<Feature> features) {
        return start(Listening.atDesk(bind, port), Admission.NOBODY, features);
    }

    /**
     * Starts it.
     *
     * @param listening where
     * @param admission who is let in by the doors that are not the desk's
     * @param features whose pages it serves
     * @return the running server, or why it does not run
     */
    public static Outcome<WebServer> start(Listening listening, Admission admission, List<Feature> features) {
        String bind = listening.bind();
        int port = listening.port();
        Outcome<Boolean> safe = safe(listening);
        if (safe instanceof Outcome.Refused) {
            return new Outcome.Refused<>(safe.problems());
        }
        AtomicReference<Server> jetty = new AtomicReference<>();
        Javalin javalin = Javalin.create(config -> {
            config.jetty.modifyServer(jetty::set);
            configure(config, listening, admission, features);
        });
        try {
            javalin.start(bind.equals("localhost") ? "127.0.0.1" : bind, port);
        } catch (RuntimeException e) {
            javalin.stop();
            if (isTaken(e)) {
                return Outcome.refused(
                        "port " + port + " is taken, perhaps by a Lyewright that runs already",
                        "open http://localhost:" + port + " to see, or choose another with --port " + (port + 1));
            }
            throw e;
        }
        listening.doors().openedDesk(javalin.port());
        NetworkDoor network = new NetworkDoor(
                Objects.requireNonNull(jetty.get()),
                listening.doors(),
                listening.devicesPort(),
                listening.certificate());
        return Outcome.ok(new WebServer(javalin, network, listening));
    }

    /** The desk's door is never where somebody else could come by it; passwords never go where they could be read. */
    private static Outcome<Boolean> safe(Listening listening) {
        boolean here = LOOPBACK.contains(listening.bind());
        if (!listening.doors().signIn() && !here) {
            return Outcome.refused(
                    "whoever comes by '" + listening.bind() + "' would be taken for the maker",
                    "leave --bind out; --devices lets other devices in, or --sign-in asks everybody for a password");
        }
        boolean secret = listening.certificate().isPresent() || here;
        return secret
                ? Outcome.ok(true)
                : Outcome.refused(
                        "passwords would go through the network as plain text",
                        "give a certificate with --certificate, or leave --bind out and let a web server with a"
                                + " certificate pass requests on to this computer");
    }

    private static boolean isTaken(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException) {
                return true;
            }
        }
        return String.valueOf(e.getMessage()).contains("Port already in use");
    }

    private static void configure(
            JavalinConfig config, Listening listening, Admission admission, List<Feature> features) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST_FORM;
        config.http.prefer405over404 = true;
        config.jetty.threadPool = new QueuedThreadPool(24, 4);
        config.jetty.multipartConfig.maxFileSize(LARGEST_UPLOAD >> 20, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(1 + (LARGEST_UPLOAD >> 20), SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
        // the server's name and version are nobody's business
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        EarlyFaults early = new EarlyFaults();
        config.jetty.modifyServer(server -> {
            server.setErrorHandler(early);
            server.setHandler(Arrivals.handlers());
        });
        config.jetty.modifyServletContextHandler(context -> context.setErrorHandler(early));
        if (listening.doors().signIn() && listening.certificate().isPresent()) {
            config.jetty.addConnector((server, http) -> {
                ServerConnector secure = NetworkDoor.connector(server, http, listening.certificate());
                secure.setHost(listening.bind());
                secure.setPort(listening.port());
                return secure;
            });
        }
        new Defences(listening.doors(), admission).routes(config.routes);
        new StaticFiles().routes(config.routes);
        new Faults().routes(config.routes);
        for (Feature feature : features) {
            feature.routes(config.routes);
        }
    }

    /**
     * Where it listens.
     *
     * @return the port
     */
    public int port() {
        return javalin.port();
    }

    /**
     * What to type into a browser.
     *
     * @return the address of the first page
     */
    public String address() {
        return address;
    }

    /** What is answered to, such as {@code POST /recipes/import}: for whoever sees that nothing is answered to the wrong people. */
    public List<String> routes() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .filter(endpoint -> HandlerType.GET.equals(endpoint.method) || HandlerType.POST.equals(endpoint.method))
                .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
                .distinct()
                .toList();
    }

    /** The door for other devices. */
    public NetworkDoor network() {
        return network;
    }

    /** Answers what it is answering, then stops. */
    @Override
    public void close() {
        javalin.stop();
    }
}
