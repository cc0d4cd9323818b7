package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Moulds;
import org.junit.jupiter.api.Test;

/** A batch that was not asked for by its mould, in a mould. */
class MouldFitsTest {

    private static final Mould LITRE = Moulds.boxOf(1000);

    private static AFormula bar() {
        return AFormula.ofOils("coconut", "30 %", "olive-virgin", "60 %", "castor", "rest")
                .superfat("5 %");
    }

    private static double holds() {
        return bar().sheet(Moulds.fullOf(LITRE), Sheets.LABORATORY).totals().mould();
    }

    private static List<String> said(double grams) {
        return bar()
                .sheet(new Fill(new Fill.MouldMass(grams), LITRE, Optional.empty(), 0), Sheets.LABORATORY)
                .cautions()
                .stream()
                .filter(caution -> caution.id().startsWith("mould-"))
                .map(Caution::text)
                .toList();
    }

    @Test
    void what_is_too_much_is_said_in_grams() {
        long holds = Math.round(holds());

        assertThat(said(holds() + 104))
                .containsExactly("This is 104 g more than this mould holds: it holds " + holds + " g, and "
                        + Math.round(holds() + 104) + " g would go in.");
    }

    @Test
    void what_does_not_fill_it_is_said_as_a_share() {
        assertThat(said(0.78 * holds()))
                .containsExactly("This fills the mould to 78 %: it holds " + Math.round(holds()) + " g, and "
                        + Math.round(0.78 * holds()) + " g go in.");
    }

    @Test
    void of_figures_that_disagree_the_best_measured_says_what_it_holds() {
        Mould both = new Mould(LITRE.shape(), Optional.of(0.9982 * 1200), Optional.empty());
        MakingSheet sheet =
                bar().sheet(new Fill(new Fill.MouldMass(1.2 * holds()), both, Optional.empty(), 0), Sheets.LABORATORY);

        assertThat(sheet.cautions()).extracting(Caution::id).contains("mould-data-disagree");
        assertThat(sheet.cautions()).extracting(Caution::id).doesNotContain("mould-overfull", "mould-not-full");
    }

    @Test
    void much_is_said_in_kilograms() {
        assertThat(said(12_345.4 + holds()))
                .singleElement()
                .satisfies(text -> assertThat(text).startsWith("This is 12.345 kg more than this mould holds"));
    }
}
