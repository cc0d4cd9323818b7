package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot be made is refused in sentences that say where and what to do, and nothing else is printed. */
class BadInputTest {

    private static final Duration QUICK = Duration.ofSeconds(1);

    @TempDir
    Path folder;

    /** What is timed is a refusal, not the first loading of classes and tables. */
    @BeforeAll
    static void warmUp() {
        assertThat(Run.of("oils", "castor").exit()).isZero();
    }

    static Stream<Arguments> files() {
        return Stream.of(
                Arguments.of("oils that do not add up", Recipes.PLAIN.replace("castor: 10 %", "castor: 9 %"), 2, "99"),
                Arguments.of("an oil under nothing", Recipes.PLAIN.replace("10 %", "-10 %"), 5, "-10"),
                Arguments.of("a word nobody knows", Recipes.PLAIN + "superfatt: 6 %\n", 9, "superfatt"),
                Arguments.of("nothing", "", 1, "empty"),
                Arguments.of("a control character", Recipes.PLAIN.replace("Plain", "Pl\u0007ain"), 1, "control"),
                Arguments.of("a superfat over all", Recipes.PLAIN.replace("6 %", "150 %"), 7, "150"),
                Arguments.of("no water", Recipes.PLAIN.replace("32 % lye", "0 g"), 8, "0 g"),
                Arguments.of("an oil nobody knows", Recipes.PLAIN.replace("castor", "castro"), 5, "castor"),
                Arguments.of("two portions of 60", Recipes.SALT_BAR.replace("kelp: rest", "kelp: 60 %"), 23, "120"),
                Arguments.of(
                        "a portion that is not there",
                        Recipes.SALT_BAR.replace("stage: portion kelp", "stage: portion kelpp"),
                        15,
                        "kelpp"),
                Arguments.of("something else than YAML", "{ : [\n", 1, ""),
                Arguments.of("a list", "- coconut\n- castor\n", 1, "list"),
                Arguments.of("brackets without end", "[".repeat(20_000), 1, ""),
                Arguments.of(
                        "aliases that explode", "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: [*c, *c]\n", 1, "a"),
                Arguments.of("a word twice", Recipes.PLAIN + "superfat: 6 %\n", 9, "superfat"),
                Arguments.of("a comma in a number", Recipes.PLAIN.replace("6 %", "6,5 %"), 7, "6.5"),
                Arguments.of("no end", Recipes.PLAIN.replace("6 %", ".inf"), 7, ".inf"),
                Arguments.of("alkali and superfat at odds", Recipes.NOTEBOOK + "superfat: 6 %\n", 8, "superfat"),
                Arguments.of(
                        "neither superfat nor alkali", Recipes.PLAIN.replace("superfat: 6 %\n", ""), 1, "superfat"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void a_file_that_cannot_be_made_is_refused_with_its_place(String what, String text, int line, String word) {
        Recipes.write(folder, "bad.yaml", text);

        Run run = quickly("sheet", "bad.yaml", "--oils", "1kg");

        assertRefused(run, "bad.yaml");
        assertThat(run.problems())
                .as(run.err())
                .anyMatch(p -> p.startsWith("bad.yaml:" + line + ":") && p.contains(word));
        assertThat(Run.in(folder, "formula", "check", "bad.yaml")).isEqualTo(run);
    }

    @Test
    void an_unknown_oil_is_answered_with_the_nearest_that_there_is() {
        Recipes.write(folder, "bad.yaml", Recipes.PLAIN.replace("olive-virgin", "olive-virgni"));

        assertThat(quickly("formula", "check", "bad.yaml").err()).contains("did you mean olive-virgin");
    }

    @Test
    void a_file_that_is_not_there_is_refused() {
        assertRefused(quickly("sheet", "none.yaml", "--oils", "1kg"), "none.yaml");
        assertRefused(quickly("formula", "show", "no/such/folder.yaml"), "no/such/folder.yaml");
    }

    @Test
    void a_folder_is_refused() throws IOException {
        Files.createDirectory(folder.resolve("recipes"));

        Run run = quickly("sheet", "recipes", "--oils", "1kg");

        assertRefused(run, "recipes");
        assertThat(run.err()).contains("folder");
    }

    @Test
    void ten_megabytes_are_refused_unread() throws IOException {
        byte[] much = new byte[10_000_000];
        java.util.Arrays.fill(much, (byte) 'a');
        Files.write(folder.resolve("big.yaml"), much);

        Run run = quickly("sheet", "big.yaml", "--oils", "1kg");

        assertRefused(run, "big.yaml");
        assertThat(run.err()).contains("1 MB");
    }

    @Test
    void bytes_that_are_no_text_are_refused() throws IOException {
        Files.write(folder.resolve("bytes.yaml"), new byte[] {(byte) 0xC3, 0x28, (byte) 0xFF, (byte) 0xFE});

        assertRefused(quickly("sheet", "bytes.yaml", "--oils", "1kg"), "bytes.yaml");
    }

    @Test
    void a_device_that_never_ends_is_refused() {
        Path zero = Path.of("/dev/zero");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(zero));

        assertRefused(quickly("formula", "check", "/dev/zero"), "/dev/zero");
    }

    @Test
    void names_in_any_script_stay_as_they_are() {
        String names = "Морская соль صابون 🧼 海塩";
        Recipes.write(folder, "имя 🧼.yaml", Recipes.PLAIN.replace("recipe: Plain", "recipe: " + names));

        Run sheet = quickly("sheet", "имя 🧼.yaml", "--oils", "1kg");
        Run json = quickly("sheet", "имя 🧼.yaml", "--oils", "1kg", "--json");

        assertThat(sheet.exit()).isZero();
        assertThat(sheet.out()).contains(names);
        assertThat(json.out()).contains("\"" + names + "\"");
        assertThat(Run.in(folder, "formula", "check", "имя 🧼.yaml").out()).startsWith(names);
    }

    @Test
    void a_problem_names_files_and_keys_in_any_script() {
        Recipes.write(folder, "имя 🧼.yaml", Recipes.PLAIN.replace("castor", "касторка🫒"));

        Run run = quickly("sheet", "имя 🧼.yaml", "--oils", "1kg");

        assertRefused(run, "имя 🧼.yaml");
        assertThat(run.err()).contains("касторка🫒");
    }

    @Test
    void all_problems_are_said_at_once_up_to_twenty() {
        StringBuilder many = new StringBuilder(Recipes.PLAIN);
        for (int i = 0; i < 30; i++) {
            many.append("nonsense").append(i).append(": 1\n");
        }
        Recipes.write(folder, "bad.yaml", many.toString());

        Run run = quickly("sheet", "bad.yaml", "--oils", "1kg");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.problems()).hasSize(21);
        assertThat(run.problems().get(20)).isEqualTo("and 10 more");
    }

    @Test
    void fixed_additions_heavier_than_the_batch_are_refused_where_they_stand() {
        Recipes.write(
                folder,
                "bad.yaml",
                Recipes.PLAIN + "additions:\n  - of: sea-salt\n    amount: 900 g\n    stage: trace\n");

        Run run = quickly("sheet", "bad.yaml", "--total", "800g");

        assertRefused(run, "bad.yaml");
        assertThat(run.err()).contains("900");
    }

    static Stream<Arguments> options() {
        return Stream.of(
                Arguments.of("--total", List.of("--total", "0g")),
                Arguments.of("--total", List.of("--total", "-5g")),
                Arguments.of("--total", List.of("--total", "1500")),
                Arguments.of("--total", List.of("--total", "1,5kg")),
                Arguments.of("--total", List.of("--total", "lots")),
                Arguments.of("--total", List.of("--total", "999999999999999kg")),
                Arguments.of("--total", List.of("--total", "0.0000001g")),
                Arguments.of("--total", List.of("--total", "5 fl oz")),
                Arguments.of("--total", List.of("--total")),
                Arguments.of("--total", List.of("--total", "1kg", "--total", "2kg")),
                Arguments.of("--oils", List.of("--oils", "0 kg")),
                Arguments.of("--oils", List.of("--total", "1kg", "--oils", "1kg")),
                Arguments.of("--bars", List.of("--bars", "0x110g")),
                Arguments.of("--bars", List.of("--bars", "10x0g")),
                Arguments.of("--bars", List.of("--bars", "10")),
                Arguments.of("--bars", List.of("--bars", "1.5x100g")),
                Arguments.of("--bars", List.of("--bars", "10000x999999999999kg")),
                Arguments.of("--bars", List.of("--bars", "10x110g", "--total", "1kg")),
                Arguments.of("--cured", List.of("--total", "1kg", "--cured")),
                Arguments.of("--box", List.of("--box", "0x80x65mm")),
                Arguments.of("--box", List.of("--box", "300x80mm")),
                Arguments.of("--box", List.of("--box", "-300x80x65mm")),
                Arguments.of("--box", List.of("--box", "999999999999x99999999999x99999999999mm")),
                Arguments.of("--tube", List.of("--tube", "300x0mm")),
                Arguments.of("--tube", List.of("--box", "300x80x65mm", "--tube", "300x76mm")),
                Arguments.of("--cavities", List.of("--cavities", "0x95ml")),
                Arguments.of("--cavities", List.of("--cavities", "12x0ml")),
                Arguments.of("--cavities", List.of("--cavities", "12x95ml", "--box", "300x80x65mm")),
                Arguments.of("--water-fill", List.of("--water-fill", "0g")),
                Arguments.of("--water-fill", List.of("--water-fill", "1450ml")),
                Arguments.of("--usual", List.of("--usual", "1520g")),
                Arguments.of("--usual", List.of("--usual", "=other.yaml")),
                Arguments.of("--usual", List.of("--usual", "0g=plain.yaml")),
                Arguments.of("--hold-back", List.of("--total", "1kg", "--hold-back", "100%")),
                Arguments.of("--hold-back", List.of("--total", "1kg", "--hold-back", "-1%")),
                Arguments.of("--hold-back", List.of("--total", "1kg", "--hold-back", "2")),
                Arguments.of("--hold-back", List.of("--total", "1kg", "--hold-back", "99.9999999999999%")),
                Arguments.of("--balances", List.of("--total", "1kg", "--balances", "kitchen")),
                Arguments.of("--balances", List.of("--total", "1kg", "--balances", "kitchen:1g:5kg")),
                Arguments.of("--balances", List.of("--total", "1kg", "--balances", "kitchen:5kg:0g")),
                Arguments.of("--balances", List.of("--total", "1kg", "--balances", "kitchen:5kg:1g:V")),
                Arguments.of("--vessels", List.of("--total", "1kg", "--vessels", "lye jug")),
                Arguments.of("--vessels", List.of("--total", "1kg", "--vessels", "lye mug:300g")),
                Arguments.of("--vessels", List.of("--total", "1kg", "--vessels", "jug kelp:300g")),
                Arguments.of("--purity", List.of("--total", "1kg", "--purity", "naoh=0")),
                Arguments.of("--purity", List.of("--total", "1kg", "--purity", "naoh=110")),
                Arguments.of("--purity", List.of("--total", "1kg", "--purity", "soda=98")),
                Arguments.of("--cut", List.of("--total", "1kg", "--cut", "25mm")),
                Arguments.of("--cut", List.of("--box", "300x80x65mm", "--cut", "0mm")),
                Arguments.of("--cut", List.of("--box", "300x80x65mm", "--cut", "400mm")),
                Arguments.of("--cut", List.of("--cavities", "12x95ml", "--cut", "25mm")),
                Arguments.of("--cut", List.of("--tube", "300x76mm", "--cut", "25x30mm")),
                Arguments.of("--cut", List.of("--box", "300x80x65mm", "--cut", "25mm", "--trim", "65mm")),
                Arguments.of("--bars", List.of("--bars", "10x110g", "--box", "300x80x65mm", "--cut", "25mm")),
                Arguments.of("--blade", List.of("--total", "1kg", "--blade", "1mm")),
                Arguments.of("--ends", List.of("--box", "300x80x65mm", "--ends", "5mm")),
                Arguments.of("--trim", List.of("--box", "300x80x65mm", "--cut", "25mm", "--trim", "-3mm")),
                Arguments.of("--colour", List.of("--total", "1kg", "--colour", "blue")));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("options")
    void an_option_that_makes_no_sense_is_refused_by_its_name(String option, List<String> typed) {
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN);
        List<String> args = new java.util.ArrayList<>(List.of("sheet", "plain.yaml"));
        args.addAll(typed);

        Run run = quickly(args.toArray(String[]::new));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(1);
        assertThat(run.err()).matches(Pattern.quote(option) + ": [^\\n]+; [^\\n]+\\n");
    }

    @Test
    void what_is_wrong_with_options_and_file_is_said_together() {
        Run run = quickly("sheet", "none.yaml", "--total", "0g", "--hold-back", "120%", "--purity", "koh=0");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.problems()).hasSize(4);
        assertThat(run.problems())
                .extracting(line -> line.substring(0, line.indexOf(':')))
                .containsExactlyInAnyOrder("--total", "--hold-back", "--purity", "none.yaml");
    }

