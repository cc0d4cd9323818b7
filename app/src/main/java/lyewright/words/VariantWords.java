package lyewright.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.material.Lookalike;
import lyewright.stock.Variants;
import lyewright.stock.Variants.Thing;

/** What is easily taken for something else, in calm sentences. */
public final class VariantWords {

    private VariantWords() {}

    /** Everything there is to say of a thing by itself. */
    public static List<String> of(Thing thing) {
        List<String> says = new ArrayList<>(pressing(thing));
        byGroup(Variants.besides(thing))
                .forEach((apart, rows) -> says.add("Not to be taken for " + either(rows) + ": " + apart + "."));
        return says;
    }

    /** Only what should be looked at: that its plant is another, or that its name leaves open which. */
    public static List<String> pressing(Thing thing) {
        return Stream.of(other(thing), mayBe(thing)).flatMap(Optional::stream).toList();
    }

    /** That what is said of its plant is not what recipes mean. */
    public static Optional<String> other(Thing thing) {
        return Variants.isOther(thing).map(row -> {
            String plant =
                    row.species().isEmpty() ? row.name() : latin(row.species().get(0));
            return "Recipes mean " + plant + (row.part().isEmpty() ? "" : ", " + row.part()) + ", by that name; "
                    + thing.name() + " here is said to be "
                    + (thing.species().isBlank() ? "the " + thing.part() : latin(thing.species()))
                    + (thing.species().isBlank() || thing.part().isBlank() ? "" : ", " + thing.part()) + ".";
        });
    }

    private static Optional<String> mayBe(Thing thing) {
        Variants.Meant meant = Variants.meant(thing);
        return meant.sure() || meant.kinds().isEmpty()
                ? Optional.empty()
                : Optional.of(Sentences.upperFirst(thing.name()) + " may be " + either(meant.kinds()) + ": "
                        + meant.kinds().get(0).apart() + ". Say which "
                        + (meant.kinds().stream().allMatch(row -> row.species().isEmpty()) ? "" : "plant ")
                        + "it is, as on its label.");
    }

    private static Map<String, List<Lookalike>> byGroup(List<Lookalike> rows) {
        return rows.stream().collect(Collectors.groupingBy(Lookalike::apart, LinkedHashMap::new, Collectors.toList()));
    }

    private static String either(List<Lookalike> rows) {
        List<String> names = rows.stream().map(VariantWords::named).toList();
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " or " + names.get(names.size() - 1);
    }

    private static String named(Lookalike row) {
        return row.species().isEmpty()
                ? row.name()
                : row.name() + " (" + latin(row.species().get(0)) + (row.part().isEmpty() ? "" : ", " + row.part())
                        + ")";
    }

    /** Hybrids have a cross, which few keyboards have. */
    private static String latin(String species) {
        return species.strip().replace(" x ", " × ");
    }
}
