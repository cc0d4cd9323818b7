package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import lyewright.formula.NotebookText.Offer;
import lyewright.formula.NotebookText.Trouble;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that a maker writes for materials; which of them mean one thing is common practice. */
class EverydayNamesTest {

    private static final String WHOLE = "Trial\nbabassu 350 g\nsoda 45 g\nwater 120 g\n";

    private static Formula formula(String line) {
        NotebookText.Read read = NotebookText.read(WHOLE + line, Tables.bundled());
        assertThat(read.troubles()).as(line).isEmpty();
        return read.formula().orElseThrow();
    }

    private static Trouble trouble(String line) {
        List<Trouble> troubles =
                NotebookText.read(WHOLE + line, Tables.bundled()).troubles();
        assertThat(troubles).as(line).hasSize(1);
        return troubles.get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "rolled oats, oatmeal",
        "porridge oats, oatmeal",
        "ground oats, colloidal-oats",
        "colloidal oatmeal, colloidal-oats",
        "white sugar, sugar",
        "organic honey, honey",
        "Himalayan salt, pink-salt",
        "glycerine, glycerin",
        "vegetable glycerin, glycerin",
        "TD, titanium-dioxide",
        "luffa, loofah",
        "poppyseed, poppy-seed",
        "corn starch, maize-starch",
        "bicarb, sodium-bicarbonate",
        "tinned coconut milk, coconut-milk",
        "powdered goat milk, goat-milk-powder",
        "soy milk, soya-milk",
        "stout, beer"
    })
    void an_everyday_word_means_one_addition(String typed, String key) {
        assertThat(formula(typed + " 10 g at trace").additions())
                .extracting(Addition::of)
                .containsExactly(key);
    }

    @ParameterizedTest
    @CsvSource({
        "beef fat, tallow",
        "bees wax, beeswax",
        "grape seed oil, grapeseed",
        "flax oil, flaxseed",
        "HO sunflower, sunflower-high-oleic",
        "PKO, palm-kernel",
        "RBO, rice-bran",
        "wheatgerm oil, wheat-germ",
        "ricinus oil, castor"
    })
    void an_everyday_word_means_one_oil(String typed, String key) {
        assertThat(formula(typed + " 50 g").oils()).extracting(OilLine::key).containsExactly("babassu", key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "oats | Oatmeal, coarse or rolled ; Colloidal oats (oat flour) ; Oat bran ; Oat milk (home or shop)",
                "charcoal | Activated charcoal",
                "bamboo charcoal | Activated charcoal",
                "eggs | Egg yolk, fresh",
                "suet | Tallow (beef)",
                "washing soda | Sodium carbonate (soda ash, anhydrous)",
                "aloe vera gel | Aloe vera juice",
                "brown sugar | Sugar (sucrose)",
                "ground pumice | Pumice, fine powder",
                "RBD palm | Palm oil",
                "palm kernel flakes | Palm kernel oil",
                "virgin coconut oil | Coconut oil",
                "light olive oil | Olive oil (virgin) ; Olive oil (refined) ; Olive pomace oil",
                "soy | Soya bean oil ; Soya milk"
            })
    void a_word_that_is_not_sure_is_asked_about(String typed, String labels) {
        assertThat(trouble(typed + " 10 g").offers()).extracting(Offer::label).containsExactly(labels.split(" ; "));
    }

    @Test
    void a_coloured_mica_is_asked_for_by_its_kind() {
        assertThat(trouble("green mica 2 g").offers())
                .hasSize(4)
                .allSatisfy(offer -> assertThat(offer.label()).containsIgnoringCase("mica"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fragrance", "fragrance oil", "FO", "EO", "essential oils", "perfume", "scent"})
    void a_fragrance_that_is_not_named_is_asked_for(String typed) {
        Trouble trouble = trouble(typed + " 15 g");
        assertThat(trouble.problem().what()).isEqualTo("'" + typed + "' does not say which");
        assertThat(trouble.problem().remedy()).contains("lavender essential oil", "a material of your own");
        assertThat(trouble.offers()).isEmpty();
        assertThat(trouble.unknown()).contains(typed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"vegetable oil", "shortening", "vegetable shortening", "margarine"})
    void a_mixture_is_asked_for_by_its_label(String typed) {
        Trouble trouble = trouble(typed + " 100 g");
        assertThat(trouble.problem().what()).endsWith("is a mixture, and no two makers' are alike");
        assertThat(trouble.problem().remedy()).contains("the oils that its label names");
    }

    /** Caustic is one letter away from nothing a maker pours. */
    @ParameterizedTest
    @ValueSource(strings = {"vodka", "MCT", "cola", "nah", "ohk", "pot", "ash"})
    void an_alkali_is_offered_only_to_whoever_nearly_wrote_it(String typed) {
        assertThat(NotebookText.read(WHOLE + typed + " 50 g", Tables.bundled()).troubles().stream()
                        .flatMap(t -> t.offers().stream()))
                .noneMatch(offer -> MaterialNames.alkali(offer.label()).isPresent());
    }

    /** Every name that is said to mean a material means one that the tables have. */
    @Test
    void every_everyday_name_leads_to_a_material_of_the_tables() {
        Tables tables = Tables.bundled();
        assertThat(EverydayNames.all())
                .hasSizeGreaterThan(60)
                .allSatisfy(key -> assertThat(tables.has(key)).as(key).isTrue());
    }

    @Test
    void what_the_tables_do_not_have_is_never_taken_for_something_else() {
        Stream.of("fractionated coconut oil", "MCT oil", "goose fat", "soy wax", "pine tar", "rosehip oil", "emu oil")
                .forEach(typed -> assertThat(NotebookText.read(WHOLE + typed + " 50 g", Tables.bundled())
                                .formula())
                        .as(typed)
                        .isEmpty());
    }
}
