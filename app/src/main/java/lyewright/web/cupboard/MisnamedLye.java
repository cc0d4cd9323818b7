package lyewright.web.cupboard;

import java.util.List;
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

    /** Under whose name lots of lye are kept; nothing where none of them is lye, or they go by a name of their own. */
    static Optional<String> of(StockItem item, List<KeptLot> lots) {
        if (lots.stream().noneMatch(MisnamedLye::isLye)) {
            return Optional.empty();
        }
        return item.said().kind() == ItemKind.ALKALI ? byTables(item) : Optional.of(item.name());
    }

    /** By its certificate, whatever it is a lot of. */
    static boolean isLye(KeptLot lot) {
        return lot.said()
                .certificate()
                .filter(own ->
                        own.kind().equals(OwnMaterial.LYE) || own.strength().isPresent())
                .isPresent();
    }

    private static Optional<String> byTables(StockItem item) {
        MaterialNames names = MaterialNames.of(Tables.bundled());
        return Stream.concat(item.said().identity().materialKey().stream(), Stream.of(item.name()))
                .distinct()
                .filter(name -> MaterialNames.alkali(name).isEmpty()
                        && Alkali.ofKey(name).isEmpty())
                .map(names::reading)
                .filter(MaterialNames.Reading::one)
                .flatMap(reading -> reading.materials().stream())
                .map(MaterialNames.Named::name)
                .findFirst();
    }
}
