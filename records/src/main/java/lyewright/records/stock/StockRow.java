package lyewright.records.stock;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.measure.WrittenMass;

/**
 * A row of a file on its way into the cupboard, read but not yet held against what is there.
 *
 * @param number which row of the file, from 1
 * @param what what it tells of
 */
public record StockRow(int number, What what) {

    /** What a row may tell of. */
    public sealed interface What permits OfSupplier, OfMaterial, OfLot {}

    /**
     * A supplier.
     *
     * @param name what they are called
     * @param contact how they are reached
     * @param notes the maker's own
     */
    public record OfSupplier(String name, String contact, String notes) implements What {}

    /**
     * A material.
     *
     * @param said what is said of it
     */
    public record OfMaterial(MaterialSaid said) implements What {}

    /**
     * A lot with how much came of it: opening stock is one too.
     *
     * @param material what it is a lot of; with its kind it may be added where the cupboard has none of it
     * @param supplier who sold it, by name; perhaps empty
     * @param said what is said of it; its supplier is empty, and it has a certificate only where the row has one whole, as a formula's text
     * @param certificate what its columns say of a certificate
     * @param amount how much came
     */
    public record OfLot(
            MaterialSaid material, String supplier, LotSaid said, Optional<CertificateSaid> certificate, Amount amount)
            implements What {}

    /**
     * What a row says of a material.
     *
     * @param name what it is called, or what recipes call it
     * @param kind what sort of thing it is, where the row says
     * @param counting weighed or counted, where the row says
     * @param identity what it is; its supplier is empty
     * @param supplier who sells it where that is part of what it is, by name; perhaps empty
     * @param reorderMass when less is left, it should be bought
     * @param reorderPieces the same for what is counted
     * @param spoons milligrams by the spoon's name
     * @param notes the maker's own
     */
    public record MaterialSaid(
            String name,
            Optional<ItemKind> kind,
            Optional<Counting> counting,
            Identity identity,
            String supplier,
            Optional<WrittenMass> reorderMass,
            Optional<Long> reorderPieces,
            Map<String, Long> spoons,
            String notes) {

        /** Copies its map. */
        public MaterialSaid {
            spoons = new TreeMap<>(spoons);
        }

        /** Of which a name and nothing else is said. */
        public static MaterialSaid named(String name) {
            return new MaterialSaid(
                    name,
                    Optional.empty(),
                    Optional.empty(),
                    Identity.none(),
                    "",
                    Optional.empty(),
                    Optional.empty(),
                    Map.of(),
                    "");
        }

        /** With what the tables know of it: its kind, where the row does not say one, and what recipes call it. */
        MaterialSaid known(ItemKind sort, Optional<String> key) {
            return new MaterialSaid(
                    name,
                    kind.or(() -> Optional.of(sort)),
                    counting,
                    identity.withKey(key),
                    supplier,
                    reorderMass,
                    reorderPieces,
                    spoons,
                    notes);
        }

        /** As it is kept, with its supplier's id. */
        ItemSaid said(ItemKind sort, Optional<String> supplierId) {
            return new ItemSaid(
                    name,
                    sort,
                    counting.orElse(sort == ItemKind.PACKAGING ? Counting.PIECES : Counting.MASS),
                    identity.withSupplier(supplierId),
                    reorderMass,
                    reorderPieces,
                    spoons,
                    notes);
        }
    }

    /**
     * How much.
     *
     * @param counting whether it was weighed or counted; a number without a unit is counted
     * @param number milligrams or pieces
     */
    public record Amount(Counting counting, long number) {}
}
