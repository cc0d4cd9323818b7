package lyewright.makingsheet;

import java.util.List;
import lyewright.uncertainty.Drawn;
import lyewright.uncertainty.Input;
import lyewright.uncertainty.MonteCarlo;

/** A way in for the benchmarks: the superfat of a sheet, drawn as often as they like. */
public final class SheetDraws {

    private final SuperfatModel model;

    /**
     * Of the whole batch.
     *
     * @param sheet the sheet
     */
    public SheetDraws(MakingSheet sheet) {
        model = new SuperfatModel(sheet.batch(), sheet.vessels(), -1);
    }

    /**
     * What is uncertain.
     *
     * @return the model's inputs
     */
    public List<Input> inputs() {
        return model.inputs();
    }

    /**
     * Draws.
     *
     * @param draws how often
     * @return what came out
     */
    public Drawn draw(long draws) {
        return MonteCarlo.draw(model.inputs(), model, draws);
    }
}
