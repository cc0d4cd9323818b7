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
     * The workshop that a form is for.
     *
     * @param ctx the form
     * @param shop either of the two
     * @return the one that the form was opened in, whichever is shown now
     * @throws Refused where that one is gone, or where the form does not say and there are two
     */
    public static Shop of(Context ctx, Shop shop) {
        Optional<Boolean> demo = said(ctx);
        if (demo.isEmpty()) {
            if (shop.hasBoth()) {
                throw new Refused(
                        409,
                        "Nothing was kept: this form does not say which workshop it is for.",
                        "Open it anew in the workshop that you mean.");
            }
            return shop.held();
        }
        Shop there = shop.always(demo.get());
        if (there.showsDemo() != demo.get()) {
            throw new Refused(
                    409,
                    "Nothing was kept: the demo workshop that this is for is not there any more.",
                    "Look round the demo workshop anew, or open the form in your own.");
        }
        return there;
    }

    private static Optional<Boolean> said(Context ctx) {
        return Optional.ofNullable(ctx.formParam(FIELD))
                .filter(said -> said.equals(DEMO) || said.equals(MINE))
                .map(DEMO::equals);
    }

    /**
     * Sees that a form is of the workshop that is shown.
     *
     * @param ctx the form
     * @param shop which workshop is shown now
     * @throws Refused with the way back into the form's own workshop
     */
    public static void check(Context ctx, Shop shop) {
        Shop there = of(ctx, shop);
        if (there.showsDemo() != shop.showsDemo()) {
            String name = there.called("the demo workshop");
            throw Refused.elsewhere(
                    "What you filled in is for " + name + ", and Lyewright has gone to "
                            + shop.called("the demo workshop") + " since.",
                    name,
                    there.showsDemo());
        }
    }
}
