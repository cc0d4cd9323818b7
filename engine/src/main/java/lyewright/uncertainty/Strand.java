package lyewright.uncertainty;

import java.util.List;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/** Draws sets of inputs and computes their outputs, in the same room again and again. Serves one thread at a time. */
final class Strand {

    /** Sets drawn at once: few enough for their columns to stay close to the processor. */
    static final int SETS = 256;

    private final Sampler sampler;
    private final Model.Columns model;
    private final double[] outputs = new double[SETS];

    Strand(List<Input> inputs, Model model) {
        this.sampler = new Sampler(inputs, SETS);
        this.model = model.columns(SETS);
    }

    /** The outputs of the next sets, {@link #SETS} at most. They hold until more are drawn. */
    double[] next(XoShiRo256PlusPlus random, int sets) {
        sampler.draw(random, sets);
        model.at(sampler.columns(), sets, outputs);
        return outputs;
    }

    /** Adds so many draws from one source of random numbers to what was counted before. */
    void draw(XoShiRo256PlusPlus random, int draws, Drawn counted) {
        for (int done = 0; done < draws; done += SETS) {
            int sets = Math.min(SETS, draws - done);
            counted.add(next(random, sets), sets);
        }
    }
}
