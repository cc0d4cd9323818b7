package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import lyewright.formula.Comments;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Place;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * Reads a form once: its fields become the entries of a formula file, which is read by the rules of the file; each problem is
 * then said of the field that its entry came from. What only a form can have wrong, such as a row without a name, is said
 * here, in the form's words; a harmless entry then stands in, so that the rest is judged in the same go.
 */
final class FormReading {

    private static final Pattern BARE_NUMBER = Pattern.compile("[0-9.,]+");

    private final FormulaForm form;
    private final FormNames names;
    private final Map<String, Object> file = new LinkedHashMap<>();
    private final Map<String, String> places = new HashMap<>();
    private final Map<String, List<Problem>> own = new LinkedHashMap<>();

    FormReading(FormulaForm form, MaterialNames names) {
        this.form = form;
        this.names = new FormNames(form, names);
    }

    FormRead read() {
        need("recipe", form.recipe(), "the recipe has no name", "write one");
        text(file, "recipe", "recipe", form.recipe(), "recipe");
        text(file, "version", "version", form.version(), "version");
        text(file, "use", "use", form.use(), "use");
        if (!form.notes().isEmpty()) {
            file.put("notes", form.notes());
        }
        places.put("notes", "notes");
        oils();
        alkali();
        percent("superfat", form.superfat(), "superfat");
        text(file, "water", "water", form.water(), "water");
        text(file, "acids", "acids", form.acids(), "acids");
        percent("cured water", form.curedWater(), "cured-water");
        process();
        additions();
        portions();
        materials();
        return settled(FormulaFile.read(YamlTexts.write(file)));
    }

    private FormRead settled(FormulaFile.Read read) {
        Map<String, List<Problem>> all = new LinkedHashMap<>();
        own.forEach((field, problems) -> all.put(field, new ArrayList<>(problems)));
        for (Problem problem : read.problems()) {
            String field = FormRead.field(places, problem.path());
            if (!isSaid(field)) {
                all.computeIfAbsent(field, at -> new ArrayList<>()).add(problem);
            }
        }
        Optional<Formula> formula = all.isEmpty()
                ? read.formula().map(plain -> FormulaFile.withComments(plain, remarks()))
                : Optional.empty();
        return new FormRead(formula, all, places);
    }

    /** Whether the form's own words are enough: of the field, or, for a whole group, of a row of it. */
    private boolean isSaid(String field) {
        return own.containsKey(field) || own.keySet().stream().anyMatch(said -> said.startsWith(field + "."));
    }

    private void say(String field, String what, String remedy) {
        own.computeIfAbsent(field, at -> new ArrayList<>()).add(new Problem(field, what, remedy));
    }

    private void say(String field, Outcome<?> refused) {
        refused.problems().forEach(problem -> say(field, problem.what(), problem.remedy()));
    }

    /** A field that must say something; what stands in where it does not is up to the caller. */
    private boolean need(String field, String text, String what, String remedy) {
        if (text.isBlank()) {
            say(field, what, remedy);
        }
        return !text.isBlank();
    }

    private void text(Map<String, Object> group, String name, String path, String text, String field) {
        places.put(path, field);
        if (!text.isBlank()) {
            group.put(name, text);
        }
    }

    /** Nothing but percent can be meant, so that the sign may be left out. */
    private void percent(String name, String text, String field) {
        String tidy = text.strip();
        text(file, name, name, BARE_NUMBER.matcher(tidy).matches() ? tidy + " %" : text, field);
    }

    private void oils() {
        places.put("oils", "oils");
        Map<String, Object> oils = new LinkedHashMap<>();
        for (int i = 0; i < form.oils().size(); i++) {
            OilRow row = form.oils().get(i);
            if (!row.isEmpty()) {
                oil(oils, row, "oils." + i);
            }
        }
        if (oils.isEmpty()) {
            say("oils", "there are no oils", "write at least one, with its amount");
        }
        file.put("oils", oils);
    }

