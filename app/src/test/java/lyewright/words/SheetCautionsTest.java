package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.makingsheet.Caution;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import org.junit.jupiter.api.Test;

class SheetCautionsTest {

    private static final MakingSheet CAUSTIC = WordsSheets.of("""
            recipe: Too Much
            oils: {olive-virgin: 650 g, coconut: 250 g, castor: 100 g}
            alkali: {sodium: 190 g}
            water: 280 g
            """, Equipment.USUAL);

    @Test
    void the_face_has_three_at_most_and_leads_with_what_stops_it() {
        SheetCautions cautions = SheetCautions.of(CAUSTIC);
        assertThat(cautions.stopped()).isTrue();
        assertThat(cautions.face()).hasSize(3);
        assertThat(cautions.face().get(0).level()).isEqualTo(Caution.Level.STOP);
        assertThat(cautions.beyondFace())
                .isEqualTo(CAUSTIC.cautions().size() - 3)
                .isPositive();
    }

    @Test
    void every_caution_is_told_whole_somewhere() {
        SheetCautions cautions = SheetCautions.of(CAUSTIC);
        assertThat(CAUSTIC.cautions())
                .allSatisfy(caution -> assertThat(cautions.more().contains(caution)
                                || (cautions.face().contains(caution) && !SheetCautions.isNote(caution)))
                        .as(caution.text())
                        .isTrue());
    }

    @Test
    void a_caution_told_whole_says_what_to_do_and_who_says_so() {
        Caution first = CAUSTIC.cautions().get(0);
        assertThat(SheetCautions.whole(first))
                .startsWith(first.text())
                .contains(first.remedy())
                .endsWith("[" + first.source() + "]");
    }
}
