package lyewright.web.stores;

import static lyewright.web.stores.MaterialField.ACID;
import static lyewright.web.stores.MaterialField.ACID_VALUE;
import static lyewright.web.stores.MaterialField.CAS;
import static lyewright.web.stores.MaterialField.DENSITY;
import static lyewright.web.stores.MaterialField.FAT;
import static lyewright.web.stores.MaterialField.FAT_SAPONIFICATION_VALUE;
import static lyewright.web.stores.MaterialField.INCI;
import static lyewright.web.stores.MaterialField.IODINE_VALUE;
import static lyewright.web.stores.MaterialField.OILS;
import static lyewright.web.stores.MaterialField.SALT;
import static lyewright.web.stores.MaterialField.SAPONIFICATION_VALUE;
import static lyewright.web.stores.MaterialField.SOURCE;
import static lyewright.web.stores.MaterialField.STRENGTH;
import static lyewright.web.stores.MaterialField.SUGAR;
import static lyewright.web.stores.MaterialField.SUPPLIER;
import static lyewright.web.stores.MaterialField.WATER;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.material.AdditiveKind;

/** What a material is, which says what is asked of it. The words are those of formula files. */
enum MaterialKind {
    OF_TABLES(
            "",
            "A material that the tables know",
            "What a certificate says of yours goes before the tables, figure by figure.",
            Family.TABLES),
    OIL(
            "oil",
            "Oil, butter or fat",
            "Something the tables lack: its saponification value is all that is needed.",
            Family.OIL,
            SAPONIFICATION_VALUE),
    WAX("wax", "Wax", "Only its free acid surely reacts.", Family.OIL, SAPONIFICATION_VALUE, ACID_VALUE),
    FATTY_ACID(
            "fatty-acid",
            "Fatty acid",
            "Stearic acid and its like: taken up first and wholly.",
            Family.OIL,
            SAPONIFICATION_VALUE),
    OILS_MIXED("oils", "Oils mixed beforehand", "A bucket of several oils, weighed as one.", Family.BLEND, OILS),
    LYE("lye", "Stock lye", "Alkali dissolved beforehand, by its strength.", Family.LYE, STRENGTH),
    SALT_KIND(AdditiveKind.SALT, "Salt", "Of kitchen, sea or mine.", SALT, WATER),
    LIQUID(AdditiveKind.LIQUID, "Water-based liquid", "Tea, beer, vinegar, puree.", WATER, SUGAR, ACID),
    MILK(
            AdditiveKind.MILK,
            "Milk",
            "Fresh or as powder: its fat takes alkali.",
            FAT,
            FAT_SAPONIFICATION_VALUE,
            WATER,
            SUGAR),
    SUGAR_KIND(AdditiveKind.SUGAR, "Sugar or honey", "It heats.", SUGAR, WATER),
    ACID_KIND(AdditiveKind.ACID, "Acid", "Citric, lactic and others: it takes alkali.", ACID),
    FRAGRANCE(
            AdditiveKind.FRAGRANCE, "Fragrance or essential oil", "With its own limits, from its supplier.", SUPPLIER),
    CLAY(AdditiveKind.CLAY, "Clay", "And ground minerals of its kind."),
    COLOURANT(AdditiveKind.COLOURANT, "Colour", "Pigment, mica, colouring plant."),
    EXFOLIANT(AdditiveKind.EXFOLIANT, "Something that scrubs", "Oats, seeds, pumice."),
    BOTANICAL(AdditiveKind.BOTANICAL, "Petals, buds, leaves", "For the top or in the bar."),
    PROTEIN(AdditiveKind.PROTEIN, "Protein", "Silk, egg.", WATER, FAT),
    HUMECTANT(AdditiveKind.HUMECTANT, "Glycerin and its like", "It holds water.", WATER),
    ALKALI_SALT(AdditiveKind.ALKALI_SALT, "Salt that acts on alkali", "Bicarbonate, carbonate, borax.", ACID),
    CHELATOR(AdditiveKind.CHELATOR, "Binder of metals", "Citrate, gluconate.", WATER),
    ANTIOXIDANT(AdditiveKind.ANTIOXIDANT, "Keeper of oils", "Rosemary extract, tocopherol."),
    OTHER(AdditiveKind.OTHER, "Anything else", "Nothing in it that acts on alkali, unless you say so.");