    @Test
    void a_usual_masss_formula_is_judged_in_its_own_file() {
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN);
        Recipes.write(folder, "other.yaml", Recipes.PLAIN.replace("superfat: 6 %", "superfat: six"));

        Run run = quickly("sheet", "plain.yaml", "--usual", "1520g=other.yaml");

        assertRefused(run, "other.yaml");
        assertThat(run.err()).startsWith("other.yaml:7:");
    }

    @Test
    void a_formula_in_percent_does_not_say_how_much() {
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN);

        Run run = quickly("sheet", "plain.yaml");

        assertRefused(run, "plain.yaml");
        assertThat(run.err()).contains("--total 1500g");
    }

    @Test
    void words_that_are_no_command_are_answered_with_the_nearest() {
        assertThat(quickly("shete", "x.yaml").err()).contains("did you mean sheet");
        assertThat(quickly("sheet", "x.yaml", "--totla", "1kg").err()).contains("did you mean --total");
        assertThat(quickly("formula", "chek", "x.yaml").err()).contains("did you mean check");
        assertThat(quickly("sheet", "x.yaml", "y.yaml").err()).contains("y.yaml");
        assertThat(quickly("sheet").err()).contains("FILE");
        assertThat(quickly("help", "shete").err()).contains("did you mean sheet");
    }

    @Test
    void an_argument_that_looks_like_a_list_of_arguments_is_only_a_name() throws IOException {
        Files.writeString(folder.resolve("args"), "version\n", StandardCharsets.UTF_8);

        Run run = quickly("@" + folder.resolve("args"));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }

    private Run quickly(String... args) {
        Instant start = Instant.now();
        Run run = Run.in(folder, args);
        assertThat(Duration.between(start, Instant.now())).isLessThan(QUICK);
        return run;
    }

    private static void assertRefused(Run run, String file) {
        assertThat(run.exit()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems())
                .isNotEmpty()
                .allMatch(line -> line.matches(Pattern.quote(file) + ":\\d+:\\d+: [^\\n]+; [^\\n]+"));
    }
}
