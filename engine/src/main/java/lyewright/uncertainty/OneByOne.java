package lyewright.uncertainty;

/** Sets of inputs given to a model one after the other. */
final class OneByOne implements Model.Columns {

    private final Model model;
    private double[] row = {};

    OneByOne(Model model) {
        this.model = model;
    }

    @Override
    public void at(double[][] inputs, int sets, double[] outputs) {
        if (row.length != inputs.length) {
            row = new double[inputs.length];
        }
        for (int set = 0; set < sets; set++) {
            for (int i = 0; i < row.length; i++) {
                row[i] = inputs[i][set];
            }
            outputs[set] = model.at(row);
        }
    }
}
