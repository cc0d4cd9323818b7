package lyewright.fill;

import java.util.Optional;
import lyewright.chemistry.BatchLines;

/** Moulds for tests. */
public final class Moulds {

    private Moulds() {}

    public static Mould box(double length, double width, double height) {
        return of(new Shape.Loaf(length, width, height));
    }

    public static Mould of(Shape shape) {
        return new Mould(Optional.of(shape), Optional.empty(), Optional.empty());
    }

    public static Mould waterFill(double grams) {
        return new Mould(Optional.empty(), Optional.of(grams), Optional.empty());
    }

    public static Mould usual(double grams, BatchLines of) {
        return new Mould(Optional.empty(), Optional.empty(), Optional.of(new Mould.Usual(grams, of)));
    }

    /** A mould to be filled, nothing held back. */
    public static Fill fullOf(Mould mould) {
        return new Fill(new Fill.FullMould(), mould, Optional.empty(), 0);
    }

    /** A box of these millilitres. */
    public static Mould boxOf(double millilitres) {
        return box(millilitres, 100, 10);
    }
}
