package lyewright.web.stores;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Said;
import lyewright.measure.WrittenMass;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.KeptJug;

/**
 * A jug or a pot as typed.
 *
 * @param name what it is called
 * @param empty what it weighs empty
 * @param use what it is for
 */
record JugForm(String name, String empty, String use) {

    static final JugForm EMPTY = new JugForm("", "", JugUse.LYE_JUG.word());

    static JugForm of(KeptJug jug) {
        return new JugForm(jug.name(), jug.emptyWeight().toString(), jug.use().word());
    }

    /** A jug that reads. */
    record Read(String name, WrittenMass empty, JugUse use) {}

    /** Read by the engine's rules; problems name the fields. */
    Outcome<Read> read() {
        List<Problem> problems = new ArrayList<>();
        if (name.isBlank()) {
            problems.add(new Problem("name", "its name is empty", "write a name"));
        }
        Optional<JugUse> purpose =
                Arrays.stream(JugUse.values()).filter(u -> u.word().equals(use)).findFirst();
        if (purpose.isEmpty()) {
            problems.add(new Problem("use", "nothing says what it is for", "choose one"));
        }
        Outcome<WrittenMass> weight = empty.isBlank()
                ? Outcome.refused("its empty weight is not given", "weigh it empty and dry, as in 312 g")
                : WrittenMass.parse(Said.measure(empty));
        weight.problems().forEach(p -> problems.add(p.within("empty")));
        if (weight instanceof Outcome.Ok<WrittenMass> ok && purpose.isPresent() && problems.isEmpty()) {
            return Outcome.ok(new Read(name.strip(), ok.value(), purpose.get()));
        }
        return new Outcome.Refused<>(problems);
    }
}
