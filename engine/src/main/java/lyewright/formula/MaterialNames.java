package lyewright.formula;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.Outcome;

/**
 * What a maker means by a material's name as typed: a key, a common name, or enough of either to be one material and no
 * other. Immutable; one for some tables is made once and shared.
 */
public final class MaterialNames {

    private static final Set<String> OIL_KINDS =
            Set.of(OwnMaterial.OIL, OwnMaterial.WAX, OwnMaterial.FATTY_ACID, OwnMaterial.OILS);

    private final Tables tables;
    private final NotebookNames names;
    private final Map<String, OwnMaterial> own;
    private final Map<String, Map<String, Long>> spoons;

    private MaterialNames(
            Tables tables, NotebookNames names, Map<String, OwnMaterial> own, Map<String, Map<String, Long>> spoons) {
        this.tables = tables;
        this.names = names;
        this.own = own;
        this.spoons = spoons;
    }

    /** Where a material may stand. */
    public enum Place {
        /** Among the oils. */
        OILS("an oil", "list it under additions"),
        /** Among the additions. */
        ADDITIONS("an addition", "list it under oils, so that its alkali is counted");

        private final String what;
        private final String elsewhere;

        Place(String what, String elsewhere) {
            this.what = what;
            this.elsewhere = elsewhere;
        }
    }

    /**
     * A material that may be named.
     *
     * @param key its key
     * @param name its common name; of the maker's own the key
     */
    public record Named(String key, String name) {}

    /**
     * The names of some tables.
     *
     * @param tables the tables
     * @return cheap to call again
     */
    public static MaterialNames of(Tables tables) {
        return new MaterialNames(tables, NotebookNames.of(tables), Map.of(), Map.of());
    }

    /**
     * These names and the maker's own materials, which go before the tables'.
     *
     * @param materials the maker's own
     * @return both together
     */
    public MaterialNames with(Collection<OwnMaterial> materials) {
        if (materials.isEmpty()) {
            return this;
        }
        Map<String, OwnMaterial> all = new LinkedHashMap<>(own);
        materials.forEach(material -> all.put(material.key(), material));
        return new MaterialNames(tables, NotebookNames.of(tables).with(all), all, spoons);
    }

    /**
     * These names and what the maker's own spoons hold.
     *
     * @param held milligrams by the spoon's name, by what recipes call the material
     * @return both together
     */
    public MaterialNames withSpoons(Map<String, Map<String, Long>> held) {
        Map<String, Map<String, Long>> read = new LinkedHashMap<>();
        held.forEach((key, spoon) -> read.put(NameRules.asRead(key), Map.copyOf(spoon)));
        return new MaterialNames(tables, names, own, Map.copyOf(read));
    }

    /** What the maker's own spoons hold of a material, milligrams by the spoon's name. */
    Map<String, Long> spoons(String key) {
        return spoons.getOrDefault(NameRules.asRead(key), Map.of());
    }

    /**
     * The key of the one material that is meant. A key in full always means itself.
     *
     * @param typed what was typed
     * @param place where it stands, so that cocoa among the oils is the butter
     * @return its key, or which it may be
     */
    public Outcome<String> key(String typed, Place place) {
        if (own.containsKey(typed) || tables.has(typed)) {
            return Outcome.ok(typed);
        }
        Outcome<String> here = names.key(typed, key -> belongs(key, place));
        if (here instanceof Outcome.Ok<String> || isAmong(typed, place)) {
            return here;
        }
        Outcome<String> anywhere = names.key(typed);
        return anywhere instanceof Outcome.Ok<String> other
                ? Outcome.refused(
                        Wording.quote(typed) + ", " + other.value() + ", is not " + place.what, place.elsewhere)
                : here;
    }

    /** Whether several materials of the place go by what was typed. */
    private boolean isAmong(String typed, Place place) {
        return names.mayBe(typed, key -> belongs(key, place));
    }

    /**
     * Which alkali a name of the trade means, such as caustic soda.
     *
     * @param typed what was typed
     * @return sodium or potassium hydroxide, if it is a name of one
     */
    public static Optional<Alkali> alkali(String typed) {
        return TradeWords.alkali(typed);
    }

    /**
     * All that may stand in a place: the maker's own first, then the tables'.
     *
     * @param place where
     * @return in the tables' order
     */
    public List<Named> all(Place place) {
        Map<String, Named> all = new LinkedHashMap<>();
        own.keySet().stream()
                .filter(key -> belongs(key, place))
                .forEach(key -> all.put(key, new Named(key, name(key).orElse(key))));
        if (place == Place.OILS) {
            tables.oils().forEach(oil -> all.putIfAbsent(oil.key(), new Named(oil.key(), oil.name())));
        } else {
            tables.additives().forEach(add -> all.putIfAbsent(add.key(), new Named(add.key(), add.name())));
        }
        return List.copyOf(all.values());
    }

