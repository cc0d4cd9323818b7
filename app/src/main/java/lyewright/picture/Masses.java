package lyewright.picture;

import lyewright.words.Figures;

/** Masses as a glance at a picture asks for them. */
final class Masses {

    private static final double LARGE = 100;
    private static final double LEAST = 0.005;

    private Masses() {}

    static String grams(double grams) {
        if (grams > 0 && grams < LEAST) {
            return "<0.01 g";
        }
        return Figures.fixed(grams, grams >= LARGE ? 0 : grams >= 1 ? 1 : 2) + " g";
    }
}
