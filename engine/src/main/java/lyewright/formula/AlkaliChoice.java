package lyewright.formula;

import java.util.Optional;
import lyewright.material.Alkali;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;

/** Which alkali, or how much of it. */
public sealed interface AlkaliChoice {

    /**
     * One alkali alone.
     *
     * @param alkali which
     */
    record Single(Alkali alkali) implements AlkaliChoice {}

    /**
     * Both, in a proportion.
     *
     * @param sodium sodium hydroxide's share
     * @param potassium potassium hydroxide's share; the two add up to 100
     * @param by what the shares are of
     */
    record Mix(Share sodium, Share potassium, Basis by) implements AlkaliChoice {}

    /**
     * Masses of alkali, from which the superfat follows.
     *
     * @param sodium sodium hydroxide, if any
     * @param potassium potassium hydroxide, if any
     * @param as of the product as it comes, or of the pure substance; empty means as it comes, and the sheet says so
     * @param fixed whether the masses stay when the formula is scaled
     */
    record Given(Optional<WrittenMass> sodium, Optional<WrittenMass> potassium, Optional<As> as, boolean fixed)
            implements AlkaliChoice {}

    /**
     * All alkali from stock lye.
     *
     * @param key the stock lye, one of the formula's own materials of kind lye
     * @param mass how much lye, if the superfat is to follow from it
     * @param fixed whether that mass stays when the formula is scaled
     */
    record Stock(String key, Optional<WrittenMass> mass, boolean fixed) implements AlkaliChoice {}

    /** What the shares of a mix are of. */
    enum Basis {
        /** Amount of substance. */
        MOLES("moles"),
        /** Mass of the pure substances. */
        PURE_MASS("pure mass"),
        /** Mass of the products as they come. */
        AS_WEIGHED("as weighed");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        /**
         * As written.
         *
         * @return moles, pure mass or as weighed
         */
        public String word() {
            return word;
        }
    }

    /** What an alkali's mass is of. */
    enum As {
        /** The product as it comes. */
        WEIGHED("weighed"),
        /** The pure substance. */
        PURE("pure");

        private final String word;

        As(String word) {
            this.word = word;
        }

        /**
         * As written.
         *
         * @return weighed or pure
         */
        public String word() {
            return word;
        }
    }

    /**
     * Whether this says how much alkali, so that the superfat follows.
     *
     * @return true for masses
     */
    default boolean saysHowMuch() {
        return this instanceof Given
                || (this instanceof Stock stock && stock.mass().isPresent());
    }
}
