package lyewright.makingsheet;

import lyewright.chemistry.BatchLine;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.material.AdditiveKind;

/** What a thing that is weighed is for a maker, in the order of a column from the foot up. */
public enum Purpose {
    /** Oils, fats and waxes, those that something is wetted out with included. */
    OILS("oils"),
    /** Dry alkali, as weighed. */
    ALKALI("alkali"),
    /** Alkali bought as a lye. */
    STOCK_LYE("stockLye"),
    /** Salt. */
    SALT("salt"),
    /** Clays, colours, what scrubs. */
    SOLIDS("solids"),
    /** Fragrance. */
    FRAGRANCE("fragrance"),
    /** The rest. */
    OTHER("other"),
    /** Liquids in place of water. */
    LIQUIDS("liquids"),
    /** Plain water, that for wetting out included. */
    WATER("water");

    private final String word;

    Purpose(String word) {
        this.word = word;
    }

    /**
     * Its word in data.
     *
     * @return such as {@code oils} or {@code stockLye}
     */
    public String word() {
        return word;
    }

    /**
     * What a line of a sheet is for.
     *
     * @param sheet the sheet
     * @param line one of its batch's lines
     * @return the one purpose that it counts under
     */
    public static Purpose of(MakingSheet sheet, BatchLine line) {
        return switch (line.kind()) {
            case OIL -> OILS;
            case WATER -> WATER;
            case ALKALI -> sheet.formula().alkali().stock().isPresent() ? STOCK_LYE : ALKALI;
            case DISPERSING_LIQUID -> of(sheet.batch().liquidFrom(line));
            case ADDITION ->
                sheet.formula().additions().get(line.place()).written().replacesWater()
                        ? LIQUIDS
                        : of(sheet.formula()
                                .additions()
                                .get(line.place())
                                .material()
                                .kind());
        };
    }

    private static Purpose of(DispersingLiquid.From from) {
        return switch (from) {
            case WATER -> WATER;
            case OILS -> OILS;
            case EXTRA -> OTHER;
        };
    }

    private static Purpose of(AdditiveKind kind) {
        return switch (kind) {
            case SALT -> SALT;
            case CLAY, COLOURANT, EXFOLIANT -> SOLIDS;
            case FRAGRANCE -> FRAGRANCE;
            case LIQUID, MILK, SUGAR, ACID, ALKALI_SALT, CHELATOR, ANTIOXIDANT, BOTANICAL, PROTEIN, HUMECTANT, OTHER ->
                Purpose.OTHER;
        };
    }
}
