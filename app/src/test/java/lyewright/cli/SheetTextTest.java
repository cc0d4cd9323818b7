package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetTextTest {

    @TempDir
    Path folder;

    static Stream<List<String>> fills() {
        return Stream.of(
                List.of("--total", "1500g"),
                List.of("--total", "40kg", "--balances", "a balance with a very long name indeed:50kg:0.05oz"),
                List.of("--bars", "10x110g", "--hold-back", "2%", "--vessels", "lye jug:312g,oil pot:1480g"),
                List.of("--cavities", "12x95ml"));
    }

    @ParameterizedTest
    @MethodSource("fills")
    void every_example_fits_a_page_of_100_columns(List<String> fill) {
        assertThat(Recipes.examples()).hasSizeGreaterThanOrEqualTo(6);
        for (Path example : Recipes.examples()) {
            assertFits(sheet(example, fill));
        }
    }

    private Run sheet(Path file, List<String> options) {
        return Run.in(
                folder,
                Stream.concat(Stream.of("sheet", file.toString()), options.stream())
                        .toArray(String[]::new));
    }

    private static void assertFits(Run run) {
        assertThat(run.exit()).as(run.err()).isIn(0, 3);
        assertThat(run.lines()).hasSizeGreaterThan(40).allMatch(line -> Widths.of(line) <= 100);
        assertThat(run.lines()).noneMatch(line -> line.endsWith(" "));
    }

    @Test
    void long_names_in_wide_letters_fit_too() {
        String name = "海塩の石鹸".repeat(30) + " 🧼🧼🧼";
        Path file = Recipes.write(
                folder,
                "wide.yaml",
                Recipes.SALT_BAR
                        .replace("Tideline", name)
                        .replace("kelp", "昆布".repeat(20))
                        .replace("plain", "白".repeat(30)));

        Run run = sheet(file, List.of("--total", "1500g"));

        assertFits(run);
    }

    @Test
    void a_sheet_has_its_parts_in_order_and_each_once() {
        Path salt = Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);

        Run run = sheet(salt, List.of("--total", "1500g"));

        assertThat(run.lines().get(0)).startsWith("Tideline, version 3").endsWith("for sale");
        assertThat(run.lines())
                .containsSubsequence("WEIGH", "BEFORE THE ALKALI IS OPENED", "MAKE", "CHEMISTRY", "MORE TO KNOW");
        assertThat(run.lines())
                .filteredOn(line -> line.contains("arithmetic, not an assessment"))
                .hasSize(1);
        assertThat(run.lines().get(run.lines().size() - 1)).contains("tables of ");
        assertThat(run.out()).doesNotContain("null", "NaN", "Infinity", "Optional");
    }

    @Test
    void everything_weighed_is_ticked_off_once() {
        Path salt = Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);

        List<String> ticks = sheet(salt, List.of("--total", "1500g")).lines().stream()
                .filter(line -> line.startsWith("[ ]"))
                .toList();

        // three oils, clay and its water, rosemary and salt for two portions, water, alkali
        assertThat(ticks).hasSize(3 + 2 + 4 + 2);
        assertThat(ticks.get(ticks.size() - 1)).contains("Sodium hydroxide");
    }

    @Test
    void the_head_has_three_cautions_at_most_and_the_rest_is_further_down() {
        Path salt = Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR.replace("34 % lye", "48 % lye"));

        List<String> lines = sheet(salt, List.of("--total", "300g")).lines();

        List<String> head = lines.subList(0, lines.indexOf("WEIGH"));
        assertThat(head)
                .filteredOn(line -> line.matches(" (STOP|CARE|note) .*"))
                .hasSize(3);
        assertThat(head).anyMatch(line -> line.contains("More to know"));
        List<String> rest = lines.subList(lines.indexOf("MORE TO KNOW"), lines.size());
        assertThat(rest).anyMatch(line -> line.matches(" (CARE|note) .*"));
    }

    @Test
    void a_dispersion_is_stirred_ahead_and_the_fade_has_its_layers() {
        Path salt = Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);

        String text = sheet(salt, List.of("--total", "1500g")).out();

        assertThat(text).contains("1 h ahead", "(3 to 1)", "Portion kelp: 40 % of the batter", "common practice");
        assertThat(text.lines().filter(line -> line.matches("\\s+[1-7]  +[0-9.]+ g .* %.*")))
                .hasSize(7);
    }

    @Test
    void decimals_are_those_of_the_balance() {
        Path plain = Recipes.write(folder, "plain.yaml", Recipes.PLAIN);

        List<String> coarse =
                sheet(plain, List.of("--oils", "1kg", "--balances", "b:5kg:1g")).lines();
        List<String> fine = sheet(plain, List.of("--oils", "1kg", "--balances", "b:5kg:0.01g"))
                .lines();

        assertThat(coarse).anyMatch(line -> line.matches("\\[ ] Castor oil +100 g +1000 g +b +10\\.00"));
        assertThat(fine).anyMatch(line -> line.matches("\\[ ] Castor oil +100\\.00 g +1000\\.00 g +b +10\\.00"));
    }

    @Test
    void oils_typed_in_ounces_are_shown_in_ounces_too() {
        Path file = Recipes.write(
                folder,
                "ounces.yaml",
                Recipes.NOTEBOOK
                        .replace("650 g", "24 oz")
                        .replace("250 g", "8 oz")
                        .replace("100 g", "4 oz")
                        .replace("138 g", "4.9 oz")
                        .replace("280 g", "10 oz"));

        assertThat(sheet(file, List.of()).out()).contains("680 g (23.99 oz)");
    }
}
