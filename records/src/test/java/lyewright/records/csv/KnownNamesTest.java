package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.StockItem;
import org.junit.jupiter.api.Test;

/** Materials of a file that the tables know by name: recipes know them then, without a word of the file. */
@OnBoth
class KnownNamesTest extends Workbench {

    private CsvImport.Result take(String text) {
        CsvFile file = CsvFile.read(text.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        return CsvImport.take(records, records.author(), file, file.guess(), "GBP");
    }

    private List<String> items() {
        return records.items().list().stream()
                .map(item -> item.name() + ", " + item.said().kind().word() + ", "
                        + item.said().identity().materialKey().orElse("-"))
                .toList();
    }

    private static List<String> notes(CsvImport.Result result) {
        return result.notes().stream()
                .map(note ->
                        note.row() + " " + note.column() + ": " + note.problem().what())
                .toList();
    }

    @Test
    void the_tables_bring_what_recipes_call_it_and_what_kind_of_thing_it_is() {
        CsvImport.Result result = take("""
                name,kind
                Shea butter,oil
                Caustic soda,
                Castor,
                Rose clay,colourant
                """);
        assertThat(result.told()).isEqualTo("4 new, 0 already there");
        assertThat(items())
                .containsExactly(
                        "Castor, oil, castor",
                        "Caustic soda, alkali, naoh",
                        "Rose clay, colourant, rose-clay",
                        "Shea butter, oil, shea-butter");
        assertThat(result.found())
                .isEqualTo(Map.of(
                        "Shea butter",
                        "shea-butter",
                        "Caustic soda",
                        "naoh",
                        "Castor",
                        "castor",
                        "Rose clay",
                        "rose-clay"));
        assertThat(result.notes()).isEmpty();
    }

    @Test
    void where_two_things_may_be_meant_nothing_is_chosen_and_that_is_said() {
        CsvImport.Result result = take("name,kind\nOlive oil,oil\nShea,\nCocoa,oil\n");
        assertThat(items()).containsExactly("Cocoa, oil, cocoa-butter", "Olive oil, oil, -");
        assertThat(notes(result))
                .containsExactly(
                        "2 name: 'Olive oil' may be Olive oil (virgin) or Olive oil (refined) or Olive pomace oil"
                                + " to recipes, so no recipe knows it yet");
        assertThat(result.troubles())
                .singleElement()
                .satisfies(it -> assertThat(it.problem().what())
                        .isEqualTo("'Shea' may be Shea butter (unrefined) or Shea (sheanut) oil, refined food grade"));
    }

    @Test
    void what_is_only_spelt_like_something_or_is_of_another_kind_is_not_taken_for_it() {
        CsvImport.Result result =
                take("name,kind\nJars,packaging\nCastor boxes,packaging\nJars 2,\nSoap,alkali\nCastor,alkali\n");
        assertThat(items()).containsExactly("Castor boxes, packaging, -", "Jars, packaging, -", "Soap, alkali, -");
        assertThat(notes(result)).containsExactly("5 name: no recipe will find 'Soap': no table knows it");
        assertThat(result.troubles())
                .extracting(
                        it -> it.row() + " " + it.column() + ": " + it.problem().what())
                .contains("6 kind: 'Castor oil' is no alkali");
    }

    @Test
    void a_lot_is_of_what_the_cupboard_has_under_the_name_that_recipes_know() {
        StockItem there = records.items()
                .add(ItemSaid.of("Kokosfett", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow();
        String lots = "material,received,amount\nCoconut oil,2026-11-25,1 kg\nBabassu,2026-11-25,1 kg\n";
        CsvImport.Result result = take(lots);
        assertThat(result.told()).isEqualTo("2 new, 0 already there");
        assertThat(notes(result))
                .containsExactly("2 material: 'Coconut oil' is taken for 'Kokosfett', which the cupboard has");
        assertThat(records.lots().of(there.id())).hasSize(1);
        assertThat(items()).containsExactly("Babassu, oil, babassu", "Kokosfett, oil, coconut");
        assertThat(take(lots).told()).isEqualTo("0 new, 2 already there");
    }

    @Test
    void a_listed_material_whose_name_in_recipes_is_taken_is_another_one_and_told_of() {
        String file = "name,kind\nCoconut oil,oil\nCoconut oil (deodorised),oil\n";
        CsvImport.Result result = take(file);
        assertThat(items()).containsExactly("Coconut oil, oil, coconut", "Coconut oil (deodorised), oil, -");
        assertThat(notes(result))
                .containsExactly("3 name: recipes call 'Coconut oil' coconut already, so 'Coconut oil (deodorised)'"
                        + " is kept without a name in recipes");
        assertThat(take(file).told()).isEqualTo("0 new, 2 already there");
    }
}
