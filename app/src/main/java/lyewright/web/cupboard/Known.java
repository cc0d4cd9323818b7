package lyewright.web.cupboard;

import java.util.Map;
import java.util.Optional;
import lyewright.material.Additive;
import lyewright.material.Tables;
import lyewright.records.stock.ItemSaid;
import lyewright.stock.SaidAmount;

/** What is known of a material, to weigh it without a balance. */
final class Known {

    private static final double ROOM = 20;

    private Known() {}

    /** Its density at 20 °C by the tables, and the maker's own spoons. */
    static SaidAmount.Known of(Optional<ItemSaid> said) {
        Optional<Double> density = said.flatMap(s -> s.identity().materialKey()).flatMap(Known::density);
        return new SaidAmount.Known(density, said.map(ItemSaid::spoons).orElse(Map.of()));
    }

    private static Optional<Double> density(String key) {
        Tables tables = Tables.bundled();
        return tables.oil(key)
                .map(oil -> oil.density().at(ROOM))
                .or(() -> tables.additive(key).filter(Additive::pours).map(Additive::gramsPerMillilitre));
    }
}
