package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import lyewright.template.Templates;

/** The ways a request is answered. */
public final class Answers {

    /** Stands in the address of a page as {@code done} when what was typed has just been saved. */
    public static final String SAVED = "saved";

    private static final String HTML = "text/html; charset=utf-8";

    private Answers() {}

    /** A page, or a part of one where that is what the template gives. */
    public static void page(Context ctx, String template, Object model) {
        ctx.contentType(HTML).result(Templates.bytes(template, model));
    }

    /** A form that came back because something in it is wrong. */
    public static void form(Context ctx, String template, Object model) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        page(ctx, template, model);
    }

    /** On to a page after a write, so that loading that page again does not write again. */
    public static void seeOther(Context ctx, String address) {
        if (isInPlace(ctx)) {
            ctx.header("HX-Redirect", address).status(HttpStatus.NO_CONTENT);
        } else {
            ctx.redirect(address, HttpStatus.SEE_OTHER);
        }
    }

    /** Whether only a part of the page is to be replaced. */
    public static boolean isInPlace(Context ctx) {
        return "true".equals(ctx.header("HX-Request"));
    }
}
