package lyewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.Test;

/** An application that is killed while it saves: what it said was saved, is saved. */
@OnBoth
class KilledTest extends Workbench {

    private static final int KILLINGS = 10;
    private static final int SAVES_BEFORE_EACH = 5;

    @Test
    void fifty_recipes_that_were_said_to_be_saved_are_there_after_ten_killings()
            throws IOException, InterruptedException {
        records.close();
        List<String> saved = new ArrayList<>();
        for (int i = 0; i < KILLINGS; i++) {
            try (Child child = Child.start(place)) {
                for (int n = 0; n < SAVES_BEFORE_EACH; n++) {
                    saved.add(child.next());
                }
                // it goes on saving, and the killing meets it somewhere in that
                saved.addAll(child.kill());
            }
        }

        records = Records.open(place, clock).orThrow();

        assertThat(saved)
                .hasSizeGreaterThanOrEqualTo(KILLINGS * SAVES_BEFORE_EACH)
                .doesNotHaveDuplicates();
        for (String id : saved) {
            assertThat(records.recipes().find(id)).map(Recipe::name).contains("Saved");
            assertThat(records.recipes()
                            .find(id)
                            .orElseThrow()
                            .newest()
                            .formula()
                            .notes())
                    .hasSize(5_000);
        }
        long total = records.recipes().list(Search.all(1, 1)).total();
        // at most one save of each killing was done but could not be said any more
        assertThat(total).isBetween((long) saved.size(), (long) saved.size() + KILLINGS);
        assertThat(Tinkering.texts(place, "SELECT count(*) FROM recipe_version"))
                .containsExactly(Long.toString(total));
    }
}
