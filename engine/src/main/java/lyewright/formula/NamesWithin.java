package lyewright.formula;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.material.Tables;

/** Names that have no other words than a longer one, and what becomes of them when that is the name of something. */
final class NamesWithin {

    private NamesWithin() {}

    /** A name that the tables' names know, or ask about, and that would be read as a new material of the maker's own. */
    static Optional<String> takenOver(String key, Tables tables) {
        NotebookNames before = NotebookNames.of(tables);
        NotebookNames then = before.with(Map.of(key, OwnMaterial.of(key, OwnMaterial.OILS)));
        return of(key, before).stream()
                .filter(name -> isKnown(before.find(name, any -> true)))
                .filter(name -> then.find(name, any -> true).equals(new Meant(Meant.How.ONE, List.of(key))))
                .findFirst();
    }

    private static boolean isKnown(Meant meant) {
        return meant.isOne() || meant.how() == Meant.How.SEVERAL;
    }

    /** The name itself without its brackets, and the names of materials in full and without theirs. */
    private static Set<String> of(String name, NotebookNames names) {
        Set<String> words = Called.words(name);
        Set<String> within = new LinkedHashSet<>();
        within.add(Called.withoutBrackets(name));
        for (Called material : names.all()) {
            within.add(material.title());
            within.add(Called.withoutBrackets(material.title()));
        }
        within.removeIf(other -> !isWithin(Called.words(other), words));
        return within;
    }

    private static boolean isWithin(Set<String> some, Set<String> all) {
        return !some.isEmpty() && all.containsAll(some) && !some.equals(all);
    }
}
