package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Formula files on their way in: what is wrong is told with its line, and nothing that is kept is written over. */
class ImportPagesTest {

    private static final String IMPORT = "/recipes/import";

    @TempDir
    static Path home;

    private static RecipeShop shop;

    @BeforeAll
    static void open() {
        shop = new RecipeShop(home);
    }

    @BeforeEach
    void empty() {
        shop.empty();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private HttpResponse<String> file(byte[] content) {
        return shop.upload(IMPORT, "file", "recipe.yaml", "application/yaml", content);
    }

    private HttpResponse<String> file(String content) {
        return file(content.getBytes(StandardCharsets.UTF_8));
    }

    private HttpResponse<String> pasted(String text) {
        return shop.post(IMPORT, "text", text);
    }

    private long kept() {
        return shop.book().list(Search.all(1, 1)).total();
    }

    // What goes in

    @Test
    void a_file_of_a_new_name_is_a_new_recipe() {
        String next = RecipeShop.onwards(file(RecipeShop.example("tideline")));
        assertThat(shop.get(next).body()).contains("Tideline is a new recipe: there was none of its name.");
        assertThat(shop.book()
                        .find(RecipeShop.idIn(next))
                        .orElseThrow()
                        .newest()
                        .number())
                .isEqualTo(3);
    }

    @Test
    void a_pasted_text_is_as_good_as_a_file_and_keeps_its_remarks() {
        String next = RecipeShop.onwards(pasted(RecipeShop.example("lamp-room").replace("\n", "\r\n")));
        assertThat(shop.book()
                        .find(RecipeShop.idIn(next))
                        .orElseThrow()
                        .newest()
                        .text())
                .contains("# into the water before the soda");
    }

    @Test
    void a_file_of_a_known_name_is_the_next_version_and_the_old_one_stays() {
        String id = shop.keep(RecipeShop.PLAIN);
        String before = shop.book().version(id, 1).orElseThrow().text();
        String next = RecipeShop.onwards(file(RecipeShop.PLAIN.replace("superfat: 6 %", "superfat: 7 %")));
        assertThat(shop.get(next).body()).contains("kept as version 2 of Plain; the versions before it stay");
        assertThat(shop.book().version(id, 1).orElseThrow().text()).isEqualTo(before);
        assertThat(shop.book().versions(id)).hasSize(2);
    }

    @Test
    void a_file_that_is_kept_already_writes_nothing() {
        String id = shop.keep(RecipeShop.PLAIN);
        String next = RecipeShop.onwards(file(RecipeShop.PLAIN));
        assertThat(shop.get(next).body()).contains("Nothing was written: version 1 of Plain holds just this already");
        assertThat(shop.book().versions(id)).hasSize(1);
    }

    @Test
    void what_is_exported_is_imported_as_the_same() {
        String id = shop.keep(RecipeShop.example("rope-walk-charcoal"));
        byte[] exported = shop.bytes("/recipes/" + id + "/1.yaml").body();
        assertThat(RecipeShop.onwards(file(exported))).isEqualTo("/recipes/" + id + "?done=kept");
    }

    @Test
    void a_file_that_did_not_come_whole_is_asked_for_again() {
        HttpResponse<String> answer = shop.send(
                "/recipes/import",
                "multipart/form-data; boundary=seam",
                "--seam\r\nContent-Disposition: form-data; name=\"file\"".getBytes(StandardCharsets.UTF_8));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("did not come whole").contains("<h1>Import a formula file</h1>");
        assertThat(kept()).isZero();
    }

    @Test
    void of_two_recipes_with_one_name_neither_is_chosen() {
        shop.book().add(RecipeShop.formula(RecipeShop.PLAIN)).orThrow();
        shop.book().add(RecipeShop.formula(RecipeShop.PLAIN)).orThrow();
        HttpResponse<String> answer = file(RecipeShop.PLAIN.replace("superfat: 6 %", "superfat: 7 %"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("There are 2 recipes called 'Plain'").contains("superfat: 7 %");
        assertThat(kept()).isEqualTo(2);
    }

    // What does not

    static Stream<Arguments> wrong() {
        String plain = RecipeShop.PLAIN;
        return Stream.of(
                Arguments.of("oils that do not add up", plain.replace("castor: 10 %", "castor: 9 %"), 4, "99"),
                Arguments.of("an oil under nothing", plain.replace("10 %", "-10 %"), 7, "-10"),
                Arguments.of("a word nobody knows", plain + "superfatt: 6 %\n", 11, "superfatt"),
                Arguments.of("a superfat over all", plain.replace("6 %", "150 %"), 9, "150"),
                Arguments.of("no water", plain.replace("32 % lye", "0 g"), 10, "0 g"),
                Arguments.of("an oil nobody knows", plain.replace("castor", "castro"), 7, "castor"),
                Arguments.of("a list", "- coconut\n- castor\n", 1, "list"),
                Arguments.of("aliases that explode", "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n", 1, "a"),
                Arguments.of("brackets without end", "[".repeat(20_000), 1, "nested"),
                Arguments.of("something else than YAML", "{ : [\n", 1, ""),
                Arguments.of("a word twice", plain + "superfat: 6 %\n", 11, "superfat"),
                Arguments.of("a comma in a number", plain.replace("6 %", "6,5 %"), 9, "6.5"),
                Arguments.of("no end", plain.replace("superfat: 6 %", "superfat: .inf"), 9, ".inf"),
                Arguments.of("neither superfat nor alkali", plain.replace("superfat: 6 %\n", ""), 1, "superfat"),
                Arguments.of("a web page", "<html><script>alert(1)</script></html>", 1, "not a formula"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void what_is_wrong_is_told_with_its_line_and_the_text_comes_back(String what, String text, int line, String word) {
        HttpResponse<String> answer = pasted(text);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Nothing was written")
                .contains("Line " + line + ", column ")
                .contains(word)
                .contains(escaped(text))
                .doesNotContain("<script>alert");
        assertThat(kept()).isZero();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    @Test
    void the_line_itself_is_shown_with_the_word_marked() {
        assertThat(pasted(RecipeShop.PLAIN.replace("6 %", "6,5 %")).body())
                .contains("<code>superfat: <mark>6,5</mark> %</code>");
    }

    @Test
    void all_that_is_wrong_is_told_at_once() {
        String twice =
                RecipeShop.PLAIN.replace("superfat: 6 %", "superfat: 6,5 %").replace("32 % lye", "many");
        assertThat(pasted(twice).body())
                .contains("2 things are not right")
                .contains("Line 9, column")
                .contains("Line 10, column");
    }

    @Test
    void a_formula_that_makes_no_sheet_is_not_kept() {
        String dry = RecipeShop.PLAIN + """
                additions:
                  - of: goat-milk
                    amount: 200 % of oils
                    stage: lye
                    replaces: water
                """;
        HttpResponse<String> answer = pasted(dry);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("water").contains("Line 1");
        assertThat(kept()).isZero();
    }

    static Stream<Arguments> alien() {
        return Stream.of(
                Arguments.of("a zip", "PK\u0003\u0004rest".getBytes(StandardCharsets.ISO_8859_1), "a zip archive"),
                Arguments.of("a JPEG", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0}, "a picture"),
                Arguments.of("UTF-16", "\uFEFFrecipe".getBytes(StandardCharsets.UTF_16), "UTF-16"),
                Arguments.of("Latin-1", "recipe: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1), "not UTF-8"),
                Arguments.of(
                        "a page",
                        "<!DOCTYPE html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8),
                        "a web page"),
                Arguments.of(
                        "a drawing",
                        "<svg xmlns='x'><script>alert(1)</script></svg>".getBytes(StandardCharsets.UTF_8),
                        "a drawing"),
                Arguments.of(
                        "a control character",
                        "recipe: Pl\u0007ain".getBytes(StandardCharsets.UTF_8),
                        "control character"),
                Arguments.of("a NUL", "recipe: \0".getBytes(StandardCharsets.UTF_8), "control character"),
                Arguments.of("a space", " \n".getBytes(StandardCharsets.UTF_8), "empty"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("alien")
    void a_file_that_is_no_formula_is_said_to_be_what_it_is(String what, byte[] content, String words) {
        HttpResponse<String> answer = file(content);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Nothing was written")
                .contains(words)
                .doesNotContain("<script>alert");
        assertThat(kept()).isZero();
    }

    @Test
    void more_than_a_megabyte_is_refused() {
        byte[] much = new byte[(1 << 20) + 1];
        Arrays.fill(much, (byte) 'a');
        assertThat(file(much).body()).contains("larger than 1 MB");
        assertThat(pasted("a".repeat((1 << 20) + 1)).body()).contains("larger than 1 MB");
    }

    @Test
    void neither_file_nor_text_is_said_to_be_missing() {
        assertThat(pasted("  ").body()).contains("There is neither a file nor a text");
        assertThat(file(new byte[0]).statusCode()).isEqualTo(422);
    }

    @Test
    void a_file_name_is_words_only() {
        HttpResponse<String> answer = shop.upload(
                IMPORT, "file", "<script>alert(1)</script>.yaml", "text/html", "x".getBytes(StandardCharsets.UTF_8));
        assertThat(answer.body())
                .doesNotContain("<script>alert")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;.yaml");
    }

    @Test
    void a_mark_before_the_text_is_no_part_of_it() {
        assertThat(file("\uFEFF" + RecipeShop.PLAIN).statusCode()).isEqualTo(303);
    }
}
