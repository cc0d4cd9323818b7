package lyewright.web;

import java.nio.ByteBuffer;
import lyewright.template.Templates;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Requests that the server underneath refuses before any of our pages hears of them: answered in our words, with our headers. */
final class EarlyFaults implements Request.Handler {

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Defences.HEADERS.forEach((name, value) -> response.getHeaders().put(name, value));
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/html; charset=utf-8");
        byte[] page = Templates.bytes("web/fault.jte", Faults.page(response.getStatus()));
        response.write(true, ByteBuffer.wrap(page), callback);
        return true;
    }
}
