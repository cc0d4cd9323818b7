package lyewright.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.WeakHashMap;
import java.util.function.Predicate;
import lyewright.formula.Meant.How;
import lyewright.material.AdditiveKind;
import lyewright.material.NearestKey;
import lyewright.material.Tables;
import lyewright.measure.Outcome;

/**
 * What a name of a notebook means: case, the word oil, brackets and the plural do not count. A key or common name in full
 * comes first, then a common name without what is in its brackets, then what has all the words that were typed, the
 * first of its name or all of another name among them; of several in a rank none is chosen, but the maker's own of
 * just that name goes before the tables'; one that has it with something in brackets is asked about.
 */
final class NotebookNames {

    private static final int SHOWN = 6;

    private static final int SHORT = 3;

    /** What would be read as an amount, or as the end of a name in a row of names. */
    private static final String NO_NAME = "0123456789,%;#";

    /** Taking the names of hundreds of materials apart takes longer than reading a recipe. */
    private static final Map<Tables, NotebookNames> OF_TABLES = Collections.synchronizedMap(new WeakHashMap<>());

    private final Tables tables;
    private final Map<String, Called> called;
    private final Map<String, OwnMaterial> own;
    private final Set<String> vocabulary;

    private NotebookNames(Tables tables, Map<String, Called> called, Map<String, OwnMaterial> own) {
        this.tables = tables;
        this.called = called;
        this.own = own;
        this.vocabulary = new TreeSet<>();
        called.values().forEach(one -> {
            vocabulary.addAll(one.key());
            vocabulary.addAll(one.name());
        });
    }

    /** The names of some tables, always the same object. */
    static NotebookNames of(Tables tables) {
        return OF_TABLES.computeIfAbsent(tables, given -> {
            Map<String, Called> called = new LinkedHashMap<>();
            given.oils()
                    .forEach(oil -> called.put(
                            oil.key(),
                            Called.of(oil.key(), oil.name(), oil.names().inci())));
            given.additives()
                    .forEach(add -> called.put(
                            add.key(),
                            Called.of(add.key(), add.name(), add.names().inci())));
            return new NotebookNames(given, called, Map.of());
        });
    }

    /** The same names and the maker's own, which have no other name than their key. */
    NotebookNames with(Map<String, OwnMaterial> materials) {
        Map<String, Called> more = new LinkedHashMap<>(called);
        materials.keySet().forEach(key -> more.putIfAbsent(key, Called.of(key, key, "")));
        return new NotebookNames(tables, more, materials);
    }

    static String phrase(String name) {
        return String.join(" ", Called.BETWEEN.split(name.toLowerCase(Locale.ROOT), -1))
                .strip();
    }

    /** Whether a line says lye, which is the alkali to some and what it becomes in water to others. */
    static boolean isSolutionToo(String line) {
        return Called.words(line).contains("lye");
    }

    /** Whether a name is a material's key or common name in full, an alkali's or water. */
    boolean isThing(String name) {
        Set<String> typed = Called.words(name);
        return TradeWords.alkali(name).isPresent()
                || TradeWords.isWater(name)
                || called.values().stream().anyMatch(material -> material.isExactly(typed));
    }

    /** Whether a name is nearly a material's, or may be one of several. */
    boolean isNearly(String name) {
        How how = find(name, key -> true).how();
        return how == How.ONE
                || how == How.SEVERAL
                || how == How.PERHAPS
                || !misspelt(Called.words(name), key -> true).isEmpty();
    }

    /** Whether a name is a key as it stands, but for case and the word oil, so that the key says all that was typed. */
    boolean isKey(String name, String key) {
        return Called.words(name).equals(Called.words(key));
    }

    /** The key of the one material that is meant, or which it may be. */
    Outcome<String> key(String name) {
        return key(name, key -> true);
    }

    /** The same among those that may stand here. */
    Outcome<String> key(String name, Predicate<String> here) {
        Meant meant = find(name, here);
        return meant.isOne() ? Outcome.ok(meant.key()) : refused(name, meant);
    }

    /** Whether a material is called so, and does not only have the words. */
    boolean isCalled(String key, String name) {
        return of(key).isNamed(Called.words(name));
    }

    /** What a name means among those that may stand here. */
    Meant find(String name, Predicate<String> here) {
        return find(name, here, true);
    }

