package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.formula.MaterialNames.Place;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialNamesTest {

    private static final Tables TABLES = Tables.bundled();
    private static final MaterialNames NAMES = MaterialNames.of(TABLES);

    private static String refusal(MaterialNames names, String typed, Place place) {
        Outcome<String> key = names.key(typed, place);
        assertThat(key.problems()).as(typed).hasSize(1);
        return key.problems().get(0).sentence();
    }

    /** The maker's own, by key and kind. */
    private static MaterialNames with(String... keysAndKinds) {
        StringBuilder file = new StringBuilder("""
                recipe: T
                oils: {coconut: 100 %}
                alkali: sodium
                superfat: 5 %
                water: 33 % lye
                materials:
                """);
        for (int i = 0; i < keysAndKinds.length; i += 2) {
            file.append("  ")
                    .append(keysAndKinds[i])
                    .append(": {")
                    .append(keysAndKinds[i + 1])
                    .append("}\n");
        }
        FormulaFile.Read read = FormulaFile.read(file.toString());
        assertThat(read.problems()).isEmpty();
        return NAMES.with(read.formula().orElseThrow().materials());
    }

    @Test
    void every_key_and_every_common_name_means_its_own_material() {
        for (Oil oil : TABLES.oils()) {
            assertThat(NAMES.key(oil.key(), Place.OILS)).isEqualTo(Outcome.ok(oil.key()));
            assertThat(NAMES.key(oil.name(), Place.OILS)).as(oil.name()).isEqualTo(Outcome.ok(oil.key()));
            assertThat(NAMES.name(oil.key())).contains(oil.name());
        }
        for (Additive additive : TABLES.additives()) {
            assertThat(NAMES.key(additive.key(), Place.ADDITIONS)).isEqualTo(Outcome.ok(additive.key()));
            assertThat(NAMES.key(additive.name(), Place.ADDITIONS))
                    .as(additive.name())
                    .isEqualTo(Outcome.ok(additive.key()));
        }
        assertThat(NAMES.all(Place.OILS)).hasSameSizeAs(TABLES.oils());
        assertThat(NAMES.all(Place.ADDITIONS)).hasSameSizeAs(TABLES.additives());
    }

    @ParameterizedTest
    @CsvSource({"cocoa, OILS, cocoa-butter", "cocoa, ADDITIONS, cocoa-powder", "Coconut, OILS, coconut"})
    void what_stands_among_the_oils_is_an_oil(String typed, Place place, String key) {
        assertThat(NAMES.key(typed, place)).isEqualTo(Outcome.ok(key));
    }

    @Test
    void what_may_be_several_things_is_refused_with_their_names() {
        assertThat(refusal(NAMES, "olive", Place.OILS))
                .isEqualTo("'olive' may be olive oil (virgin), olive oil (refined) or olive pomace oil; write one");
        assertThat(refusal(NAMES, "castr", Place.OILS)).isEqualTo("'castr' is not known; did you mean castor oil?");
        assertThat(refusal(NAMES, "castor oil", Place.ADDITIONS))
                .isEqualTo(
                        "'castor oil', castor, is not an addition; list it under oils, so that its alkali is counted");
    }

    @Test
    void the_makers_own_go_before_the_tables() {
        MaterialNames own = with(
                "house olive", "kind: oil, saponification value: 189.5",
                "coconut", "saponification value: 256.1",
                "fifty", "kind: lye, strength: 50 % sodium",
                "beach sand", "kind: exfoliant");

        assertThat(own.key("House Olive oil", Place.OILS)).isEqualTo(Outcome.ok("house olive"));
        assertThat(own.key("beach sand", Place.ADDITIONS)).isEqualTo(Outcome.ok("beach sand"));
        assertThat(own.key("Coconut oil", Place.OILS)).isEqualTo(Outcome.ok("coconut"));
        assertThat(own.own("coconut")).isPresent();
        assertThat(own.own("lard")).isEmpty();
        assertThat(refusal(own, "hous olive", Place.OILS)).endsWith("did you mean house olive?");
        assertThat(own.all(Place.OILS).get(0).key()).isEqualTo("house olive");
        assertThat(own.all(Place.ADDITIONS).stream().map(MaterialNames.Named::key))
                .contains("beach sand")
                .doesNotContain("fifty", "house olive");
        assertThat(own.with(List.of())).isSameAs(own);
    }

    @ParameterizedTest
    @CsvSource({
        "almond oil (house), almond oil, almond-sweet",
        "rapeseed oil (house), rapeseed, rapeseed-low-erucic",
    })
    void a_name_of_the_tables_is_not_taken_over_by_ones_own_with_something_in_brackets(
            String key, String typed, String known) {
        assertThat(NAMES.key(typed, Place.OILS)).isEqualTo(Outcome.ok(known));
        MaterialNames own = NAMES.with(List.of(OwnMaterial.of(key, OwnMaterial.OILS)));
        assertThat(refusal(own, typed, Place.OILS)).contains("may be " + key + " or ");
        assertThat(own.key(key, Place.OILS)).isEqualTo(Outcome.ok(key));
        assertThat(own.key(known, Place.OILS)).isEqualTo(Outcome.ok(known));
    }

    @ParameterizedTest
    @CsvSource({
        "hard oils, false, false, 0",
        "palm free, false, false, 0",
        "coconut, true, true, 1",
        "olive oil, false, true, 3",
        "liquid oils, false, false, 2",
    })
    void a_name_is_read_as_one_thing_or_may_be_one_of_several_or_means_nothing(
            String typed, boolean one, boolean called, int several) {
        MaterialNames.Reading reading = NAMES.reading(typed);
        assertThat(reading.one()).isEqualTo(one);
        assertThat(reading.called()).isEqualTo(called);
        assertThat(reading.materials()).hasSize(several);
    }

    @Test
    void an_alkali_goes_by_its_names_of_the_trade() {
        assertThat(MaterialNames.alkali("Caustic soda")).contains(Alkali.SODIUM);
        assertThat(MaterialNames.alkali("baking soda")).isEmpty();
    }

    @Test
    void names_of_the_same_tables_are_taken_apart_once() {
        assertThat(NotebookNames.of(TABLES)).isSameAs(NotebookNames.of(TABLES));
    }
}