    /**
     * What a name may mean of the tables, wherever it stands.
     *
     * @param typed what was typed
     * @return the one that is meant, or those to choose from; none where it is not known
     */
    public List<Named> meant(String typed) {
        if (tables.has(typed)) {
            return named(List.of(typed));
        }
        List<String> sure = sure(typed);
        return named(sure.isEmpty() ? names.find(typed, any -> true).keys() : sure);
    }

    /** What is meant in the one place or the other. */
    private List<String> sure(String typed) {
        Set<String> sure = new LinkedHashSet<>();
        for (Place place : Place.values()) {
            if (names.key(typed, key -> belongs(key, place)) instanceof Outcome.Ok<String> ok) {
                sure.add(ok.value());
            }
        }
        return List.copyOf(sure);
    }

    /**
     * What a name is read as.
     *
     * @param one whether it is read as the one material that is there, and not asked about
     * @param called whether some of them are called so, and do not only have the word in their names
     * @param materials that, or those to choose from; none where the name is only near to another or not known
     */
    public record Reading(boolean one, boolean called, List<Named> materials) {

        /** Copies its list. */
        public Reading {
            materials = List.copyOf(materials);
        }
    }

    /**
     * What a name is read as by the tables.
     *
     * @param typed what was typed
     * @return the same for any place where it may stand
     */
    public Reading reading(String typed) {
        List<String> sure = tables.has(typed) ? List.of(typed) : sure(typed);
        if (!sure.isEmpty()) {
            return new Reading(true, true, named(sure));
        }
        Meant meant = names.find(typed, any -> true);
        boolean asks = meant.how() == Meant.How.SEVERAL || meant.how() == Meant.How.PERHAPS;
        return asks
                ? new Reading(
                        false, meant.keys().stream().anyMatch(key -> names.isCalled(key, typed)), named(meant.keys()))
                : new Reading(false, false, List.of());
    }

    /**
     * What a name says of the tables in so many words. What is only spelt much like it, as lard is like jars, {@link #meant} gives.
     *
     * @param typed what was typed
     * @return the one that is named, or those to choose from; none where no part of it is known
     */
    public List<Named> inWords(String typed) {
        if (tables.has(typed)) {
            return named(List.of(typed));
        }
        Set<String> sure = surelyNamed(typed);
        return named(sure.isEmpty() ? names.named(typed, any -> true).keys() : sure);
    }

    /**
     * Whether something is called so already, so that nothing else can be. A name that only has words of others is free.
     *
     * @param typed a name
     * @return whether it means, or may mean, what is known
     */
    public boolean isCalled(String typed) {
        return tables.has(typed)
                || alkali(typed).isPresent()
                || !surelyNamed(typed).isEmpty()
                || names.named(typed, any -> true).keys().stream().anyMatch(key -> names.isCalled(key, typed));
    }

    private Set<String> surelyNamed(String typed) {
        Set<String> sure = new LinkedHashSet<>();
        for (Place place : Place.values()) {
            Meant meant = names.named(typed, key -> belongs(key, place));
            if (meant.isOne()) {
                sure.add(meant.key());
            }
        }
        return sure;
    }

    private List<Named> named(Collection<String> keys) {
        return keys.stream()
                .filter(tables::has)
                .map(key -> new Named(key, name(key).orElse(key)))
                .toList();
    }

    /**
     * A key's common name.
     *
     * @param key a key
     * @return its name in the tables, if they have it
     */
    public Optional<String> name(String key) {
        return tables.oil(key).map(Oil::name).or(() -> tables.additive(key).map(Additive::name));
    }

    /**
     * One of the maker's own materials.
     *
     * @param key its key
     * @return the material, if it is one
     */
    public Optional<OwnMaterial> own(String key) {
        return Optional.ofNullable(own.get(key));
    }

    /**
     * The maker's own materials.
     *
     * @return in the order in which they were given
     */
    public List<OwnMaterial> ofMaker() {
        return List.copyOf(own.values());
    }

    /** The names alone, as a notebook has them. */
    NotebookNames names() {
        return names;
    }

    /** The tables that the names are of. */
    Tables tables() {
        return tables;
    }

    boolean belongs(String key, Place place) {
        OwnMaterial material = own.get(key);
        if (material == null || material.kind().isEmpty()) {
            return place == Place.OILS
                    ? tables.oil(key).isPresent()
                    : tables.additive(key).isPresent();
        }
        boolean oil = OIL_KINDS.contains(material.kind());
        return place == Place.OILS ? oil : !oil && !material.kind().equals(OwnMaterial.LYE);
    }
}
