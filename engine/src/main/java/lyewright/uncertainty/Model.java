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
}
