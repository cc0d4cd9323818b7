package lyewright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
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
     * @param remedy what to do
     */
    public record FaultPage(Frame frame, String what, String remedy) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.exception(
                Refused.class, (e, ctx) -> answer(ctx, e.status(), String.valueOf(e.getMessage()), e.remedy()));
        routes.exception(RecordsTrouble.class, (e, ctx) -> {
            LOG.log(Level.WARNING, e, () -> "answering " + ctx.method() + " " + ctx.path());
            answer(
                    ctx,
                    503,
                    Sentences.whole(e.problem().what()),
                    Sentences.whole(e.problem().remedy()));
        });
        routes.exception(HttpResponseException.class, (e, ctx) -> byStatus(ctx, e.getStatus()));
        routes.exception(Exception.class, (e, ctx) -> {
            if (Uploads.isOfTheSender(e)) {
                byStatus(ctx, 400);
                return;
            }
            LOG.log(Level.SEVERE, e, () -> "answering " + ctx.method() + " " + ctx.path());
            byStatus(ctx, 500);
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

    /** What to say where nothing but a status is known. */
    static FaultPage page(int status) {
        return switch (status) {
            case 404 -> page(status, "There is no page at this address.", "Go on from the parts named above.");
            case 405 -> page(status, "This page cannot be asked that way.", "Use the links and buttons of the pages.");
            case 413 ->
                page(status, "What was sent is too large.", "Send something smaller; each form says how large.");
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
        return new FaultPage(Frame.outside(status == 404 ? "Not here" : "That did not work"), what, remedy);
    }

    private static void answer(Context ctx, int status, String what, String remedy) {
        ctx.status(status);
        ctx.contentType("text/html; charset=utf-8")
                .result(Templates.bytes("web/fault.jte", page(status, what, remedy)));
    }
}
