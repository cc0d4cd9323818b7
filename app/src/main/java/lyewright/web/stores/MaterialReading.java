package lyewright.web.stores;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
        if (form.kind() == MaterialKind.OF_TABLES && tables.has(key)) {
            saysSomething();
        }
        List<Problem> notText = notText();
        if (!notText.isEmpty()) {
            problems.addAll(notText);
            return new Read(Optional.empty(), Optional.empty(), problems);
        }
        FormulaFile.Read file = FormulaFile.read(new MaterialFile(form, key, isOil(), names(), problems).text());
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

    /** A certificate that gives no figure goes before nothing. */
    private void saysSomething() {
        MaterialKind kind = MaterialView.kindInTables(key, tables).orElse(MaterialKind.OTHER);
        List<MaterialField> figures = Stream.concat(kind.asked().stream(), kind.folded().stream())
                .filter(field -> field.isFigure()
                        || field == MaterialField.ACID
                        || kind.asked().contains(field))
                .filter(field -> field != MaterialField.SOURCE)
                .toList();
        if (figures.stream().noneMatch(form::says)) {
            problems.add(new Problem(
                    figures.get(0).path(),
                    "no figure of it is given",
                    "write one at least; what is left empty stays as the tables have it"));
        }
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

    private MaterialNames names() {
        return MaterialNames.of(tables).with(others);
    }

    private Formula withOthers(Formula alone) {
        List<OwnMaterial> all = new ArrayList<>(alone.materials());
        others.stream().filter(other -> !other.key().equals(key)).forEach(all::add);
        return alone.withMaterials(all);
    }
}
