package lyewright.web.stores;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.measure.Problem;
import lyewright.web.Frame;
import lyewright.words.Sentences;

/**
 * What every form of the stores has.
 *
 * @param frame around it
 * @param title above it
 * @param action where it is sent
 * @param seen tells apart what was kept when it was opened
 * @param removal where its thing is removed; empty for something new
 * @param removalLabel what that button says
 * @param troubles what is wrong that belongs to no field, as sentences
 * @param count how many things are wrong
 * @param namesake where another one of the same name is; empty unless that is in the way
 */
public record FormHead(
        Frame frame,
        String title,
        String action,
        String seen,
        String removal,
        String removalLabel,
        List<String> troubles,
        int count,
        Optional<String> namesake) {

    /** Copies its list. */
    public FormHead {
        troubles = List.copyOf(troubles);
    }

    static FormHead of(
            Frame frame, String title, Thing thing, Standing standing, List<Problem> problems, Set<String> fields) {
        List<String> elsewhere = problems.stream()
                .filter(p -> fields.stream()
                        .noneMatch(f -> p.path().equals(f) || p.path().startsWith(f + ".")))
                .map(Sentences::whole)
                .toList();
        return new FormHead(
                frame,
                title,
                standing.action(thing),
                standing.seen(),
                standing.id().map(id -> thing.address() + "/" + id + "/remove").orElse(""),
                "Remove this " + thing.word(),
                elsewhere,
                problems.size(),
                Optional.empty());
    }

    FormHead withNamesake(Optional<String> address) {
        return new FormHead(frame, title, action, seen, removal, removalLabel, troubles, count, address);
    }

    /** Whether something new is being added. */
    public boolean isNew() {
        return removal.isEmpty();
    }

    /** How many things are wrong, in words. */
    public String counted() {
        return count == 1
                ? "One thing to check before this can be saved."
                : count + " things to check before this can be saved.";
    }
}
