package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class InkRulesTest {

    private static final InkRules RULES = new InkRules("""
            text { fill: #000; }
            .a, .b { fill: #fff; stroke: #000 }
            .b { stroke-width: 2; stroke: #777; }
            """);

    @Test
    void a_rule_holds_for_each_of_its_names_and_a_later_one_goes_before() {
        assertThat(RULES.of("path", "a")).containsEntry("fill", "#fff").containsEntry("stroke", "#000");
        assertThat(RULES.of("path", "c b"))
                .containsEntry("fill", "#fff")
                .containsEntry("stroke", "#777")
                .containsEntry("stroke-width", "2");
    }

    @Test
    void an_element_has_its_own_look_and_nothing_is_known_of_others() {
        assertThat(RULES.of("text", "z")).containsOnlyKeys("fill");
        assertThat(RULES.of("rect", "")).isEmpty();
        assertThat(RULES.of("b", "text")).isEmpty();
    }
}
