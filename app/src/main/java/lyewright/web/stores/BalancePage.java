package lyewright.web.stores;

import java.util.List;
import java.util.Set;
import lyewright.web.TextField;

/**
 * The form of a balance.
 *
 * @param head what every form has
 * @param name field
 * @param capacity field
 * @param step field
 * @param accuracyClass what is chosen, empty where it is not known
 * @param classTroubles what is wrong with that, as sentences
 */
public record BalancePage(
        FormHead head,
        TextField name,
        TextField capacity,
        TextField step,
        String accuracyClass,
        List<String> classTroubles) {

    static final Set<String> FIELDS = Set.of("name", "capacity", "step", "class");

    /** Copies its list. */
    public BalancePage {
        classTroubles = List.copyOf(classTroubles);
    }

    /** The classes there are. */
    public List<String> classes() {
        return List.of("I", "II", "III", "IIII");
    }
}
