package lyewright.web.start;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import lyewright.formula.MaterialNames;
import lyewright.formula.NotebookText;

/**
 * The notebook's form as it was typed.
 *
 * @param inRows whether the boxes count, not the text
 * @param text the text
 * @param rows the boxes
 * @param unit of amounts in boxes that have none: g or oz
 * @param mould which of the workshop's moulds, by its id; empty for none
 * @param mouldText a mould typed, which goes before one that is chosen
 * @param before what stood in the text before the example did
 * @param typing where it is being typed
 * @param keep under what name it is to be kept, and where
 */
public record NotebookForm(
        boolean inRows,
        String text,
        NotebookRows rows,
        String unit,
        String mould,
        String mouldText,
        String before,
        Typing typing,
        Keep keep) {

    private static final int MOST_ROWS = 400;
    private static final int LONGEST_TOKEN = 100;

    /**
     * Where it is being typed.
     *
     * @param line from 1; 0 where no line is
     * @param box which box; empty where none is
     * @param onlyThere whether all else is as it was when it was answered last
     * @param first whether nothing was answered yet
     */
    public record Typing(int line, String box, boolean onlyThere, boolean first) {
        static final Typing NOWHERE = new Typing(0, "", false, false);
    }

    /**
     * What is asked only for keeping it.
     *
     * @param name the recipe's; where empty, what the text says
     * @param workshop the workshop's, where there is none yet
     * @param units grams or ounces
     * @param token tells this form from any other
     */
    public record Keep(String name, String workshop, String units, String token) {}

    static NotebookForm empty(String unit) {
        String units = unit.equals("oz") ? WorkshopForm.OUNCES : WorkshopForm.GRAMS;
        return new NotebookForm(
                false,
                "",
                NotebookRows.EMPTY,
                unit,
                "",
                "",
                "",
                Typing.NOWHERE,
                new Keep("", "", units, UUID.randomUUID().toString()));
    }

    static NotebookForm of(Context ctx) {
        return new NotebookForm(
                typed(ctx, "as").equals("rows"),
                typed(ctx, "text"),
                rows(ctx),
                typed(ctx, "unit").equals("oz") ? "oz" : "g",
                typed(ctx, "mould"),
                typed(ctx, "mouldText"),
                typed(ctx, "before"),
                new Typing(
                        number(typed(ctx, "caret")),
                        typed(ctx, "at"),
                        typed(ctx, "only").equals("there"),
                        typed(ctx, "only").equals("first")),
                new Keep(
                        typed(ctx, "name"),
                        typed(ctx, "workshop"),
                        WorkshopForm.units(typed(ctx, "units")),
                        token(ctx)));
    }

    private static NotebookRows rows(Context ctx) {
        List<String> whats = ctx.formParams("what");
        List<String> muches = ctx.formParams("much");
        List<NotebookRows.Row> rows = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST_ROWS, Math.max(whats.size(), muches.size())); i++) {
            rows.add(
                    new NotebookRows.Row(i < whats.size() ? whats.get(i) : "", i < muches.size() ? muches.get(i) : ""));
        }
        while (!rows.isEmpty() && rows.get(rows.size() - 1).isEmpty()) {
            rows.remove(rows.size() - 1);
        }
        return new NotebookRows(
                typed(ctx, "rowName"),
                rows,
                typed(ctx, "soda"),
                typed(ctx, "potash"),
                typed(ctx, "water"),
                typed(ctx, "superfat"));
    }

    private static String typed(Context ctx, String name) {
        String value = ctx.formParam(name);
        return value == null ? "" : value;
    }

    private static String token(Context ctx) {
        String token = typed(ctx, "token");
        return token.length() <= LONGEST_TOKEN ? token : "";
    }

    private static int number(String text) {
        return text.matches("[0-9]{1,6}") ? Integer.parseInt(text) : 0;
    }

    /** Whether nothing is typed that could be read. */
    boolean isBlank() {
        return inRows ? rows.isEmpty() : text.isBlank();
    }

    NotebookReading reading(MaterialNames names) {
        return inRows
                ? NotebookReading.of(rows, unit, rows.lineOf(typing.box(), unit), names)
                : NotebookReading.of(text, typing.line(), names);
    }

    /** The same in boxes. */
    NotebookForm asRows(MaterialNames names) {
        return inRows
                ? this
                : with(
                        true,
                        "",
                        NotebookRows.of(text, NotebookText.read(text, names).nameLine()),
                        before);
    }

    /** The same as text. */
    NotebookForm asText() {
        return inRows ? with(false, rows.isEmpty() ? "" : rows.typedText(unit), NotebookRows.EMPTY, before) : this;
    }

    /** The example instead, with what was typed kept beside it. */
    NotebookForm withExample(String example) {
        NotebookForm asText = asText();
        boolean isExample = asText.text.strip().equals(example.strip());
        return asText.with(false, example, NotebookRows.EMPTY, isExample ? before : asText.text);
    }

    /** What was typed before the example came. */
    NotebookForm withoutExample() {
        return with(false, before, NotebookRows.EMPTY, "");
    }

    /**
     * One line of the text as another.
     *
     * @param chosen the line's number, a colon and the line; anything else changes nothing
     */
    NotebookForm withChosen(String chosen) {
        int colon = chosen.indexOf(':');
        int number = colon < 0 ? 0 : number(chosen.substring(0, colon));
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (inRows) {
            return with(true, "", rows.withLine(number, chosen.substring(colon + 1), unit), before);
        }
        if (number < 1 || number > lines.size()) {
            return this;
        }
        lines.set(number - 1, chosen.substring(colon + 1).replaceAll("\\R", " "));
        return with(false, String.join("\n", lines), rows, before);
    }

    private NotebookForm with(boolean asRows, String newText, NotebookRows newRows, String newBefore) {
        return new NotebookForm(asRows, newText, newRows, unit, mould, mouldText, newBefore, Typing.NOWHERE, keep);
    }

    /** How many lines there are to number. */
    int lineCount() {
        return (int) Math.min(400, 1 + text.chars().filter(c -> c == '\n').count());
    }
}
