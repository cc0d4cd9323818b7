package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A form that comes back takes the browser to the first field that is wrong, also without scripts. */
class AnswersTest {

    private static final String WRONG = "<input name=\"b\" value=\"a > b\" aria-invalid=\"true\">";

    @Test
    void the_first_field_that_is_wrong_is_gone_on_in() {
        assertThat(Answers.goingToTheFirstFault("<p><input name=\"a\">" + WRONG + WRONG))
                .isEqualTo("<p><input name=\"a\">" + WRONG.replace("<input", "<input autofocus") + WRONG);
        assertThat(Answers.goingToTheFirstFault("<select aria-invalid=\"true\"><option></select>"))
                .isEqualTo("<select autofocus aria-invalid=\"true\"><option></select>");
    }

    @Test
    void a_page_that_says_itself_where_to_go_on_stays_as_it_is() {
        String page = WRONG + "<textarea name=\"c\" autofocus></textarea>";
        assertThat(Answers.goingToTheFirstFault(page)).isEqualTo(page);
    }

    @Test
    void what_somebody_typed_marks_no_field() {
        String page = "<textarea>&lt;input aria-invalid=\"true\"> " + "x\"".repeat(50_000) + "</textarea>"
                + "<input value=\" aria-invalid=&#34;true&#34;\">";
        assertThat(Answers.goingToTheFirstFault(page)).isEqualTo(page);
    }
}
