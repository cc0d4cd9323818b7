package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadCommandTest {

    private static final Path ROOT = Path.of("..");

    @TempDir
    Path folder;

    @Test
    void a_notebook_becomes_a_formula_file_that_makes_a_sheet() {
        Run read = Run.in(ROOT, "formula", "read", "examples/notebook.txt");
        Recipes.write(folder, "recipe.yaml", read.out());

        assertThat(read.exit()).isZero();
        assertThat(read.err()).isEmpty();
        assertThat(read.out()).contains("recipe: Tideline trial\n", "  coconut: 350 g\n", "  - of: lavender-oil\n");
        assertThat(Run.in(folder, "formula", "show", "recipe.yaml").out()).isEqualTo(read.out());
        assertThat(Run.in(folder, "formula", "check", "recipe.yaml"))
                .isEqualTo(new Run(0, "Tideline trial, version 1: fine.\n", ""));
        assertThat(Run.in(folder, "sheet", "recipe.yaml", "--total", "1500g").exit())
                .isZero();
    }

    @Test
    void what_is_not_plain_is_refused_with_its_place_and_nothing_is_printed() {
        Recipes.write(
                folder,
                "page.txt",
                "Trial\n  coconut oil 350 g\n  350g olive\n  castor 25\n  soda 71 g\n  water 155 g\n");

        Run run = Run.in(folder, "formula", "read", "page.txt");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems())
                .containsExactly(
                        "page.txt:3:3: 'olive' may be olive oil (virgin), olive oil (refined) or olive pomace oil; write one",
                        "page.txt:4:10: '25' has no unit; write 25 g, or all in grams on a line of its own if no line has a unit");
    }

    @Test
    void a_file_that_is_not_there_or_no_text_is_refused() {
        assertThat(Run.in(folder, "formula", "read", "gone.txt").problems())
                .containsExactly("gone.txt:1:1: there is no such file; check its name and folder");
        Recipes.write(folder, "large.txt", "x".repeat(102_401));
        assertThat(Run.in(folder, "formula", "read", "large.txt").problems())
                .containsExactly(
                        "large.txt:1:1: the text is larger than 100 KB; write one recipe, and keep its papers elsewhere");
        assertThat(Run.in(folder, "formula", "read").exit()).isEqualTo(2);
    }
}
