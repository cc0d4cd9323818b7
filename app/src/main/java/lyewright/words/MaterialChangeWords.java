package lyewright.words;

import java.util.Optional;
import lyewright.formula.MaterialChange;
import lyewright.formula.MaterialChange.Said;

/** Figures of a material that two formulas do not have alike, each with where it comes from. */
public final class MaterialChangeWords {

    private MaterialChangeWords() {}

    /** What it was and what it becomes. */
    public static String fromTo(MaterialChange change) {
        return figure(change) + " " + said(change.a()) + " → " + said(change.b());
    }

    /** What a version carries, and what the workshop has now. */
    public static String carriedAndKept(MaterialChange change) {
        return figure(change) + " " + said(change.a()) + " in this version, " + said(change.b()) + " in Stores";
    }

    private static String figure(MaterialChange change) {
        return change.name() + ": " + change.figure();
    }

    private static String said(Optional<Said> said) {
        return said.map(known -> known.source().isEmpty() ? known.value() : known.value() + " (" + known.source() + ")")
                .orElse("none given");
    }
}
