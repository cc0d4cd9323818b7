package lyewright.web;

import io.javalin.http.Context;
import java.util.Optional;

/** A field of a form that was sent. */
public final class SentField {

    private SentField() {}

    /**
     * What was sent in it.
     *
     * @param ctx the form
     * @param name of the field
     * @param longest how many characters of it are read: more than any page keeps, so that what is too long is still told so
     * @return that; empty where there is no such field
     */
    public static String of(Context ctx, String name, int longest) {
        String value = Optional.ofNullable(ctx.formParam(name)).orElse("");
        return value.length() > longest ? value.substring(0, longest) : value;
    }
}
