package lyewright.records.people;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

/** What people may be called. */
@OnBoth
class NamesOfPeopleTest extends Workbench {

    @Test
    void a_name_of_a_hundred_letters_is_kept_and_a_longer_one_is_refused() {
        Person kept = records.people().add("ы".repeat(100), Role.HELPER).orThrow();
        assertThat(records.people().add("n".repeat(101), Role.HELPER).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.path() + ": " + problem.what())
                        .isEqualTo("name: their name is longer than 100 letters"));
        assertThat(records.people()
                        .change(kept.id(), "n".repeat(101), Role.MAKER)
                        .problems())
                .hasSize(1);
        assertThat(records.people().find(kept.id()).orElseThrow()).isEqualTo(kept);
    }
}
