package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.StockItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lye that was made under an oil's name before that was refused. */
class MisnamedLyeTest extends AtTheCupboard {

    private String lye(ItemSaid afterwards) {
        OwnMaterial lye = OwnMaterial.made(
                "stock-lye",
                OwnMaterial.LYE,
                Optional.of(new OwnMaterial.Strength(
                        WrittenFigure.parse("33").orThrow().figure(), Alkali.SODIUM)),
                List.of(),
                "made here");
        ItemSaid said = ItemSaid.of("stock-lye", ItemKind.ALKALI, Identity.ofKey("stock-lye"));
        LotSaid lot = LotSaid.of(today).withCertificate(Optional.of(lye));
        String id = records()
                .lots()
                .receive(records().author(), "", List.of(Arrival.of(said, lot, 900_000)))
                .orThrow()
                .get(0)
                .id();
        String item = records().lots().find(id).orElseThrow().itemId();
        records().items().change(new StockItem(item, afterwards)).orThrow();
        return id;
    }

    @ParameterizedTest
    @CsvSource({
        "Coconut oil, OIL, coconut",
        "Summer blend, OIL, summer-blend",
        "Castor oil, ALKALI, summer-lye",
        "Kaolin, COLOURANT, kaolin",
    })
    void it_is_pointed_out_with_what_to_do(String name, ItemKind kind, String key) throws Exception {
        String id = lye(ItemSaid.of(name, kind, Identity.ofKey(key)));
        assertThat(workshop.get("/stores/cupboard").body())
                .contains("class=\"pressing\"")
                .contains("is lye under the name of");
        String page = workshop.get("/stores/lots/" + id).body();
        assertThat(page)
                .containsSubsequence(
                        "This is lye, and it is kept under the name of",
                        "Label it now",
                        "Lye burns skin and eyes.",
                        "Take from it");
        if (kind != ItemKind.ALKALI) {
            assertThat(page).doesNotContain("Its certificate");
            assertThat(workshop.post("/stores/lots/" + id + "/certificate", "saponification value", "257")
                            .statusCode())
                    .isEqualTo(422);
        }
        assertThat(workshop.post("/stores/lots/" + id + "/status", "status", "refused")
                        .statusCode())
                .isEqualTo(303);
        assertThat(workshop.post("/stores/lots/" + id + "/take", "kind", "loss", "amount", "900 g")
                        .statusCode())
                .isEqualTo(303);
        assertThat(workshop.get("/stores/cupboard").body()).doesNotContain("is lye under");
    }

    @Test
    void lye_of_its_own_name_and_dry_alkali_with_a_certificate_are_left_alone() throws Exception {
        lye(ItemSaid.of("stock-lye", ItemKind.ALKALI, Identity.ofKey("stock-lye")));
        deliver("", "caustic soda|1 kg|||");
        String soda = lot("Sodium hydroxide").id();
        workshop.post("/stores/lots/" + soda + "/certificate", "purity", "98.6");
        assertThat(workshop.get("/stores/cupboard").body()).doesNotContain("is lye under");
        assertThat(workshop.get("/stores/lots/" + soda).body()).doesNotContain("This is lye");
    }
}
