package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.formula.Comments;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Place;
import lyewright.measure.Outcome;

/**
 * Reads a form once: its fields become the entries of a formula file, which is read by the rules of the file; each problem is
 * then said of the field that its entry came from. What only a form can have wrong, such as a row without a name, is said
 * here, in the form's words; a harmless entry then stands in, so that the rest is judged in the same go.
 */
final class FormReading {

    private static final Pattern BARE_NUMBER = Pattern.compile("[0-9.,]+");

    private final FormulaForm form;
    private final FormNotes notes;
    private final Map<String, Object> file = new LinkedHashMap<>();

    FormReading(FormulaForm form, MaterialNames names) {
        this.form = form;
        this.notes = new FormNotes(new FormNames(form, names));
    }

    FormRead read() {
        notes.need("recipe", form.recipe(), "the recipe has no name", "write one");
        notes.text(file, "recipe", "recipe", form.recipe(), "recipe");
        notes.text(file, "version", "version", form.version(), "version");
        notes.text(file, "use", "use", form.use(), "use");
        if (!form.notes().isEmpty()) {
            file.put("notes", form.notes());
        }
        notes.place("notes", "notes");
        oils();
        alkali();
        percent("superfat", form.superfat(), "superfat");
        notes.text(file, "water", "water", form.water(), "water");
        notes.text(file, "acids", "acids", form.acids(), "acids");
        percent("cured water", form.curedWater(), "cured-water");
        process();
        additions();
        portions();
        Map<String, Object> materials = new FormMaterials(notes).read(form.materials());
        if (!materials.isEmpty()) {
            file.put("materials", materials);
        }
        return notes.settled(
                FormulaFile.read(YamlTexts.write(file)), plain -> FormulaFile.withComments(plain, remarks()));
    }

    /** Nothing but percent can be meant, so that the sign may be left out. */
    private void percent(String name, String text, String field) {
        String tidy = text.strip();
        notes.text(file, name, name, BARE_NUMBER.matcher(tidy).matches() ? tidy + " %" : text, field);
    }

    private void oils() {
        notes.place("oils", "oils");
        Map<String, Object> oils = new LinkedHashMap<>();
        for (int i = 0; i < form.oils().size(); i++) {
            OilRow row = form.oils().get(i);
            if (!row.isEmpty()) {
                oil(oils, row, "oils." + i);
            }
        }
        if (oils.isEmpty()) {
            notes.say("oils", "there are no oils", "write at least one, with its amount");
        }
        file.put("oils", oils);
    }

    private void oil(Map<String, Object> oils, OilRow row, String at) {
        String key = notes.named(row.name(), Place.OILS, at + ".name", "this oil has no name");
        if (oils.containsKey(key)) {
            notes.say(at + ".name", "'" + key + "' is listed twice", "make one row of the two");
            return;
        }
        boolean amount = notes.need(at + ".amount", row.amount(), "it has no amount", "write 350 g, 80 % or rest");
        notes.place("oils." + key, at + (row.name().isBlank() ? ".name" : ".amount"));
        oils.put(key, amount ? row.amount() : likeTheOthers());
    }

    /** Of the kind of the other amounts, so that these are not said to be wrong beside it. */
    private String likeTheOthers() {
        return form.oils().stream()
                        .map(OilRow::amount)
                        .anyMatch(
                                amount -> amount.contains("%") || amount.strip().equalsIgnoreCase("rest"))
                ? "1 %"
                : "1 g";
    }

    private void alkali() {
        notes.place("alkali", "alkali");
        if (!notes.need("alkali", form.alkali(), "the alkali is not said", "write sodium, or potassium")) {
            return;
        }
        Outcome<Object> read = AlkaliLine.parse(form.alkali(), notes.names()::isLye);
        if (read instanceof Outcome.Ok<Object> said) {
            notes.names().useLye(said.value());
            file.put("alkali", said.value());
        } else {
            notes.say("alkali", read);
        }
    }

    private void process() {
        Map<String, Object> process = new LinkedHashMap<>();
        notes.place("process", "process.make");
        notes.text(process, "make", "process.make", form.process().make(), "process.make");
        notes.text(process, "oils", "process.oils", form.process().oils(), "process.oils");
        notes.text(process, "lye", "process.lye", form.process().lye(), "process.lye");
        notes.text(process, "oven", "process.oven", form.process().oven(), "process.oven");
        notes.text(process, "pour", "process.pour", form.process().pour(), "process.pour");
        if (!process.isEmpty()) {
            file.put("process", process);
        }
    }