    /** The same without those that are only spelt like it: to look for these takes many times as long. */
    Meant named(String name, Predicate<String> here) {
        return find(name, here, false);
    }

    private Meant find(String name, Predicate<String> here, boolean near) {
        Optional<String> ownKey = ownKey(name).filter(here);
        if (ownKey.isPresent()) {
            return new Meant(How.ONE, List.of(ownKey.get()));
        }
        Optional<String> essential = TradeWords.ofEssential(name);
        if (essential.isPresent() && !essential.get().isEmpty()) {
            return byWords(essential.get(), Called.words(essential.get()), here.and(this::isFragrance), near);
        }
        return byWords(name, Called.words(name), here, near);
    }

    private Meant byWords(String name, Set<String> typed, Predicate<String> here, boolean near) {
        if (typed.isEmpty()) {
            return new Meant(How.NOTHING, List.of());
        }
        String small = name.strip().toLowerCase(Locale.ROOT);
        if (tables.has(small) && here.test(small)) {
            return new Meant(How.ONE, List.of(small));
        }
        List<String> having = ownFirst(keys(here, material -> material.hasAll(typed)));
        List<String> perhaps =
                EverydayNames.perhaps(typed).stream().filter(here).toList();
        List<List<String>> ranks = List.of(
                preferOwn(keys(here, material -> material.isExactly(typed))),
                EverydayNames.same(typed).filter(here).stream().toList(),
                keys(here, material -> material.plain().equals(typed)),
                perhaps,
                having);
        for (List<String> rank : ranks) {
            if (rank.size() == 1) {
                boolean sure =
                        rank != perhaps && (rank != having || of(rank.get(0)).isNamed(typed));
                return new Meant(sure ? How.ONE : How.PERHAPS, rank);
            }
            if (!rank.isEmpty()) {
                return new Meant(How.SEVERAL, rank == perhaps ? perhaps : having);
            }
        }
        // an assessor's table may have the names that stand on labels; one that several materials share names none of
        // them
        List<String> inci = keys(here, material -> material.inci().equals(typed));
        if (!inci.isEmpty()) {
            return new Meant(inci.size() == 1 ? How.ONE : How.SEVERAL, inci);
        }
        Set<String> plain = EverydayNames.withoutNeutral(typed);
        if (!plain.equals(typed)) {
            return byWords(String.join(" ", plain), plain, here, near);
        }
        if (EverydayNames.tooWide(typed).isPresent()) {
            return new Meant(How.UNKNOWN, List.of());
        }
        Meant unprepared = unprepared(name, typed, here);
        if (!unprepared.keys().isEmpty()) {
            return unprepared;
        }
        List<String> similar = near ? near(name, here) : List.of();
        return new Meant(similar.isEmpty() ? How.UNKNOWN : How.NEAR, similar);
    }

    /** What it may be if how it was prepared is left out: green mica may be any mica. */
    private Meant unprepared(String name, Set<String> typed, Predicate<String> here) {
        Meant none = new Meant(How.UNKNOWN, List.of());
        Optional<Set<String>> bare = TradeWords.isInfusion(name) ? Optional.empty() : EverydayNames.unprepared(typed);
        if (bare.isEmpty()) {
            return none;
        }
        Meant meant = byWords(String.join(" ", bare.get()), bare.get(), here, false);
        return switch (meant.how()) {
            case ONE, PERHAPS -> new Meant(How.PERHAPS, meant.keys());
            case SEVERAL -> meant;
            default -> none;
        };
    }

    /** One of the maker's own whose key is what was typed; the same signs go before the same letters. */
    private Optional<String> ownKey(String name) {
        String tidy = Wording.tidy(name);
        return own.containsKey(tidy)
                ? Optional.of(tidy)
                : own.keySet().stream()
                        .filter(key -> key.equalsIgnoreCase(tidy))
                        .findFirst();
    }

    private boolean isFragrance(String key) {
        OwnMaterial material = own.get(key);
        if (material != null && !material.kind().isEmpty()) {
            return material.kind().equals(AdditiveKind.FRAGRANCE.word());
        }
        return tables.additive(key)
                .filter(add -> add.kind() == AdditiveKind.FRAGRANCE)
                .isPresent();
    }

    private List<String> preferOwn(List<String> keys) {
        List<String> ofOwn = keys.stream().filter(own::containsKey).toList();
        return ofOwn.size() == 1 ? ofOwn : keys;
    }

