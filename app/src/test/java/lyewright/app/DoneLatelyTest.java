package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lyewright.records.Records;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was done lately, told by the names of things. */
class DoneLatelyTest {

    @TempDir
    private Path home;

    @Test
    void a_material_and_a_supplier_are_told_by_their_names_also_once_they_are_taken_away() {
        try (TestDoors doors = TestDoors.open(home, false)) {
            Records records = doors.shop().records();
            records.items()
                    .add(ItemSaid.of("Shea butter", ItemKind.OIL, Identity.none()))
                    .orThrow();
            String supplier =
                    records.suppliers().add("Northquay Oils", "", "").orThrow().id();
            records.suppliers().remove(supplier).orThrow();

            assertThat(doors.desk().get("/settings/people").body())
                    .contains("saved Shea butter")
                    .contains("saved Northquay Oils")
                    .contains("took away Northquay Oils")
                    .doesNotContain("a stocked material", "a supplier<");
        }
    }
}
