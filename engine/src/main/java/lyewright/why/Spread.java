package lyewright.why;

import lyewright.material.Figure;

/**
 * Between which ends a number put in may lie, and how. Its unit is that of the number.
 *
 * @param kind how it is spread
 * @param low its least; for {@link Kind#NORMAL} the low end of its 95 % interval
 * @param high its most; for {@link Kind#NORMAL} the high end of its 95 % interval
 * @param evenLow for {@link Kind#TRAPEZOIDAL} where it begins to be even, else {@code low}
 * @param evenHigh for {@link Kind#TRAPEZOIDAL} where it ceases to be even, else {@code high}
 * @param source who says so
 */
public record Spread(Kind kind, double low, double high, double evenLow, double evenHigh, String source) {

    /** How a number may be spread. */
    public enum Kind {
        /** Anywhere between the ends, equally. */
        RECTANGULAR("rectangular"),
        /** Bell-shaped, the ends being its 95 % interval. */
        NORMAL("normal"),
        /** Even in the middle and rarer towards both ends: two rectangular ones added, as a balance's error and its step. */
        TRAPEZOIDAL("trapezoidal");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * As written in data.
         *
         * @return rectangular, normal or trapezoidal
         */
        public String word() {
            return word;
        }
    }

    /** Of a figure of the tables or a certificate, times a factor. */
    static Spread of(Figure figure, double factor) {
        double low = figure.low() * factor;
        double high = figure.high() * factor;
        return new Spread(
                figure.spread() == Figure.Spread.NORMAL ? Kind.NORMAL : Kind.RECTANGULAR,
                low,
                high,
                low,
                high,
                figure.source());
    }

    static Spread between(double low, double high, String source) {
        return new Spread(Kind.RECTANGULAR, low, high, low, high, source);
    }

    /** A certificate's, so far to either side. */
    static Spread certificate(double value, double reach, String source) {
        return new Spread(Kind.NORMAL, value - reach, value + reach, value - reach, value + reach, source);
    }

    /** Two rectangular ones around a middle. */
    static Spread trapezoidal(double middle, double oneHalf, double otherHalf, String source) {
        double all = oneHalf + otherHalf;
        double even = Math.abs(oneHalf - otherHalf);
        return new Spread(Kind.TRAPEZOIDAL, middle - all, middle + all, middle - even, middle + even, source);
    }
}
