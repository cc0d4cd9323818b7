package lyewright.stock;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.formula.NameRules;
import lyewright.material.Lookalike;

/**
 * Keeps apart what everyday names do not: other plants, other parts of one, other makes. It points out and never forbids, for a label may
 * be right where a table is not.
 */
public final class Variants {

    private Variants() {}

    /**
     * A material as a maker says what it is.
     *
     * @param key what recipes call it, if any does
     * @param name what it is called
     * @param species its botanical name, or empty
     * @param part which part of the plant, or empty
     */
    public record Thing(Optional<String> key, String name, String species, String part) {}

    /**
     * What a thing may be.
     *
     * @param kinds rows of the table, none where it is not in there
     * @param sure whether it is those, not one of them
     */
    public record Meant(List<Lookalike> kinds, boolean sure) {

        /** Copies its list. */
        public Meant {
            kinds = List.copyOf(kinds);
        }
    }

    /**
     * What a thing may be: by what recipes call it, else by its name, else by an everyday name and its plant.
     *
     * @param thing as it is said
     * @return rows of the table
     */
    public static Meant meant(Thing thing) {
        List<Lookalike> byKey = Lookalike.all().stream()
                .filter(row -> !row.key().isEmpty()
                        && thing.key().filter(row.key()::equals).isPresent())
                .toList();
        if (!byKey.isEmpty()) {
            return new Meant(byKey, true);
        }
        List<Lookalike> byName = Lookalike.all().stream()
                .filter(row ->
                        isCalled(row.name(), thing) || row.also().stream().anyMatch(name -> isCalled(name, thing)))
                .toList();
        if (!byName.isEmpty()) {
            return new Meant(byName, true);
        }
        List<Lookalike> any = Lookalike.all().stream()
                .filter(row -> row.everyday().stream().anyMatch(name -> isCalled(name, thing)))
                .toList();
        List<Lookalike> narrowed = any.stream()
                .filter(row -> !thing.species().isBlank() || !thing.part().isBlank())
                .filter(row -> isOfSpecies(row, thing.species()) && isOfPart(row, thing.part()))
                .toList();
        return narrowed.isEmpty() ? new Meant(any, false) : new Meant(narrowed, narrowed.size() == 1);
    }

    private static boolean isCalled(String name, Thing thing) {
        return NameRules.areSame(name, thing.name());
    }

    /**
     * What a thing must not be taken for.
     *
     * @param thing as it is said
     * @return other rows of its groups, each name once; none where it is not known which of them it is
     */
    public static List<Lookalike> besides(Thing thing) {
        Meant meant = meant(thing);
        Set<String> groups = groups(meant);
        Set<String> own = names(meant);
        Set<String> told = new HashSet<>();
        return meant.sure()
                ? Lookalike.all().stream()
                        .filter(row -> groups.contains(row.group()) && !own.contains(row.name()))
                        .filter(row -> told.add(row.name()))
                        .toList()
                : List.of();
    }

    /**
     * Whether two things are easily confused and not the same.
     *
     * @param one a thing
     * @param other another
     * @return whether they are of one group and of different rows
     */
    public static boolean areConfused(Thing one, Thing other) {
        Meant first = meant(one);
        Meant second = meant(other);
        Set<String> groups = groups(first);
        return groups(second).stream().anyMatch(groups::contains)
                && names(second).stream().noneMatch(names(first)::contains);
    }

    private static Set<String> groups(Meant meant) {
        return meant.kinds().stream().map(Lookalike::group).collect(Collectors.toSet());
    }

    private static Set<String> names(Meant meant) {
        return meant.kinds().stream().map(Lookalike::name).collect(Collectors.toSet());
    }

    /**
     * Whether what is said of a thing's plant is not what recipes mean by the name they have for it.
     *
     * @param thing as it is said
     * @return what recipes mean; empty where nothing speaks against it
     */
    public static Optional<Lookalike> isOther(Thing thing) {
        return Lookalike.all().stream()
                .filter(row -> !row.key().isEmpty()
                        && thing.key().filter(row.key()::equals).isPresent())
                .filter(row -> !isOfSpecies(row, thing.species()) || isOfAnothersPart(row, thing))
                .findFirst();
    }

    /** Parts are called by many words, so that only a part that fits another of the group speaks against this one. */
    private static boolean isOfAnothersPart(Lookalike row, Thing thing) {
        return !thing.part().isBlank()
                && !isOfPart(row, thing.part())
                && Lookalike.all().stream()
                        .filter(other -> other.group().equals(row.group())
                                && !other.part().isEmpty())
                        .anyMatch(other -> isOfSpecies(other, thing.species()) && isOfPart(other, thing.part()));
    }

    private static boolean isOfSpecies(Lookalike row, String said) {
        List<String> words = latin(said);
        return words.isEmpty()
                || row.species().isEmpty()
                || row.species().stream().map(Variants::latin).anyMatch(known -> {
                    int both = Math.min(known.size(), words.size());
                    return known.subList(0, both).equals(words.subList(0, both));
                });
    }

    /** The words of a botanical name, without crosses, ranks and punctuation. */
    private static List<String> latin(String species) {
        return Arrays.stream(species.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> !word.isEmpty() && !NO_NAME.contains(word))
                .toList();
    }

    private static final Set<String> NO_NAME = Set.of("x", "var", "subsp", "ssp", "f", "l");

    private static boolean isOfPart(Lookalike row, String said) {
        List<String> words = words(said);
        return words.isEmpty()
                || row.part().isEmpty()
                || words(row.part()).stream()
                        .anyMatch(known ->
                                words.stream().anyMatch(word -> word.startsWith(known) || known.startsWith(word)));
    }

    private static List<String> words(String part) {
        return Arrays.stream(part.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> word.length() > 2 && !word.equals("and"))
                .map(word -> word.endsWith("s") ? word.substring(0, word.length() - 1) : word)
                .map(word -> word.equals("leave") ? "leaf" : word)
                .toList();
    }
}
