package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A superfat as one maker says it to another. */
class SuperfatSaidTest {

    @ParameterizedTest
    @CsvSource({
        "0.05, a tenth of a point",
        "0.3, a quarter of a point",
        "0.5, half a point",
        "0.7, half a point",
        "0.8, a point",
        "1.2, a point",
        "1.6, a point and a half",
        "2.1, 2 points",
        "2.4, 2.5 points",
        "2.6, 2.5 points",
        "11.9, 12 points"
    })
    void how_far_off_it_may_be_is_said_no_finer_than_half_a_point(double half, String said) {
        assertThat(SuperfatSaid.giveOrTake(half)).isEqualTo("give or take " + said);
    }

    @ParameterizedTest
    @CsvSource({"6.2, a", "8.0, an", "8.5, an", "80.1, an", "11.0, an", "18.2, an", "1.8, a", "10.0, a", "1.1, a"})
    void the_article_goes_with_the_number_as_read(String figure, String article) {
        assertThat(SuperfatSaid.article(figure)).isEqualTo(article);
    }
}
