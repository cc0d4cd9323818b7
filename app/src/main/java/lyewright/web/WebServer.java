package lyewright.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.net.BindException;
import java.util.List;
import java.util.Set;
import lyewright.measure.Outcome;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The server of the pages: on this computer only. */
public final class WebServer implements AutoCloseable {

    private static final Set<String> LOOPBACK = Set.of("127.0.0.1", "localhost", "::1");

    /** A form of a hundred oils and additions is far smaller; files are sent in parts and have a limit of their own. */
    private static final long LARGEST_FORM = 4L << 20;

    static final long LARGEST_UPLOAD = 64L << 20;

    private final Javalin javalin;

    private WebServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /**
     * Starts it.
     *
     * @param bind the address to listen at: one of this computer's own
     * @param port from 0, which takes a free one, to 65535
     * @param features whose pages it serves
     * @return the running server, or why it does not run
     */
    public static Outcome<WebServer> start(String bind, int port, List<Feature> features) {
        if (!LOOPBACK.contains(bind)) {
            return Outcome.refused(
                    "pages are shown on this computer only, not at '" + bind + "'",
                    "leave --bind out; until devices can be paired, anyone on the network could change the recipes");
        }
        Javalin javalin = Javalin.create(config -> configure(config, features));
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
        return Outcome.ok(new WebServer(javalin));
    }

    private static boolean isTaken(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException) {
                return true;
            }
        }
        return String.valueOf(e.getMessage()).contains("Port already in use");
    }

    private static void configure(JavalinConfig config, List<Feature> features) {
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
        new Defences().routes(config.routes);
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
        return "http://localhost:" + port() + "/";
    }

    /** Answers what it is answering, then stops. */
    @Override
    public void close() {
        javalin.stop();
    }
}
