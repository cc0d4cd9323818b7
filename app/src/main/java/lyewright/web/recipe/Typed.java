package lyewright.web.recipe;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * What the editor's page sent: all of its form, and what was pressed.
 *
 * @param drafted the fields, or the file
 * @param draftId the draft it is kept in; empty before the first keystroke
 * @param revision the draft's revision that the page knows
 * @param basedOn the version that was the newest when the change began
 * @param asNext whether to save as the next version in any case
 * @param pressed the button, empty for a keystroke
 */
record Typed(Drafted drafted, String draftId, int revision, int basedOn, boolean asNext, String pressed) {

    /** A page that was just opened. */
    static Typed opened(FormulaForm form, int basedOn, String why) {
        return new Typed(new Drafted(form, "", why, newWindow(), 0), "", 0, basedOn, false, "");
    }

    static String newWindow() {
        return UUID.randomUUID().toString();
    }

    static Typed of(Context ctx) {
        Map<String, List<String>> sent = ctx.formParamMap();
        Drafted drafted = new Drafted(
                FormulaForm.from(sent),
                text(sent, FormFields.FILE).replace("\r\n", "\n"),
                text(sent, "why").replace("\r\n", "\n"),
                text(sent, "window"),
                serial(ctx, sent));
        return new Typed(
                drafted,
                text(sent, "draft"),
                number(text(sent, "revision")),
                number(text(sent, "based-on")),
                !text(sent, "as-next").isEmpty(),
                text(sent, "do"));
    }

    /** The whole page is sent last of all, and is newer than any keystroke before it. */
    private static long serial(Context ctx, Map<String, List<String>> sent) {
        String header = Optional.ofNullable(ctx.header("X-Serial")).orElse("");
        return header.isEmpty() ? 1L + number(text(sent, "serial")) : number(header);
    }

    private static String text(Map<String, List<String>> sent, String name) {
        List<String> values = sent.getOrDefault(name, List.of());
        return values.isEmpty() ? "" : values.get(values.size() - 1);
    }

    private static int number(String text) {
        boolean digits = !text.isEmpty() && text.length() <= 9 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        return digits ? Integer.parseInt(text) : 0;
    }

    Typed with(Drafted other) {
        return new Typed(other, draftId, revision, basedOn, asNext, pressed);
    }

    Typed with(FormulaForm form) {
        return with(new Drafted(form, "", drafted.why(), drafted.window(), drafted.serial()));
    }

    Typed withFile(String file) {
        return with(new Drafted(drafted.form(), file, drafted.why(), drafted.window(), drafted.serial()));
    }

    Typed keptAs(String id, int newRevision) {
        return new Typed(drafted, id, newRevision, basedOn, asNext, pressed);
    }

    /** What the recipe is called so far. */
    String name() {
        return drafted.form().recipe().strip();
    }
}
