package lyewright.formula;

import lyewright.measure.MassUnit;
import lyewright.measure.Share;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;

/** How much of an addition, as written. */
public sealed interface Amount {

    /** What a rate is of. */
    enum Base {
        /** All oils of the batch. */
        OILS("oils"),
        /** The oils of the portion it goes into: the portion's share of all oils. */
        PORTION_OILS("portion oils"),
        /** Everything weighed. */
        BATCH("batch");

        private final String word;

        Base(String word) {
            this.word = word;
        }

        /**
         * As written.
         *
         * @return oils, portion oils or batch
         */
        public String word() {
            return word;
        }
    }

    /**
     * Percent of something.
     *
     * @param share percent by mass
     * @param base of what
     */
    record Percent(Share share, Base base) implements Amount {
        /** As written: {@code 2.2 % of oils}. */
        @Override
        public String toString() {
            return share + " of " + base.word();
        }
    }

    /**
     * A mass for each unit of oils.
     *
     * @param mass how much
     * @param per for each one of this unit
     * @param base of which oils; never the batch
     */
    record Per(WrittenMass mass, MassUnit per, Base base) implements Amount {

        /** As a fraction of those oils. */
        double fraction() {
            return mass.grams() / per.grams().doubleValue();
        }

        /** As written: {@code 12 g per kg oils}. */
        @Override
        public String toString() {
            return mass + " per " + per.symbol() + " " + base.word();
        }
    }

    /**
     * A mass.
     *
     * @param mass as typed
     * @param fixed whether it stays when a formula in masses is scaled
     */
    record Weight(WrittenMass mass, boolean fixed) implements Amount {
        /** As written: {@code 5 g fixed}. */
        @Override
        public String toString() {
            return mass + (fixed ? " fixed" : "");
        }
    }

    /**
     * A volume, turned into mass by the material's density.
     *
     * @param volume as typed
     * @param fixed whether it stays when a formula in masses is scaled
     */
    record Bulk(Volume volume, boolean fixed) implements Amount {
        /** As written: {@code 20 ml}. */
        @Override
        public String toString() {
            return volume + (fixed ? " fixed" : "");
        }
    }
}
