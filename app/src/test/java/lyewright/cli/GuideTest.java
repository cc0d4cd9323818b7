package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.chain.Chain;
import lyewright.chain.Entry;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the README and the guide print is what the commands print: each command shown is run and compared. */
@Tag("guard")
class GuideTest {

    private static final Path ROOT = Path.of("..");

    private static final Pattern SHOWN = Pattern.compile("```sh\n(.*?)```\n\n```text\n(.*?)```", Pattern.DOTALL);

    private static final Pattern FORMULA = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "README.md, 1",
        "docs/guide/first-sheet.md, 5",
        "docs/guide/formula-file.md, 1",
        "docs/guide/how-sure.md, 1",
        "docs/guide/compare.md, 1",
        "docs/guide/why.md, 1"
    })
    void every_command_shown_prints_what_is_shown(String page, int commands) throws IOException {
        Matcher shown = SHOWN.matcher(Files.readString(ROOT.resolve(page)));
        int seen = 0;
        while (shown.find()) {
            assertThat(printed(shown.group(1))).as(page + ": " + shown.group(1)).isEqualTo(shown.group(2));
            seen++;
        }
        assertThat(seen).as("commands shown in " + page).isEqualTo(commands);
    }

    /** Runs the last line; a line before it that makes a file is done here, without a shell. */
    private static String printed(String commands) throws IOException {
        List<String> lines = commands.lines().toList();
        Path made = null;
        if (lines.size() == 2) {
            Matcher printf = Pattern.compile("printf '(.*)' > (\\S+)").matcher(lines.get(0));
            assertThat(printf.matches()).as(lines.get(0)).isTrue();
            made = ROOT.resolve(printf.group(2));
            Files.writeString(made, printf.group(1).replace("\\n", "\n").replace("%%", "%"));
        }
        try {
            String command = lines.get(lines.size() - 1);
            assertThat(command).startsWith("./lyewright ");
            Run run = Run.in(ROOT, words(command.substring("./lyewright ".length())));
            return run.out() + run.err();
        } finally {
            if (made != null) {
                Files.delete(made);
            }
        }
    }

    private static String[] words(String command) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2));
        }
        return words.toArray(String[]::new);
    }

    @Test
    void the_formulas_the_guide_shows_can_be_made() throws IOException {
        Matcher shown = FORMULA.matcher(Files.readString(ROOT.resolve("docs/guide/formula-file.md")));
        assertThat(shown.find()).isTrue();
        String whole = shown.group(1);
        assertThat(shown.find()).isTrue();
        String materials = shown.group(1);
        Path file = Files.createTempFile("guide", ".yaml");
        try {
            Files.writeString(file, whole + materials);
            Run run = Run.in(ROOT, "sheet", file.toString(), "--total", "1500g");
            assertThat(run.err()).isEmpty();
            assertThat(run.exit()).isZero();
        } finally {
            Files.delete(file);
        }
    }

    @Test
    void the_ways_the_guide_shows_can_be_made() throws IOException {
        Matcher shown = FORMULA.matcher(Files.readString(ROOT.resolve("docs/guide/formula-file.md")));
        int seen = 0;
        while (shown.find()) {
            String part = shown.group(1);
            if (seen++ < 2) {
                continue;
            }
            // what a part leaves out is plain
            String whole = "recipe: Shown\n"
                    + (part.contains("oils: {stearic") ? "" : "oils: {coconut: 30 %, olive-virgin: rest}\n")
                    + (part.contains("alkali:") ? "" : "alkali: sodium\nsuperfat: 5 %\n")
                    + part;
            Path file = Files.createTempFile("way", ".yaml");
            try {
                Files.writeString(file, whole);
                Run run = Run.in(ROOT, "sheet", file.toString(), "--total", "1500g");
                assertThat(run.err()).as(whole).isEmpty();
                assertThat(run.exit()).as(whole).isZero();
            } finally {
                Files.delete(file);
            }
        }
        assertThat(seen).isEqualTo(6);
    }

    @Test
    void the_seal_that_the_guide_reckons_is_the_one_that_is_kept() throws IOException {
        Entry entry = new Entry(
                1,
                1_795_597_200_000L,
                "00000000-0000-7000-8000-000000000001",
                Optional.empty(),
                "lot",
                "{\"code\":\"26-0001 é\"}");

        assertThat(Files.readString(ROOT.resolve("docs/guide/ledger.md")))
                .contains("gives `" + Chain.seal(Chain.BEFORE_ALL, entry) + "`");
    }

    @Test
    void the_notebook_of_the_guide_is_the_example() throws IOException {
        Matcher shown = FORMULA.matcher(Files.readString(ROOT.resolve("docs/guide/first-sheet.md")));
        assertThat(shown.find()).isTrue();
        Path file = Files.createTempFile("notebook", ".yaml");
        try {
            Files.writeString(file, shown.group(1));
            String superfat =
                    Run.in(ROOT, "formula", "superfat", file.toString()).lines().get(2);
            assertThat(Run.in(ROOT, "formula", "superfat", "examples/kitchen-notebook.yaml")
                            .lines())
                    .contains(superfat);
        } finally {
            Files.delete(file);
        }
    }
}
