package lyewright.web.stores;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Balance;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Said;
import lyewright.measure.WrittenMass;

/**
 * A balance as typed.
 *
 * @param name what it is called
 * @param capacity the most it carries
 * @param step what it counts in
 * @param accuracyClass its OIML class, empty where that is not known
 */
record BalanceForm(String name, String capacity, String step, String accuracyClass) {

    static final BalanceForm EMPTY = new BalanceForm("", "", "", "");

    static BalanceForm of(Balance balance) {
        return new BalanceForm(
                balance.name(),
                balance.capacity().toString(),
                balance.step().toString(),
                balance.accuracyClass().orElse(""));
    }

    /** Read by the engine's rules; problems name the fields. */
    Outcome<Balance> read() {
        List<Problem> problems = new ArrayList<>();
        String called = name.strip();
        if (called.isEmpty()) {
            problems.add(new Problem("name", "the balance's name is empty", "write a name"));
        }
        Optional<WrittenMass> most = mass("capacity", capacity, "the most it carries", "5 kg", problems);
        Optional<WrittenMass> least = mass("step", step, "what it counts in", "0.1 g", problems);
        if (most.isEmpty() || least.isEmpty() || !problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        return Balance.of(
                called,
                most.get(),
                least.get(),
                accuracyClass.isBlank() ? Optional.empty() : Optional.of(accuracyClass));
    }

    private static Optional<WrittenMass> mass(
            String field, String typed, String what, String example, List<Problem> problems) {
        if (typed.isBlank()) {
            problems.add(new Problem(field, what + " is not given", "read it off the balance, as in " + example));
            return Optional.empty();
        }
        Outcome<WrittenMass> read = WrittenMass.parse(Said.measure(typed));
        read.problems().forEach(p -> problems.add(p.within(field)));
        return read instanceof Outcome.Ok<WrittenMass> ok ? Optional.of(ok.value()) : Optional.empty();
    }
}
