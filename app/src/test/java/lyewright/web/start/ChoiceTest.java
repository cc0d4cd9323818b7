package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a line may have meant, taken with one click. */
class ChoiceTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "olive oil 350 g",
                "350 g  olive  oil",
                "olive\u00a0oil 350 g",
                "castro 25 g",
                "coconot oil 350 g",
                "wtaer 100 g"
            })
    void each_choice_makes_a_line_that_reads(String line) {
        List<LineTrouble> troubles = NotebookReading.of("Trial\n" + line, 0).troubles();
        assertThat(troubles).as(line).hasSize(1);
        assertThat(troubles.get(0).choices()).as(line).isNotEmpty();
        for (Choice choice : troubles.get(0).choices()) {
            assertThat(NotebookReading.of("Trial\n" + choice.line(), 0).troubles())
                    .as(choice.line())
                    .isEmpty();
        }
    }

    @Test
    void the_olive_oils_are_offered_by_their_names() {
        LineTrouble trouble =
                NotebookReading.of("Trial\nolive oil 350 g", 0).troubles().get(0);
        assertThat(trouble.sentence()).isEqualTo("Which 'olive oil' is it?");
        assertThat(trouble.choices())
                .extracting(Choice::label)
                .containsExactly("Olive oil (virgin)", "Olive oil (refined)", "Olive pomace oil");
        assertThat(trouble.choices().get(0).line()).isEqualTo("olive-virgin 350 g");
    }

    @Test
    void what_nothing_is_near_to_has_no_choices() {
        LineTrouble trouble =
                NotebookReading.of("Trial\nqqqqqqqq 350 g", 0).troubles().get(0);
        assertThat(trouble.choices()).isEmpty();
        assertThat(trouble.sentence()).contains("'qqqqqqqq' is not known");
    }
}