    private void additions() {
        List<Object> additions = new ArrayList<>();
        notes.place("additions", "additions");
        for (int i = 0; i < form.additions().size(); i++) {
            AdditionRow row = form.additions().get(i);
            if (!row.isEmpty()) {
                additions.add(addition(row, "additions." + additions.size() + ".", "additions." + i + "."));
            }
        }
        if (!additions.isEmpty()) {
            file.put("additions", additions);
        }
    }

    private Map<String, Object> addition(AdditionRow row, String path, String at) {
        Map<String, Object> addition = new LinkedHashMap<>();
        notes.place(path.substring(0, path.length() - 1), at + "of");
        notes.text(
                addition,
                "of",
                path + "of",
                notes.named(row.of(), Place.ADDITIONS, at + "of", "it has no name"),
                at + "of");
        boolean amount = notes.need(at + "amount", row.amount(), "it has no amount", "write 2 % of oils, or 20 g");
        notes.text(addition, "amount", path + "amount", amount ? row.amount() : "1 g", at + "amount");
        boolean stage = notes.need(
                at + "stage", row.stage(), "it is not said when it goes in", "write trace, or another stage");
        notes.text(addition, "stage", path + "stage", stage ? row.stage() : "trace", at + "stage");
        if (row.isDispersed()) {
            addition.put("disperse", disperse(row, path + "disperse", at));
        }
        notes.text(addition, "replaces", path + "replaces", row.replaces(), at + "replaces");
        return addition;
    }

    private Map<String, Object> disperse(AdditionRow row, String path, String at) {
        Map<String, Object> disperse = new LinkedHashMap<>();
        notes.place(path, at + "in");
        boolean in = notes.need(
                at + "in", row.in(), "it is not said in what", "write water, oil, glycerin or one of the oils");
        notes.text(
                disperse, "in", path + ".in", in ? notes.names().liquid(row.in().strip()) : "water", at + "in");
        boolean ratio = notes.need(at + "ratio", row.ratio(), "it is not said in how much", "write it as 3 to 1");
        notes.text(disperse, "ratio", path + ".ratio", ratio ? row.ratio() : "1 to 1", at + "ratio");
        notes.text(disperse, "ahead", path + ".ahead", row.ahead(), at + "ahead");
        return disperse;
    }

    private void portions() {
        Map<String, Object> portions = new LinkedHashMap<>();
        notes.place("portions", "portions");
        for (int i = 0; i < form.portions().size(); i++) {
            PortionRow row = form.portions().get(i);
            if (!row.isEmpty()) {
                portion(portions, row, "portions." + i);
            }
        }
        if (!portions.isEmpty()) {
            file.put("portions", portions);
        }
    }

    private void portion(Map<String, Object> portions, PortionRow row, String at) {
        String name = notes.need(at + ".name", row.name(), "this portion has no name", "write one")
                ? row.name().strip()
                : at;
        if (portions.containsKey(name)) {
            notes.say(at + ".name", "'" + name + "' is listed twice", "give each portion its own name");
            return;
        }
        boolean share = notes.need(at + ".share", row.share(), "it has no share", "write 60 %, or rest");
        notes.place("portions." + name, at + ".share");
        portions.put(name, share ? row.share() : "1 %");
    }

    /** The remarks, those of additions moved along with their rows. */
    private Comments remarks() {
        Map<String, String> moved = new HashMap<>();
        int place = 0;
        for (AdditionRow row : form.additions()) {
            if (!row.isEmpty()) {
                if (!row.was().isBlank()) {
                    moved.putIfAbsent("additions." + row.was().strip(), "additions." + place);
                }
                place++;
            }
        }
        return FormRemarks.moved(FormRemarks.kept(form.remarks(), this::isNamedSo), moved);
    }

    /** Whether a row still names what was typed for it in a notebook; what no name was ever found for stays as it is. */
    private boolean isNamedSo(String path, String typed) {
        if (path.startsWith("oils.")) {
            return YamlTexts.map(file.get("oils")).containsKey(path.substring("oils.".length()));
        }
        Optional<AdditionRow> row = form.additions().stream()
                .filter(addition -> path.equals("additions." + addition.was().strip() + ".of"))
                .findFirst();
        return !path.startsWith("additions.")
                || row.filter(addition ->
                                notes.names().mayBeOne(typed, addition.of().strip()))
                        .isPresent();
    }
}
