package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Optional;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;

/** Files that come with a form. */
public final class Uploads {

    private static final String ONCE_MORE = "Go back to the page, choose the file again and send it once more.";

    private Uploads() {}

    /**
     * A file.
     *
     * @param ctx of the request
     * @param field of the form
     * @return the file; empty where none was chosen or it has nothing in it
     * @throws Refused if all of what was sent is too large, or not put together as a form is
     */
    public static Optional<UploadedFile> file(Context ctx, String field) {
        try {
            return Optional.ofNullable(ctx.uploadedFile(field)).filter(file -> file.size() > 0);
        } catch (Exception e) {
            // the server under us tells of either only by throwing, and declares none of it
            if (isOfTheSender(e)) {
                throw ctx.req().getContentLengthLong() > WebServer.LARGEST_UPLOAD
                        ? new Refused(413, "What was sent is too large.", "Send a file of 32 MB at most.")
                        : new Refused(400, "What was sent cannot be read.", ONCE_MORE);
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
