package lyewright.uncertainty;

/** What is computed from the inputs. Pure, quick, and safe to call from several threads at once. */
@FunctionalInterface
public interface Model {

    /**
     * The output for one set of inputs.
     *
     * @param inputs one value for each input, in their order; neither kept nor changed
     * @return the output, in its own unit
     */
    double at(double[] inputs);

    /**
     * The same for many sets at once. A model that is drawn often may have a quicker way than one after the other.
     *
     * @param most sets it will ever be asked at once, at least 1
     * @return for one thread, to be used again and again
     */
    default Columns columns(int most) {
        return new OneByOne(this);
    }

    /** A model for many sets of inputs at once. Keeps room to work in, so it serves one thread. */
    @FunctionalInterface
    interface Columns {

        /**
         * The outputs for some sets of inputs.
         *
         * @param inputs a column for each input, in their order, with a value for each set; not changed
         * @param sets how many sets there are, 0 or more; what the columns hold beyond is of no account
         * @param outputs takes them, in the order of the sets
         */
        void at(double[][] inputs, int sets, double[] outputs);
    }
}
