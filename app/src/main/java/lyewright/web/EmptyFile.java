package lyewright.web;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.measure.Problem;

/** A file that was chosen and has nothing in it: to say that none was chosen would send somebody to choose it again. */
public final class EmptyFile {

    private static final int NAMED = 80;

    private EmptyFile() {}

    /**
     * What is wrong with such a file.
     *
     * @param ctx of a request whose files came whole
     * @param field of the form; the path of what is wrong
     * @return that it is empty, by its name; nothing where none was chosen
     */
    public static Optional<Problem> told(Context ctx, String field) {
        return Optional.ofNullable(ctx.uploadedFile(field))
                .filter(file -> !file.filename().isBlank() && file.size() == 0)
                .map(file -> new Problem(
                        field, "the file '" + seen(file.filename()) + "' is empty", "choose another, or save it anew"));
    }

    private static String seen(String name) {
        return name.codePoints()
                .limit(NAMED)
                .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT)
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
