package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A form that got no answer, given back with every field as it was sent: the page that it stood on may need the very thing that
 * is missing, and what was typed must not be lost for that.
 *
 * @param address where it was sent; empty where sending it again would do nothing better
 * @param hidden fields that nobody types
 * @param typed fields that somebody may have typed in
 */
public record SentForm(String address, List<Field> hidden, List<Field> typed) {

    /** What the pages themselves put into their forms. */
    private static final Set<String> NOBODYS = Set.of(
            "draft",
            "revision",
            "based-on",
            "window",
            "serial",
            "seen",
            "do",
            "turn",
            "choose",
            "on",
            "as",
            "before",
            "caret",
            "at",
            "only",
            "remarks",
            OpenedIn.FIELD);

    /** Copies its lists. */
    public SentForm {
        hidden = List.copyOf(hidden);
        typed = List.copyOf(typed);
    }

    /**
     * One field.
     *
     * @param name its name
     * @param value what was in it
     */
    public record Field(String name, String value) {

        /** Its name as words: a row's number counts from 1. */
        public String label() {
            StringBuilder words = new StringBuilder();
            for (String word : name.split("[.-]", -1)) {
                boolean number = word.matches("[0-9]{1,6}");
                words.append(words.isEmpty() ? "" : " ").append(number ? Integer.parseInt(word) + 1 : word);
            }
            return words.toString();
        }

        /** Whether it needs several lines. */
        public boolean isText() {
            return value.length() > 80 || value.indexOf('\n') >= 0;
        }

        /** Whether something is in it. */
        boolean isFilled() {
            return !value.isBlank();
        }
    }

    /** What a request sent; empty where it was no form, where it stays on its page anyway, or where nothing was typed. */
    static Optional<SentForm> of(Context ctx, boolean again) {
        if (!HandlerType.POST.equals(ctx.method()) || Answers.isInPlace(ctx)) {
            return Optional.empty();
        }
        List<Field> hidden = new ArrayList<>();
        List<Field> typed = new ArrayList<>();
        try {
            ctx.formParamMap().forEach((name, values) -> {
                for (String value : values) {
                    Field field = new Field(name.replace("\0", ""), value.replace("\0", ""));
                    (field.isFilled() && !NOBODYS.contains(name) ? typed : hidden).add(field);
                }
            });
        } catch (Exception e) {
            // what cannot be read cannot be given back either; the page says that much already
            return Optional.empty();
        }
        return typed.isEmpty()
                ? Optional.empty()
                : Optional.of(new SentForm(again ? Ways.asked(ctx) : "", hidden, typed));
    }

    /** Whether it may be sent again as it is. */
    public boolean again() {
        return !address.isEmpty();
    }
}
