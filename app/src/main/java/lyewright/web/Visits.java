package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Who is let in to what. A maker is let in everywhere; a helper reads what is made, weighs, ticks and counts; a stranger sees the page
 * that asks who they are, and nothing else. What a helper may send is a list: whatever is not on it is a maker's.
 */
public final class Visits {

    /** Where a stranger shows a code. */
    public static final String CODE = "/pair";

    /** Where a stranger signs in. */
    public static final String SIGN_IN = "/sign-in";

    private static final List<Pattern> STRANGERS = patterns("/static/.*", CODE, SIGN_IN);

    private static final List<Pattern> ANYBODYS = patterns("/static/.*");

    private static final List<Pattern> SENT_BY_HELPERS = patterns(
            "/stores/count",
            "/stores/lots/[^/]+/take",
            "/make/sheet\\.pdf",
            "/make/printed",
            "/make/take",
            "/ledger/verify",
            "/me(/.*)?");

    /** Forms that a helper could fill in and not send, and what is a maker's to read. */
    private static final List<Pattern> READ_BY_MAKERS = patterns(
            "/settings(/.*)?",
            "/start",
            "/notebook(/.*)?",
            "/recipes/(new|import|deleted)",
            "/recipes/[^/]+/edit",
            "/stores/csv(/.*)?",
            "/stores/(.*/)?(new|edit)");

    private Visits() {}

    /** Begins to answer a request, before anything is known but the door: nobody is answered as whoever this thread answered last. */
    static void greet(Context ctx, Doors doors) {
        Visitor.begin(doors.isDesk(ctx) ? Visitor.DESK : Visitor.STRANGER);
    }

    /** Goes on with it as whoever asks, or turns them away. */
    static void begin(Context ctx, Doors doors, Admission admission) {
        if (Visitor.now().isAtDesk()) {
            return;
        }
        if (isAny(ANYBODYS, ctx) && Arrivals.isThere(ctx)) {
            // nobody need be known for a stylesheet, and a page has a dozen such
            return;
        }
        Optional<Visitor> known = admission.visitor(ctx);
        if (known.isEmpty()) {
            stranger(ctx, doors.signIn());
            return;
        }
        Visitor.begin(known.get());
        if (!known.get().isMaker()) {
            helper(ctx);
        }
    }

    private static void stranger(Context ctx, boolean signIn) {
        if (!isAny(STRANGERS, ctx)) {
            turnAway(ctx, signIn);
        } else if (!Arrivals.isThere(ctx)) {
            // whoever sends it bit by bit would keep makers' files waiting
            throw Refused.unread(413, "What was sent is too large.", "Send a code or a password, and nothing else.");
        }
    }

    private static void helper(Context ctx) {
        if (!Arrivals.isThere(ctx)) {
            // files have few places on their way in, and those are for makers
            throw Refused.unread(413, "A helper sends no files.", "Ask a maker to send it.");
        }
        boolean may = HandlerType.POST.equals(ctx.method())
                ? isAny(SENT_BY_HELPERS, ctx) || isAny(STRANGERS, ctx)
                : !isAny(READ_BY_MAKERS, ctx);
        if (!may) {
            throw Refused.notTheirs(
                    "This is for a maker to do: a helper weighs, ticks and counts.",
                    "Nothing was changed. Ask a maker, who can do it or make a maker of you under Settings.");
        }
    }

    private static void turnAway(Context ctx, boolean signIn) {
        String asks = signIn ? SIGN_IN : CODE;
        boolean reads = !HandlerType.POST.equals(ctx.method()) && !Answers.isInPlace(ctx);
        if (!reads) {
            String what = "Nothing was changed: this device is not let in, or not any more.";
            String remedy =
                    signIn ? "Sign in in another window first." : "Ask a maker for a code and type it in first.";
            Refused.Door door = new Refused.Door(signIn ? "Sign in" : "Type in a code", asks);
            throw Refused.stranger(what, remedy, Arrivals.isThere(ctx), door);
        }
        String on = ctx.path().equals("/") ? "" : "?on=" + URLEncoder.encode(Ways.asked(ctx), StandardCharsets.UTF_8);
        Answers.seeOther(ctx, asks + on);
        ctx.skipRemainingHandlers();
    }

    private static boolean isAny(List<Pattern> patterns, Context ctx) {
        // a page is found with a stroke at the end of its address too
        String path = ctx.path().replaceFirst("/+$", "");
        return patterns.stream().anyMatch(pattern -> pattern.matcher(path).matches());
    }

    private static List<Pattern> patterns(String... regexes) {
        return Arrays.stream(regexes).map(Pattern::compile).toList();
    }
}
