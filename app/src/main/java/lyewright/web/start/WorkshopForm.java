package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import lyewright.measure.Problem;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.records.store.Typed;
import lyewright.web.Shop;
import lyewright.web.TextField;

/**
 * What a workshop needs to begin: a name and a unit system, nothing else.
 *
 * @param name as typed
 * @param units {@link #GRAMS} or {@link #OUNCES}
 * @param problems what is wrong
 */
public record WorkshopForm(String name, String units, List<Problem> problems) {

    static final String GRAMS = "grams";
    static final String OUNCES = "ounces";
    static final String FIELD = "workshop";

    static final WorkshopForm EMPTY = new WorkshopForm("", GRAMS, List.of());

    /** Copies its lists. */
    public WorkshopForm {
        problems = List.copyOf(problems);
    }

    static String units(String typed) {
        return typed.equals(OUNCES) ? OUNCES : GRAMS;
    }

    /** Whether ounces are chosen. */
    public boolean inOunces() {
        return units.equals(OUNCES);
    }

    WorkshopForm with(List<Problem> found) {
        return new WorkshopForm(name, units, found);
    }

    /** What is wrong with it, if anything. */
    Optional<Problem> trouble() {
        return Typed.name(FIELD, "the workshop's name", name.strip());
    }

    Workshop workshop() {
        return Shop.usual(name.strip(), inOunces() ? Units.OUNCES : Units.GRAMS);
    }

    /** The field for its name. */
    public TextField field() {
        return TextField.of(FIELD, "Your workshop's name", "As it stands on your sheets.", name)
                .with(problems);
    }
}
