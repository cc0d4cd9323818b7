package lyewright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import lyewright.records.RecordsTrouble;
import lyewright.template.Templates;
import lyewright.words.Sentences;

/** Requests that got no answer: a page that says what is wrong and what to do. */
public final class Faults implements Feature {

    private static final Logger LOG = Logger.getLogger(Faults.class.getName());

    /**
     * A page instead of an answer.
     *
     * @param frame around it
     * @param what what is wrong
     * @param remedy what to do; empty where the way on says it
     * @param way the way on, if it is known
     * @param sent the form that was sent, where one was
     * @param door where to be let in, where that is what is missing
     */
    public record FaultPage(
            Frame frame,
            String what,
            String remedy,
            Optional<Way> way,
            Optional<SentForm> sent,
            Optional<Refused.Door> door) {

        private FaultPage giving(Optional<SentForm> back) {
            return new FaultPage(frame, what, remedy, way, back, door);
        }

        private FaultPage leading(Optional<Refused.Door> to) {
            return new FaultPage(frame, what, remedy, way, sent, to);
        }
    }

    /**
     * A button that goes into the other workshop and opens what was asked for.
     *
     * @param label what it says
     * @param address where it is sent
     * @param on what is opened then
     */
    public record Way(String label, String address, String on) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.exception(Refused.class, Faults::refused);
        routes.exception(RecordsTrouble.class, (e, ctx) -> {
            LOG.log(Level.WARNING, e, () -> "answering " + ctx.method() + " " + ctx.path());
            FaultPage page = page(
                    503,
                    Sentences.whole(e.problem().what()),
                    Sentences.whole(e.problem().remedy()));
            show(ctx, 503, page.giving(SentForm.of(ctx, true)));
        });
        routes.exception(HttpResponseException.class, (e, ctx) -> byStatus(ctx, e.getStatus()));
        routes.exception(Exception.class, (e, ctx) -> {
            if (Uploads.isOfTheSender(e)) {
                // where it ends is not sure, so that nothing can follow it on the same line
                ctx.header("Connection", "close");
                byStatus(ctx, 400);
                return;
            }
            LOG.log(Level.SEVERE, e, () -> "answering " + ctx.method() + " " + ctx.path());
            show(ctx, 500, page(500).giving(SentForm.of(ctx, true)));
        });
        routes.error(404, ctx -> {
            if (ctx.result() == null || ctx.result().isEmpty() || ctx.result().equals("Not Found")) {
                byStatus(ctx, 404);
            }
        });
    }

    private static void byStatus(Context ctx, int status) {
        FaultPage page = page(status);
        answer(ctx, status, page.what(), page.remedy());
    }

    private static void refused(Refused e, Context ctx) {
        String what = String.valueOf(e.getMessage());
        if (e.elsewhere().isEmpty()) {
            Optional<SentForm> sent = sent(e, ctx);
            String then =
                    e.door().isEmpty() ? "" : sent.isPresent() ? " Then send it from here." : " Then do it again.";
            FaultPage page = page(e.status(), what, e.remedy() + then);
            show(ctx, e.status(), page.giving(sent).leading(e.door()));
            return;
        }
        boolean wrote = HandlerType.POST.equals(ctx.method());
        Refused.Elsewhere there = e.elsewhere().get();
        Way way = new Way(
                "Open it in " + there.workshop(),
                there.demo() ? "/start/demo" : "/start/back",
                wrote ? Ways.pageOf(ctx) : Ways.asked(ctx));
        String remedy = wrote ? "Nothing was changed." : "";
        String done = Answers.SAVED.equals(ctx.queryParam("done")) ? "It is saved. " : "";
        show(
                ctx,
                e.status(),
                new FaultPage(
                        Frame.outside("In the other workshop"),
                        done + what,
                        remedy,
                        Optional.of(way),
                        sent(e, ctx),
                        Optional.empty()));
    }

    /** What does not come from our own pages is not shown as if somebody had typed it there. */
    private static Optional<SentForm> sent(Refused e, Context ctx) {
        return e.isOfOurPages() ? SentForm.of(ctx, e.isWorthAnotherTry()) : Optional.empty();
    }

    /** What to say where nothing but a status is known. */
    static FaultPage page(int status) {
        return switch (status) {
            case 404 -> page(status, "There is no page at this address.", "Go on from the parts named above.");
            case 405 -> page(status, "This page cannot be asked that way.", "Use the links and buttons of the pages.");
            case 413 ->
                page(status, "What was sent is too large.", "Send something smaller; each form says how large.");
            case 503 ->
                page(
                        status,
                        "Too much is on its way here at once.",
                        "Wait until they are there, go back and send this one again.");
            case 414, 431 -> page(status, "The address is too long.", "Go on from the workshop's own pages.");
            case 400 ->
                page(status, "What was sent cannot be read.", "Go back, load the page again and send it once more.");
            default ->
                page(
                        status,
                        "Something went wrong in Lyewright itself, and it is not your doing.",
                        "What you had saved is safe. The log in the workshop's folder says more; send it to us.");
        };
    }

    private static FaultPage page(int status, String what, String remedy) {
        return new FaultPage(
                Frame.outside(status == 404 ? "Not here" : "That did not work"),
                what,
                remedy,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static void answer(Context ctx, int status, String what, String remedy) {
        show(ctx, status, page(status, what, remedy));
    }

    private static void show(Context ctx, int status, FaultPage page) {
        ctx.status(status);
        if (HandlerType.POST.equals(ctx.method())) {
            Answers.keepForTheWayBack(ctx);
        }
        ctx.contentType("text/html; charset=utf-8").result(Templates.bytes("web/fault.jte", page));
    }
}