    private List<String> ownFirst(List<String> keys) {
        List<String> sorted =
                new ArrayList<>(keys.stream().filter(own::containsKey).toList());
        keys.stream().filter(key -> !own.containsKey(key)).forEach(sorted::add);
        return sorted;
    }

    /** Whether any material that may stand here has all the words that were typed. */
    boolean mayBe(String name, Predicate<String> here) {
        Set<String> typed = Called.words(name);
        return !typed.isEmpty()
                && !keys(here, material -> material.hasAll(typed)).isEmpty();
    }

    private Called of(String key) {
        return Objects.requireNonNull(called.get(key));
    }

    private List<String> keys(Predicate<String> here, Predicate<Called> fits) {
        return called.entrySet().stream()
                .filter(entry -> fits.test(entry.getValue()))
                .map(Map.Entry::getKey)
                .filter(here)
                .toList();
    }

    private List<String> near(String name, Predicate<String> here) {
        List<String> near = NearestKey.among(phrase(name), own.keySet());
        // three letters are near to everything
        if (near.isEmpty() && phrase(name).length() > SHORT) {
            near = tables.nearest(name).stream().filter(here).toList();
        }
        // an alkali is offered only to whoever nearly wrote it
        if (near.isEmpty()) {
            near = NearWords.of(phrase(name), TradeWords.all());
        }
        return near.isEmpty() ? misspelt(Called.words(name), here) : near;
    }

    /** What the words would name if each were spelt as it mostly is, or all were written as one. */
    private List<String> misspelt(Set<String> typed, Predicate<String> here) {
        Map<String, Collection<String>> spelt = new LinkedHashMap<>();
        typed.forEach(
                word -> spelt.put(word, vocabulary.contains(word) ? Set.of(word) : NearWords.of(word, vocabulary)));
        Set<String> meant = new LinkedHashSet<>(keys(
                here,
                material ->
                        spelt.values().stream().allMatch(words -> words.stream().anyMatch(material::has))));
        return List.copyOf(meant);
    }

    // Said

    /** The refusal of a name that is not one material. */
    Outcome<String> refused(String name, Meant meant) {
        String quoted = Wording.quote(name);
        return switch (meant.how()) {
            case NOTHING -> Outcome.refused(quoted + " names no material", "write which, as in coconut oil 350 g");
            case SEVERAL -> Outcome.refused(quoted + " may be " + shown(meant.keys()), "write one");
            case PERHAPS ->
                Outcome.refused(quoted + " may mean " + said(meant.key()), "if it does, write " + said(meant.key()));
            case NEAR -> Outcome.refused(quoted + " is not known", "did you mean " + shown(meant.keys()) + "?");
            default ->
                EverydayNames.tooWide(Called.words(name))
                        .map(wide -> Outcome.<String>refused(quoted + " " + wide.get(0), wide.get(1)))
                        .orElseGet(() -> Outcome.refused(
                                quoted + " is not known",
                                "write another name of it, or describe it as a material of your own; begin a remark"
                                        + " with #"));
        };
    }

    private String shown(List<String> keys) {
        List<String> said = keys.stream().limit(SHOWN).map(this::said).toList();
        return keys.size() <= SHOWN
                ? Wording.oneOf(said)
                : String.join(", ", said) + " or one of " + (keys.size() - SHOWN) + " more";
    }

    /** What a material is called where it is chosen. */
    String title(String key) {
        Called material = called.get(key);
        return material == null ? key : material.title();
    }

    /** A material as people write it, if that is read as this one and nothing else; else its key. */
    String said(String key) {
        Called material = called.get(key);
        if (material == null || own.containsKey(key)) {
            return key;
        }
        return List.of(material.title(), Called.withoutBrackets(material.title()), key.replace('-', ' ')).stream()
                .map(NotebookNames::small)
                .filter(name -> name.chars().noneMatch(c -> NO_NAME.indexOf(c) >= 0))
                .filter(name ->
                        !TradeWords.isWater(name) && TradeWords.alkali(name).isEmpty())
                .filter(name -> find(name, any -> true).equals(new Meant(How.ONE, List.of(key))))
                .findFirst()
                .orElse(key);
    }

    /** In the middle of a line: olive oil, but BHT. */
    private static String small(String name) {
        return name.length() > 1 && Character.isLowerCase(name.charAt(1))
                ? Character.toLowerCase(name.charAt(0)) + name.substring(1)
                : name;
    }
}
