package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.fill.Fill;
import lyewright.formula.NotebookText;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.words.Figures;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A notebook asked over HTTP: what is typed, what comes back. */
class NotebookPagesTest {

    private static final String RECIPE = """
            Harbour trial

            coconut oil 350 g
            olive (virgin) 350 g
            castor 50 g
            soda 108 g
            water 215 g
            lavender 20 g at trace
            """;

    private static final String UNNAMED = RECIPE.substring(RECIPE.indexOf("coconut"));

    @TempDir
    private static Path folder;

    private static StartServer server;

    @BeforeAll
    static void start() {
        server = new StartServer(folder);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    // Answered

    @Test
    void a_recipe_is_answered_with_its_superfat_before_there_is_a_workshop() throws Exception {
        HttpResponse<String> answer = server.post("/notebook/answer", "as", "text", "text", RECIPE);
        assertThat(answer.statusCode()).isEqualTo(200);
        MakingSheet sheet = sheet(RECIPE);
        assertThat(StartServer.text(answer))
                .contains("This is a " + Figures.fixed(sheet.sheetSuperfatPercent(), 1) + " % superfat, give or take ")
                .contains(sheet.howSure())
                .contains("As it stands it makes 1093 g of batter")
                .contains("Coconut oil 350 g")
                .contains("Sodium hydroxide (caustic soda) 108.0 g");
        assertThat(answer.body()).contains("<svg").doesNotContain("<html");
    }

    private static MakingSheet sheet(String text) {
        return ResolvedFormula.of(
                        NotebookText.read(text, Tables.bundled()).formula().orElseThrow(),
                        Tables.bundled(),
                        Purities.ASSUMED)
                .then(formula -> MakingSheet.of(formula, Fill.AS_WRITTEN, Equipment.USUAL))
                .orThrow();
    }

    @Test
    void a_recipe_without_a_name_is_answered_too() throws Exception {
        assertThat(StartServer.text(server.post("/notebook/answer", "text", UNNAMED)))
                .contains("superfat, give or take")
                .contains("The text says none yet.")
                .doesNotContain("Unnamed");
    }

    @Test
    void a_mould_says_how_often_it_takes_the_recipe() throws Exception {
        // 1093 g as it stands; 2164 g in the mould and 1 % held back are 2186 g, twice as much
        assertThat(StartServer.text(server.post("/notebook/answer", "text", RECIPE, "mouldText", "2164 g")))
                .contains("2164 g is twice this recipe.")
                .contains("Coconut oil 700 g")
                .contains("2164 g into the mould");
        assertThat(StartServer.text(server.post("/notebook/answer", "text", RECIPE, "mouldText", "300 x 80 x 65 mm")))
                .contains("Your loaf takes 1.4 times this recipe.");
    }

    @Test
    void a_mould_that_is_no_mould_does_not_take_the_answer_away() throws Exception {
        assertThat(StartServer.text(server.post("/notebook/answer", "text", RECIPE, "mouldText", "a bucket")))
                .contains("superfat, give or take")
                .contains("As it stands it makes 1093 g")
                .contains("does not say what the mould holds");
    }

    @Test
    void a_superfat_asked_for_is_answered_with_its_soda() throws Exception {
        assertThat(StartServer.text(
                        server.post("/notebook/answer", "text", UNNAMED.replace("soda 108 g", "superfat 5 %"))))
                .containsPattern("This is a 5\\.[01] % superfat, give or take .*It takes 11[0-9]\\.[0-9] g of soda\\.");
    }

    @Test
    void too_much_soda_is_said_to_stop_and_its_weights_are_crossed() throws Exception {
        HttpResponse<String> answer =
                server.post("/notebook/answer", "text", RECIPE.replace("soda 108 g", "soda 140 g"));
        assertThat(StartServer.text(answer))
                .contains("alkali for")
                .contains("more than these oils take")
                .contains(" stop. ")
                .contains("Not to be made as it stands.")
                .doesNotContain("{}");
        assertThat(answer.body()).contains("data-stopped=\"true\"");
    }

    @Test
    void ounces_and_pounds_are_read() throws Exception {
        String ounces = "coconut 12 oz\nolive (virgin) 1.5 lb\nsoda 5 oz\nwater 10 oz";
        assertThat(StartServer.text(server.post("/notebook/answer", "text", ounces)))
                .contains("superfat, give or take");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u2022 coconut oil\t350 g\r\n\u2022 olive (virgin)\u00a0350\u00a0g\r\n* castor 50g\r\nsoda 108 g\r\nwater 215 g",
                "350g coconut\n350 g olive (virgin)\n50g castor\n108 g soda\n215g water",
                "\n\n   coconut oil   350 g  \n\tolive (virgin)\t350 g\ncastor: 50 g\nsoda = 108 g\nwater - 215 g\n\n"
            })
    void what_is_copied_from_elsewhere_is_read(String pasted) throws Exception {
        String plain = "coconut oil 350 g\nolive (virgin) 350 g\ncastor 50 g\nsoda 108 g\nwater 215 g\nrecipe: X";
        String superfat = Figures.fixed(sheet(plain).sheetSuperfatPercent(), 1);
        assertThat(StartServer.text(server.post("/notebook/answer", "text", pasted)))
                .contains(superfat + " % superfat");
    }

