package lyewright.web;

import io.javalin.http.Context;
import java.util.Optional;

/**
 * The workshop that a form for something new was opened in. Another tab may have gone to the other one since, and what is typed
 * must not be added there.
 */
public final class OpenedIn {

    /** The hidden field that says it; see {@code web/opened.jte}. */
    public static final String FIELD = "opened-in";

    private static final String DEMO = "demo";
    private static final String MINE = "mine";

    private OpenedIn() {}

    /** What the field says on a page. */
    public static String of(boolean demo) {
        return demo ? DEMO : MINE;
    }

    /**
     * Sees that a form is of the workshop that is shown.
     *
     * @param ctx the form; one that does not say passes
     * @param shop which workshop is shown now
     * @throws Refused with the way back into the form's own workshop
     */
    public static void check(Context ctx, Shop shop) {
        String said = Optional.ofNullable(ctx.formParam(FIELD)).orElse("");
        boolean demo = said.equals(DEMO);
        if (!said.isEmpty() && demo != shop.showsDemo()) {
            String there = shop.always(demo).called("the demo workshop");
            throw Refused.elsewhere(
                    "What you filled in is for " + there + ", and another window has gone to "
                            + shop.called("the demo workshop") + " since.",
                    there,
                    demo);
        }
    }
}
