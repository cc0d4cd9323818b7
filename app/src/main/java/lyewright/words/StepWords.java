package lyewright.words;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.makingsheet.Weighing;

/** Weighings within a sentence. */
final class StepWords {

    private StepWords() {}

    /** {@code 144.7 g of sodium hydroxide and 20.0 g of potassium hydroxide}. */
    static String list(List<Weighing> weighings, UnitsShown units) {
        return weighings.stream()
                .map(w -> units.on(w.balance(), w.weigh()) + " of " + lowerFirst(w.name()))
                .collect(Collectors.joining(" and "));
    }

    /** A name inside a sentence; one that is all capitals or has a capital further on keeps its own. */
    static String lowerFirst(String name) {
        boolean plain =
                name.length() > 1 && Character.isUpperCase(name.charAt(0)) && Character.isLowerCase(name.charAt(1));
        return plain ? Character.toLowerCase(name.charAt(0)) + name.substring(1) : name;
    }
}
