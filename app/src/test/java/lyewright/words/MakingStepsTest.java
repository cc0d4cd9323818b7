package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import org.junit.jupiter.api.Test;

class MakingStepsTest {

    private static final MakingSheet PLAIN = WordsSheets.of(WordsSheets.PLAIN, Equipment.USUAL);
    private static final MakingSheet FADE = WordsSheets.of(WordsSheets.FADE, WordsSheets.OUNCES);

    @Test
    void steps_are_numbered_from_one() {
        List<MakingStep> steps = MakingSteps.of(FADE);
        assertThat(steps.stream().map(MakingStep::number))
                .isEqualTo(IntStream.rangeClosed(1, steps.size()).boxed().toList());
    }

    @Test
    void an_ordinary_bar_is_melted_dissolved_cooled_blended_poured_cut_and_cured() {
        assertThat(MakingSteps.of(PLAIN).stream().map(step -> step.text().replaceFirst(" .*", "")))
                .containsExactly("Melt", "Stir", "Let", "Pour", "Stir", "Pour", "Leave", "Cut", "Cure");
    }

    @Test
    void alkali_goes_into_water_on_every_sheet_that_makes_lye() {
        for (MakingSheet sheet : List.of(PLAIN, FADE)) {
            assertThat(MakingSteps.of(sheet))
                    .filteredOn(step -> step.text().contains("Alkali into water, never water onto alkali."))
                    .hasSize(1);
        }
    }

    @Test
    void what_goes_into_the_batter_is_a_table_of_names_and_masses() {
        StepTable table = step(PLAIN, "Stir into the batter").table().orElseThrow();
        assertThat(table.titled()).isFalse();
        assertThat(table.groups()).singleElement().satisfies(group -> {
            assertThat(group.heading()).isEmpty();
            assertThat(group.rows()).containsExactly(List.of("Lavender", "20.0 g"));
        });
    }

    @Test
    void each_portion_has_a_group_of_its_own_whose_last_reading_is_all_of_it() {
        StepTable table = step(FADE, "Share the batter out").table().orElseThrow();
        assertThat(table.titled()).isTrue();
        assertThat(table.groups()).hasSize(FADE.portions().size());
        for (int p = 0; p < table.groups().size(); p++) {
            StepTable.Group group = table.groups().get(p);
            List<String> last = group.rows().get(group.rows().size() - 1);
            assertThat(group.heading())
                    .startsWith("Portion " + FADE.portions().get(p).name() + ": ");
            double reads = Double.parseDouble(last.get(2).replaceAll(" oz.*", ""));
            assertThat(reads * 28.349523125)
                    .isBetween(
                            FADE.portions().get(p).totalGrams() - 0.3,
                            FADE.portions().get(p).totalGrams() + 0.3);
            assertThat(group.rows()).allSatisfy(row -> assertThat(row).hasSameSizeAs(table.columns()));
        }
    }

    @Test
    void a_fade_has_a_row_for_each_layer_and_nothing_to_stir_in_after_the_last() {
        StepTable table = step(FADE, "Pour the fade").table().orElseThrow();
        List<List<String>> rows = table.groups().get(0).rows();
        assertThat(rows).hasSize(4);
        assertThat(rows.get(3).get(4)).isEmpty();
        assertThat(rows.subList(0, 3)).allSatisfy(row -> assertThat(row.get(4)).endsWith(" g"));
    }

    @Test
    void a_maker_who_writes_fahrenheit_reads_fahrenheit() {
        assertThat(step(FADE, "Melt the oils").text()).contains("100 °F");
        assertThat(step(FADE, "Stir the alkali").text()).contains("176 to 203 °F*");
    }

    private static MakingStep step(MakingSheet sheet, String start) {
        return MakingSteps.of(sheet).stream()
                .filter(step -> step.text().startsWith(start))
                .findFirst()
                .orElseThrow();
    }
}
