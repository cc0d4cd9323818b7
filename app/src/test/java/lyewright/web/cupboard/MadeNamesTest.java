package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.formula.WrittenFigure;
import lyewright.material.Alkali;
import lyewright.records.stock.KeptLot;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;

/** That what is made here is not taken for something else, can be, and says what it is. */
class MadeNamesTest extends AtTheCupboard {

    private HttpResponse<String> make(String name, String lot, String amount, String water, String... more)
            throws Exception {
        List<String> form = new ArrayList<>(List.of(
                "opened-in",
                "mine",
                "name",
                name,
                "from.0.lot",
                lot,
                "from.0.amount",
                amount,
                "water",
                water,
                "day",
                today.toString()));
        form.addAll(List.of(more));
        return workshop.post("/stores/made", form.toArray(String[]::new));
    }

    @Test
    void lye_is_not_called_what_something_else_is_called() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||", "caustic soda|5 kg|||", "Blue boxes|10||||packaging");
        String soda = lot("Sodium hydroxide").id();
        make("house-blend", lot("Castor oil").id(), "100 g", "");
        records().materials().add(OwnMaterial.of("shell-sand", "other")).orThrow();
        for (String name : List.of(
                "coconut",
                "Coconut",
                "Coconut oil",
                "coconut-oil",
                "palm",
                "olive",
                "salt",
                "naoh",
                "koh",
                "caustic soda",
                "Sodium hydroxide",
                "house-blend",
                "House-Blend",
                "shell-sand",
                "blue boxes")) {
            HttpResponse<String> refused = make(name, soda, "300 g", "600 g");
            assertThat(refused.statusCode()).as(name).isEqualTo(422);
            assertThat(refused.body())
                    .as(name)
                    .contains("value=\"" + name + "\"")
                    .contains("value=\"300 g\"")
                    .contains("give what is made here a name of its own");
        }
        assertThat(records().lots().held()).hasSize(5);
        assertThat(records().lots().find(soda).orElseThrow().left()).isEqualTo(5_000_000);
        assertThat(records().materials().findKey("coconut")).isEmpty();
    }

    @Test
    void a_premix_is_not_called_what_something_else_is_called() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||", "caustic soda|5 kg|||");
        assertThat(make("stock-lye", lot("Sodium hydroxide").id(), "300 g", "600 g")
                        .statusCode())
                .isEqualTo(303);
        for (String name : List.of("castor", "stock-lye", "palm", "caustic soda")) {
            assertThat(make(name, lot("Coconut oil").id(), "100 g", "").statusCode())
                    .as(name)
                    .isEqualTo(422);
        }
        assertThat(records().lots().held()).hasSize(4);
    }

    @Test
    void the_same_thing_made_again_has_its_name_again_and_of_another_alkali_it_has_not() throws Exception {
        deliver("", "coconut|1 kg|||", "castor|1 kg|||", "caustic soda|5 kg|||", "caustic potash|5 kg|||");
        String soda = lot("Sodium hydroxide").id();
        for (String water : List.of("600 g", "620 g")) {
            assertThat(make("stock-lye", soda, "300 g", water).statusCode()).isEqualTo(303);
        }
        assertThat(records().lots().of(lot("stock-lye").itemId())).hasSize(2);
        for (String oil : List.of("Coconut oil", "Castor oil")) {
            assertThat(make("house-blend", lot(oil).id(), "100 g", "").statusCode())
                    .isEqualTo(303);
        }
        HttpResponse<String> potash =
                make("stock-lye", lot("Potassium hydroxide").id(), "300 g", "600 g");
        assertThat(potash.statusCode()).isEqualTo(422);
        assertThat(potash.body()).contains("stock lye of sodium hydroxide");
        assertThat(records().lots().of(lot("stock-lye").itemId())).hasSize(2);
    }

    @Test
    void lye_that_cannot_be_is_refused_with_the_water_it_needs() throws Exception {
        deliver("", "caustic soda|5 kg|||");
        KeptLot soda = lot("Sodium hydroxide");
        workshop.post("/stores/lots/" + soda.id() + "/certificate", "purity", "98");
        // 500 g of 98 % are 490 g pure and 10 g of water; 490 / 600 = 81.7 %; 490 g pure want 480 g more water to be
        // half of
        // it, and 490 / 0.33 - 500 = 985 g to be 33 %
        HttpResponse<String> strong = make("stock-lye", soda.id(), "500 g", "100 g", "sure", "yes");
        assertThat(strong.statusCode()).isEqualTo(422);
        assertThat(strong.body())
                .contains("that would be 81.7 % sodium hydroxide")
                .contains("take at least 480 g of water; 985 g makes a lye of 33 %")
                .contains("value=\"100 g\"");
        assertThat(make("stock-lye", soda.id(), "500 g", "479 g", "sure", "yes").statusCode())
                .isEqualTo(422);
        assertThat(make("stock-lye", soda.id(), "500 g", "480 g", "sure", "yes").statusCode())
                .isEqualTo(303);
    }

    @Test
    void lye_stronger_than_a_cool_room_holds_is_asked_about_once() throws Exception {
        deliver("", "caustic soda|5 kg|||");
        KeptLot soda = lot("Sodium hydroxide");
        workshop.post("/stores/lots/" + soda.id() + "/certificate", "purity", "98");
        HttpResponse<String> asked = make("stock-lye", soda.id(), "500 g", "500 g");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body())
                .contains("about what water at 20 °C holds (46 to 52 % by source")
                .contains("name=\"sure\"");
        assertThat(make("stock-lye", soda.id(), "500 g", "500 g", "sure", "yes").statusCode())
                .isEqualTo(303);
        // 490 / 1066 = 45.97 %
        assertThat(make("stock-lye", soda.id(), "500 g", "566 g").statusCode()).isEqualTo(303);
    }

    @Test
    void the_lot_of_a_stock_lye_says_its_strength_what_it_was_made_of_and_that_it_burns() throws Exception {
        deliver("", "caustic soda|5 kg|||");
        KeptLot soda = lot("Sodium hydroxide");
        workshop.post("/stores/lots/" + soda.id() + "/certificate", "purity", "98.6 ± 0.4");
        HttpResponse<String> made = make("stock-lye", soda.id(), "500 g", "500 g", "sure", "yes");
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("49.3 ± 0.2 % sodium hydroxide by mass")
                .contains("500 g of <a href=\"/stores/lots/" + soda.id() + "\">Sodium hydroxide, lot ")
                .containsSubsequence("Lye burns skin and eyes.", "Take from it")
                .contains("stays used until that is taken back");
        assertThat(workshop.get("/stores/lots/" + soda.id()).body()).doesNotContain("id=\"made\"");
    }

    @Test
    void the_lot_of_a_premix_says_what_it_was_made_of() throws Exception {
        deliver("", "castor|1 kg|||");
        KeptLot castor = lot("Castor oil");
        HttpResponse<String> made = make("house-blend", castor.id(), "300 g", "");
        long number = records().lots().moves(castor.id()).get(0).number();
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("300 g of <a href=\"/stores/lots/" + castor.id() + "\">Castor oil, lot ")
                .doesNotContain("Lye burns");
        records().lots().correct(records().author(), number, "it was another").orThrow();
        assertThat(workshop.get(TestWorkshop.wayOn(made)).body())
                .contains("</a> <span class=\"tag\">taken back</span>");
    }

    @Test
    void a_name_that_resembles_an_oils_is_refused_unless_recipes_know_it_for_this_very_thing() throws Exception {
        deliver("", "castor|1 kg|||", "caustic soda|5 kg|||");
        String castor = lot("Castor oil").id();
        String soda = lot("Sodium hydroxide").id();
        assertThat(make("almond-sweets", soda, "300 g", "600 g").statusCode()).isEqualTo(422);
        records()
                .materials()
                .add(OwnMaterial.made(
                        "almond-sweets",
                        OwnMaterial.LYE,
                        Optional.of(new OwnMaterial.Strength(
                                WrittenFigure.parse("33").orThrow().figure(), Alkali.SODIUM)),
                        List.of(),
                        ""))
                .orThrow();
        assertThat(make("almond-sweets", castor, "100 g", "").statusCode()).isEqualTo(422);
        assertThat(make("almond-sweets", soda, "300 g", "600 g").statusCode()).isEqualTo(303);
    }
}
