package lyewright.web;

import io.javalin.http.Context;
import java.util.Optional;

/** Says who asks, for requests that do not come by the desk's door. */
public interface Admission {

    /** Nobody is known there. */
    Admission NOBODY = ctx -> Optional.empty();

    /**
     * Who asks.
     *
     * @param ctx the request
     * @return them, where their device was let in
     */
    Optional<Visitor> visitor(Context ctx);
}
