package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestKeyTest {

    private static final List<String> KEYS =
            List.of("coconut", "cocoa-butter", "olive-virgin", "olive-refined", "olive-pomace", "castor", "camellia");

    @Test
    void a_letter_too_many_is_understood() {
        assertThat(NearestKey.among("coconutt", KEYS)).first().isEqualTo("coconut");
    }

    @Test
    void a_letter_too_few_is_understood() {
        assertThat(NearestKey.among("cocnut", KEYS)).first().isEqualTo("coconut");
    }

    @Test
    void two_letters_the_wrong_way_round_are_understood() {
        assertThat(NearestKey.among("catsor", KEYS)).first().isEqualTo("castor");
    }

    @Test
    void the_beginning_of_a_compound_word_offers_all_that_begin_so_at_most_three() {
        assertThat(NearestKey.among("olive", KEYS)).containsExactly("olive-pomace", "olive-refined", "olive-virgin");
    }

    @Test
    void the_end_of_a_compound_word_is_understood() {
        assertThat(NearestKey.among("pomace", KEYS)).containsExactly("olive-pomace");
    }

    @Test
    void a_word_that_goes_on_after_a_key_is_understood() {
        assertThat(NearestKey.among("castor-cold-pressed-oil", KEYS)).containsExactly("castor");
    }

    @Test
    void two_letters_alone_stand_for_no_compound_word() {
        assertThat(NearestKey.among("sa", List.of("sa-lt", "sal"))).containsExactly("sal");
    }

    @Test
    void nothing_near_offers_nothing() {
        assertThat(NearestKey.among("snowflake", KEYS)).isEmpty();
        assertThat(NearestKey.among("", KEYS)).isEmpty();
    }

    @Test
    void the_nearest_comes_first_and_equals_by_alphabet() {
        assertThat(NearestKey.among("aaaa", List.of("aabb", "aaac", "aaab", "bbbb")))
                .containsExactly("aaab", "aaac", "aabb");
    }

    @Test
    void a_word_of_more_than_sixty_letters_is_not_looked_at() {
        String long60 = "x".repeat(60);
        assertThat(NearestKey.among(long60, List.of(long60))).containsExactly(long60);
        assertThat(NearestKey.among(long60 + "x", List.of(long60))).isEmpty();
    }
}
