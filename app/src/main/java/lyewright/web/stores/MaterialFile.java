package lyewright.web.stores;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.MaterialNames;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/** A material's form as the text of a formula file: what is typed goes into it as it stands, whatever it is. */
final class MaterialFile {

    /** A name, then how much of it. */
    private static final Pattern PART = Pattern.compile(
            "(.+?)[\\s:=,;]+((?:[-+\u2212]?[0-9.,]+\\s*%?)|rest)(\\s+of\\s.*)?", Pattern.CASE_INSENSITIVE);

    private final MaterialForm form;
    private final String key;
    private final boolean isOil;
    private final MaterialNames names;
    private final List<Problem> problems;

    /**
     * The file of a form.
     *
     * @param form as typed
     * @param key what the material is called
     * @param isOil whether a formula can be all of it
     * @param names what the oils of a premix may be called
     * @param problems where it is told that a line of a premix is not understood
     */
    MaterialFile(MaterialForm form, String key, boolean isOil, MaterialNames names, List<Problem> problems) {
        this.form = form;
        this.key = key;
        this.isOil = isOil;
        this.names = names;
        this.problems = problems;
    }

    /** The file: the least formula that there is, and the material. */
    String text() {
        String oil = isOil ? key : key.equals("coconut") ? "palm" : "coconut";
        StringBuilder text = new StringBuilder("recipe: material\noils:\n  " + quoted(oil)
                + ": 1000 g\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\nmaterials:\n  " + quoted(key) + ":\n");
        if (!form.kind().word().isEmpty()) {
            line(text, "kind", form.kind().word());
        }
        for (MaterialField field : MaterialField.values()) {
            if (form.says(field)) {
                put(text, field);
            }
        }
        // a material of which nothing is said
        if (text.toString().endsWith(quoted(key) + ":\n")) {
            text.setLength(text.length() - 1);
            text.append(" {}\n");
        }
        return text.toString();
    }

    private void put(StringBuilder text, MaterialField field) {
        String typed = form.text(field);
        if (field == MaterialField.OILS) {
            Map<String, String> parts = parts(typed);
            if (!parts.isEmpty()) {
                text.append("    oils:\n");
                parts.forEach((oil, share) -> text.append("      ")
                        .append(quoted(oil))
                        .append(": ")
                        .append(quoted(share))
                        .append('\n'));
            }
        } else if (field == MaterialField.STRENGTH) {
            line(text, field.path(), field.withUnit(typed) + " " + form.alkali().strip());
        } else {
            line(text, field.path(), field.isFigure() ? field.withUnit(typed) : typed.strip());
        }
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append("    ").append(name).append(": ").append(quoted(value)).append('\n');
    }

    /** The oils of a premix, by key; common names are understood. */
    private Map<String, String> parts(String typed) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (String line : typed.lines().toList()) {
            if (line.isBlank()) {
                continue;
            }
            Matcher part = PART.matcher(line.strip());
            if (!part.matches()) {
                problems.add(new Problem(
                        MaterialField.OILS.path(),
                        "'" + clipped(line.strip()) + "' does not say how much of which oil",
                        "write it as coconut 60 %"));
                continue;
            }
            Outcome<String> meant = names.key(part.group(1).strip(), MaterialNames.Place.OILS);
            if (!(meant instanceof Outcome.Ok<String> oil)) {
                meant.problems().forEach(p -> problems.add(p.within(MaterialField.OILS.path())));
                continue;
            }
            String share = part.group(2).toLowerCase(Locale.ROOT);
            boolean bare = Character.isDigit(share.charAt(share.length() - 1));
            String figure = part.group(3) == null ? "" : " " + part.group(3).strip();
            if (parts.put(oil.value(), (bare ? share + " %" : share) + figure) != null) {
                problems.add(new Problem(
                        MaterialField.OILS.path(),
                        "'" + oil.value() + "' is listed twice",
                        "make one line of the two"));
            }
        }
        return parts;
    }

    private static String clipped(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }

    /** Any text as one value of the file. */
    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
            } else if (c < ' '
                    || (c >= 0x7f && c < 0xa0)
                    || (c >= 0xd800 && c < 0xe000)
                    || c == 0x2028
                    || c == 0x2029
                    || (c >= 0xfff0 && c <= 0xffff)) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.append('"').toString();
    }
}
