package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.stock.Variants.Thing;
import org.junit.jupiter.api.Test;

/** What is easily taken for something else, in words. */
class VariantWordsTest {

    @Test
    void a_thing_of_two_groups_says_both() {
        assertThat(VariantWords.of(new Thing(Optional.of("naoh"), "Caustic soda", "", "")))
                .containsExactly(
                        "Not to be taken for Potassium hydroxide: for the same soap it takes 1.4 times as much potassium"
                                + " hydroxide, and the soap is soft.",
                        "Not to be taken for Sodium carbonate (soda ash, anhydrous) or Sodium bicarbonate (baking soda): only"
                                + " caustic soda makes soap of oils; taken for another of these it burns.");
    }

    @Test
    void an_everyday_name_is_asked_about() {
        assertThat(VariantWords.pressing(new Thing(Optional.empty(), "Chamomile", "", "")))
                .containsExactly("Chamomile may be Roman chamomile (Chamaemelum nobile, flower) or German chamomile"
                        + " (Matricaria chamomilla, flower): two plants; the German one is deep blue. Say which plant it is,"
                        + " as on its label.");
    }

    @Test
    void a_plant_that_recipes_do_not_mean_is_named_with_the_one_they_do() {
        assertThat(VariantWords.other(new Thing(Optional.of("lavender-oil"), "Lavender", "Lavandula x intermedia", "")))
                .contains(
                        "Recipes mean Lavandula angustifolia, flowering tops, by that name; Lavender here is said to be"
                                + " Lavandula × intermedia.");
        assertThat(VariantWords.other(new Thing(Optional.of("cinnamon-leaf-oil"), "Cinnamon", "", "bark")))
                .contains("Recipes mean Cinnamomum verum, leaf, by that name; Cinnamon here is said to be the bark.");
    }

    @Test
    void of_most_things_there_is_nothing_to_say() {
        assertThat(List.of("kaolin", "honey", "mango-kernel-butter"))
                .allSatisfy(key -> assertThat(VariantWords.of(new Thing(Optional.of(key), key, "", "")))
                        .isEmpty());
    }
}