    // Troubles

    @Test
    void a_line_that_is_wrong_is_told_with_its_number_and_what_to_do() throws Exception {
        HttpResponse<String> page = server.post("/notebook", "text", RECIPE.replace("castor", "castro"));
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(StartServer.text(page))
                .contains("Line 5 castro 50 g")
                .contains("'castro' is not known. Did you mean castor oil?")
                .doesNotContain("give or take");
        assertThat(page.body()).contains("castro 50 g\n").contains("value=\"5:castor oil 50 g\"");
    }

    @Test
    void what_is_chosen_for_a_line_takes_its_place() throws Exception {
        String wrong = RECIPE.replace("castor", "castro");
        HttpResponse<String> page = server.post("/notebook", "text", wrong, "choose", "5:castor 50 g");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(StartServer.text(page)).contains("superfat, give or take");
        assertThat(page.body()).contains("olive (virgin) 350 g\ncastor 50 g\nsoda 108 g");
        assertThat(server.post("/notebook", "text", wrong, "choose", "99:castor 50 g")
                        .body())
                .contains("castro 50 g");
        assertThat(server.post("/notebook", "text", wrong, "choose", "nonsense").body())
                .contains("castro 50 g");
    }

    @Test
    void a_text_that_is_not_all_there_is_told_what_is_still_to_come() throws Exception {
        assertThat(StartServer.text(server.post("/notebook/answer", "text", "coconut oil 350 g")))
                .contains("Still to come: its soda or a superfat and its water.")
                .doesNotContain("Line 1");
        assertThat(server.post("/notebook", "text", "coconut oil 350 g").statusCode())
                .isEqualTo(200);
    }

    @Test
    void the_line_being_typed_is_told_calmly() throws Exception {
        String half = "coconut oil 350 g\ncast";
        assertThat(server.post("/notebook/answer", "text", half, "caret", "2").body())
                .contains("data-typing=\"true\"")
                .doesNotContain("class=\"wrong\"");
        assertThat(server.post("/notebook/answer", "text", half, "caret", "1").body())
                .doesNotContain("data-typing")
                .contains("class=\"wrong\"");
    }

    @Test
    void an_answer_stays_only_while_the_one_line_being_typed_cannot_be_read() throws Exception {
        String half = RECIPE.replace("castor 50 g", "cast");
        assertThat(server.post("/notebook/answer", "text", half, "caret", "5", "only", "there")
                        .body())
                .contains("data-unread")
                .doesNotContain("#answer")
                .doesNotContain("#sheet");
        for (String[] where : new String[][] {{"5", ""}, {"4", "there"}, {"0", "there"}}) {
            HttpResponse<String> answer =
                    server.post("/notebook/answer", "text", half, "caret", where[0], "only", where[1]);
            assertThat(answer.body())
                    .contains("#answer")
                    .contains("#sheet")
                    .contains("#k-name-hint")
                    .doesNotContain("Harbour trial")
                    .containsPattern("<button class=\"quiet\" formaction=\"/notebook/keep\"");
        }
    }

    @Test
    void the_first_lines_are_typed_in_peace() throws Exception {
        String half = "lard 350 g\ncast";
        assertThat(StartServer.text(server.post("/notebook/answer", "text", half, "caret", "2", "only", "first")))
                .contains("Go on.");
        assertThat(StartServer.text(server.post("/notebook/answer", "text", half, "caret", "2")))
                .contains("The answer comes when line 2 is understood.");
    }

