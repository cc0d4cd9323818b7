package lyewright.chemistry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.material.Alkali;

/** Collects the substances of one moment; what has kind, name and origin alike is one substance. */
final class CompositionLedger {

    /** What is lighter is left of a subtraction, not there. */
    private static final double NOTHING = 1e-9;

    private final Map<Key, Sum> sums = new LinkedHashMap<>();
    private double fattyMatter;
    private double commonSalt;

    private record Key(Kind kind, String name, String of) {}

    private static final class Sum {
        private final String inci;
        private double grams;

        Sum(String inci) {
            this.inci = inci;
        }
    }

    /** What a base is called with each alkali. */
    record Salts(String sodium, String sodiumInci, String potassium, String potassiumInci) {}

    void add(Kind kind, String name, String inci, String of, double grams) {
        if (grams > NOTHING) {
            sums.computeIfAbsent(new Key(kind, name, of), key -> new Sum(inci)).grams += grams;
        }
    }

    void addCommonSalt(String name, String inci, String of, double grams) {
        add(Kind.SALT, name, inci, of, grams);
        commonSalt += grams;
    }

    void addFattyMatter(double grams) {
        fattyMatter += grams;
    }

    /**
     * What moles of alkali make of so many grams of acid or fat: each mole of alkali joins, and each sets free so many grams
     * of water or glycerol. Split by the alkalis' share of the moles.
     */
    void addSalts(
            Kind kind,
            Salts names,
            String of,
            double grams,
            double moles,
            double freedPerMole,
            CompositionExtent extent) {
        double sodium = extent.sodium();
        double bound = grams - moles * freedPerMole;
        add(kind, names.sodium(), names.sodiumInci(), of, sodium * (bound + moles * Alkali.SODIUM.molarMass()));
        add(
                kind,
                names.potassium(),
                names.potassiumInci(),
                of,
                (1 - sodium) * (bound + moles * Alkali.POTASSIUM.molarMass()));
    }

    /** Fatty acids that acid would set free from soap: what was bound, and a water for each mole. */
    void addFattyAcidsOfSoap(double grams, double moles, double freedPerMole) {
        fattyMatter += grams + moles * (Stoichiometry.WATER - freedPerMole);
    }

    double fattyMatter() {
        return fattyMatter;
    }

    double commonSalt() {
        return commonSalt;
    }

    List<Substance> substances(double total) {
        List<Substance> substances = new ArrayList<>(sums.size());
        sums.forEach((key, sum) -> substances.add(
                new Substance(key.kind(), key.name(), sum.inci, key.of(), sum.grams, 100 * sum.grams / total)));
        substances.sort(Composition.BY_KIND_AND_SHARE);
        return substances;
    }
}
