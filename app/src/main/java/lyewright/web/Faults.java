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
        switch (status) {
            case 404 -> answer(ctx, 404, "There is no page at this address.", "Go on from the parts named above.");
            case 405 ->
                answer(ctx, 405, "This page cannot be asked that way.", "Use the links and buttons of the pages.");
            case 413 ->
                answer(ctx, 413, "What was sent is too large.", "Send something smaller; each form says how large.");
            case 400 ->
                answer(
                        ctx,
                        400,
                        "What was sent cannot be read.",
                        "Go back, load the page again and send it once more.");
            default ->
                answer(
                        ctx,
                        status,
                        "Something went wrong in Lyewright itself, and it is not your doing.",
                        "What you had saved is safe. The log in the workshop's folder says more; send it to us.");
        }
    }

    private static void answer(Context ctx, int status, String what, String remedy) {
        ctx.status(status);
        String title = status == 404 ? "Not here" : "That did not work";
        FaultPage page = new FaultPage(Frame.outside(title), what, remedy);
        ctx.contentType("text/html; charset=utf-8").result(Templates.bytes("web/fault.jte", page));
    }
}
