package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lyewright.measure.Problem;

/** The fields of a form by name, as a browser sends them and a draft keeps them. */
final class FormFields {

    /** The longest text of a field of one line; the rules of a formula allow less. */
    static final int LONGEST_LINE = 2_000;

    /** The longest notes, or oils of a premix. */
    static final int LONGEST_TEXT = 50_000;

    /** The longest remarks, which nobody types into a form, and the longest file. */
    static final int LONGEST_REMARKS = 200_000;

    /** Rows that come back, though the form has room for fewer; a row's number may be anything. */
    private static final int MOST_ROWS_SHOWN = 5 * FormulaForm.MOST_ROWS;

    static final String REMARKS = "remarks";

    /** Keys of what stays as the tables have it, which nobody types either. */
    static final String AS_TABLES = "as-tables";

    /** The whole formula as a file, where somebody types that instead. */
    static final String FILE = "file";

    private static final int UNREADABLE = 0xfffd;

    private static final Pattern ROW = Pattern.compile("(oils|additions|portions|materials)\\.([0-9]{1,6})\\..*");

    private FormFields() {}

    /** What of the fields is more than is kept, if anything. */
    static Optional<Problem> tooMuch(Map<String, List<String>> parameters) {
        for (Map.Entry<String, List<String>> entry : parameters.entrySet()) {
            String name = entry.getKey();
            int longest = longest(name);
            if (entry.getValue().stream().anyMatch(value -> value.length() > longest)) {
                return Optional.of(
                        new Problem(name, "this field holds at most " + longest + " characters", "write it shorter"));
            }
            Matcher row = ROW.matcher(name);
            if (row.matches() && Integer.parseInt(row.group(2)) >= FormulaForm.MOST_ROWS) {
                return Optional.of(new Problem(
                        row.group(1),
                        "the form has room for " + FormulaForm.MOST_ROWS + " " + row.group(1),
                        "edit a longer formula as a file"));
            }
        }
        return Optional.empty();
    }

    private static int longest(String name) {
        if (name.equals(REMARKS) || name.equals(FILE) || name.equals(AS_TABLES)) {
            return LONGEST_REMARKS;
        }
        boolean text = name.equals("notes") || (name.endsWith("." + MaterialRow.OILS) && name.startsWith("materials."));
        return text ? LONGEST_TEXT : LONGEST_LINE;
    }

    static FormulaForm form(UnaryOperator<String> sent, Collection<String> names) {
        Map<String, Integer> rows = rows(names);
        // not shortened to what is kept: what is too much comes back as it was typed, and says so
        UnaryOperator<String> line = name -> whole(sent.apply(name));
        UnaryOperator<String> text = name -> whole(oneLineEnd(sent.apply(name)));
        return new FormulaForm(
                line.apply("recipe"),
                line.apply("version"),
                line.apply("use"),
                text.apply("notes"),
                list(rows, "oils", row -> new OilRow(line.apply(row + "name"), line.apply(row + "amount"))),
                line.apply("alkali"),
                line.apply("superfat"),
                line.apply("water"),
                line.apply("acids"),
                line.apply("cured-water"),
                new ProcessFields(
                        line.apply("process.make"),
                        line.apply("process.oils"),
                        line.apply("process.lye"),
                        line.apply("process.oven"),
                        line.apply("process.pour")),
                list(rows, "additions", row -> addition(line, row)),
                list(rows, "portions", row -> new PortionRow(line.apply(row + "name"), line.apply(row + "share"))),
                list(rows, "materials", row -> material(line, text, row)),
                Arrays.stream(line.apply(AS_TABLES).split(" "))
                        .filter(key -> !key.isEmpty())
                        .toList(),
                FormRemarks.read(whole(sent.apply(REMARKS))));
    }

    private static AdditionRow addition(UnaryOperator<String> line, String row) {
        return new AdditionRow(
                line.apply(row + "of"),
                line.apply(row + "amount"),
                line.apply(row + "stage"),
                line.apply(row + "in"),
                line.apply(row + "ratio"),
                line.apply(row + "ahead"),
                line.apply(row + "replaces"),
                line.apply(row + "was"));
    }

