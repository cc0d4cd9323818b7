package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {

    @ParameterizedTest(name = "'{0}'")
    @CsvSource({
        "Olive oil (virgin), olive oil (virgin)",
        "'ROE (rosemary oleoresin), other name', 'ROE (rosemary oleoresin), other name'",
        "house-olive, house-olive",
        "Sea Breeze fragrance oil, Sea Breeze fragrance oil",
        "Dead Sea type salt, Dead Sea type salt",
        "Illipe butter (Borneo tallow), illipe butter (Borneo tallow)",
        "Vitamin E, vitamin E",
        "Öl, öl",
        "A, A",
        "'', ''",
        "椿油, 椿油"
    })
    void a_name_in_a_sentence_begins_small_unless_it_is_in_capitals(String name, String inSentence) {
        assertThat(Names.inSentence(name)).isEqualTo(inSentence);
    }
}
