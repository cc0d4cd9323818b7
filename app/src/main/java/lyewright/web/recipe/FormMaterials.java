package lyewright.web.recipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.formula.MaterialNames.Place;

/** Reads the materials of a form, and adds those of the workshop's own that the form notes.names(). */
final class FormMaterials {

    private final FormNotes notes;

    FormMaterials(FormNotes notes) {
        this.notes = notes;
    }

    /** Each material by its key. */
    Map<String, Object> read(List<MaterialRow> rows) {
        Map<String, Object> materials = new LinkedHashMap<>();
        notes.place("materials", "materials");
        for (int i = 0; i < rows.size(); i++) {
            MaterialRow row = rows.get(i);
            if (!row.isEmpty()) {
                material(materials, row, "materials." + i);
            }
        }
        copyFromTheWorkshop(materials);
        return materials;
    }

    private void material(Map<String, Object> materials, MaterialRow row, String at) {
        String key = notes.need(at + ".key", row.key(), "this material has no name", "write one")
                ? row.key().strip()
                : at;
        if (materials.containsKey(key)) {
            notes.say(at + ".key", "'" + key + "' is listed twice", "make one of the two");
            return;
        }
        notes.place("materials." + key, at + ".key");
        materials.put(key, said(row, "materials." + key, word -> at + "." + MaterialRow.field(word)));
    }

    private Map<String, Object> said(MaterialRow row, String path, UnaryOperator<String> fieldOf) {
        Map<String, Object> said = new LinkedHashMap<>();
        for (String word : MaterialRow.WORDS) {
            String field = fieldOf.apply(word);
            if (word.equals(MaterialRow.OILS) && !row.said(word).isBlank()) {
                notes.place(path + "." + word, field);
                said.put(word, blend(row.said(word), field));
            } else {
                notes.text(said, word, path + "." + word, row.said(word), field);
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
                String key = notes.named(line.substring(0, end), Place.OILS, field, "a line has no oil");
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
        for (Optional<String> key = notes.names().toCopy(materials.keySet()); key.isPresent(); ) {
            String field = notes.names().whereUsed(key.get());
            String path = "materials." + key.get();
            notes.place(path, field);
            materials.put(key.get(), said(notes.names().row(key.get()), path, word -> field));
            key = notes.names().toCopy(materials.keySet());
        }
    }
}
