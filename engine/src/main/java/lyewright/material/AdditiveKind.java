package lyewright.material;

import java.util.Locale;

/** What an addition is. */
public enum AdditiveKind {
    /** Salts, of kitchen, sea and mine. */
    SALT,
    /** Water-based liquids: beer, tea, vinegar, purees. */
    LIQUID,
    /** Clays and ground minerals of their kind. */
    CLAY,
    /** Pigments, micas, colouring plants. */
    COLOURANT,
    /** Milks and milk powders. */
    MILK,
    /** Sugars, honey, sugar alcohols. */
    SUGAR,
    /** Acids other than fatty ones. */
    ACID,
    /** Salts that act on alkali or hardness. */
    ALKALI_SALT,
    /** Binders of metals. */
    CHELATOR,
    /** Antioxidants for oils. */
    ANTIOXIDANT,
    /** Things that scrub. */
    EXFOLIANT,
    /** Petals, buds, leaves. */
    BOTANICAL,
    /** Silk, egg. */
    PROTEIN,
    /** Glycerin and its like. */
    HUMECTANT,
    /** Essential and fragrance oils. */
    FRAGRANCE,
    /** The rest. */
    OTHER;

    /**
     * As formulas and tables write it.
     *
     * @return lower case with hyphens, such as {@code alkali-salt}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
