package lyewright.web.stores;

import java.util.Arrays;
import java.util.Optional;

/** What may be said of a material; the names are those of formula files. */
enum MaterialField {
    SAPONIFICATION_VALUE(
            "saponification value", "Saponification value, mg KOH/g", "as in 189.5 ± 1.0, or 184 to 196", ""),
    ACID_VALUE("acid value", "Acid value, mg KOH/g", "free acid takes alkali too", ""),
    IODINE_VALUE("iodine value", "Iodine value, g/100 g", "how it keeps hangs on it", ""),
    DENSITY("density", "Density, g/ml", "as in 0.915", " g/ml"),
    STRENGTH("strength", "Pure alkali in it, % of its mass", "as in 50", " %"),
    OILS("oils", "The oils in it, a line each", "as in coconut 60 %; one may be rest", ""),
    ACID("acid", "Which acid, how much", "as in 80 % lactic acid", ""),
    WATER("water", "Water in it, %", "as in 88", " %"),
    FAT("fat", "Fat in it, %", "fat takes alkali", " %"),
    FAT_SAPONIFICATION_VALUE(
            "fat saponification value", "Saponification value of that fat, mg KOH/g", "of milk fat about 225", ""),
    SUGAR("sugar", "Sugar in it, %", "sugar heats the batter", " %"),
    SALT("salt", "Salt in it, %", "", " %"),
    SUPPLIER("supplier", "Supplier", "", ""),
    INCI("inci", "INCI name", "for labels, later", ""),
    CAS("cas", "CAS number", "for papers, later", ""),
    SOURCE("source", "Where the figures come from", "as in certificate L-204", "");

    private final String path;
    private final String label;
    private final String hint;
    private final String unit;

    MaterialField(String path, String label, String hint, String unit) {
        this.path = path;
        this.label = label;
        this.hint = hint;
        this.unit = unit;
    }

    /** Its name in a formula file and in the form. */
    String path() {
        return path;
    }

    String label() {
        return label;
    }

    String hint() {
        return hint;
    }

    /** A figure by itself is in the unit that the label says. */
    String withUnit(String typed) {
        String text = typed.strip();
        boolean bare = !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
        return bare ? text + unit : text;
    }

    boolean isFigure() {
        return !(this == OILS || this == ACID || this == SUPPLIER || this == INCI || this == CAS || this == SOURCE);
    }

    static Optional<MaterialField> of(String path) {
        return Arrays.stream(values()).filter(field -> field.path.equals(path)).findFirst();
    }
}
