package lyewright.records.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import lyewright.formula.OwnMaterial;
import lyewright.measure.WrittenMass;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.equipment.JugUse;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import org.junit.jupiter.api.Test;

/** What was signed is told by what it is called. */
@OnBoth
class NamesOfThingsTest extends Workbench {

    @Test
    void what_was_done_something_to_has_its_name_though_it_was_taken_away() {
        String supplier =
                records.suppliers().add("Northquay Oils", "", "").orThrow().id();
        String item = records.items()
                .add(ItemSaid.of("Shea butter", ItemKind.OIL, Identity.none()))
                .orThrow()
                .id();
        String jug = records.equipment()
                .addJug("Blue jug", WrittenMass.ofGrams("210"), JugUse.LYE_JUG)
                .orThrow()
                .id();
        String own = records.materials()
                .add(OwnMaterial.of("pink-salt", "salt"))
                .orThrow()
                .id();
        records.suppliers().remove(supplier).orThrow();
        List<SignedLine> lines = records.signatures().last(10);

        assertThat(lines).hasSize(5);
        assertThat(records.signatures().names(lines))
                .isEqualTo(Map.of(supplier, "Northquay Oils", item, "Shea butter", jug, "Blue jug", own, "pink-salt"));
    }
}
