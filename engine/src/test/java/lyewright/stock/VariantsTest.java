package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.material.Alkali;
import lyewright.material.Lookalike;
import lyewright.material.Tables;
import lyewright.stock.Variants.Thing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What everyday names do not keep apart. Species, parts and names are the table's, whose rows carry their sources. */
class VariantsTest {

    private static Thing keyed(String key) {
        return new Thing(Optional.of(key), key, "", "");
    }

    private static Thing called(String name, String species, String part) {
        return new Thing(Optional.empty(), name, species, part);
    }

    private static List<String> besides(Thing thing) {
        return Variants.besides(thing).stream().map(Lookalike::name).toList();
    }

    @Test
    void every_row_has_a_source_a_reason_and_others_beside_it_and_names_what_recipes_can_name() {
        MaterialNames names = MaterialNames.of(Tables.bundled());
        assertThat(Lookalike.all()).hasSizeGreaterThan(80).allSatisfy(row -> {
            assertThat(row.source()).matches("memory.*|common practice|computed");
            assertThat(row.apart()).isNotEmpty().doesNotEndWith(".");
            assertThat(Lookalike.all())
                    .filteredOn(other -> other.group().equals(row.group()))
                    .hasSizeGreaterThan(1)
                    .allSatisfy(other -> assertThat(other.apart()).isEqualTo(row.apart()));
            boolean alkali = row.key().equals(Alkali.SODIUM.key()) || row.key().equals(Alkali.POTASSIUM.key());
            if (!row.key().isEmpty() && !alkali) {
                assertThat(names.name(row.key())).as(row.key()).isPresent();
            }
        });
    }

    @Test
    void no_name_of_one_alone_is_another_s_too() {
        for (Lookalike row : Lookalike.all()) {
            for (String also : row.also()) {
                assertThat(Variants.meant(called(also, "", "")).kinds())
                        .as(also)
                        .extracting(Lookalike::name)
                        .containsOnly(row.name());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "lavender-oil, Lavandin Grosso",
        "cinnamon-leaf-oil, Cinnamon bark",
        "geranium-oil, Palmarosa",
        "palm, Palm kernel oil",
        "naoh, Potassium hydroxide",
        "naoh, Sodium bicarbonate (baking soda)",
        "olive-virgin, Olive pomace oil",
        "almond-sweet, Bitter almond oil",
        "shea-butter, Shea oil",
        "sunflower-high-oleic, Sunflower oil (high linoleic)",
        "soya, Soya wax",
        "castor, Sulphated castor oil",
        "coconut, Fractionated coconut oil"
    })
    void each_of_them_has_its_double(String key, String twin) {
        assertThat(besides(keyed(key))).contains(twin).doesNotContain(key);
        assertThat(Variants.areConfused(keyed(key), called(twin, "", ""))).isTrue();
    }

    @Test
    void a_thing_is_not_confused_with_itself_nor_with_what_has_another_name() {
        assertThat(Variants.areConfused(keyed("palm"), called("Palm oil", "", "")))
                .isFalse();
        assertThat(Variants.areConfused(keyed("palm"), keyed("coconut"))).isFalse();
        assertThat(Variants.areConfused(keyed("mango-kernel-butter"), keyed("palm")))
                .isFalse();
        assertThat(besides(keyed("mango-kernel-butter"))).isEmpty();
    }

    @Test
    void an_everyday_name_may_be_any_of_them_until_its_plant_is_said() {
        assertThat(Variants.meant(called("Chamomile", "", "")).sure()).isFalse();
        assertThat(Variants.meant(called("Chamomile", "", "")).kinds()).hasSize(2);
        Variants.Meant blue = Variants.meant(called("chamomile", "Matricaria recutita L.", ""));
        assertThat(blue.sure()).isTrue();
        assertThat(blue.kinds()).extracting(Lookalike::name).containsExactly("German chamomile");
        assertThat(Variants.meant(called("Cinnamon", "Cinnamomum zeylanicum Blume", "leaves"))
                        .kinds())
                .extracting(Lookalike::name)
                .containsExactly("Cinnamon leaf");
        assertThat(Variants.areConfused(
                        called("Chamomile", "Chamaemelum nobile", ""),
                        called("Chamomile", "Matricaria chamomilla", "")))
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "lavender-oil, Lavandula × intermedia, -, true",
                "lavender-oil, Lavandula angustifolia Mill., flowers, false",
                "lavender-oil, lavandula officinalis, -, false",
                "lavender-oil, Lavandula, -, false",
                "lavender-oil, -, -, false",
                "lavandin-grosso-oil, Lavandula x intermedia 'Grosso', -, false",
                "cinnamon-leaf-oil, Cinnamomum verum, bark, true",
                "cinnamon-leaf-oil, -, bark, true",
                "cinnamon-leaf-oil, -, leaves, false",
                "almond-sweet, Prunus dulcis, kernel, false",
                "palm, Elaeis guineensis, kernel, true",
                "palm, Elaeis guineensis, fruit, false",
                "geranium-oil, Pelargonium × asperum, -, false",
                "mango-kernel-butter, Anything at all, root, false"
            })
    void what_is_said_of_the_plant_may_speak_against_what_recipes_mean(
            String key, String species, String part, boolean other) {
        Thing thing = new Thing(Optional.of(key), "mine", species == null ? "" : species, part == null ? "" : part);
        assertThat(Variants.isOther(thing).isPresent()).isEqualTo(other);
    }
}
