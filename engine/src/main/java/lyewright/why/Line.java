package lyewright.why;

import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.makingsheet.Weighing;
import lyewright.material.Tables;
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

    /** No weighing is taken to err by more than this share of itself; this project's own rule. */
    private static final double MOST_OFF = 0.9;

    double weighedGrams() {
        return weighing.weigh().grams();
    }

    boolean is(Kind kind) {
        return line.kind() == kind;
    }

    /** What it is in words, with what and which portion it is for. */
    String words() {
        String portion = weighing.portion().isEmpty() ? "" : ", portion " + weighing.portion();
        String solid = is(Kind.DISPERSING_LIQUID) ? label.substring(line.key().length()) : "";
        return weighing.name() + solid + portion;
    }

    /** Its mass as weighed. What it may be off by is capped, so that no mass is taken to lie under nothing. */
    Given weighed(Tables tables) {
        double most = MOST_OFF * weighedGrams();
        double error = Math.min(
                most, weighing.balance().permittedErrorGrams(weighing.reading().grams(), tables));
        double unseen = Math.min(most - error, weighing.balance().step().grams() / 2);
        return new Given(
                        label,
                        weighedGrams(),
                        "g",
                        words() + ", as weighed",
                        "",
                        Optional.of(path + ".weighGrams"),
                        Optional.empty())
                .spread(Spread.trapezoidal(weighedGrams(), error, unseen, Sources.balance(weighing.balance(), tables)));
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
