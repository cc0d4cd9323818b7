package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;

class SentencesTest {

    @Test
    void a_clause_begins_with_a_capital_of_any_script_and_ends_with_a_stop() {
        assertThat(Sentences.whole("the jug is empty")).isEqualTo("The jug is empty.");
        assertThat(Sentences.whole("масса велика")).isEqualTo("Масса велика.");
        assertThat(Sentences.whole("\ud801\udc28 is a letter")).isEqualTo("\ud801\udc00 is a letter.");
    }

    @Test
    void what_ends_as_a_sentence_gets_no_second_stop_and_nothing_stays_nothing() {
        assertThat(Sentences.whole("did you mean olive?")).isEqualTo("Did you mean olive?");
        assertThat(Sentences.whole("")).isEmpty();
    }

    @Test
    void a_problem_is_two_sentences() {
        assertThat(Sentences.two(new Problem("", "it has no name", "write one")))
                .isEqualTo("It has no name. Write one.");
    }
}
