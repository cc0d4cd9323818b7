package lyewright.web.stores;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.words.Figures;
import lyewright.words.MaterialWords;

/**
 * What a search of the tables gives.
 *
 * @param query as typed
 * @param oils members of the oil phase
 * @param additions the rest
 * @param near keys that may have been meant, where nothing was found
 */
public record TablesFound(String query, List<OilRow> oils, List<AdditionRow> additions, List<String> near) {

    /** Copies its lists. */
    public TablesFound {
        oils = List.copyOf(oils);
        additions = List.copyOf(additions);
        near = List.copyOf(near);
    }

    /**
     * A member of the oil phase.
     *
     * @param key its key
     * @param name its common name
     * @param saponification its range, mg KOH/g
     * @param used what a sheet computes with, mg KOH/g
     * @param iodine its range, g/100 g; empty where unknown
     * @param remembered whether its saponification value is memory
     */
    public record OilRow(
            String key, String name, String saponification, String used, String iodine, boolean remembered) {

        static OilRow of(Oil oil) {
            return new OilRow(
                    oil.key(),
                    oil.name(),
                    MaterialWords.range(oil.saponificationValue()),
                    Figures.fixed(oil.reckoned().milligramsKohPerGram(), 1),
                    oil.iodineValue().map(MaterialWords::range).orElse(""),
                    oil.saponificationValue().remembered());
        }
    }

    /**
     * Something added.
     *
     * @param key its key
     * @param name its common name
     * @param kind what it is
     * @param dose what is usual, percent of oils; empty where unknown
     * @param stage where it usually goes in, or empty
     * @param density g/ml
     * @param assumed whether that density is only assumed
     */
    public record AdditionRow(
            String key, String name, String kind, String dose, String stage, String density, boolean assumed) {

        static AdditionRow of(Additive additive) {
            return new AdditionRow(
                    additive.key(),
                    additive.name(),
                    additive.kind().word(),
                    additive.usualDose()
                            .map(d -> MaterialWords.range(d.low(), d.high()))
                            .orElse(""),
                    additive.usualDose().map(Additive.UsualDose::stage).orElse(""),
                    Figures.upTo(additive.gramsPerMillilitre(), 3),
                    additive.densityAssumed());
        }
    }

    static TablesFound of(String query, Tables tables) {
        List<String> words = Arrays.stream(query.toLowerCase(Locale.ROOT).split("[\\s,]+"))
                .filter(word -> !word.isEmpty())
                .toList();
        List<OilRow> oils = tables.oils().stream()
                .filter(oil -> holds(words, oil.key(), oil.name(), oil.names().inci(), oil.notes()))
                .map(OilRow::of)
                .toList();
        List<AdditionRow> additions = tables.additives().stream()
                .filter(add -> holds(
                        words,
                        add.key(),
                        add.name(),
                        add.names().inci(),
                        add.kind().word(),
                        add.notes()))
                .map(AdditionRow::of)
                .toList();
        boolean nothing = oils.isEmpty() && additions.isEmpty();
        return new TablesFound(query, oils, additions, nothing ? tables.nearest(query) : List.of());
    }

    private static boolean holds(List<String> words, String... texts) {
        String all = String.join(" ", texts).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(all::contains);
    }

    /**
     * Additions of one kind.
     *
     * @param label what they are
     * @param rows the additions
     */
    public record Group(String label, List<AdditionRow> rows) {
        /** Copies its list. */
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /** The additions by kind, for whoever looks round; of what was looked for there is one list. */
    public List<Group> groups() {
        Map<String, List<AdditionRow>> byKind = additions.stream()
                .collect(Collectors.groupingBy(AdditionRow::kind, LinkedHashMap::new, Collectors.toList()));
        List<AdditionRow> rest = byKind.remove(AdditiveKind.OTHER.word());
        if (rest != null) {
            byKind.put(AdditiveKind.OTHER.word(), rest);
        }
        return byKind.entrySet().stream()
                .map(entry -> new Group(
                        MaterialKind.of(entry.getKey()).map(MaterialKind::label).orElse(entry.getKey()),
                        entry.getValue()))
                .toList();
    }

    /** Whether something was looked for. */
    public boolean searched() {
        return !query.isBlank();
    }

    /** How much was found, for whoever hears the page. */
    public String counted() {
        String found = Stream.of(count(oils.size(), "oil"), count(additions.size(), "addition"))
                .filter(text -> !text.isEmpty())
                .reduce((a, b) -> a + " and " + b)
                .orElse("Nothing");
        return found + (query.isBlank() ? "" : " with '" + query.strip() + "' in name, key or notes");
    }

    private static String count(int many, String what) {
        return many == 0 ? "" : many + " " + what + (many == 1 ? "" : "s");
    }

    /** Whether any saponification value shown is only remembered. */
    public boolean anyRemembered() {
        return oils.stream().anyMatch(OilRow::remembered);
    }
}