    @Test
    void it_is_said_which_lines_the_answer_waits_for() throws Exception {
        assertThat(StartServer.text(server.post("/notebook/answer", "text", RECIPE.replace("castor", "castro"))))
                .contains("The answer comes when line 5 is understood.")
                .contains("What to weigh comes with the answer.")
                .doesNotContain("give or take");
        assertThat(StartServer.text(server.post(
                        "/notebook/answer",
                        "text",
                        RECIPE.replace("castor", "castro").replace("soda", "sofa"))))
                .contains("The answer comes when lines 5 and 6 are understood.");
        assertThat(StartServer.text(server.post("/notebook/answer", "text", "coconut oil 350 g")))
                .contains("The answer comes when all is there.");
    }

    @Test
    void the_last_line_that_is_wrong_is_never_folded_away_alone() throws Exception {
        String seven =
                IntStream.range(0, 7).mapToObj(i -> "xyzzyx" + i + " 10 g").collect(Collectors.joining("\n"));
        assertThat(StartServer.text(server.post("/notebook/answer", "text", seven)))
                .contains("xyzzyx6 10 g")
                .doesNotContain("more");
        assertThat(StartServer.text(server.post("/notebook/answer", "text", seven + "\nxyzzyx7 10 g")))
                .contains("And 2 more");
    }

    @Test
    void a_first_line_that_could_be_weighed_is_said_to_be_the_name() throws Exception {
        assertThat(StartServer.text(
                        server.post("/notebook/answer", "text", "Castor\nlard 350 g\nsoda 45 g\nwater 120 g")))
                .contains("Line 1, Castor, is taken for the recipe's name.")
                .contains("Left empty, it is as the text says: Castor");
    }

    @Test
    void milk_without_a_place_is_asked_about_and_can_be_the_lyes() throws Exception {
        String milk = "lard 500 g\nsoda 65 g\nwater 60 g\ngoat milk 120 g";
        HttpResponse<String> asked = server.post("/notebook/answer", "text", milk);
        assertThat(StartServer.text(asked))
                .contains("When does 'goat milk' go in?")
                .contains("In the lye, as part of its water: freeze it first")
                .contains("Stirred in at trace")
                .doesNotContain("give or take");
        HttpResponse<String> chosen =
                server.post("/notebook", "text", milk, "choose", "4:goat milk 120 g in the lye as water");
        assertThat(StartServer.text(chosen))
                .contains("superfat, give or take")
                .contains("Freeze the milk, stand the jug in ice")
                .doesNotContain(" stop. ");
    }

    @Test
    void who_chooses_ounces_is_answered_in_ounces() throws Exception {
        assertThat(StartServer.text(server.post(
                        "/notebook/answer", "text", UNNAMED.replace("soda 108 g", "superfat 5 %"), "units", "ounces")))
                .containsPattern("It takes [0-9.]+ oz \\( [0-9.]+ g \\) of soda\\.")
                .contains("As it stands it makes 38.")
                .containsPattern("Coconut oil 12\\.3[0-9]* oz");
    }

    // Hostile and large

    @Test
    void pasted_scripts_come_back_as_text() throws Exception {
        String hostile =
                "<script>alert(1)</script> 350 g\n</textarea><img src=x onerror=alert(2)>\n\"'><svg onload=alert(3)> 5 g";
        for (String path : new String[] {"/notebook", "/notebook/answer", "/notebook/keep"}) {
            String body = server.post(
                            path,
                            "text",
                            hostile,
                            "mouldText",
                            "\"><script>alert(4)</script>",
                            "name",
                            "\"><script>alert(5)</script>",
                            "workshop",
                            "'><script>alert(6)</script>",
                            "before",
                            "\"><script>alert(7)</script>")
                    .body();
            assertThat(body)
                    .doesNotContain("<script>alert")
                    .doesNotContain("<img")
                    .doesNotContain("<svg onload");
        }
        assertThat(server.post("/notebook", "text", hostile).body())
                .contains("&lt;script&gt;alert(1)&lt;/script&gt; 350 g")
                .contains("&lt;/textarea&gt;&lt;img src=x onerror=alert(2)&gt;");
    }

