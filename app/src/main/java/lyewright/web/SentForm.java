package lyewright.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
            "token",
            "status",
            "sure",
            "found",
            OpenedIn.FIELD);

    /** Fields whose names are no words. */
    private static final Map<String, String> WORDS = Map.of(
            "lines", "line",
            "counted", "amount counted",
            "why", "what explains it",
            "bestBefore", "best before",
            "mouldText", "mould");

    /** In a form in which there is nothing to type, so that nothing of it was typed. */
    public static final String NOTHING_TYPED = "nothing-typed";

    /** Behind a thing's id: what it is called on the page. */
    private static final String CALLED = ".called";

    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}");

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
     * @param label its name as words: a row's number counts from 1
     */
    public record Field(String name, String value, String label) {

        private static String label(String name) {
            StringBuilder words = new StringBuilder();
            for (String word : name.split("[.-]", -1)) {
                boolean number = word.matches("[0-9]{1,6}");
                words.append(words.isEmpty() ? "" : " ")
                        .append(number ? Integer.parseInt(word) + 1 : WORDS.getOrDefault(word, word));
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
        List<String> things = new ArrayList<>();
        try {
            if (ctx.formParam(NOTHING_TYPED) != null) {
                return Optional.empty();
            }
            ctx.formParamMap().forEach((name, values) -> {
                for (String value : values) {
                    Field field = field(name.replace("\0", ""), value.replace("\0", ""), things, called(ctx, name));
                    boolean nobodys = NOBODYS.contains(name) || name.endsWith(CALLED);
                    (field.isFilled() && !nobodys ? typed : hidden).add(field);
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

    /** What the page called the thing that a field is of, where the form carries it. */
    private static String called(Context ctx, String name) {
        Matcher id = ID.matcher(name);
        String said = id.lookingAt() ? ctx.formParam(id.group() + CALLED) : null;
        return said == null ? "" : said.replace("\0", "").strip();
    }

    /**
     * One whose name begins with a thing's id is called by what the page called that thing, else by its place on the page it was on.
     */
    private static Field field(String name, String value, List<String> things, String called) {
        Matcher id = ID.matcher(name);
        if (!id.lookingAt()) {
            return new Field(name, value, Field.label(name));
        }
        if (!things.contains(id.group())) {
            things.add(id.group());
        }
        String rest = name.substring(id.end()).replaceFirst("^[.-]", "");
        String thing = called.isEmpty() ? "line " + (things.indexOf(id.group()) + 1) : called + ":";
        return new Field(name, value, (thing + " " + Field.label(rest)).strip());
    }

    /** Whether it may be sent again as it is. */
    public boolean again() {
        return !address.isEmpty();
    }
}
