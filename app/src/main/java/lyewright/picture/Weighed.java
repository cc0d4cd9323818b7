package lyewright.picture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.BatchLine;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.material.AdditiveKind;

/** What a sheet weighs, by what it is for a maker, in the order of a column from the foot up. */
enum Weighed {
    OILS("Oils", MassStyle.SOAP),
    ALKALI("Alkali", MassStyle.ALKALI),
    STOCK("Stock lye", MassStyle.ALKALI),
    SALT("Salt", MassStyle.SALT),
    SOLIDS("Clay, colour", MassStyle.SOLIDS),
    FRAGRANCE("Fragrance", MassStyle.REST),
    OTHER("Other", MassStyle.REST),
    LIQUIDS("Liquids", MassStyle.LIQUIDS),
    WATER("Water", MassStyle.WATER);

    private final String words;
    private final MassStyle style;

    Weighed(String words, MassStyle style) {
        this.words = words;
        this.style = style;
    }

    /** Grams by what it is, only what there is any of. */
    static List<MassPart> of(MakingSheet sheet) {
        Map<Weighed, Double> grams = new EnumMap<>(Weighed.class);
        for (Vessel vessel : sheet.vessels()) {
            for (Weighing weighing : vessel.weighings()) {
                grams.merge(of(sheet, weighing.line()), weighing.weigh().grams(), Double::sum);
            }
        }
        List<MassPart> parts = new ArrayList<>();
        grams.forEach((what, mass) -> {
            if (mass > 0) {
                parts.add(new MassPart(what.words, what.style, mass));
            }
        });
        return parts;
    }

    private static Weighed of(MakingSheet sheet, BatchLine line) {
        return switch (line.kind()) {
            case OIL -> OILS;
            case WATER -> WATER;
            case ALKALI -> sheet.formula().alkali().stock().isPresent() ? STOCK : ALKALI;
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

    private static Weighed of(DispersingLiquid.From from) {
        return switch (from) {
            case WATER -> WATER;
            case OILS -> OILS;
            case EXTRA -> OTHER;
        };
    }

    private static Weighed of(AdditiveKind kind) {
        return switch (kind) {
            case SALT -> SALT;
            case CLAY, COLOURANT, EXFOLIANT -> SOLIDS;
            case FRAGRANCE -> FRAGRANCE;
            case LIQUID, MILK, SUGAR, ACID, ALKALI_SALT, CHELATOR, ANTIOXIDANT, BOTANICAL, PROTEIN, HUMECTANT, OTHER ->
                Weighed.OTHER;
        };
    }
}
