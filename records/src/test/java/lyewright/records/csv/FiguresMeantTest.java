package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.stock.ItemKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days, figures and names in files that are hardly meant: told of, or refused where the pages refuse them. */
@OnBoth
class FiguresMeantTest extends Workbench {

    private CsvImport.Result take(String text) {
        CsvFile file = CsvFile.read(text.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        return CsvImport.take(records, records.author(), file, file.guess(), "GBP");
    }

    private static List<String> said(List<CellTrouble> cells) {
        return cells.stream()
                .map(cell ->
                        cell.row() + " " + cell.column() + ": " + cell.problem().what())
                .toList();
    }

    @Test
    void days_far_off_are_told_of_and_what_nobody_lives_to_see_is_refused() {
        CsvImport.Result result = take("""
                material,kind,amount,received,best before
                Sea salt,additive,5 kg,2026-11-25,2062-06-30
                Castor oil,oil,5 kg,2026-11-25,2127-06-30
                Olive oil,oil,5 kg,2011-11-25,2012-06-30
                Coconut oil,oil,5 kg,2026-11-25,2036-11-25
                """);
        assertThat(said(result.notes()))
                .contains(
                        "2 best before: that is more than ten years after it came, and no oil keeps so long",
                        "4 received: that day is more than ten years ago");
        assertThat(said(result.troubles()))
                .containsExactly("3 best before: that is more than a hundred years after it came");
        assertThat(result.fresh()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({
        "lye, may be the dry alkali or a solution of it",
        "Potash, may be potassium hydroxide or potassium carbonate",
    })
    void a_name_that_may_be_another_thing_than_dry_alkali_is_left_out_and_asked(String name, String asked) {
        CsvImport.Result result = take("material,kind,amount,received\n" + name + ",alkali,1 kg,2026-11-25\n");
        assertThat(said(result.troubles())).containsExactly("2 material: '" + name + "' " + asked);
        assertThat(take("material,recipe name,kind,amount,received\n" + name + ",naoh,alkali,1 kg,2026-11-25\n")
                        .fresh())
                .isEqualTo(1);
    }

    @Test
    void a_fragrance_of_the_makers_own_is_one_in_files_too() {
        records.materials().add(OwnMaterial.of("harbour-mist", "fragrance")).orThrow();
        take("material,amount,received\nharbour-mist,200 g,2026-11-25\n");
        assertThat(records.items().list())
                .extracting(item -> item.said().kind())
                .containsExactly(ItemKind.FRAGRANCE);
    }

    @Test
    void odd_figures_of_certificates_are_told_of_and_weak_dry_alkali_is_refused() {
        CsvImport.Result result = take("""
                material,kind,amount,received,av mg koh g,water percent,purity percent
                Castor oil,oil,5 kg,2026-11-25,189,12,
                Sodium hydroxide,alkali,1 kg,2026-11-25,,,33
                Potassium hydroxide,alkali,1 kg,2026-11-25,,,77
                Castor oil,oil,1 kg,2026-11-24,,50,
                """);
        assertThat(said(result.notes()))
                .contains(
                        "2 water percent: that is more than 1 %, which no oil holds and no sheet takes off it",
                        "2 av mg koh g: that is more free acid than an oil has, hardly over 20");
        assertThat(said(result.troubles()))
                .containsExactly(
                        "3 purity percent: dry sodium hydroxide is at least 70 % pure",
                        "5 water percent: what is more than a fifth water is no oil, and a sheet would count all of it as one");
        assertThat(result.fresh()).isEqualTo(2);
    }
}
