package lyewright.web.start;

import lyewright.formula.Formula;

/** The same formula under another name. */
final class Renamed {

    private Renamed() {}

    static Formula of(Formula formula, String name) {
        return new Formula(
                name,
                formula.version(),
                formula.use(),
                formula.notes(),
                formula.oils(),
                formula.alkali(),
                formula.superfat(),
                formula.water(),
                formula.acids(),
                formula.curedWater(),
                formula.process(),
                formula.additions(),
                formula.portions(),
                formula.materials(),
                formula.comments());
    }
}
