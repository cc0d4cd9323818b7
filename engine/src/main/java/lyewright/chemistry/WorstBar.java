package lyewright.chemistry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.Composition.Substance;

/**
 * Where portions become bars of their own: the bar that has most of a substance, which is the one that a limit is read
 * against. Toppings are in no portion and have to be added by whoever knows which bars they lie on.
 *
 * @param substance which, as it is in that bar
 * @param portion the name of the portion that bar is of; the first where several have as much
 */
public record WorstBar(Substance substance, String portion) {

    /** Percentages closer than this are alike: they differ by rounding. */
    private static final double ALIKE = 1e-9;

    private record Key(Composition.Kind kind, String name, String of) {}

    /** For each substance of any portion its worst bar, in the order of kinds, heaviest first. */
    static List<WorstBar> among(List<BatchComposition.Portion> portions) {
        Map<Key, WorstBar> worst = new LinkedHashMap<>();
        for (BatchComposition.Portion portion : portions) {
            for (Substance substance : portion.cured().substances()) {
                worst.merge(
                        new Key(substance.kind(), substance.name(), substance.of()),
                        new WorstBar(substance, portion.name()),
                        (a, b) -> b.percent() > a.percent() + ALIKE ? b : a);
            }
        }
        return worst.values().stream()
                .sorted((a, b) -> Composition.BY_KIND_AND_SHARE.compare(a.substance(), b.substance()))
                .toList();
    }

    /**
     * How much of it that bar has.
     *
     * @return percent of the cured bar
     */
    public double percent() {
        return substance.percent();
    }
}