    private void oil(Map<String, Object> oils, OilRow row, String at) {
        String key = named(row.name(), Place.OILS, at + ".name", "this oil has no name");
        if (oils.containsKey(key)) {
            say(at + ".name", "'" + key + "' is listed twice", "make one row of the two");
            return;
        }
        boolean amount = need(at + ".amount", row.amount(), "it has no amount", "write 350 g, 80 % or rest");
        places.put("oils." + key, at + (row.name().isBlank() ? ".name" : ".amount"));
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

    /** The key of what was typed; where it is not known, what was typed, or a name that is nobody's. */
    private String named(String typed, Place place, String field, String noName) {
        if (!need(field, typed, noName, "write its name")) {
            return field;
        }
        Outcome<String> key = names.key(typed.strip(), place, field);
        say(field, key);
        return key instanceof Outcome.Ok<String> ok ? ok.value() : typed.strip();
    }

    private void alkali() {
        places.put("alkali", "alkali");
        if (!need("alkali", form.alkali(), "the alkali is not said", "write sodium, or potassium")) {
            return;
        }
        Outcome<Object> read = AlkaliLine.parse(form.alkali(), names::isLye);
        if (read instanceof Outcome.Ok<Object> said) {
            names.useLye(said.value());
            file.put("alkali", said.value());
        } else {
            say("alkali", read);
        }
    }

    private void process() {
        Map<String, Object> process = new LinkedHashMap<>();
        places.put("process", "process.make");
        text(process, "make", "process.make", form.process().make(), "process.make");
        text(process, "oils", "process.oils", form.process().oils(), "process.oils");
        text(process, "lye", "process.lye", form.process().lye(), "process.lye");
        text(process, "oven", "process.oven", form.process().oven(), "process.oven");
        text(process, "pour", "process.pour", form.process().pour(), "process.pour");
        if (!process.isEmpty()) {
            file.put("process", process);
        }
    }

    private void additions() {
        List<Object> additions = new ArrayList<>();
        places.put("additions", "additions");
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
        places.put(path.substring(0, path.length() - 1), at + "of");
        text(addition, "of", path + "of", named(row.of(), Place.ADDITIONS, at + "of", "it has no name"), at + "of");
        boolean amount = need(at + "amount", row.amount(), "it has no amount", "write 2 % of oils, or 20 g");
        text(addition, "amount", path + "amount", amount ? row.amount() : "1 g", at + "amount");
        boolean stage =
                need(at + "stage", row.stage(), "it is not said when it goes in", "write trace, or another stage");
        text(addition, "stage", path + "stage", stage ? row.stage() : "trace", at + "stage");
        if (row.isDispersed()) {
            addition.put("disperse", disperse(row, path + "disperse", at));
        }
        text(addition, "replaces", path + "replaces", row.replaces(), at + "replaces");
        return addition;
    }

    private Map<String, Object> disperse(AdditionRow row, String path, String at) {
        Map<String, Object> disperse = new LinkedHashMap<>();
        places.put(path, at + "in");
        boolean in =
                need(at + "in", row.in(), "it is not said in what", "write water, oil, glycerin or one of the oils");
        text(disperse, "in", path + ".in", in ? names.liquid(row.in().strip()) : "water", at + "in");
        boolean ratio = need(at + "ratio", row.ratio(), "it is not said in how much", "write it as 3 to 1");
        text(disperse, "ratio", path + ".ratio", ratio ? row.ratio() : "1 to 1", at + "ratio");
        text(disperse, "ahead", path + ".ahead", row.ahead(), at + "ahead");
        return disperse;
    }

    private void portions() {
        Map<String, Object> portions = new LinkedHashMap<>();
        places.put("portions", "portions");
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
        String name = need(at + ".name", row.name(), "this portion has no name", "write one")
                ? row.name().strip()
                : at;
        if (portions.containsKey(name)) {
            say(at + ".name", "'" + name + "' is listed twice", "give each portion its own name");
            return;
        }
        boolean share = need(at + ".share", row.share(), "it has no share", "write 60 %, or rest");
        places.put("portions." + name, at + ".share");
        portions.put(name, share ? row.share() : "1 %");
    }

    private void materials() {
        Map<String, Object> materials = new LinkedHashMap<>();
        places.put("materials", "materials");
        for (int i = 0; i < form.materials().size(); i++) {
            MaterialRow row = form.materials().get(i);
            if (!row.isEmpty()) {
                material(materials, row, "materials." + i);
            }
        }
        copyFromTheWorkshop(materials);
        if (!materials.isEmpty()) {
            file.put("materials", materials);
        }
    }

    private void material(Map<String, Object> materials, MaterialRow row, String at) {
        String key = need(at + ".key", row.key(), "this material has no name", "write one")
                ? row.key().strip()
                : at;
        if (materials.containsKey(key)) {
            say(at + ".key", "'" + key + "' is listed twice", "make one of the two");
            return;
        }
        places.put("materials." + key, at + ".key");
        materials.put(key, said(row, "materials." + key, word -> at + "." + MaterialRow.field(word)));
    }

    private Map<String, Object> said(MaterialRow row, String path, UnaryOperator<String> fieldOf) {
        Map<String, Object> said = new LinkedHashMap<>();
        for (String word : MaterialRow.WORDS) {
            String field = fieldOf.apply(word);
            if (word.equals(MaterialRow.OILS) && !row.said(word).isBlank()) {
                places.put(path + "." + word, field);
                said.put(word, blend(row.said(word), field));
            } else {
                text(said, word, path + "." + word, row.said(word), field);
            }
        }
        return said;
    }

    /** A premix: an oil and its share on each line. */
    private Map<String, Object> blend(String text, String field) {
        Map<String, Object> blend = new LinkedHashMap<>();
        for (String line : text.split("\\R", -1)) {
            if (!line.isBlank()) {
                int colon = line.lastIndexOf(':');
                int end = colon < 0 ? shareIn(line) : colon;
                String key = named(line.substring(0, end), Place.OILS, field, "a line has no oil");
                blend.put(key, line.substring(colon < 0 ? end : colon + 1).strip());
            }
        }
        return blend;
    }

    /** Where the share begins in a line without a colon. */
    private static int shareIn(String line) {
        String bare = line.stripTrailing();
        if (bare.endsWith(" rest")) {
            return bare.length() - "rest".length();
        }
        int at = bare.length();
        while (at > 0 && "0123456789., %".indexOf(bare.charAt(at - 1)) >= 0) {
            at--;
        }
        return at;
    }

    /** Whatever of the workshop's own is named becomes part of the formula, so that it stays what it was. */
    private void copyFromTheWorkshop(Map<String, Object> materials) {
        for (Optional<String> key = names.toCopy(materials.keySet()); key.isPresent(); ) {
            String field = names.whereUsed(key.get());
            String path = "materials." + key.get();
            places.put(path, field);
            materials.put(key.get(), said(names.row(key.get()), path, word -> field));
            key = names.toCopy(materials.keySet());
        }
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
        return FormRemarks.moved(form.remarks(), moved);
    }
}
