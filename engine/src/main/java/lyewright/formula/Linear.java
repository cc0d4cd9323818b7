package lyewright.formula;

/**
 * A quantity of a batch as a straight line in the mass of its oils and the mass of everything weighed: {@code perOils ×
 * oils + fixed + perBatch × batch}. In grams for masses, in moles for amounts of alkali.
 *
 * @param perOils for each gram of oils
 * @param fixed whatever the size
 * @param perBatch for each gram of everything weighed
 */
public record Linear(double perOils, double fixed, double perBatch) {

    /** Nothing. */
    public static final Linear ZERO = new Linear(0, 0, 0);

    /** The oils themselves. */
    public static final Linear OILS = new Linear(1, 0, 0);

    /**
     * A quantity that goes with the oils.
     *
     * @param fraction for each gram of oils
     * @return the line
     */
    public static Linear ofOils(double fraction) {
        return new Linear(fraction, 0, 0);
    }

    /**
     * A quantity that stays.
     *
     * @param quantity its size
     * @return the line
     */
    public static Linear fixed(double quantity) {
        return new Linear(0, quantity, 0);
    }

    /**
     * Both together.
     *
     * @param other another line
     * @return the sum
     */
    public Linear plus(Linear other) {
        return new Linear(perOils + other.perOils, fixed + other.fixed, perBatch + other.perBatch);
    }

    /**
     * What is left.
     *
     * @param other what to take off
     * @return the difference
     */
    public Linear minus(Linear other) {
        return new Linear(perOils - other.perOils, fixed - other.fixed, perBatch - other.perBatch);
    }

    /**
     * A multiple.
     *
     * @param factor any factor
     * @return the line times it
     */
    public Linear times(double factor) {
        return new Linear(perOils * factor, fixed * factor, perBatch * factor);
    }

    /**
     * Its value for one batch.
     *
     * @param oils grams of oils
     * @param batch grams of everything weighed
     * @return the quantity
     */
    public double at(double oils, double batch) {
        return perOils * oils + fixed + perBatch * batch;
    }
}
