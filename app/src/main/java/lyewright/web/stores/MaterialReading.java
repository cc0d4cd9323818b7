package lyewright.web.stores;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.store.Typed;

/**
 * Reads a material's form as the file of a formula that holds nothing else, so that the engine's own rules judge it. Problems
 * name the form's fields.
 */
final class MaterialReading {

    private static final String NAMELESS = "this material";

    private static final int LONGEST = 20_000;

    /** A name, then how much of it. */
    private static final Pattern PART =
            Pattern.compile("(.+?)[\\s:=,;]+((?:[-+\u2212]?[0-9.,]+\\s*%?)|rest)", Pattern.CASE_INSENSITIVE);

    private final MaterialForm form;
    private final List<OwnMaterial> others;
    private final Tables tables;
    private final String key;
    private final List<Problem> problems = new ArrayList<>();

    private MaterialReading(MaterialForm form, List<OwnMaterial> others, Tables tables) {
        this.form = form;
        this.others = others;
        this.tables = tables;
        this.key = form.key().strip().isEmpty() ? NAMELESS : form.key().strip();
    }

    /**
     * What reading gave.
     *
     * @param material the material, where nothing is wrong
     * @param resolved a formula that is all of it, for an oil where nothing is wrong
     * @param problems what is wrong, by field
     */
    record Read(Optional<OwnMaterial> material, Optional<ResolvedFormula> resolved, List<Problem> problems) {}

    /**
     * Reads a form.
     *
     * @param form as typed
     * @param others the maker's other materials, which a premix may be made of
     * @param tables the tables
     * @return what reading gave
     */
    static Read read(MaterialForm form, List<OwnMaterial> others, Tables tables) {
        return new MaterialReading(form, others, tables).read();
    }

    private Read read() {
        if (form.key().isBlank()) {
            problems.add(new Problem("key", "it has no name", "write what recipes shall call it"));
        } else if (form.kind() == MaterialKind.OF_TABLES && !tables.has(key)) {
            List<String> near = tables.nearest(key);
            problems.add(new Problem(
                    "key",
                    "the tables have no '" + key + "'",
                    near.isEmpty() ? "look it up in the tables" : "did you mean " + String.join(" or ", near) + "?"));
        }
        List<Problem> notText = notText();
        if (!notText.isEmpty()) {
            problems.addAll(notText);
            return new Read(Optional.empty(), Optional.empty(), problems);
        }
        FormulaFile.Read file = FormulaFile.read(text());
        take(file.problems());
        if (file.formula().isEmpty() && problems.isEmpty()) {
            // a file that cannot be taken apart has no place to tell it at
            problems.addAll(file.problems());
        }
        if (file.formula().isEmpty() || !problems.isEmpty()) {
            return new Read(Optional.empty(), Optional.empty(), problems);
        }
        OwnMaterial own = file.formula().get().materials().get(0);
        Outcome<ResolvedFormula> resolved =
                ResolvedFormula.of(withOthers(file.formula().get()), tables, Purities.ASSUMED);
        take(resolved.problems());
        boolean sound = problems.isEmpty();
        return new Read(
                sound ? Optional.of(own) : Optional.empty(),
                sound && isOil() ? Optional.of(resolved.orThrow()) : Optional.empty(),
                problems);
    }

    /** What no file can hold, told at its field before a file is made of it. */
    private List<Problem> notText() {
        List<Problem> found = new ArrayList<>();
        if (!form.key().isBlank()) {
            Typed.name("key", "its name", form.key().strip()).ifPresent(found::add);
        }
        for (MaterialField field : MaterialField.values()) {
            Typed.text(field.path(), "this", form.text(field), LONGEST).ifPresent(found::add);
        }
        return found;
    }

    private boolean isOil() {
        return switch (form.kind().family()) {
            case OIL, BLEND -> true;
            case TABLES -> tables.oil(key).isPresent();
            case LYE, ADDITION -> false;
        };
    }

    /** What is wrong with this material; what is wrong with another is that one's own business. */
    private void take(List<Problem> found) {
        boolean linesTold = problems.stream().anyMatch(p -> p.path().equals(MaterialField.OILS.path()));
        for (Problem problem : found) {
            String field = field(problem);
            // what follows from lines that were not understood is not told as well
            if (!field.isEmpty() && !(linesTold && field.equals(MaterialField.OILS.path()))) {
                problems.add(new Problem(field, problem.what(), problem.remedy()));
            }
        }
    }

    /** The form's field that a problem belongs to; empty where it is not this material's, or told already. */
    private String field(Problem problem) {
        String mine = "materials." + key;
        String path = problem.path();
        if (path.equals(mine) || path.equals("materials")) {
            return namesAnAcid(problem) ? MaterialField.ACID.path() : "key";
        }
        if (!path.startsWith(mine + ".")) {
            return "";
        }
        String within = path.substring(mine.length() + 1);
        if (within.equals("kind")) {
            return form.kind() == MaterialKind.OF_TABLES ? "" : "key";
        }
        return within.startsWith(MaterialField.OILS.path() + ".") ? MaterialField.OILS.path() : within;
    }

    private static boolean namesAnAcid(Problem problem) {
        return problem.what().contains("is an acid");
    }

    private Formula withOthers(Formula alone) {
        List<OwnMaterial> all = new ArrayList<>(alone.materials());
        others.stream().filter(other -> !other.key().equals(key)).forEach(all::add);
        return alone.withMaterials(all);
    }

    /** The file: the least formula that there is, and the material. */
    private String text() {
        String oil = isOil() ? key : key.equals("coconut") ? "palm" : "coconut";
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
        MaterialNames names = MaterialNames.of(tables).with(others);
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
            if (parts.put(oil.value(), bare ? share + " %" : share) != null) {
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
