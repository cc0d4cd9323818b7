package lyewright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Map;
import java.util.Set;

/**
 * What every request has to pass and every answer carries. A request must name this machine as its host, so that no foreign
 * name that someone points here is answered; a write must also come from one of our own pages.
 */
final class Defences implements Feature {

    private static final Set<HandlerType> KNOWN = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.POST);

    private static final String POLICY = String.join(
            "; ",
            "default-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "font-src 'self'",
            "img-src 'self'",
            "connect-src 'self'",
            "form-action 'self'",
            "base-uri 'none'",
            "frame-ancestors 'none'");

    private static final String OPENER_POLICY = "Cross-Origin-Opener-Policy";

    /** What every answer carries. */
    static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            POLICY,
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            "Referrer-Policy",
            "same-origin",
            OPENER_POLICY,
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Permissions-Policy",
            "camera=(), microphone=(), geolocation=()",
            "Cache-Control",
            "no-store");

    private final Doors doors;
    private final Admission admission;

    Defences(Doors doors, Admission admission) {
        this.doors = doors;
        this.admission = admission;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.before(this::letIn);
    }

    private void letIn(Context ctx) {
        Visits.greet(ctx, doors);
        HEADERS.forEach(ctx::header);
        if (!doors.isDesk(ctx) && !doors.isSecret(ctx)) {
            // browsers heed it only where nobody can have written it on the way, and complain where somebody could
            ctx.res().setHeader(OPENER_POLICY, null);
        }
        if (!KNOWN.contains(ctx.method())) {
            throw new Refused(405, "This page cannot be asked that way.", "Use the links and buttons of the pages.");
        }
        String host = ctx.header("Host");
        if (host == null || !doors.answersTo(ctx, host)) {
            throw new Refused(
                    421,
                    "Lyewright answers to this computer's own name only.",
                    doors.isDesk(ctx)
                            ? "Open it as http://localhost:" + ctx.port() + "."
                            : "Open it by the address that a maker shows under Settings, People and devices.");
        }
        String query = ctx.queryString();
        if (query != null && query.contains("%00")) {
            // no text that is kept has this character, and a database server stumbles over it
            throw new Refused(400, "What was sent cannot be read.", "Go on from the workshop's own pages.");
        }
        boolean writes = HandlerType.POST.equals(ctx.method());
        if (writes && !fromOurPages(ctx, host)) {
            throw new Refused(
                    403,
                    "Nothing was changed: what was sent does not come from one of Lyewright's own pages.",
                    "Go back to the page, load it again and send it once more.");
        }
        Visits.begin(ctx, doors, admission);
        // what is sent is read for those alone who may send it
        if (writes && hasNul(ctx)) {
            throw new Refused(
                    400,
                    "Nothing was changed: what was sent has a sign in it (NUL) that is no part of any text.",
                    "It is taken out below; look it through and send it again.");
        }
    }

    /** A file may have it, and is read as what it is; its form's other fields are asked about as they are read. */
    private static boolean hasNul(Context ctx) {
        return ctx.isFormUrlencoded()
                && ctx.formParamMap().entrySet().stream()
                        .anyMatch(field -> field.getKey().indexOf('\0') >= 0
                                || field.getValue().stream().anyMatch(value -> value.indexOf('\0') >= 0));
    }

    /** By the origin that a browser states for every write; the page it stood on where an old one states none. */
    private boolean fromOurPages(Context ctx, String host) {
        String origin = ctx.header("Origin");
        return doors.isOwn(ctx, origin != null ? origin : ctx.header("Referer"), host);
    }
}
