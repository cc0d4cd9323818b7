package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.template.Templates;

/** The ways a request is answered. */
public final class Answers {

    /** Stands in the address of a page as {@code done} when what was typed has just been saved. */
    public static final String SAVED = "saved";

    private static final Pattern FIELD = Pattern.compile("<(input|select|textarea)\\b(?:[^>\"]++|\"[^\"]*+\")*+>");

    private static final String HTML = "text/html; charset=utf-8";

    /** Asked for anew whenever it is opened, and shown again as it was by the browser's own way back. */
    private static final String KEPT_FOR_THE_WAY_BACK = "private, no-cache";

    private Answers() {}

    /** A page, or a part of one where that is what the template gives. */
    public static void page(Context ctx, String template, Object model) {
        ctx.contentType(HTML).result(Templates.bytes(template, model));
    }

    /** A form that came back because something in it is wrong: the browser goes to the first field that is. */
    public static void form(Context ctx, String template, Object model) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        keepForTheWayBack(ctx);
        String page = new String(Templates.bytes(template, model), StandardCharsets.UTF_8);
        ctx.contentType(HTML).result(isInPlace(ctx) ? page : goingToTheFirstFault(page));
    }

    /**
     * Lets the browser keep a page with something typed for its back button. What answers a form cannot be asked for again, so that
     * otherwise a fault of the browser's own would stand there; and a form that can would have lost what was typed and the token
     * that keeps it from counting twice.
     */
    public static void keepForTheWayBack(Context ctx) {
        ctx.header("Cache-Control", KEPT_FOR_THE_WAY_BACK);
    }

    /** Typed quotes are escaped, so that only our own templates can mark a field. */
    static String goingToTheFirstFault(String page) {
        Matcher field = FIELD.matcher(page);
        int first = -1;
        while (field.find()) {
            if (field.group().contains(" autofocus")) {
                return page;
            }
            if (first < 0 && field.group().contains(" aria-invalid=\"true\"")) {
                first = field.end(1);
            }
        }
        return first < 0 ? page : page.substring(0, first) + " autofocus" + page.substring(first);
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
