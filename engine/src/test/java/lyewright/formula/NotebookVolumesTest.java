package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.formula.NotebookText.Offer;
import lyewright.formula.NotebookText.Trouble;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Spoons, cups and fluid ounces are asked about: what they weigh is never taken for granted. */
class NotebookVolumesTest {

    private static final String WHOLE = "Trial\nlard 350 g\nsoda 45 g\n";

    private static Trouble trouble(String text) {
        List<Trouble> troubles = NotebookText.read(text, Tables.bundled()).troubles();
        assertThat(troubles).as(text).hasSize(1);
        return troubles.get(0);
    }

    /** A US gallon is 231 cubic inches of 16.387064 ml, an imperial one 4546.09 ml; a millilitre of water weighs a gram. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "water 8 fl oz | water 237 g ; water 227 g ; water 8 oz",
                "8 fl. oz water | 237 g water ; 227 g water ; 8 oz water",
                "water 1/2 cup | water 118 g ; water 125 g",
                "1 pint of water | 473 g of water ; 568 g of water",
                "water 0.1 gallons | water 379 g ; water 455 g",
                "water 6 tbsp | water 90 g",
                "6 T water | 90 g water"
            })
    void water_by_volume_is_offered_as_what_it_weighs(String line, String offered) {
        assertThat(trouble(WHOLE + line).offers()).extracting(Offer::line).containsExactly(offered.split(" ; "));
    }

    @Test
    void a_notebook_in_ounces_is_offered_ounces() {
        assertThat(trouble("Trial\nlard 12 oz\nsoda 1.5 oz\nwater 4 fl oz").offers())
                .containsExactly(
                        new Offer("4.17 oz, in US fluid ounces", "water 4.17 oz"),
                        new Offer("4.01 oz, in imperial fluid ounces", "water 4.01 oz"),
                        new Offer("4 oz, on a balance", "water 4 oz"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "honey 1 fl oz | honey 30 ml ; honey 28 ml ; honey 1 oz",
                "lavender EO 2 tsp | lavender EO 10 ml",
                "honey 1 tbsp | honey 15 ml",
                "beer 1 cup at trace | beer 237 ml at trace ; beer 250 ml at trace"
            })
    void what_pours_is_offered_in_millilitres(String line, String offered) {
        Trouble trouble = trouble(WHOLE + "water 120 g\n" + line);
        assertThat(trouble.offers()).extracting(Offer::line).containsExactly(offered.split(" ; "));
        for (Offer offer : trouble.offers()) {
            String text = WHOLE + "water 120 g\n" + offer.line();
            assertThat(NotebookText.read(text, Tables.bundled()).formula())
                    .as(text)
                    .isPresent();
        }
    }

    @Test
    void an_oil_by_volume_is_offered_as_what_it_weighs_when_liquid() {
        double density = Tables.bundled().oil("castor").orElseThrow().density().at(20);
        String grams = String.format("%.0f", 200 * density);
        assertThat(trouble(WHOLE + "water 120 g\ncastor 200 ml").offers())
                .containsExactly(new Offer(grams + " g, by its density", "castor " + grams + " g"));
        assertThat(trouble(WHOLE + "water 120 g\ncastor 1 cup").offers()).hasSize(2);
    }

    /** A spoon of powder has air in it, a drop is any size, alkali is never measured by volume. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "kaolin 1 tsp",
                "2 heaped tsp kaolin",
                "honey 1 tsp per lb of oils",
                "lavender 30 drops",
                "kaolin 2 scoops",
                "a pinch of table salt",
                "half a cup of honey",
                "1 handful rose petals"
            })
    void what_nobody_can_tell_is_asked_for_as_a_weight(String line) {
        Trouble trouble = trouble(WHOLE + "water 120 g\n" + line);
        assertThat(trouble.offers()).isEmpty();
        assertThat(trouble.problem().remedy()).isEqualTo("weigh it once, and write g or oz");
    }

    @Test
    void alkali_by_volume_is_refused_without_an_offer() {
        for (String line : List.of("soda 1 cup", "soda 100 ml", "soda 4 fl oz")) {
            List<Trouble> troubles = NotebookText.read("T\nlard 350 g\nwater 120 g\n" + line, Tables.bundled())
                    .troubles();
            assertThat(troubles)
                    .as(line)
                    .isNotEmpty()
                    .allSatisfy(t -> assertThat(t.offers()).isEmpty());
        }
    }
}
