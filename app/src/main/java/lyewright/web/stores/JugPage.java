package lyewright.web.stores;

import java.util.List;
import java.util.Set;
import lyewright.records.equipment.JugUse;
import lyewright.web.TextField;

/**
 * The form of a jug or a pot.
 *
 * @param head what every form has
 * @param name field
 * @param empty field
 * @param use what is chosen
 * @param useTroubles what is wrong with that, as sentences
 */
public record JugPage(FormHead head, TextField name, TextField empty, String use, List<String> useTroubles) {

    static final Set<String> FIELDS = Set.of("name", "empty", "use");

    /** Copies its list. */
    public JugPage {
        useTroubles = List.copyOf(useTroubles);
    }

    /**
     * What it may be for.
     *
     * @param word as it is sent
     * @param label what a maker calls it
     */
    public record Use(String word, String label) {}

    /** What it may be for. */
    public List<Use> uses() {
        return List.of(
                new Use(JugUse.LYE_JUG.word(), "A lye jug: alkali dissolves in it"),
                new Use(JugUse.OIL_POT.word(), "An oil pot: oils melt in it and the batter is made in it"),
                new Use(JugUse.PORTION_JUG.word(), "A jug for a portion: batter is coloured in it"));
    }
}
