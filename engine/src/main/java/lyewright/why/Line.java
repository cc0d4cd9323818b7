package lyewright.why;

import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.makingsheet.Weighing;
import lyewright.material.Tables;
import lyewright.uncertainty.Distribution;
import lyewright.why.Term.Given;

/**
 * One thing of the batch and where it stands on the sheet.
 *
 * @param line what it is
 * @param weighing how it is weighed
 * @param path path of its item on the sheet
 * @param label what it is called in formulas
 */
record Line(BatchLine line, Weighing weighing, String path, String label) {

    double weighedGrams() {
        return weighing.weigh().grams();
    }

    boolean is(Kind kind) {
        return line.kind() == kind;
    }

    /** What it is in words, with what and which portion it is for. */
    String words() {
        String portion = weighing.portion().isEmpty() ? "" : ", portion " + weighing.portion();
        String solid = is(Kind.DISPERSING_LIQUID) ? label.substring(label.indexOf(Ledger.FOR)) : "";
        return weighing.name() + solid + portion;
    }

    /** Its mass as weighed, with what it may be off by. */
    Given weighed(Tables tables) {
        Distribution.Trapezoidal really = weighing.reallyWeighed(tables);
        return new Given(
                        label,
                        weighedGrams(),
                        "g",
                        words() + ", as weighed",
                        "",
                        Optional.of(path + ".weighGrams"),
                        Optional.empty())
                .spread(Spread.trapezoidal(
                        really.middle(),
                        really.oneHalf(),
                        really.otherHalf(),
                        Sources.balance(weighing.balance(), tables)));
    }

    /** Its mass before rounding. */
    Given exact() {
        return new Given(
                "exact " + label,
                weighing.exactGrams(),
                "g",
                words() + ", before rounding",
                "",
                Optional.of(path + ".exactGrams"),
                Optional.empty());
    }
}
