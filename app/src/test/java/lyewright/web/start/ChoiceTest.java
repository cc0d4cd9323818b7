package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.formula.MaterialNames;
import lyewright.material.Tables;
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
                "oilve oil 350 g",
                "goat's milk 200 g",
                "chamomile tea 200 g",
                "castor 1,000 g",
                "castor 12 oz (340 g)",
                "castor 250",
                "castor 20 gr",
                "wtaer 100 g"
            })
    void each_choice_makes_a_line_that_reads(String line) {
        List<LineTrouble> troubles = reading("Trial\n" + line).troubles();
        assertThat(troubles).as(line).hasSize(1);
        assertThat(troubles.get(0).choices()).as(line).isNotEmpty();
        for (Choice choice : troubles.get(0).choices()) {
            assertThat(reading("Trial\n" + choice.line()).troubles())
                    .as(choice.line())
                    .isEmpty();
        }
    }

    @Test
    void the_olive_oils_are_offered_by_their_names() {
        LineTrouble trouble = reading("Trial\nolive oil 350 g").troubles().get(0);
        assertThat(trouble.sentence()).isEqualTo("Which 'olive oil' is it?");
        assertThat(trouble.choices())
                .extracting(Choice::label)
                .containsExactly("Olive oil (virgin)", "Olive oil (refined)", "Olive pomace oil");
        assertThat(trouble.choices().get(0).line()).isEqualTo("olive oil (virgin) 350 g");
    }

    private static NotebookReading reading(String text) {
        return NotebookReading.of(text, 0, MaterialNames.of(Tables.bundled()));
    }

    @Test
    void questions_are_asked_in_plain_words() {
        assertThat(reading("Trial\ngoat's milk 200 g").troubles())
                .extracting(LineTrouble::sentence)
                .containsExactly("When does 'goat's milk' go in?");
        assertThat(reading("Trial\ncastor 1,000 g").troubles())
                .extracting(LineTrouble::sentence)
                .containsExactly("'1,000 g' may be 1000 g or 1 g.");
        assertThat(reading("Trial\noilve oil 9 g").troubles())
                .extracting(LineTrouble::sentence)
                .containsExactly("'oilve oil' is not known. Did you mean one of these?");
    }

    @Test
    void what_nothing_is_near_to_has_no_choices() {
        LineTrouble trouble = reading("Trial\nqqqqqqqq 350 g").troubles().get(0);
        assertThat(trouble.choices()).isEmpty();
        assertThat(trouble.sentence()).contains("'qqqqqqqq' is not known");
    }
}