    private static MaterialRow material(UnaryOperator<String> line, UnaryOperator<String> text, String row) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String word : MaterialRow.WORDS) {
            UnaryOperator<String> read = word.equals(MaterialRow.OILS) ? text : line;
            said.put(word, read.apply(row + MaterialRow.field(word)));
        }
        return new MaterialRow(line.apply(row + "key"), said);
    }

    /** How many rows of each kind there are, gaps counted. */
    private static Map<String, Integer> rows(Collection<String> names) {
        Map<String, Integer> rows = new HashMap<>();
        for (String name : names) {
            Matcher row = ROW.matcher(name);
            if (row.matches()) {
                int count = Math.min(MOST_ROWS_SHOWN, Integer.parseInt(row.group(2)) + 1);
                rows.merge(row.group(1), count, Math::max);
            }
        }
        return rows;
    }

    private static <T> List<T> list(Map<String, Integer> rows, String kind, Function<String, T> row) {
        return IntStream.range(0, rows.getOrDefault(kind, 0))
                .mapToObj(i -> row.apply(kind + "." + i + "."))
                .toList();
    }

    /** A browser ends each line of a text by two characters. */
    private static String oneLineEnd(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    /** Without half characters, which no file can hold. */
    private static String whole(String text) {
        return text.codePoints().anyMatch(FormFields::isHalf)
                ? text.codePoints()
                        .map(c -> isHalf(c) ? UNREADABLE : c)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString()
                : text;
    }

    private static boolean isHalf(int c) {
        return c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
    }

    static Map<String, String> of(FormulaForm form) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("recipe", form.recipe());
        fields.put("version", form.version());
        fields.put("use", form.use());
        fields.put("notes", form.notes());
        put(fields, "oils", form.oils(), row -> List.of("name", row.name(), "amount", row.amount()));
        fields.put("alkali", form.alkali());
        fields.put("superfat", form.superfat());
        fields.put("water", form.water());
        fields.put("acids", form.acids());
        fields.put("cured-water", form.curedWater());
        fields.put("process.make", form.process().make());
        fields.put("process.oils", form.process().oils());
        fields.put("process.lye", form.process().lye());
        fields.put("process.oven", form.process().oven());
        fields.put("process.pour", form.process().pour());
        put(fields, "additions", form.additions(), FormFields::texts);
        put(fields, "portions", form.portions(), row -> List.of("name", row.name(), "share", row.share()));
        put(fields, "materials", form.materials(), FormFields::texts);
        if (!form.asTables().isEmpty()) {
            fields.put(AS_TABLES, String.join(" ", form.asTables()));
        }
        String remarks = FormRemarks.write(form.remarks());
        if (!remarks.isEmpty()) {
            fields.put(REMARKS, remarks);
        }
        return fields;
    }

    private static List<String> texts(AdditionRow row) {
        return List.of(
                "of",
                row.of(),
                "amount",
                row.amount(),
                "stage",
                row.stage(),
                "in",
                row.in(),
                "ratio",
                row.ratio(),
                "ahead",
                row.ahead(),
                "replaces",
                row.replaces(),
                "was",
                row.was());
    }

    private static List<String> texts(MaterialRow row) {
        List<String> texts = new ArrayList<>(List.of("key", row.key()));
        row.said().forEach((word, text) -> texts.addAll(List.of(MaterialRow.field(word), text)));
        return texts;
    }

    /** Names and texts by turns. */
    private static <T> void put(
            Map<String, String> fields, String kind, List<T> rows, Function<T, List<String>> texts) {
        for (int i = 0; i < rows.size(); i++) {
            List<String> pairs = texts.apply(rows.get(i));
            for (int j = 0; j < pairs.size(); j += 2) {
                fields.put(kind + "." + i + "." + pairs.get(j), pairs.get(j + 1));
            }
        }
    }
}
