package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import lyewright.formula.OwnMaterial;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.Price;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the lines of a delivery become, and that the maker is told. */
class WhatCameTest extends AtTheCupboard {

    @ParameterizedTest
    @CsvSource({
        "lye, may be the dry alkali or a solution of it",
        "Lye, may be the dry alkali or a solution of it",
        "potash, may be potassium hydroxide or potassium carbonate",
        "soda, may be sodium hydroxide or sodium carbonate",
    })
    void a_word_that_may_be_another_thing_than_dry_alkali_is_asked_about(String name, String asked) throws Exception {
        for (String kind : new String[] {"", "alkali", "additive"}) {
            HttpResponse<String> answer = deliver("", name + "|1 kg||||" + kind);
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("'" + name + "' " + asked).doesNotContain("Say which plant");
        }
        assertThat(records().items().list()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"caustic soda", "NaOH", "Sodium hydroxide"})
    void what_can_only_be_the_dry_alkali_is_taken_for_it(String name) throws Exception {
        assertThat(deliver("", name + "|1 kg|||").statusCode()).isEqualTo(303);
        assertThat(lot("Sodium hydroxide").left()).isEqualTo(1_000_000);
    }

    @Test
    void the_page_after_a_delivery_says_what_each_line_became_and_its_code() throws Exception {
        HttpResponse<String> received =
                deliver("form-0001", "caustic potash|1 kg|V-9|2028-06-30|9.00", "Blue boxes|50||||packaging");
        String page = workshop.get(TestWorkshop.wayOn(received)).body();
        String code = lot("Potassium hydroxide").said().ownCode();
        assertThat(page)
                .contains("2 lots were received.")
                .contains("<b>" + code + "</b>")
                .contains("1 kg of Potassium hydroxide")
                .contains("recipes call it Potassium hydroxide")
                .contains("Northquay Oils, lot V-9; best before 30 Jun 2028")
                .contains("50 pieces of Blue boxes");
        HttpResponse<String> again =
                deliver("form-0001", "caustic potash|1 kg|V-9|2028-06-30|9.00", "Blue boxes|50||||packaging");
        assertThat(workshop.get(TestWorkshop.wayOn(again)).body())
                .contains("nothing came twice")
                .contains(code);
        assertThat(TestWorkshop.wayOn(workshop.get("/stores/deliveries/received?of=no-such")))
                .isEqualTo("/stores/cupboard");
    }

    @Test
    void the_makers_own_words_for_how_much_stand_beside_what_came() throws Exception {
        deliver("", "castor|5 lb", "Olive oil (virgin)|30 ml", "coconut|2 kg");
        assertThat(page("Castor oil")).contains("Came, 5 lb<");
        assertThat(page("Olive oil (virgin)")).contains("Came, 30 ml<");
        assertThat(page("Coconut oil")).contains("Came<");
    }

    private String page(String item) throws Exception {
        return workshop.get("/stores/lots/" + lot(item).id()).body();
    }

    @ParameterizedTest
    @ValueSource(strings = {"£9", "9 £", "9.00 GBP", "gbp 9", "9"})
    void a_price_may_have_the_workshops_own_currency_beside_it(String price) throws Exception {
        assertThat(deliver("", "castor|5 kg|||" + price).statusCode()).isEqualTo(303);
        assertThat(lot("Castor oil").said().price()).contains(new Price(900, "GBP"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,000", "£1,000", "2.500"})
    void a_price_that_may_be_a_thousand_or_one_is_asked_about(String price) throws Exception {
        HttpResponse<String> asked = deliver("", "castor|5 kg|||" + price);
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains("hat may be thousands or a price with three decimals");
    }

    @ParameterizedTest
    @ValueSource(strings = {"€9", "£", "9 EUR", "££9"})
    void another_currency_is_no_price_here(String price) throws Exception {
        assertThat(deliver("", "castor|5 kg|||" + price).body()).contains("hat is not a price in GBP");
    }

    @Test
    void a_fragrance_of_the_makers_own_stands_with_the_fragrances() throws Exception {
        records().materials().add(OwnMaterial.of("harbour-mist", "fragrance")).orThrow();
        records().materials().add(OwnMaterial.of("house-red", "colourant")).orThrow();
        records().materials().add(OwnMaterial.of("house-oats", "exfoliant")).orThrow();
        deliver("", "harbour-mist|200 g", "house-red|50 g", "house-oats|50 g");
        assertThat(records().items().list())
                .extracting(item -> item.said().kind())
                .containsExactlyInAnyOrder(ItemKind.FRAGRANCE, ItemKind.COLOURANT, ItemKind.ADDITIVE);
    }
}
