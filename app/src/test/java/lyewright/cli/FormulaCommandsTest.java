package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormulaCommandsTest {

    @TempDir
    Path folder;

    @Test
    void a_sound_file_gets_one_line_with_recipe_and_version() {
        Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);

        Run run = Run.in(folder, "formula", "check", "salt.yaml");

        assertThat(run).isEqualTo(new Run(0, "Tideline, version 3: fine.\n", ""));
    }

    @Test
    void every_example_is_sound() {
        assertThat(Recipes.examples()).hasSizeGreaterThanOrEqualTo(6);
        for (Path example : Recipes.examples()) {
            Run run = Run.in(folder, "formula", "check", example.toString());

            assertThat(run.exit()).as(run.err()).isZero();
            assertThat(run.lines()).hasSize(1);
        }
    }

    @Test
    void a_formula_that_stops_is_said_to() {
        Recipes.write(folder, "strong.yaml", Recipes.NOTEBOOK.replace("138 g", "160 g"));

        Run run = Run.in(folder, "formula", "check", "strong.yaml");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out())
                .startsWith("Notebook, version 1: not to be made as it stands.")
                .contains("superfat");
    }

    @Test
    void the_normal_form_of_a_normal_form_is_itself() {
        Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);

        Run first = Run.in(folder, "formula", "show", "salt.yaml");
        Recipes.write(folder, "again.yaml", first.out());

        assertThat(first.exit()).isZero();
        assertThat(first.out()).contains("recipe: Tideline", "superfat: 18 %");
        assertThat(Run.in(folder, "formula", "show", "again.yaml")).isEqualTo(first);
    }

    @Test
    void a_notebook_recipe_gets_its_superfat() {
        Recipes.write(folder, "one.yaml", """
                recipe: One oil
                oils:
                  castor: 1000 g
                alkali: {sodium: 120 g, as: pure}
                water: 280 g
                """);

        Run run = Run.in(folder, "formula", "superfat", "one.yaml", "--purity", "naoh=98");

        // castor 176 to 187 mg KOH/g (BP 1993); 120 g NaOH of 39.997 g/mol take 120/39.997 × 56.105 = 168.328 g KOH, so
        // superfat = 1 − 168.328 ÷ value: 7.26 % at the middle 181.5; 2.5 % from either end of the range, at 176.275
        // and
        // 186.725, 4.51 and 9.85 %, which what the balances may err widens a little
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Superfat 7.3 %");
        assertThat(run.out().replaceAll("\\s+", " "))
                .containsPattern("it lies between 4.[45] and 9.[89] %, 19 times in 20");
        assertThat(run.out()).contains("176 to 187", "181.5", "as pure alkali");
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= 100);
    }

    @Test
    void alkali_taken_as_weighed_is_less_by_its_purity() {
        Recipes.write(folder, "notebook.yaml", Recipes.NOTEBOOK);

        double assumed = superfat("notebook.yaml");
        double pure = superfat("notebook.yaml", "--purity", "naoh=100");

        // what 100 − superfat stands for is alkali: 98 % of it where the purity is assumed
        assertThat(100 - assumed).isCloseTo(0.98 * (100 - pure), within(0.11));
        assertThat(Run.in(folder, "formula", "superfat", "notebook.yaml").out())
                .contains("taken as weighed since the file does not say", "98 % pure, assumed");
    }

    private double superfat(String file, String... options) {
        String[] args = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("formula", "superfat", file), java.util.Arrays.stream(options))
                .toArray(String[]::new);
        Matcher found = Pattern.compile("Superfat ([-0-9.]+) %")
                .matcher(Run.in(folder, args).out());
        assertThat(found.find()).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @Test
    void a_superfat_that_is_asked_comes_out_as_asked() {
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN);

        Run run = Run.in(folder, "formula", "superfat", "plain.yaml");

        assertThat(run.out()).contains("Superfat 6.0 %", "32.0 % pure");
    }

    /** A tiny batch and one between the steps of usual balances: weighing would part the three figures. */
    @Test
    void headline_sentence_and_drawing_are_of_one_superfat() {
        String tiny = Recipes.NOTEBOOK
                .replace("650 g", "13 g")
                .replace("250 g", "5 g")
                .replace("100 g", "2 g")
                .replace("138 g", "2.749 g")
                .replace("280 g", "6 g");
        Recipes.write(folder, "tiny.yaml", tiny);
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN.replace("6 %", "4.049 %"));
        for (String file : new String[] {"tiny.yaml", "plain.yaml"}) {
            Run run = Run.in(folder, "formula", "superfat", file);
            String headline = Double.toString(superfat(file));
            assertThat(run.out().replaceAll("\\s+", " ")).contains("The superfat is reckoned as " + headline + " %;");
            assertThat(run.out()).doesNotContain("weighing of").contains("Weighing           not counted: no balance");
        }
        assertThat(Run.in(folder, "sheet", "tiny.yaml").out()).contains("weighing of");
    }

    @Test
    void a_superfat_not_to_be_made_says_why_and_ends_with_3() {
        Recipes.write(folder, "strong.yaml", Recipes.NOTEBOOK.replace("138 g", "160 g"));

        Run run = Run.in(folder, "formula", "superfat", "strong.yaml");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("STOP The superfat is -", "Weigh less alkali.", "[mass balance]");
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN);
        assertThat(Run.in(folder, "formula", "superfat", "plain.yaml").out()).doesNotContain("STOP", "CARE");
    }

    @Test
    void a_superfat_far_off_keeps_to_the_page() {
        Recipes.write(folder, "slip.yaml", Recipes.NOTEBOOK.replace("138 g", "138 kg"));

        Run run = Run.in(folder, "formula", "superfat", "slip.yaml");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= 100).noneMatch(line -> line.contains("|"));
        assertThat(run.out().replaceAll("\\s+", " ")).contains("too far off to draw");
        assertThat(Run.in(folder, "sheet", "slip.yaml").lines()).allMatch(line -> Widths.of(line) <= 100);
    }

    /** Jojoba's saponification value of 92.2 and no acid value, beeswax's least acid value of 17 (oils.csv). */
    @Test
    void a_waxs_range_is_what_may_react() {
        Recipes.write(
                folder,
                "wax.yaml",
                Recipes.PLAIN.replace("castor: 10 %", "jojoba: 5 %, beeswax: 5 %".replace(", ", "\n  ")));

        assertThat(Run.in(folder, "formula", "superfat", "wax.yaml").lines())
                .anyMatch(line -> line.matches("Jojoba.* 0 to 92.2 may react +nothing of it surely reacts"))
                .anyMatch(line -> line.matches("Beeswax.* 17 to 104 may react +only the wax's free acid"));
    }
}
