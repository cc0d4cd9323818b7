package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.measure.Problem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names for what is made here: good ones, and those that mean something else. */
class MadeNameTest {

    private static final MadeName NAMES = new MadeName(List.of(), List.of(), List.of());

    private static Optional<Problem> taken(String name, String kind) {
        return NAMES.taken(OwnMaterial.of(name, kind));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hard oils",
                "hard-oils",
                "my hard oils 2026",
                "soft oils",
                "base oils",
                "liquid oils",
                "house-blend",
                "winter blend",
                "coconut blend",
                "olive and coconut",
                "my rice bran oil",
                "butter mix",
                "palm free",
                "masterbatch",
                "castile base",
            })
    void oils_may_be_called_so(String name) {
        assertThat(taken(name, OwnMaterial.OILS)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "stock-lye",
                "stock lye 2026",
                "strong lye",
                "lye 33",
                "potash lye",
                "coconut lye",
                "hard oils lye"
            })
    void lye_may_be_called_so(String name) {
        assertThat(taken(name, OwnMaterial.LYE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "coconut, Coconut oil",
        "Coconut Oil, Coconut oil",
        "coconut-oil, Coconut oil",
        "lard, Lard",
        "rapeseed, Rapeseed oil",
        "kaolin, White clay",
        "caustic soda, sodium hydroxide",
        "lye, sodium hydroxide",
        "naoh, sodium hydroxide",
        "potash, potassium",
    })
    void nothing_is_called_what_means_one_known_thing(String name, String means) {
        for (String kind : List.of(OwnMaterial.OILS, OwnMaterial.LYE)) {
            assertThat(taken(name, kind).orElseThrow().what())
                    .as(kind)
                    .contains("'" + name + "' means ")
                    .containsIgnoringCase(means);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"butter", "liquid oils", "clay", "mica"})
    void lye_is_not_called_what_may_mean_one_of_several(String name) {
        assertThat(taken(name, OwnMaterial.LYE).orElseThrow().what()).contains("'" + name + "' may mean ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"clay", "mica", "salt", "olive oil", "Olive"})
    void oils_are_not_called_what_several_are_called_nor_what_may_mean_no_oil(String name) {
        assertThat(taken(name, OwnMaterial.OILS).orElseThrow().what()).contains("'" + name + "' may mean ");
    }
}
