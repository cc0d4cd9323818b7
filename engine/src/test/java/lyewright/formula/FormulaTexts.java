package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.measure.Problem;

/** Small formula files for tests, and what comes of reading them. */
final class FormulaTexts {

    /** Eight lines: name, three oils on lines 3 to 5, alkali on 6, superfat on 7, water on 8. */
    static final String PLAIN = """
            recipe: Plain
            oils:
              coconut: 30 %
              olive-virgin: 65 %
              castor: 5 %
            alkali: sodium
            superfat: 6 %
            water: 33 % lye
            """;

    /** Six lines: name, two oils on lines 3 and 4, alkali on 5, water on 6. */
    static final String NOTEBOOK = """
            recipe: Notebook
            oils:
              coconut: 150 g
              olive-virgin: 350 g
            alkali: {sodium: 71 g}
            water: 155 g
            """;

    private FormulaTexts() {}

    static Formula formula(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        assertThat(read.problems()).as(text).isEmpty();
        return read.formula().orElseThrow();
    }

    static List<Problem> problems(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        assertThat(read.formula().isPresent())
                .as(text)
                .isEqualTo(read.problems().isEmpty());
        return read.problems();
    }

    /** The one problem of a text. */
    static Problem problem(String text) {
        List<Problem> problems = problems(text);
        assertThat(problems).as(text).hasSize(1);
        return problems.get(0);
    }
}
