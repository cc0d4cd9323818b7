package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import lyewright.records.stock.KeptLot;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;

/** What is made of lots beforehand. */
class MadePagesTest extends AtTheCupboard {

    @Test
    void stock_lye_is_made_of_a_lot_and_has_its_strength() throws Exception {
        deliver("", "caustic soda|1 kg|||");
        KeptLot soda = lot("Sodium hydroxide");
        workshop.post("/stores/lots/" + soda.id() + "/certificate", "purity", "98");
        String[] form = {
            "opened-in",
            "mine",
            "token",
            "token-0009",
            "name",
            "stock-lye",
            "from.0.lot",
            soda.id(),
            "from.0.amount",
            "500 g",
            "water",
            "500 ml",
            "day",
            today.toString(),
            "sure",
            "yes"
        };
        HttpResponse<String> made = workshop.post("/stores/made", form);
        assertThat(made.statusCode()).isEqualTo(303);
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("1 kg")
                .contains("Recipes name it 'stock-lye' from now on")
                .contains("made here");
        assertThat(lot("stock-lye")
                        .said()
                        .certificate()
                        .orElseThrow()
                        .strength()
                        .orElseThrow()
                        .pure()
                        .toString())
                .isEqualTo("49");
        assertThat(records().materials().findKey("stock-lye")).isPresent();
        assertThat(records().lots().find(soda.id()).orElseThrow().left()).isEqualTo(500_000);
        workshop.post("/stores/made", form);
        assertThat(records().lots().find(soda.id()).orElseThrow().left()).isEqualTo(500_000);
    }

    @Test
    void oils_are_mixed_beforehand_with_the_shares_of_their_masses() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||");
        workshop.post(
                "/stores/made",
                "opened-in",
                "mine",
                "name",
                "house-blend",
                "from.0.lot",
                lot("Coconut oil").id(),
                "from.0.amount",
                "750 g",
                "from.1.lot",
                lot("Castor oil").id(),
                "from.1.amount",
                "250 g",
                "day",
                today.toString());
        assertThat(lot("house-blend").left()).isEqualTo(1_000_000);
        assertThat(lot("house-blend").said().certificate().orElseThrow().oils())
                .extracting(part -> part.key() + " " + part.share())
                .containsExactly("coconut 75 %", "castor 25 %");
    }

    @Test
    void a_premix_has_the_saponification_value_of_its_lots_certificates() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||");
        for (String[] said : new String[][] {{"Coconut oil", "257.0 ± 0.8"}, {"Castor oil", "180.0 ± 0.4"}}) {
            workshop.post(
                    "/stores/lots/" + lot(said[0]).id() + "/certificate",
                    "saponification value",
                    said[1],
                    "source",
                    "NQ");
        }
        HttpResponse<String> made = workshop.post(
                "/stores/made",
                "opened-in",
                "mine",
                "name",
                "house-blend",
                "from.0.lot",
                lot("Coconut oil").id(),
                "from.0.amount",
                "750 g",
                "from.1.lot",
                lot("Castor oil").id(),
                "from.1.amount",
                "250 g",
                "day",
                today.toString());
        // 0.75 x 257 + 0.25 x 180 = 237.75; sqrt((0.75 x 0.8)^2 + (0.25 x 0.4)^2) = 0.61
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("Its saponification value comes to 237.8 ± 0.6 mg KOH/g");
        assertThat(lot("house-blend").said().certificate().orElseThrow().oils())
                .extracting(part -> part.key() + " " + part.amount())
                .containsExactly("coconut 75 % of 257 ± 0.8 mg KOH/g", "castor 25 % of 180 ± 0.4 mg KOH/g");
        assertThat(records()
                        .materials()
                        .findKey("house-blend")
                        .orElseThrow()
                        .material()
                        .oils())
                .extracting(part -> part.key() + " " + part.amount())
                .containsExactly("coconut 75 %", "castor 25 %");
    }

    @Test
    void what_cannot_be_made_comes_back_as_typed() throws Exception {
        deliver("", "coconut|1 kg|||", "caustic soda|1 kg|||");
        String oil = lot("Coconut oil").id();
        String soda = lot("Sodium hydroxide").id();
        HttpResponse<String> both = workshop.post(
                "/stores/made",
                "opened-in",
                "mine",
                "name",
                "odd",
                "from.0.lot",
                oil,
                "from.0.amount",
                "100 g",
                "from.1.lot",
                soda,
                "from.1.amount",
                "100 g",
                "day",
                today.toString());
        assertThat(both.statusCode()).isEqualTo(422);
        assertThat(both.body()).contains("this is neither").contains("value=\"odd\"");
        for (String[] wrong : List.of(
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "lye",
                    "from.0.lot",
                    soda,
                    "from.0.amount",
                    "100 g",
                    "day",
                    today.toString()
                },
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "",
                    "from.0.lot",
                    soda,
                    "from.0.amount",
                    "100 g",
                    "water",
                    "1 kg",
                    "day",
                    "x"
                },
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "b",
                    "from.0.lot",
                    oil,
                    "from.0.amount",
                    "100 g",
                    "water",
                    "1 kg",
                    "day",
                    today.toString()
                },
                new String[] {
                    "opened-in",
                    "mine",
                    "name",
                    "b",
                    "from.0.lot",
                    oil,
                    "from.0.amount",
                    "5 kg",
                    "day",
                    today.toString()
                },
                new String[] {"opened-in", "mine", "name", "b", "day", today.toString()})) {
            assertThat(workshop.post("/stores/made", wrong).statusCode())
                    .as(List.of(wrong).toString())
                    .isEqualTo(422);
        }
        assertThat(records().lots().held()).hasSize(2);
    }
}
