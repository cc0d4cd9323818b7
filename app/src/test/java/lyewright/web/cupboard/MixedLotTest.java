package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Share;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A lot of oils that were mixed here: what went in says what it is. */
class MixedLotTest extends AtTheCupboard {

    private KeptLot mixed() {
        OwnMaterial mix = OwnMaterial.made(
                "summer-blend",
                OwnMaterial.OILS,
                Optional.empty(),
                List.of(
                        new OwnMaterial.BlendPart("coconut", Share.parse("30 %").orThrow()),
                        new OwnMaterial.BlendPart(
                                "olive-virgin", Share.parse("70 %").orThrow())),
                "made here");
        ItemSaid said = ItemSaid.of("summer-blend", ItemKind.OIL, Identity.ofKey("summer-blend"));
        LotSaid lot = LotSaid.of(today).withCertificate(Optional.of(mix));
        return records()
                .lots()
                .receive(records().author(), "", List.of(Arrival.of(said, lot, 900_000)))
                .orThrow()
                .get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"190", ""})
    void no_figure_is_written_over_what_went_in(String figure) throws Exception {
        KeptLot lot = mixed();

        assertThat(workshop.post("/stores/lots/" + lot.id() + "/certificate", "saponification value", figure)
                        .statusCode())
                .isEqualTo(422);

        assertThat(records().lots().find(lot.id()).orElseThrow().said().certificate())
                .isEqualTo(lot.said().certificate());
    }

    @Test
    void its_page_asks_for_none_and_it_can_still_be_judged() throws Exception {
        KeptLot lot = mixed();

        assertThat(workshop.get("/stores/lots/" + lot.id()).body())
                .contains("summer-blend")
                .doesNotContain("Its certificate");
        assertThat(workshop.post("/stores/lots/" + lot.id() + "/status", "status", "refused")
                        .statusCode())
                .isEqualTo(303);
    }
}
