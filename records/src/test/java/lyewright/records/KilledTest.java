package lyewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.Search;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.Stocked;
import lyewright.stock.LotStatus;
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

    @Test
    void what_was_said_to_be_taken_is_in_the_ledger_once_after_five_killings()
            throws IOException, InterruptedException {
        Stocked.fill(records);
        KeptLot lot = records.lots().findCode("26-0001").orElseThrow();
        records.lots()
                .change(records.author(), lot.id(), lot.said().withStatus(LotStatus.USABLE))
                .orThrow();
        long before = records.ledger().head().number();
        records.close();
        List<String> said = new ArrayList<>();
        for (int i = 0; i < KILLINGS / 2; i++) {
            try (Child child = Child.taking(place, lot.id())) {
                for (int n = 0; n < SAVES_BEFORE_EACH; n++) {
                    said.add(child.next());
                }
                said.addAll(child.kill());
            }
        }

        records = Records.open(place, clock).orThrow();

        List<String> kept = records.lots().moves(lot.id()).stream()
                .map(move -> move.told().purpose())
                .toList();
        assertThat(said).hasSizeGreaterThanOrEqualTo(KILLINGS / 2 * SAVES_BEFORE_EACH);
        assertThat(kept).containsAll(said);
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
        long after = records.ledger().head().number();
        // at most one move of each killing was done but could not be said any more
        assertThat(after - before).isBetween((long) said.size(), (long) said.size() + KILLINGS / 2);
        long left = records.lots().find(lot.id()).orElseThrow().left();
        assertThat(left).isEqualTo(lot.left() - (after - before) * Child.TAKEN);
        // whoever got no answer sends the same form again, and whoever got one as well
        for (String token :
                kept.stream().filter(purpose -> purpose.length() == 36).toList()) {
            assertThat(Child.take(records, token, lot.id()).orThrow()).isEmpty();
        }
        assertThat(records.ledger().head().number()).isEqualTo(after);
        assertThat(records.lots().find(lot.id()).orElseThrow().left()).isEqualTo(left);
    }
}
