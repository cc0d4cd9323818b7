package lyewright.web;

import io.javalin.http.Context;
import java.util.Collections;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.concurrent.Semaphore;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Connector;
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

    /** What all forms together that come by one door may take up while they are waited for: kept apart, so that no door shuts another. */
    static final int MOST_WAITED_FOR = 32 * WAITED_FOR;

    /** The least that one takes up, however short it is. */
    private static final int LEAST = 16 << 10;

    private static final String FORM = "application/x-www-form-urlencoded";

    /** Files on their way at a time: far fewer than there are threads. */
    static final int MOST_FILES = 6;

    private Arrivals() {}

    /** The outermost handlers of the server. */
    static Handler handlers() {
        EagerContentHandler waiting =
                new EagerContentHandler(new FewFiles(), new RetainedContentLoaderFactory(MOST_KEPT, A_PIECE, true));
        waiting.include(Arrivals::isWaitedFor);
        return new NotTooMuch(waiting);
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

    /** The rest of what was sent is not waited for. */
    private static boolean noRoom(Request request, Response response, Callback callback) {
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        Response.writeError(request, response, callback, HttpStatus.SERVICE_UNAVAILABLE_503);
        return true;
    }

    /** Forms that are waited for take up memory before anybody asks who sends them. */
    private static final class NotTooMuch extends Handler.Wrapper {

        private final Map<Connector, Semaphore> rooms = Collections.synchronizedMap(new WeakHashMap<>());

        private NotTooMuch(Handler next) {
            super(next);
        }

        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            if (!isWaitedFor(request)) {
                return super.handle(request, response, callback);
            }
            Semaphore room = rooms.computeIfAbsent(
                    request.getConnectionMetaData().getConnector(), door -> new Semaphore(MOST_WAITED_FOR));
            int takes = Math.max(LEAST, (int) request.getLength());
            if (!room.tryAcquire(takes)) {
                return noRoom(request, response, callback);
            }
            Request.addCompletionListener(request, failure -> room.release(takes));
            return super.handle(request, response, callback);
        }
    }

    private static final class FewFiles extends Handler.Wrapper {

        private final Semaphore places = new Semaphore(MOST_FILES);

        @Override
        public boolean handle(Request request, Response response, Callback callback) throws Exception {
            if (!mayStillBeComing(request)) {
                return super.handle(request, response, callback);
            }
            if (!places.tryAcquire()) {
                return noRoom(request, response, callback);
            }
            Request.addCompletionListener(request, failure -> places.release());
            return super.handle(request, response, callback);
        }
    }
}
