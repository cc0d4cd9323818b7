package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FormulaRoundTripTest {

    private static final int CASES = 10_000;
    private static final Path EXAMPLES = Path.of("..", "examples");

    @Test
    void ten_thousand_formulas_read_back_as_they_were_written() {
        for (long seed = 0; seed < CASES; seed++) {
            Formula formula = RandomFormulas.of(seed);
            String text = FormulaFile.write(formula);
            FormulaFile.Read read = FormulaFile.read(text);
            assertThat(read.problems()).as("seed %d:%n%s", seed, text).isEmpty();
            assertThat(read.formula()).as("seed %d:%n%s", seed, text).contains(formula);
            assertThat(FormulaFile.write(read.formula().orElseThrow()))
                    .as("seed %d, written twice", seed)
                    .isEqualTo(text);
        }
    }

    @Test
    void the_generated_formulas_are_of_every_shape() {
        List<Formula> formulas = Stream.iterate(0L, seed -> seed + 1)
                .limit(1000)
                .map(RandomFormulas::of)
                .toList();
        assertThat(formulas).anyMatch(Formula::inMasses).anyMatch(f -> !f.inMasses());
        assertThat(formulas.stream().map(f -> f.alkali().getClass()).distinct()).hasSize(4);
        assertThat(formulas.stream().map(f -> f.water().getClass()).distinct()).hasSize(4);
        assertThat(formulas.stream()
                        .flatMap(f -> f.additions().stream())
                        .map(a -> a.amount().getClass())
                        .distinct())
                .hasSize(4);
        assertThat(formulas.stream()
                        .flatMap(f -> f.additions().stream())
                        .map(a -> a.stage().kind())
                        .distinct())
                .hasSize(Stage.Kind.values().length);
        assertThat(formulas).anyMatch(f -> f.process().pour().isPresent());
        assertThat(formulas).anyMatch(f -> !f.comments().equals(Comments.NONE));
        assertThat(formulas.stream()
                        .flatMap(f -> f.materials().stream())
                        .map(OwnMaterial::kind)
                        .distinct())
                .contains("oil", "wax", "lye", "oils", "liquid", "milk", "");
    }

    @Test
    void generated_formulas_keep_the_rules() {
        for (long seed = 0; seed < 1000; seed++) {
            assertThat(FormulaRules.check(RandomFormulas.of(seed)))
                    .as("seed %d", seed)
                    .isEmpty();
        }
    }

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void there_are_at_least_six_examples() throws IOException {
        assertThat(examples()).hasSizeGreaterThanOrEqualTo(6);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_reads_and_its_normal_form_reads_the_same(Path file) throws IOException {
        FormulaFile.Read read = FormulaFile.read(Files.readAllBytes(file));
        assertThat(read.problems()).isEmpty();
        Formula formula = read.formula().orElseThrow();
        String normal = FormulaFile.write(formula);
        assertThat(FormulaFile.read(normal).formula()).contains(formula);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_is_in_normal_form_but_for_its_empty_lines(Path file) throws IOException {
        String text = Files.readString(file);
        String normal = FormulaFile.write(FormulaFile.read(text).formula().orElseThrow());
        assertThat(normal.lines().filter(line -> !line.isBlank()))
                .containsExactlyElementsOf(
                        text.lines().filter(line -> !line.isBlank()).toList());
    }
}
