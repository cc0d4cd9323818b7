package lyewright.formula;

import java.util.List;
import java.util.Optional;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.StockLye;
import lyewright.material.Tables;
import lyewright.measure.Outcome;

/**
 * A formula with every name looked up and every figure ready to compute with. Belongs to one edition of the tables; keep
 * the {@link Formula} and the edition, not this.
 *
 * @param formula as written
 * @param tables the tables it was looked up in
 * @param purities how pure the alkalis are
 * @param oils the oil phase in order
 * @param alkali which alkali, or how much
 * @param superfat asked, as a fraction; empty where the alkali is given
 * @param curedWater water of the cured bar, as a fraction
 * @param additions in the order of making
 * @param portions of the base batter; none for a single batter
 * @param writtenOilsGrams the oils' mass where the formula is in masses
 */
public record ResolvedFormula(
        Formula formula,
        Tables tables,
        Purities purities,
        List<OilPart> oils,
        AlkaliPart alkali,
        Optional<Double> superfat,
        double curedWater,
        List<AdditionPart> additions,
        List<PortionPart> portions,
        Optional<Double> writtenOilsGrams) {

    /** Takes its lists as they are: only {@link Resolver} makes one, from lists nobody else holds. */
    public ResolvedFormula {}

    /**
     * Looks a formula up.
     *
     * @param formula as written
     * @param tables where to look
     * @param purities of the alkalis at hand
     * @return the resolved formula, or every problem found, with paths as in the formula's file
     */
    public static Outcome<ResolvedFormula> of(Formula formula, Tables tables, Purities purities) {
        return new Resolver(formula, tables, purities).resolve();
    }

    /**
     * Which alkali a weighed thing is.
     *
     * @param key its key: {@code naoh}, {@code koh} or the stock lye's
     * @return the alkali
     */
    public Alkali alkaliOf(String key) {
        if (alkali.stock().isPresent()) {
            return alkali.stock().get().alkali();
        }
        return key.equals(Alkali.POTASSIUM.key()) ? Alkali.POTASSIUM : Alkali.SODIUM;
    }

    /**
     * One line of the oil phase.
     *
     * @param key as in the formula
     * @param name what it is called
     * @param fraction of all oils, by mass
     * @param parts the oils in it: one, or those of a premix
     * @param saponificationValue mg KOH/g that surely reacts, over its parts
     * @param acidPart mg KOH/g of it that is free acid
     * @param gramsPerMillilitreAt40 density at 40 °C
     */
    public record OilPart(
            String key,
            String name,
            double fraction,
            List<OilBlend.Part> parts,
            double saponificationValue,
            double acidPart,
            double gramsPerMillilitreAt40) {

        /**
         * Density of the line when liquid, volumes of a premix added.
         *
         * @param celsius temperature
         * @return g/ml
         */
        public double densityAt(double celsius) {
            double volume = 0;
            for (OilBlend.Part part : parts) {
                volume += part.fraction() / part.oil().density().at(celsius);
            }
            return 1 / volume;
        }
    }

    /**
     * The alkali.
     *
     * @param potassium potassium's fraction of the alkali's moles, 0 to 1
     * @param givenMoles how much alkali, where the formula says it
     * @param stock the stock lye it all comes from, if it does
     */
    public record AlkaliPart(double potassium, Optional<Linear> givenMoles, Optional<StockLye> stock) {

        /**
         * Whether an alkali is in it at all.
         *
         * @param alkali which
         * @return true if its share is above 0
         */
        public boolean has(Alkali alkali) {
            return alkali == Alkali.POTASSIUM ? potassium > 0 : potassium < 1;
        }

        /**
         * Pure alkali in a mole of both.
         *
         * @param alkali which
         * @return grams of it for each mole of both
         */
        public double pureGramsPerMole(Alkali alkali) {
            return (alkali == Alkali.POTASSIUM ? potassium : 1 - potassium) * alkali.molarMass();
        }
    }

    /**
     * One addition.
     *
     * @param written as written
     * @param place its place in the formula, from 0
     * @param material what it is
     * @param mass how much of it
     * @param liquid the liquid it is wetted out with, if any
     */
    public record AdditionPart(
            Addition written, int place, Additive material, Linear mass, Optional<DispersingLiquid> liquid) {

        /** What it is called within a sentence. */
        public String nameInSentence() {
            return Names.inSentence(material.name());
        }

        /** Its stage. */
        public Stage.Kind stage() {
            return written.stage().kind();
        }
    }

    /**
     * The liquid of a dispersion.
     *
     * @param key key of what is weighed: {@code water}, an oil's key, or {@code glycerin}
     * @param from which part of the batch it comes out of
     * @param oil which line of the oils, -1 unless it is oil
     * @param ratio grams of liquid to a gram of the addition
     */
    public record DispersingLiquid(String key, From from, int oil, double ratio) {

        /** Where a dispersing liquid comes from. */
        public enum From {
            /** Out of the batch's water. */
            WATER,
            /** Out of the batch's oils. */
            OILS,
            /** On top of everything: glycerin. */
            EXTRA
        }
    }

    /**
     * One portion of the base batter.
     *
     * @param name its name
     * @param fraction of the base batter, 0 to 1
     */
    public record PortionPart(String name, double fraction) {}

    /**
     * The oil at one place.
     *
     * @param line which line
     * @return its first oil, which is the only one unless it is a premix
     */
    public Oil oil(int line) {
        return oils.get(line).parts().get(0).oil();
    }
}
