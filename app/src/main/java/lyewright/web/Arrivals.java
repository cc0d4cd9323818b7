package lyewright.web;

import io.javalin.http.Context;
import java.util.concurrent.Semaphore;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.server.handler.EagerContentHandler.RetainedContentLoaderFactory;
import org.eclipse.jetty.util.Callback;

/**
 * How what is sent comes in: however slowly, it keeps no page waiting. A form takes up a thread only once all of it is there. A
 * file is too large for that; so few of them may be on their way at a time that most threads are left.
 */
final class Arrivals {

    /** So much is waited for without a thread; every form that the pages make is smaller. */
    private static final int WAITED_FOR = 512 << 10;

    /** What is kept of it as it comes in pieces, each with something beside it; only somebody who means harm sends more. */
    private static final long MOST_KEPT = 4L * WAITED_FOR;

    private static final int A_PIECE = 64;

    private static final String FORM = "application/x-www-form-urlencoded";

    /** Files on their way at a time: far fewer than there are threads. */
    static final int MOST_FILES = 6;

    private Arrivals() {}

    /** The outermost handlers of the server. */
    static Handler handlers() {
        EagerContentHandler waiting =
                new EagerContentHandler(new FewFiles(), new RetainedContentLoaderFactory(MOST_KEPT, A_PIECE, true));
        waiting.include(Arrivals::isWaitedFor);
        return waiting;
    }

    /** A form of fields whose length is said, and small. */
    private static boolean isWaitedFor(Request request) {
        String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
        return type != null && type.startsWith(FORM) && request.getLength() >= 0 && request.getLength() <= WAITED_FOR;
    }

    /** Whether all that is sent is there already, if anything is. */
    static boolean isThere(Context ctx) {
        long length = ctx.req().getContentLengthLong();
        boolean chunked = ctx.header("Transfer-Encoding") != null;
        String type = ctx.contentType();
        boolean form = type != null && type.startsWith(FORM);
        return !chunked && (length <= 0 || (form && length <= WAITED_FOR));
    }

    private static boolean mayStillBeComing(Request request) {
        boolean hasContent = request.getLength() > 0 || request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING);
        return hasContent && !isWaitedFor(request);
    }

    private static final class FewFiles extends Handler.Wrapper {

        private final Semaphore places = new Semaphore(MOST_FILES);

        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            if (!mayStillBeComing(request)) {
                return super.handle(request, response, callback);
            }
            if (!places.tryAcquire()) {
                // the rest of it is not waited for
                response.getHeaders().put(HttpHeader.CONNECTION, "close");
                Response.writeError(request, response, callback, HttpStatus.SERVICE_UNAVAILABLE_503);
                return true;
            }
            Request.addCompletionListener(request, failure -> places.release());
            return super.handle(request, response, callback);
        }
    }
}
