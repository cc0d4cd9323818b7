package lyewright.records.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Named;
import lyewright.formula.NameRules;
import lyewright.formula.OwnMaterial;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/**
 * What a name may mean of all that recipes know: the maker's own materials, the alkalis, the tables. Deliveries and files read names
 * alike by it.
 */
public final class NamedMaterials {

    private static final Set<String> OILY = Set.of(OwnMaterial.OIL, OwnMaterial.WAX, OwnMaterial.FATTY_ACID);

    private static final Map<String, Problem> UNCLEAR = Map.of(
            "lye",
            new Problem(
                    "",
                    "may be the dry alkali or a solution of it",
                    "write Sodium hydroxide or Potassium hydroxide if it is dry; a solution is a stock lye and goes by a"
                            + " name of its own"),
            "potash",
            new Problem(
                    "",
                    "may be potassium hydroxide or potassium carbonate",
                    "write Potassium hydroxide or Potassium carbonate, as on the label"),
            "soda",
            new Problem(
                    "",
                    "may be sodium hydroxide or sodium carbonate",
                    "write Sodium hydroxide or Sodium carbonate, as on the label"));

    private final MaterialNames names;

    /** The materials of some names. */
    public NamedMaterials(MaterialNames names) {
        this.names = names;
    }

    /**
     * What a name may mean.
     *
     * @param all as each would be kept in the cupboard; none where nobody knows the name
     * @param sure whether it was named, and not only spelt much like it
     */
    public record Meant(List<ItemSaid> all, boolean sure) {

        /** Copies its list. */
        public Meant {
            all = List.copyOf(all);
        }

        /** The one that is meant, where it is one and named. */
        public Optional<ItemSaid> one() {
            return sure && all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
        }

        /** Their names, to choose from. */
        public String either() {
            return String.join(" or ", all.stream().map(ItemSaid::name).limit(4).toList());
        }
    }

    /**
     * Words of the trade for an alkali that may be something else on a bill: weighed as the dry alkali, a batch would come out
     * short of it. Common practice.
     *
     * @param name as written
     * @return what to ask, at no field
     */
    public Optional<Problem> unclear(String name) {
        return names.own(name).isPresent()
                ? Optional.empty()
                : Optional.ofNullable(UNCLEAR.get(NameRules.asRead(name)))
                        .map(asked -> new Problem("", "'" + name.strip() + "' " + asked.what(), asked.remedy()));
    }

    /** What a name means; where no word of it is known, what is spelt much like it. */
    public Meant of(String name) {
        Meant named = inWords(name);
        return named.all().isEmpty()
                ? new Meant(
                        names.meant(name).stream().map(NamedMaterials::named).toList(), false)
                : named;
    }

    /** What a name means in so many words. */
    Meant inWords(String name) {
        Optional<OwnMaterial> own = names.own(name);
        if (own.isPresent()) {
            return new Meant(List.of(own(own.get())), true);
        }
        return MaterialNames.alkali(name)
                .map(alkali -> new Meant(List.of(alkali(alkali)), true))
                .orElseGet(() -> new Meant(
                        names.inWords(name).stream().map(NamedMaterials::named).toList(), true));
    }

    private static ItemSaid alkali(Alkali alkali) {
        return ItemSaid.of(
                alkali == Alkali.SODIUM ? "Sodium hydroxide" : "Potassium hydroxide",
                ItemKind.ALKALI,
                Identity.ofKey(alkali.key()));
    }

    private static ItemSaid own(OwnMaterial own) {
        boolean oily = own.saponificationValue().isPresent() || !own.oils().isEmpty() || OILY.contains(own.kind());
        ItemKind kind = own.kind().equals(OwnMaterial.LYE)
                ? ItemKind.ALKALI
                : oily ? ItemKind.OIL : ownKind(own.kind()).orElseGet(() -> byTables(own.key()));
        return ItemSaid.of(own.key(), kind, Identity.ofKey(own.key()));
    }

    /** The maker's own addition; nothing where its kind is left to the tables. */
    private static Optional<ItemKind> ownKind(String word) {
        return Arrays.stream(AdditiveKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .map(NamedMaterials::kind);
    }

    private static ItemSaid named(Named named) {
        return ItemSaid.of(named.name(), byTables(named.key()), Identity.ofKey(named.key()));
    }

    private static ItemKind byTables(String key) {
        Tables tables = Tables.bundled();
        return tables.oil(key).isPresent()
                ? ItemKind.OIL
                : tables.additive(key)
                        .map(Additive::kind)
                        .map(NamedMaterials::kind)
                        .orElse(ItemKind.ADDITIVE);
    }

    private static ItemKind kind(AdditiveKind kind) {
        return switch (kind) {
            case CLAY, COLOURANT -> ItemKind.COLOURANT;
            case FRAGRANCE -> ItemKind.FRAGRANCE;
            default -> ItemKind.ADDITIVE;
        };
    }
}
