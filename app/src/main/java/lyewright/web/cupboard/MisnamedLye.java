package lyewright.web.cupboard;

import java.util.Optional;
import java.util.stream.Stream;
import lyewright.formula.MaterialNames;
import lyewright.formula.OwnMaterial;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;

/**
 * Lye that is kept under the name of something that is none. None can be made so any more, but what was made before stands on the
 * shelf still, and whoever takes it for an oil is burnt.
 */
final class MisnamedLye {

    private MisnamedLye() {}

    /** Under whose name a lot of lye is kept; nothing where it is no lye, or goes by a name of its own. */
    static Optional<String> of(StockItem item, KeptLot lot) {
        boolean lye = lot.said()
                .certificate()
                .filter(own ->
                        own.kind().equals(OwnMaterial.LYE) || own.strength().isPresent())
                .isPresent();
        if (!lye) {
            return Optional.empty();
        }
        return item.said().kind() == ItemKind.ALKALI ? byTables(item) : Optional.of(item.name());
    }

    private static Optional<String> byTables(StockItem item) {
        MaterialNames names = MaterialNames.of(Tables.bundled());
        return Stream.concat(item.said().identity().materialKey().stream(), Stream.of(item.name()))
                .filter(name -> MaterialNames.alkali(name).isEmpty()
                        && Alkali.ofKey(name).isEmpty())
                .map(names::reading)
                .filter(MaterialNames.Reading::one)
                .flatMap(reading -> reading.materials().stream())
                .map(MaterialNames.Named::name)
                .findFirst();
    }
}
