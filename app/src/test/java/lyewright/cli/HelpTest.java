package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "-h",
                "help",
                "help sheet",
                "sheet --help",
                "help compare",
                "compare --help",
                "formula",
                "help formula",
                "formula read --help",
                "formula check --help",
                "help formula show",
                "help formula superfat",
                "why --help",
                "oils --help",
                "additives --help",
                "backup --help",
                "help restore",
                "verify --help",
                "import-stock --help",
                "export-stock --help",
                "version --help"
            })
    void help_is_printed_and_fits_the_page(String typed) {
        Run run = Run.of(typed.isEmpty() ? new String[0] : typed.split(" ", -1));

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("lyewright");
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= 100);
    }

    @Test
    void the_first_help_names_every_command() {
        assertThat(Run.of("--help").out())
                .contains(
                        "  sheet ",
                        "  why ",
                        "  compare ",
                        "  formula ",
                        "  oils ",
                        "  additives ",
                        "  backup ",
                        "  restore ",
                        "  verify ",
                        "  import-stock ",
                        "  export-stock ",
                        "  version ",
                        "  help ")
                .contains("lyewright sheet examples/tideline.yaml --total 1500g");
    }

    @Test
    void the_sheets_help_gives_an_example_of_each_way_of_saying_how_much() {
        String help = Run.of("help", "sheet").out();

        assertThat(help)
                .contains(
                        "--total",
                        "--oils",
                        "--bars",
                        "--cured",
                        "--box",
                        "--tube",
                        "--cavities",
                        "--water-fill",
                        "--usual")
                .contains("--hold-back 2%")
                .contains("Examples:")
                .doesNotContain("%%", "WARN");
    }

    @Test
    void version_says_program_java_and_tables() {
        Run run = Run.of("version");

        assertThat(run.exit()).isZero();
        assertThat(run.lines()).hasSize(2);
        assertThat(run.lines().get(0)).startsWith("lyewright ").contains("Java " + System.getProperty("java.version"));
        assertThat(run.lines().get(1)).matches("tables \\S+");
        assertThat(Run.of("--version").out()).isEqualTo(run.lines().get(0) + "\n");
    }
}
