package lyewright.web.stores;

import java.util.List;
import java.util.stream.Stream;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Named;
import lyewright.formula.MaterialNames.Place;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.web.Frame;
import lyewright.words.Sentences;

/**
 * Which material of the tables is it?
 *
 * @param frame around it
 * @param typed what was typed; empty at first
 * @param question what is asked about that; empty at first
 * @param choices what it may mean
 * @param names that may be typed
 */
public record WhichPage(Frame frame, String typed, String question, List<Named> choices, List<String> names) {

    /** More than these are found faster by another word. */
    private static final int MOST_CHOICES = 12;

    /** Copies its lists. */
    public WhichPage {
        choices = List.copyOf(choices);
        names = List.copyOf(names);
    }

    static WhichPage of(Frame frame, String typed, List<Named> meant, MaterialNames names) {
        List<String> all = Stream.of(Place.values())
                .flatMap(place -> names.all(place).stream())
                .map(Named::name)
                .distinct()
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList();
        return new WhichPage(
                frame,
                typed,
                typed.isEmpty() ? "" : question(typed, meant, names),
                meant.subList(0, Math.min(MOST_CHOICES, meant.size())),
                all);
    }

    private static String question(String typed, List<Named> meant, MaterialNames names) {
        Outcome<String> oil = names.key(typed, Place.OILS);
        boolean unknown = oil.problems().stream().map(Problem::what).anyMatch(what -> what.endsWith("is not known"));
        if (meant.isEmpty()) {
            return unknown
                    ? "'" + typed + "' is not known. Write another name of it, or choose another kind of material."
                    : oil.problems().stream().map(Sentences::whole).findFirst().orElse("");
        }
        return unknown
                ? "'" + typed + "' is not known. Is it " + (meant.size() == 1 ? "this?" : "one of these?")
                : "Which '" + typed + "' is it?";
    }
}
