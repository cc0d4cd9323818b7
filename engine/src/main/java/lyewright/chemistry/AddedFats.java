package lyewright.chemistry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.material.AcidSalt;
import lyewright.material.Additive;
import lyewright.material.Names;
import lyewright.material.Tables;

/** Fats and fatty acids that additions in the batter bring: alkali takes of them, but no table gives their acids. */
final class AddedFats {

    private AddedFats() {}

    /** By name, as percent of the oils' mass. */
    static List<Gap> of(BatchLines batch, double oilsGrams) {
        Map<String, Double> grams = new LinkedHashMap<>();
        double[] masses = batch.massesAt(oilsGrams);
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.kind() == BatchLine.Kind.ADDITION && !line.onTop() && masses[i] > 0) {
                Additive material =
                        batch.formula().additions().get(line.place()).material();
                add(material, masses[i], batch.formula().tables(), grams);
            }
        }
        List<Gap> fats = new ArrayList<>(grams.size());
        grams.forEach((name, sum) -> fats.add(new Gap(name, 100 * sum / oilsGrams)));
        return fats;
    }

    private static void add(Additive material, double grams, Tables tables, Map<String, Double> sums) {
        Additive.Makeup makeup = material.makeup();
        if (makeup.fat() > 0 && makeup.fatSaponificationValue() > 0) {
            sums.merge("fat of " + Names.inSentence(material.name()), grams * makeup.fat(), Double::sum);
        }
        boolean fatty = makeup.acidMolesPerGram() > 0
                && tables.acidSalt(makeup.acidName()).map(AcidSalt::fatty).orElse(false);
        if (fatty) {
            double room = 1 - makeup.water() - makeup.salt() - makeup.fat();
            double acid = CompositionAdditions.acid(tables, makeup, room);
            sums.merge(Names.inSentence(material.name()), grams * acid, Double::sum);
        }
    }
}