    /** What belongs together, and what more may be said. */
    enum Family {
        OIL(ACID_VALUE, IODINE_VALUE, DENSITY),
        BLEND(),
        LYE(),
        ADDITION(DENSITY, WATER, FAT, FAT_SAPONIFICATION_VALUE, SUGAR, SALT, ACID),
        TABLES();

        @SuppressWarnings("ImmutableEnumChecker") // a copy that no one can change
        private final List<MaterialField> more;

        Family(MaterialField... more) {
            this.more = List.of(more);
        }
    }

    /** Said of any material. */
    private static final List<MaterialField> PAPERS = List.of(SUPPLIER, INCI, CAS);

    private final String word;
    private final String label;
    private final String what;
    private final Family family;

    @SuppressWarnings("ImmutableEnumChecker") // a copy that no one can change
    private final List<MaterialField> asked;

    MaterialKind(String word, String label, String what, Family family, MaterialField... asked) {
        this.word = word;
        this.label = label;
        this.what = what;
        this.family = family;
        this.asked = Stream.concat(Arrays.stream(asked), Stream.of(SOURCE)).toList();
    }

    MaterialKind(AdditiveKind kind, String label, String what, MaterialField... asked) {
        this(kind.word(), label, what, Family.ADDITION, asked);
    }

    static Optional<MaterialKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** As formula files write it; empty for a key of the tables. */
    String word() {
        return word;
    }

    /** What one may be called; invented. */
    String example() {
        return "as in "
                + switch (this) {
                    case OF_TABLES -> "olive-virgin";
                    case OIL -> "house-olive";
                    case WAX -> "berry-wax-north";
                    case FATTY_ACID -> "house-stearic";
                    case OILS_MIXED -> "winter-mix";
                    case LYE -> "lye-50";
                    case SALT_KIND -> "grey-salt";
                    case LIQUID -> "nettle-tea";
                    case MILK -> "ewe-milk";
                    case SUGAR_KIND -> "heather-honey";
                    case ACID_KIND -> "lactic-80";
                    case FRAGRANCE -> "north-wind";
                    case CLAY -> "red-clay-north";
                    case COLOURANT -> "brick-red";
                    case EXFOLIANT -> "ground-oats";
                    case BOTANICAL -> "garden-marigold";
                    case PROTEIN -> "silk-powder";
                    case HUMECTANT -> "house-glycerin";
                    case ALKALI_SALT -> "house-borax";
                    case CHELATOR -> "citrate-mix";
                    case ANTIOXIDANT -> "rosemary-5";
                    case OTHER -> "loofah";
                };
    }

    /** How heavy one may be, g/ml: common practice, after the commonest of each kind in the tables. */
    String exampleOfDensity() {
        return "as in "
                + switch (this) {
                    case SALT_KIND -> "2.17";
                    case CLAY -> "2.6";
                    case COLOURANT -> "3";
                    case EXFOLIANT, BOTANICAL -> "1.4";
                    case OF_TABLES, OIL, WAX, FATTY_ACID, OILS_MIXED -> "0.915";
                    default -> "1.03";
                };
    }

    String label() {
        return label;
    }

    String what() {
        return what;
    }

    Family family() {
        return family;
    }

    /** What is asked at once. */
    List<MaterialField> asked() {
        return asked;
    }

    /** What is folded away. */
    List<MaterialField> folded() {
        List<MaterialField> folded = new ArrayList<>(family.more);
        folded.addAll(PAPERS);
        folded.removeAll(asked);
        return folded;
    }
}
