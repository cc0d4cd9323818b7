package lyewright.records.stock;

import java.util.Arrays;
import java.util.Optional;

/** What sort of thing is stocked. */
public enum ItemKind {
    /** Oils, butters, waxes, fatty acids, premixed oils. */
    OIL("oil"),
    /** Sodium and potassium hydroxide, stock lye. */
    ALKALI("alkali"),
    /** Salt, sugar, milk, acids, and whatever else goes in. */
    ADDITIVE("additive"),
    /** Clays, oxides, micas. */
    COLOURANT("colourant"),
    /** Essential oils and perfumes. */
    FRAGRANCE("fragrance"),
    /** Boxes, bands, labels: counted, not weighed. */
    PACKAGING("packaging");

    private final String word;

    ItemKind(String word) {
        this.word = word;
    }

    /** As it is kept and shown. */
    public String word() {
        return word;
    }

    /** The kind of a word. */
    public static Optional<ItemKind> ofWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
