package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;

/** Files that come with a form. */
public final class Uploads {

    private Uploads() {}

    /**
     * A file.
     *
     * @param ctx of the request
     * @param field of the form; the path of what is wrong
     * @param ifTooLarge what to do with a file that is larger than any form takes
     * @return the file, empty where none was chosen or it has nothing in it; refused if all of what was sent is too large, or
     *     did not come whole
     */
    public static Outcome<Optional<UploadedFile>> file(Context ctx, String field, String ifTooLarge) {
        try {
            return Outcome.ok(Optional.ofNullable(ctx.uploadedFile(field)).filter(file -> file.size() > 0));
        } catch (Exception e) {
            // the server under us tells of either only by throwing, and declares none of it
            if (isOfTheSender(e)) {
                return new Outcome.Refused<>(List.of(
                        ctx.req().getContentLengthLong() > WebServer.LARGEST_UPLOAD
                                ? new Problem(
                                        field,
                                        "the file is larger than " + (WebServer.LARGEST_UPLOAD >> 20) + " MB",
                                        ifTooLarge)
                                : new Problem(
                                        field, "the file did not come whole", "choose it and send it once more")));
            }
            throw e;
        }
    }

    /** Whether what was sent is to blame: not put together as a form is, cut short, or in letters that nobody knows. */
    static boolean isOfTheSender(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof HttpException
                    || cause instanceof EofException
                    || cause instanceof UnsupportedCharsetException
                    || cause instanceof IllegalCharsetNameException) {
                return true;
            }
        }
        return false;
    }
}
