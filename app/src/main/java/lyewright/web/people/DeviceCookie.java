package lyewright.web.people;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.Optional;
import lyewright.web.Doors;

/** What a device shows to be known again. No script can read it, and no other site's page makes a browser send it. */
final class DeviceCookie {

    private static final String NAME = "lyewright-device";

    /** The longest that browsers keep one. */
    private static final Duration KEPT = Duration.ofDays(400);

    private DeviceCookie() {}

    static Optional<String> shown(Context ctx) {
        return Optional.ofNullable(ctx.cookie(NAME)).filter(token -> !token.isEmpty());
    }

    static void give(Context ctx, Doors doors, String token) {
        set(ctx, doors, token, (int) KEPT.toSeconds());
    }

    static void takeBack(Context ctx, Doors doors) {
        set(ctx, doors, "", 0);
    }

    private static void set(Context ctx, Doors doors, String value, int seconds) {
        ctx.cookie(new Cookie(NAME, value, "/", seconds, doors.isSecret(ctx), true, null, SameSite.STRICT));
    }
}
