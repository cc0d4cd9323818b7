package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Purpose;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.web.Piece;
import lyewright.words.CompositionWords;
import lyewright.words.UnitsShown;

/** What a batch is poured of, by what it is for a maker, each sum with the way to its why. */
final class PouredTold {

    private PouredTold() {}

    static List<Told> of(MakingSheet sheet, UnitsShown units, UnaryOperator<String> why) {
        Map<Purpose, Double> grams = new EnumMap<>(Purpose.class);
        for (Vessel vessel : sheet.vessels()) {
            for (Weighing weighing : vessel.weighings()) {
                grams.merge(Purpose.of(sheet, weighing.line()), weighing.weigh().grams(), Double::sum);
            }
        }
        List<Told> told = new ArrayList<>();
        grams.forEach((purpose, mass) -> told.add(row(
                CompositionWords.of(purpose),
                units.tenths(mass),
                why.apply("sums.poured." + purpose.word() + ".grams"))));
        told.add(row("All that is poured", units.tenths(sheet.totals().batch()), why.apply("totals.batchGrams")));
        return told;
    }

    private static Told row(String label, String mass, String why) {
        return Told.of(label, new Piece(mass, why));
    }
}
