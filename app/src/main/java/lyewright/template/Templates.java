package lyewright.template;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gg.jte.output.Utf8ByteOutput;

/** Runs the templates that were built into the application. Safe for use by several threads at once. */
public final class Templates {

    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "lyewright.template");

    private Templates() {}

    /**
     * Runs a template.
     *
     * @param template its name below src/main/jte, such as {@code recipe/list.jte}
     * @param model its one parameter
     * @return the text
     */
    public static String render(String template, Object model) {
        StringOutput out = new StringOutput();
        ENGINE.render(template, model, out);
        return out.toString();
    }

    /**
     * Runs a template.
     *
     * @param template its name below src/main/jte
     * @param model its one parameter
     * @return the text as UTF-8
     */
    public static byte[] bytes(String template, Object model) {
        Utf8ByteOutput out = new Utf8ByteOutput();
        ENGINE.render(template, model, out);
        return out.toByteArray();
    }
}
