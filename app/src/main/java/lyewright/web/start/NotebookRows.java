package lyewright.web.start;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.NotebookText;

/**
 * The same notebook in boxes, for who would rather fill those in: each box is a line of the text, and the text is read.
 *
 * @param name of the recipe
 * @param lines oils and whatever else goes in
 * @param soda how much
 * @param potash how much
 * @param water how much
 * @param superfat instead of soda
 */
public record NotebookRows(String name, List<Row> lines, String soda, String potash, String water, String superfat) {

    /** Empty boxes that are there to be filled in. */
    private static final int SPARE = 3;

    private static final int USUAL = 6;

    /** No line of a recipe is longer, and taking apart a very long one takes long. */
    private static final int LONGEST_SPLIT = 300;

    private static final Pattern BARE = Pattern.compile("[0-9]+(?:[.,][0-9]+)*");

    /** The one amount of a line, before or behind what it is of. */
    private static final Pattern BEHIND =
            Pattern.compile("^(\\D*?)[\\s:=–-]*(\\d[\\d.,]*\\s*(?:%|\\p{L}).*|\\d[\\d.,]*)$");

    private static final Pattern BEFORE = Pattern.compile("^(\\d[\\d.,]*\\s*(?:mg|g|kg|oz|lb|lbs|ml|l|%))\\s+(\\D+)$");

    private static final Pattern NAME = Pattern.compile("recipe\\s*:(.*)", Pattern.CASE_INSENSITIVE);

    static final NotebookRows EMPTY = new NotebookRows("", List.of(), "", "", "", "");

    /**
     * A box for what and one for how much.
     *
     * @param what such as coconut oil
     * @param much such as 350 g
     */
    public record Row(String what, String much) {

        static final Row EMPTY = new Row("", "");

        boolean isEmpty() {
            return what.isBlank() && much.isBlank();
        }
    }

    /** A line of the text and the box it comes from. */
    public record Boxed(String box, String text) {}

    /** Copies its lists. */
    public NotebookRows {
        lines = List.copyOf(lines);
    }

    /** Filled boxes and some empty ones. */
    public List<Row> shown() {
        List<Row> shown = new ArrayList<>(lines);
        while (shown.size() < USUAL || shown.size() < lines.size() + SPARE) {
            shown.add(Row.EMPTY);
        }
        return shown;
    }

    boolean isEmpty() {
        return lines.isEmpty() && (name + soda + potash + water + superfat).isBlank();
    }

    /** The lines it comes to; amounts without a unit are in the one given. */
    List<Boxed> boxed(String unit) {
        List<Boxed> boxed = new ArrayList<>();
        // without it the first box might be taken for the name
        add(boxed, "name", "recipe: " + (name.isBlank() ? NotebookReading.UNNAMED : name));
        for (int i = 0; i < lines.size(); i++) {
            Row row = lines.get(i);
            add(boxed, "row-" + i, (row.what() + " " + amount(row.much(), unit)).strip());
        }
        add(boxed, "soda", line("soda", soda, unit));
        add(boxed, "potash", line("potash", potash, unit));
        add(boxed, "water", line("water", water, unit));
        add(boxed, "superfat", line("superfat", superfat, "%"));
        return boxed;
    }

    String text(String unit) {
        return String.join("\n", boxed(unit).stream().map(Boxed::text).toList());
    }

    /** The same without a name that nobody typed. */
    String typedText(String unit) {
        String text = text(unit);
        return name.isBlank() ? text.substring(text.indexOf('\n') + 1) : text;
    }

    private static void add(List<Boxed> boxed, String box, String text) {
        String line = text.replaceAll("\\R", " ").strip();
        if (!line.isEmpty()) {
            boxed.add(new Boxed(box, line));
        }
    }

    private static String line(String what, String much, String unit) {
        return much.isBlank() ? "" : what + " " + amount(much, unit);
    }

    private static String amount(String much, String unit) {
        String stripped = much.strip();
        return BARE.matcher(stripped).matches() ? stripped + " " + unit : stripped;
    }

    /** The line that a box comes to, from 1; 0 where it is empty. */
    int lineOf(String box, String unit) {
        List<Boxed> boxed = boxed(unit);
        for (int i = 0; i < boxed.size(); i++) {
            if (boxed.get(i).box().equals(box)) {
                return i + 1;
            }
        }
        return 0;
    }

    /** Another line in the boxes of one, where those are of a row; else the same. */
    NotebookRows withLine(int number, String line, String unit) {
        List<Boxed> boxed = boxed(unit);
        String box =
                number < 1 || number > boxed.size() ? "" : boxed.get(number - 1).box();
        if (!box.startsWith("row-")) {
            return this;
        }
        List<Row> changed = new ArrayList<>(lines);
        changed.set(
                Integer.parseInt(box.substring("row-".length())),
                split(line.replaceAll("\\R", " ").strip()));
        return new NotebookRows(name, changed, soda, potash, water, superfat);
    }

    /** A text in boxes. A line whose amount cannot be told apart goes into one box whole, so that nothing is lost. */
    static NotebookRows of(String text, int nameLine) {
        String name = "";
        String[] single = {"", "", "", ""};
        List<Row> rows = new ArrayList<>();
        int number = 0;
        for (String line :
                text.lines().limit(NotebookText.MOST_LINES).map(String::strip).toList()) {
            number++;
            if (line.isEmpty()) {
                continue;
            }
            Matcher named = NAME.matcher(line);
            Row row = split(line);
            int box = box(row);
            if (name.isEmpty() && (named.matches() || number == nameLine)) {
                name = named.matches() ? named.group(1).strip() : line;
            } else if (box >= 0 && single[box].isEmpty()) {
                single[box] = row.much();
            } else {
                rows.add(row);
            }
        }
        return new NotebookRows(name, rows, single[0], single[1], single[2], single[3]);
    }

    private static Row split(String line) {
        if (line.startsWith("#") || line.length() > LONGEST_SPLIT) {
            return new Row(line, "");
        }
        Matcher before = BEFORE.matcher(line);
        if (before.matches()) {
            return new Row(before.group(2).strip(), before.group(1));
        }
        Matcher behind = BEHIND.matcher(line);
        return behind.matches() && !behind.group(1).isBlank()
                ? new Row(behind.group(1).strip(), behind.group(2).strip())
                : new Row(line, "");
    }

    /** Which of the boxes with a name of their own a line is for; -1 for none. */
    private static int box(Row row) {
        if (row.much().isEmpty()) {
            return -1;
        }
        return switch (row.what().toLowerCase(java.util.Locale.ROOT)) {
            case "soda", "caustic soda", "sodium hydroxide", "naoh", "lye" -> 0;
            case "potash", "caustic potash", "potassium hydroxide", "koh" -> 1;
            case "water", "distilled water" -> 2;
            case "superfat" -> 3;
            default -> -1;
        };
    }
}