    @Test
    void three_hundred_oils_are_answered_with_what_is_wrong_and_none_is_lost() throws Exception {
        String oils = IntStream.range(0, 300)
                .mapToObj(i -> "oil number" + i + " 10 g")
                .collect(Collectors.joining("\n"));
        HttpResponse<String> page = server.post("/notebook", "text", oils);
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("oil number0 10 g").contains("oil number299 10 g");
        assertThat(StartServer.text(page)).contains("Line 1 oil number0 10 g").contains("more");
        assertThat(page.body().split("class=\"line-trouble\"", -1)).hasSizeLessThanOrEqualTo(101);
    }

    @Test
    void a_hundred_kilobytes_and_more_are_refused_in_words_and_come_back_whole() throws Exception {
        String long1 = "coconut " + "x".repeat(100 * 1024) + " 350 g";
        HttpResponse<String> page = server.post("/notebook", "text", long1);
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(StartServer.text(page)).contains("The text is larger than 100 KB. Write one recipe");
        assertThat(page.body()).contains(long1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "coconut\u0001 350 g",
                "\ud83d\ude00 350 g",
                "\u202egnp.exe 5 g",
                "∞ g coconut",
                "%s%n 5 g",
                "${7*7} 5 g"
            })
    void signs_that_belong_in_no_recipe_are_answered(String text) throws Exception {
        assertThat(server.post("/notebook/answer", "text", text).statusCode()).isEqualTo(200);
        assertThat(server.post("/notebook", "text", text).statusCode()).isIn(200, 422);
    }

    @Test
    void a_nul_is_no_sign_at_all_and_is_refused_with_what_was_typed_beside_it() throws Exception {
        HttpResponse<String> page = server.post("/notebook", "text", "coconut\u0000 350 g");
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("coconut 350 g");
    }

    // As whole pages

    @Test
    void a_button_answers_by_a_whole_page() throws Exception {
        HttpResponse<String> page = server.post("/notebook", "text", RECIPE, "mouldText", "1500 g", "turn", "answer");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(StartServer.text(page))
                .contains("superfat, give or take")
                .contains("1500 g is 1.4 times this recipe");
        assertThat(page.body()).contains("<html").contains("value=\"1500 g\"").contains("coconut oil 350 g");
    }

    @Test
    void text_turns_into_boxes_and_back() throws Exception {
        String boxes = server.post("/notebook", "as", "text", "text", RECIPE, "turn", "rows")
                .body();
        assertThat(boxes)
                .contains("value=\"coconut oil\"")
                .contains("value=\"350 g\"")
                .contains("name=\"soda\" value=\"108 g\"")
                .contains("name=\"rowName\" value=\"Harbour trial\"")
                .contains("superfat, give or take");
        String text = server.post(
                        "/notebook",
                        "as",
                        "rows",
                        "rowName",
                        "Harbour trial",
                        "what",
                        "coconut oil",
                        "much",
                        "350",
                        "what",
                        "castor",
                        "much",
                        "50 g",
                        "soda",
                        "70",
                        "water",
                        "120",
                        "unit",
                        "g",
                        "turn",
                        "text")
                .body();
        assertThat(text)
                .contains("recipe: Harbour trial\ncoconut oil 350 g\ncastor 50 g\nsoda 70 g\nwater 120 g</textarea>");
    }

    @Test
    void what_is_wrong_with_a_box_is_told_beside_it() throws Exception {
        HttpResponse<String> page = server.post(
                "/notebook",
                "as",
                "rows",
                "what",
                "coconut oil",
                "much",
                "350",
                "what",
                "olvie",
                "much",
                "20",
                "soda",
                "much too much",
                "water",
                "120");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body())
                .containsPattern("id=\"row-1-trouble\">'olvie' is not known")
                .containsPattern("id=\"soda-box-trouble\">[^<]+")
                .containsPattern("id=\"row-0-trouble\"></p>")
                .contains("value=\"much too much\"");
    }

    @Test
    void the_example_reads_and_what_was_typed_comes_back() throws Exception {
        String example = server.post("/notebook", "text", "my own 5 lines", "turn", "example")
                .body();
        assertThat(example)
                .contains("superfat, give or take")
                .contains("name=\"before\" value=\"my own 5 lines\"")
                .contains("Put back what I typed");
        assertThat(server.post("/notebook", "text", "anything", "before", "my own 5 lines", "turn", "back")
                        .body())
                .contains("my own 5 lines</textarea>");
    }
}
