package lyewright.picture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Purpose;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.words.CompositionWords;

/** What a sheet weighs, by what it is for a maker, in the order of a column from the foot up. */
final class Weighed {

    private Weighed() {}

    /** Grams by what it is, only what there is any of. */
    static List<MassPart> of(MakingSheet sheet) {
        Map<Purpose, Double> grams = new EnumMap<>(Purpose.class);
        for (Vessel vessel : sheet.vessels()) {
            for (Weighing weighing : vessel.weighings()) {
                grams.merge(Purpose.of(sheet, weighing.line()), weighing.weigh().grams(), Double::sum);
            }
        }
        List<MassPart> parts = new ArrayList<>();
        grams.forEach((what, mass) -> {
            if (mass > 0) {
                parts.add(new MassPart(CompositionWords.of(what), style(what), mass));
            }
        });
        return parts;
    }

    private static MassStyle style(Purpose purpose) {
        return switch (purpose) {
            case OILS -> MassStyle.SOAP;
            case ALKALI, STOCK_LYE -> MassStyle.ALKALI;
            case SALT -> MassStyle.SALT;
            case SOLIDS -> MassStyle.SOLIDS;
            case FRAGRANCE, OTHER -> MassStyle.REST;
            case LIQUIDS -> MassStyle.LIQUIDS;
            case WATER -> MassStyle.WATER;
        };
    }
}
