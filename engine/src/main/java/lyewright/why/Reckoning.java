package lyewright.why;

import java.util.HashMap;
import java.util.Map;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** One reckoning of a formula, with what is put in taken to so many digits. Each step is reckoned once. */
final class Reckoning {

    /** All digits that a double has. */
    static final int ALL = 17;

    private final int digits;
    private final Map<Stage, Double> known = new HashMap<>();

    Reckoning(int digits) {
        this.digits = digits;
    }

    double of(Given given) {
        return digits == ALL ? given.amount() : Double.parseDouble(Digits.significant(given.amount(), digits));
    }

    double of(Stage stage) {
        Double before = known.get(stage);
        if (before != null) {
            return before;
        }
        double value = stage.term().value(this);
        known.put(stage, value);
        return value;
    }
}
