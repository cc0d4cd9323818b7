package lyewright.records.stock;

import java.util.List;
import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.formula.MaterialNames.Named;
import lyewright.formula.OwnMaterial;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Alkali;
import lyewright.material.Tables;

/**
 * What a name may mean of all that recipes know: the maker's own materials, the alkalis, the tables. Deliveries and files read names
 * alike by it.
 */
public final class NamedMaterials {

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

    /** What a name means; where no word of it is known, what is spelt much like it. */
    public Meant of(String name) {
        Meant named = inWords(name);
        return named.all().isEmpty()
                ? new Meant(names.meant(name).stream().map(this::named).toList(), false)
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
                .orElseGet(() ->
                        new Meant(names.inWords(name).stream().map(this::named).toList(), true));
    }

    private static ItemSaid alkali(Alkali alkali) {
        return ItemSaid.of(
                alkali == Alkali.SODIUM ? "Sodium hydroxide" : "Potassium hydroxide",
                ItemKind.ALKALI,
                Identity.ofKey(alkali.key()));
    }

    private static ItemSaid own(OwnMaterial own) {
        ItemKind kind = own.kind().equals(OwnMaterial.LYE)
                ? ItemKind.ALKALI
                : own.saponificationValue().isPresent() || !own.oils().isEmpty() ? ItemKind.OIL : ItemKind.ADDITIVE;
        return ItemSaid.of(own.key(), kind, Identity.ofKey(own.key()));
    }

    private ItemSaid named(Named named) {
        Tables tables = Tables.bundled();
        ItemKind kind = tables.oil(named.key()).isPresent()
                ? ItemKind.OIL
                : tables.additive(named.key())
                        .map(Additive::kind)
                        .map(NamedMaterials::kind)
                        .orElse(ItemKind.ADDITIVE);
        return ItemSaid.of(named.name(), kind, Identity.ofKey(named.key()));
    }

    private static ItemKind kind(AdditiveKind kind) {
        return switch (kind) {
            case CLAY, COLOURANT -> ItemKind.COLOURANT;
            case FRAGRANCE -> ItemKind.FRAGRANCE;
            default -> ItemKind.ADDITIVE;
        };
    }
}
