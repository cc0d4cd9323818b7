package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Caution.Level;
import lyewright.makingsheet.CautionChange.Change;
import org.junit.jupiter.api.Test;

/** Cautions that come and go. */
class CautionChangeTest {

    private static Caution caution(String id, Level level, String sentence, Object... figures) {
        return new Caution(id, level, sentence, "Look.", "the test", List.of(figures));
    }

    private static Caution lye(Level level, double percent) {
        return caution("lye-strong", level, "The lye is {} %.", Caution.tenths(percent));
    }

    private static Caution memory(String oil) {
        return caution("from-memory", Level.NOTE, "The value of {} is memory.", oil);
    }

    private static List<Change> changes(List<Caution> a, List<Caution> b) {
        return CautionChange.of(a, b).stream().map(CautionChange::change).toList();
    }

    @Test
    void only_in_one_it_comes_or_goes() {
        assertThat(changes(List.of(), List.of(memory("tallow")))).containsExactly(Change.COMES);
        assertThat(changes(List.of(memory("tallow")), List.of())).containsExactly(Change.GOES);
        assertThat(changes(List.of(), List.of())).isEmpty();
    }

    @Test
    void with_other_figures_it_is_the_same_caution() {
        List<CautionChange> changes = CautionChange.of(List.of(lye(Level.CARE, 44.5)), List.of(lye(Level.CARE, -3)));
        assertThat(changes).extracting(CautionChange::change).containsExactly(Change.STAYS);
        assertThat(changes.get(0).caution().text()).isEqualTo("The lye is -3.0 %.");
    }

    @Test
    void it_may_become_graver_or_milder() {
        assertThat(changes(List.of(lye(Level.NOTE, 40)), List.of(lye(Level.STOP, 55))))
                .containsExactly(Change.GRAVER);
        assertThat(changes(List.of(lye(Level.STOP, 55)), List.of(lye(Level.CARE, 45))))
                .containsExactly(Change.MILDER);
    }

    @Test
    void of_another_oil_it_reads_otherwise() {
        assertThat(changes(List.of(memory("tallow"), memory("lard")), List.of(memory("lard"), memory("olive"))))
                .containsExactly(Change.STAYS, Change.CHANGES);
        assertThat(changes(List.of(memory("tallow")), List.of(lye(Level.NOTE, 40))))
                .containsExactly(Change.COMES, Change.GOES);
    }

    /** Two portions, each with its own: the one that is alike to the letter is taken before the one that is nearly. */
    @Test
    void each_is_paired_with_its_like_and_none_twice() {
        List<CautionChange> changes = CautionChange.of(
                List.of(lye(Level.NOTE, 41), lye(Level.NOTE, 42)),
                List.of(lye(Level.NOTE, 40), lye(Level.NOTE, 41), lye(Level.NOTE, 43)));
        assertThat(changes).extracting(CautionChange::change).containsExactly(Change.STAYS, Change.STAYS, Change.COMES);
        assertThat(changes.get(1).a().orElseThrow().text()).isEqualTo("The lye is 41.0 %.");
        assertThat(changes.get(0).a().orElseThrow().text()).isEqualTo("The lye is 42.0 %.");
    }

    @Test
    void a_change_of_nothing_is_our_own_fault() {
        CautionChange nothing = new CautionChange(Optional.empty(), Optional.empty());
        assertThatThrownBy(nothing::caution).isInstanceOf(IllegalStateException.class);
    }
}
