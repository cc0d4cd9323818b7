package lyewright.web;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Where to go on: an address of our own pages. What a browser sent as one is believed only where it cannot lead out. */
public final class Ways {

    /** The field of a form that says where to go on. */
    public static final String FIELD = "on";

    private static final Pattern OURS = Pattern.compile("/(?![/\\\\])[\\x21-\\x7e]*");

    private Ways() {}

    /**
     * The address that a form says to go on to.
     *
     * @param ctx what was sent
     * @return that address if it is one of ours
     */
    public static Optional<String> on(Context ctx) {
        return ours(ctx.formParam(FIELD));
    }

    /**
     * The address that the address of a page says to go on to.
     *
     * @param ctx what was asked for
     * @return that address if it is one of ours
     */
    public static Optional<String> wanted(Context ctx) {
        return ours(ctx.queryParam(FIELD));
    }

    private static Optional<String> ours(@Nullable String address) {
        return Optional.ofNullable(address).filter(text -> OURS.matcher(text).matches());
    }

    /** What was asked for. */
    static String asked(Context ctx) {
        String query = ctx.queryString();
        return ours(ctx.path() + (query == null ? "" : "?" + query)).orElse("/");
    }

    /** The page that a form stood on; for want of that what the form was about. */
    static String pageOf(Context ctx) {
        return ours(referrer(ctx.header("Referer")))
                .orElseGet(() -> ours(ctx.path().replaceFirst("/[^/]*$", "")).orElse("/"));
    }

    private static @Nullable String referrer(@Nullable String address) {
        try {
            URI page = URI.create(address == null ? "" : address);
            return page.getRawQuery() == null ? page.getRawPath() : page.getRawPath() + "?" + page.getRawQuery();
        } catch (IllegalArgumentException e) {
            return null;
        }
    }
}
