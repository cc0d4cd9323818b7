package lyewright.formula;

import java.math.BigDecimal;
import java.util.Optional;
import lyewright.measure.Temperature;
import lyewright.measure.TimeSpan;

/**
 * How it is made, as far as it is written.
 *
 * @param make the way of making
 * @param oils temperature of the oils when lye goes in
 * @param lye temperature of the lye then
 * @param oven what the oven does with the mould
 * @param pour how portions are poured into each other
 */
@SuppressWarnings("JavaLangClash") // the file calls it process, and nobody here runs programs
public record Process(
        Make make, Optional<Temperature> oils, Optional<Temperature> lye, Optional<Oven> oven, Optional<Pour> pour) {

    /** Nothing written: the cold way. */
    public static final Process COLD =
            new Process(Make.COLD, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Ways of making. */
    public enum Make {
        /** Poured at trace and left. */
        COLD("cold"),
        /** Poured at trace and kept warm in an oven. */
        OVEN("oven"),
        /** Cooked through before it is moulded. */
        COOKED("cooked");

        private final String word;

        Make(String word) {
            this.word = word;
        }

        /**
         * As written.
         *
         * @return cold, oven or cooked
         */
        public String word() {
            return word;
        }
    }

    /**
     * What the oven does.
     *
     * @param at its temperature
     * @param hold for how long
     * @param thenOff whether it is switched off then, or at once
     */
    public record Oven(Temperature at, Optional<TimeSpan> hold, boolean thenOff) {

        /** As written: {@code 55 C then off}, {@code 70 C for 2 h}. */
        @Override
        public String toString() {
            return at + hold.map(h -> " for " + h).orElse("") + (thenOff ? " then off" : "");
        }
    }

    /**
     * A fading pour: after each layer some of one portion is stirred into the other.
     *
     * @param plain the portion that is added
     * @param coloured the portion that is poured from
     * @param layers how many layers, at least 2
     */
    public record Pour(String plain, String coloured, BigDecimal layers) {

        /** As written: {@code fade plain into kelp in 7}. */
        @Override
        public String toString() {
            return "fade " + plain + " into " + coloured + " in " + layers.toPlainString();
        }
    }
}
