package lyewright.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.OilLine;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.OilPart;

/** What became of the oils from one formula to another, as their makers typed them: {@code Olive oil 200 g → 250 g}. */
final class TypedOils {

    private static final int DECIMALS = 2;

    private final ResolvedFormula a;
    private final ResolvedFormula b;
    private final boolean masses;

    TypedOils(ResolvedFormula a, ResolvedFormula b) {
        this.a = a;
        this.b = b;
        this.masses = a.formula().inMasses() && b.formula().inMasses();
    }

    /**
     * One oil of both.
     *
     * @param name what it is called
     * @param a how much the first has; empty where it has none
     * @param b how much the second has
     */
    private record Both(String name, Optional<String> a, Optional<String> b) {

        boolean differs() {
            return !a.equals(b);
        }
    }

    /** A swap of one oil for another reads as such; anything else as a list. Empty where nothing changes. */
    Optional<String> clause() {
        List<Both> changed = both().stream().filter(Both::differs).toList();
        if (changed.isEmpty()) {
            return Optional.empty();
        }
        List<Both> gone = changed.stream().filter(oil -> oil.b.isEmpty()).toList();
        List<Both> come = changed.stream().filter(oil -> oil.a.isEmpty()).toList();
        if (changed.size() == 2 && gone.size() == 1 && come.size() == 1) {
            return Optional.of(gone.get(0).name + " " + unit(gone.get(0).a) + " → " + come.get(0).name + " "
                    + unit(come.get(0).b));
        }
        return Optional.of(changed.stream().map(this::fromTo).collect(Collectors.joining(", ")));
    }

    private String fromTo(Both oil) {
        return masses
                ? oil.name + " " + oil.a.orElse("none") + " → " + oil.b.orElse("none")
                : oil.name + " " + oil.a.orElse("0") + " → " + oil.b.orElse("0") + " %";
    }

    private String unit(Optional<String> amount) {
        return amount.orElse("") + (masses ? "" : " %");
    }

    private List<Both> both() {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, String> inA = amounts(a, names);
        Map<String, String> inB = amounts(b, names);
        List<Both> both = new ArrayList<>();
        names.forEach((key, name) ->
                both.add(new Both(name, Optional.ofNullable(inA.get(key)), Optional.ofNullable(inB.get(key)))));
        return both;
    }

    /** By key; what one writes as a mass and the other in percent is said in percent of the oils. */
    private Map<String, String> amounts(ResolvedFormula formula, Map<String, String> names) {
        Map<String, String> amounts = new LinkedHashMap<>();
        for (int i = 0; i < formula.oils().size(); i++) {
            OilPart part = formula.oils().get(i);
            OilLine line = formula.formula().oils().get(i);
            names.putIfAbsent(part.key(), part.name());
            amounts.put(
                    part.key(),
                    masses && line.amount() instanceof OilLine.Weight weight
                            ? weight.mass().toString()
                            : Figures.upTo(100 * part.fraction(), DECIMALS));
        }
        return amounts;
    }
}
