package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lyewright.formula.Formula;
import lyewright.makingsheet.Balance;
import lyewright.records.equipment.KeptBalance;
import lyewright.records.recipe.RecipeVersion;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of recipes as they are asked for and written to. */
class RecipePagesTest {

    private static final String NOBODY = "00000000-0000-7000-8000-000000000000";

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

    // The list

    @Test
    void a_workshop_without_a_recipe_is_led_to_the_notebook() {
        HttpResponse<String> list = shop.get("/recipes");
        assertThat(list.statusCode()).isEqualTo(200);
        assertThat(list.body()).contains("No recipe is kept yet").contains("href=\"/notebook\"");
    }

    @Test
    void the_list_leads_to_each_recipe_with_what_it_is() {
        String id = shop.keep(RecipeShop.example("tideline"));
        assertThat(shop.get("/recipes").body())
                .contains("href=\"/recipes/" + id + "\"")
                .contains("version 3 · for sale · 18 % superfat")
                .contains("coconut oil 80 %, house-olive 12 %, castor oil 8 %")
                .contains("class=\"pic pic-mark\"");
    }

    @Test
    void a_search_finds_name_oil_and_note_whatever_their_case() {
        shop.keep(RecipeShop.example("tideline"));
        shop.keep(RecipeShop.example("plain-castile"));
        assertThat(shop.get("/recipes?q=CASTILE").body())
                .contains("Plain Castile")
                .doesNotContain("Tideline");
        assertThat(shop.get("/recipes?q=castor").body()).contains("Tideline").doesNotContain("Plain Castile");
        assertThat(shop.get("/recipes?q=long+cure").body())
                .contains("Plain Castile")
                .doesNotContain("Tideline");
        assertThat(shop.get("/recipes?q=mango").body()).contains("Nothing has all of these words");
    }

    @Test
    void a_search_in_place_answers_only_what_was_found_and_going_back_answers_the_page() {
        shop.keep(RecipeShop.PLAIN);
        assertThat(shop.get("/recipes?q=plain", "HX-Request", "true").body())
                .contains("<div id=\"found\">")
                .doesNotContain("<html");
        assertThat(shop.get("/recipes?q=plain", "HX-Request", "true", "HX-History-Restore-Request", "true")
                        .body())
                .contains("<html");
    }

    @Test
    void a_search_for_a_script_is_only_words() {
        String page = shop.get("/recipes?q=%3Cscript%3Ealert(1)%3C/script%3E%22%27%25_")
                .body();
        assertThat(page)
                .contains("value=\"&lt;script>alert(1)&lt;/script>&#34;&#39;%_\"")
                .doesNotContain("<script>alert");
        assertThat(shop.get("/recipes?q=" + "x".repeat(4000)).statusCode()).isEqualTo(200);
    }

    @Test
    void a_page_shows_24_recipes_and_leads_to_the_next_with_the_same_search() {
        for (int i = 0; i < 30; i++) {
            shop.keep(RecipeShop.named("Bar " + (100 + i)));
        }
        String first = shop.get("/recipes?q=bar").body();
        assertThat(first.split("class=\"card\"")).hasSize(25);
        assertThat(first).contains("Page 1 of 2").contains("href=\"/recipes?q=bar&amp;page=2\"");
        String second = shop.get("/recipes?q=bar&page=2").body();
        assertThat(second.split("class=\"card\"")).hasSize(7);
        assertThat(shop.get("/recipes?page=99").body()).contains("There is nothing on this page");
        assertThat(shop.get("/recipes?page=-1").statusCode()).isEqualTo(200);
        assertThat(shop.get("/recipes?page=99999999999").statusCode()).isEqualTo(200);
    }

    @Test
    void a_page_of_24_drawn_bars_stays_under_150_kilobytes() {
        for (int i = 0; i < 24; i++) {
            shop.keep(RecipeShop.example("oat-and-linden").replace("Oat & Linden", "Oats " + i));
        }
        assertThat(shop.get("/recipes").body().getBytes(StandardCharsets.UTF_8).length)
                .isLessThan(150_000);
    }

    @Test
    void two_recipes_of_one_name_are_told_apart() {
        shop.book().add(RecipeShop.formula(RecipeShop.PLAIN)).orThrow();
        shop.book().add(RecipeShop.formula(RecipeShop.PLAIN)).orThrow();
        assertThat(shop.get("/recipes").body()).contains("first saved 25 Nov 2026");
    }

    @Test
    void what_is_typed_and_not_saved_stands_apart() {
        shop.shop().records().drafts().create(Optional.empty(), 0, "{}");
        assertThat(shop.get("/recipes").body())
                .contains("Not saved yet")
                .contains("A recipe without a name")
                .contains("href=\"/recipes/new?draft=");
        String id = shop.keep(RecipeShop.PLAIN);
        shop.shop().records().drafts().create(Optional.of(id), 1, "{}");
        assertThat(shop.get("/recipes").body()).contains("changes not saved yet");
        assertThat(shop.get("/recipes/" + id).body()).contains("Go on editing");
    }

    // A recipe

    static Stream<String> examples() {
        return Stream.of(
                "assessor-table",
                "harbour-shave",
                "kitchen-notebook",
                "lamp-room",
                "oat-and-linden",
                "plain-castile",
                "rope-walk-charcoal",
                "tideline");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void a_recipe_shows_what_it_comes_to_and_what_is_in_it(String name) {
        String text = RecipeShop.example(name);
        HttpResponse<String> page = shop.get("/recipes/" + shop.keep(text));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("pic-superfat")
                .contains("pic-mass")
                .contains("pic-acids")
                .contains("What is in it")
                .contains("Versions")
                .doesNotContain("{}");
        assertThat(page.body().getBytes(StandardCharsets.UTF_8).length).isLessThan(150_000);
        Formula formula = RecipeShop.formula(text);
        formula.oils().forEach(oil -> assertThat(page.body()).contains(WrittenWords.name(oil.key())));
        formula.additions().forEach(addition -> assertThat(page.body()).contains(WrittenWords.name(addition.of())));
    }

    @Test
    void a_recipe_in_percent_is_shown_for_a_kilogram_and_one_in_masses_as_written() {
        assertThat(shop.get("/recipes/" + shop.keep(RecipeShop.example("tideline")))
                        .body())
                .contains("for 1 kg of oils");
        assertThat(shop.get("/recipes/" + shop.keep(RecipeShop.example("kitchen-notebook")))
                        .body())
                .contains("as written: 500 g of oils");
    }

    @Test
    void every_figure_leads_to_why_it_is_that() {
        for (String name : List.of("tideline", "harbour-shave", "kitchen-notebook", "oat-and-linden")) {
            String page =
                    shop.get("/recipes/" + shop.keep(RecipeShop.example(name))).body();
            Matcher links =
                    Pattern.compile("href=\"(/why\\?[^\"]+)\">([^<]*)</a>").matcher(page);
            int found = 0;
            while (links.find()) {
                HttpResponse<String> why = shop.get(links.group(1).replace("&amp;", "&"));
                assertThat(why.statusCode()).as(links.group(1)).isEqualTo(200);
                found++;
            }
            assertThat(found).as(name).isGreaterThan(30);
        }
    }

    @Test
    void a_figure_and_its_why_are_of_the_same_sheet_on_the_workshops_own_balance() {
        KeptBalance coarse = shop.shop()
                .records()
                .equipment()
                .addBalance(Balance.parse("old:5kg:5g").orThrow())
                .orThrow();
        String id = shop.keep(RecipeShop.example("plain-castile"));
        String page = shop.get("/recipes/" + id).body();
        Matcher alkali = Pattern.compile("href=\"(/why[^\"]+)\">([0-9]+[05]) g</a>")
                .matcher(page.substring(page.indexOf("Sodium hydroxide (caustic soda)")));
        assertThat(alkali.find()).as("alkali to weigh, in steps of 5 g").isTrue();
        assertThat(shop.get(alkali.group(1).replace("&amp;", "&")).body())
                .contains("Sodium hydroxide")
                .contains(alkali.group(2));
        shop.shop().records().equipment().removeBalance(coarse.id()).orThrow();
    }

    @Test
    void a_recipe_that_leaves_alkali_says_so_before_all_else() {
        String id = shop.keep(RecipeShop.example("kitchen-notebook").replace("sodium: 71 g", "sodium: 90 g"));
        String page = shop.get("/recipes/" + id).body();
        assertThat(page).contains("not to be made as it stands").contains("data-level=\"stop\"");
        assertThat(page.indexOf("data-level=\"stop\"")).isLessThan(page.indexOf("What is in it"));
    }

    @Test
    void an_ordinary_bar_has_no_caution_of_care() {
        String page = shop.get("/recipes/" + shop.keep(RecipeShop.PLAIN)).body();
        assertThat(page).doesNotContain("data-level=\"care\"").doesNotContain("data-level=\"stop\"");
    }

    @Test
    void three_cautions_stand_on_the_page_and_the_others_are_folded() {
        String id = shop.keep(RecipeShop.example("tideline")
                .replace("superfat: 18 %", "superfat: 1 %")
                .replace("60 % of oils", "150 % of oils")
                .replace("2.2 % of oils", "9 % of oils"));
        String page = shop.get("/recipes/" + id).body();
        String face = page.substring(page.indexOf("class=\"beware\""), page.indexOf("and what to do"));
        assertThat(face.split("class=\"caution\"")).hasSize(4);
    }

    static Stream<String> names() {
        return Stream.of(
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "it's \"quoted\" & 'single'",
                "صابون الغار",
                "\u2067esrever\u2069",
                "🧼 Морская соль",
                "{{7*7}} ${7*7}",
                "n".repeat(200));
    }

    @ParameterizedTest
    @MethodSource("names")
    void any_name_stays_a_name_on_every_page(String name) {
        String id = shop.keep(RecipeShop.named(name));
        String escaped = name.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        for (String path : List.of(
                "/recipes",
                "/recipes/" + id,
                "/recipes/" + id + "/versions/1",
                "/recipes/" + id + "/compare",
                "/recipes/compare?a=" + id)) {
            HttpResponse<String> page = shop.get(path);
            assertThat(page.statusCode()).as(path).isEqualTo(200);
            assertThat(page.body())
                    .as(path)
                    .contains(escaped)
                    .doesNotContain("<script>alert")
                    .doesNotContain("<img src=x");
        }
        shop.post("/recipes/" + id + "/delete");
        assertThat(shop.get("/recipes?deleted=" + id).body()).contains(escaped).doesNotContain("<script>alert");
        assertThat(shop.get("/recipes/deleted").body()).doesNotContain("<script>alert");
    }

    @Test
    void without_a_second_recipe_the_other_is_asked_for_and_the_former_version_offered() {
        String id = shop.keep(RecipeShop.PLAIN);
        assertThat(shop.get("/recipes/compare?a=" + id).body())
                .contains("choose a recipe")
                .doesNotContain("Nothing differs")
                .doesNotContain("Or with its version before");
        shop.book()
                .save(id, 1, RecipeShop.formula(RecipeShop.PLAIN.replace("6 %", "7 %")), true, "")
                .orThrow();
        assertThat(shop.get("/recipes/compare?a=" + id + "&b=").body())
                .contains("<a href=\"/recipes/" + id + "/compare\">Or with its version before</a>");
    }

    @Test
    void notes_and_reasons_are_words_only() {
        String id = shop.keep(RecipeShop.PLAIN.replace("use: own", "use: own\nnotes: '<img src=x onerror=alert(1)>'"));
        shop.book()
                .save(id, 1, RecipeShop.formula(RecipeShop.PLAIN), true, "<b onclick=x>why</b>")
                .orThrow();
        assertThat(shop.get("/recipes/" + id).body())
                .doesNotContain("<b onclick")
                .contains("&lt;b onclick=x&gt;why");
        assertThat(shop.get("/recipes/" + id + "/versions/1").body())
                .doesNotContain("<img src=x")
                .contains("&lt;img src=x onerror=alert(1)&gt;");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/recipes/" + NOBODY,
                "/recipes/none",
                "/recipes/%3Cscript%3E",
                "/recipes/" + NOBODY + "/versions/1",
                "/recipes/" + NOBODY + "/compare",
                "/recipes/" + NOBODY + "/1.yaml",
                "/recipes/compare",
                "/recipes/compare?a=" + NOBODY,
            })
    void what_is_not_here_is_said_not_to_be_here(String path) {
        HttpResponse<String> page = shop.get(path);
        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("recipe").doesNotContain("<script>alert");
    }

    @ParameterizedTest
    @ValueSource(strings = {"delete", "undelete", "duplicate", "versions/1/again", "photograph", "photograph/remove"})
    void nothing_can_be_done_to_a_recipe_that_is_not_here(String what) {
        assertThat(shop.post("/recipes/" + NOBODY + "/" + what).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "2", "-1", "x", "99999999999", "1.5"})
    void a_version_that_is_not_here_is_said_not_to_be_here(String number) {
        String id = shop.keep(RecipeShop.PLAIN);
        assertThat(shop.get("/recipes/" + id + "/versions/" + number).statusCode())
                .isEqualTo(404);
        assertThat(shop.get("/recipes/" + id + "/" + number + ".yaml").statusCode())
                .isEqualTo(404);
        assertThat(shop.get("/recipes/" + id + "/compare?a=1&b=" + number).statusCode())
                .isEqualTo(404);
        assertThat(shop.post("/recipes/" + id + "/versions/" + number + "/again")
                        .statusCode())
                .isEqualTo(404);
    }

    // Versions

    private String changedOnce() {
        String id = shop.keep(RecipeShop.PLAIN);
        Formula milder = RecipeShop.formula(RecipeShop.PLAIN.replace("superfat: 6 %", "superfat: 8 %"));
        shop.book().save(id, 1, milder, true, "kinder to dry hands").orThrow();
        return id;
    }

    @Test
    void each_version_says_when_and_why_and_an_old_one_can_be_read() {
        String id = changedOnce();
        shop.book().markMade(id, 1).orThrow();
        assertThat(shop.get("/recipes/" + id).body())
                .contains("kinder to dry hands")
                .contains("saved 25 Nov 2026")
                .contains("first made 25 Nov 2026, so it stays as it is")
                .contains("/compare?a=1&amp;b=2");
        assertThat(shop.get("/recipes/" + id + "/versions/1").body())
                .contains("An old version. The newest is version 2.")
                .contains("6 % asked for")
                .contains("version=1")
                .contains("/make?recipe=" + id + "&amp;version=1");
    }

    @Test
    void an_old_version_is_made_the_newest_again_as_the_next() {
        String id = changedOnce();
        String next = RecipeShop.onwards(shop.post("/recipes/" + id + "/versions/1/again"));
        assertThat(shop.get(next).body()).contains("as version 3; all others stay");
        RecipeVersion newest = shop.book().find(id).orElseThrow().newest();
        assertThat(newest.number()).isEqualTo(3);
        assertThat(newest.why()).isEqualTo("version 1 again");
        assertThat(newest.formula().superfat().orElseThrow()).hasToString("6 %");
        shop.post("/recipes/" + id + "/versions/3/again");
        assertThat(shop.book().versions(id)).hasSize(3);
    }

    // Export

    @Test
    void a_version_is_exported_as_it_is_kept() {
        String id = shop.keep(RecipeShop.example("oat-and-linden"));
        HttpResponse<byte[]> file = shop.bytes("/recipes/" + id + "/2.yaml");
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Type").orElse("")).startsWith("application/yaml");
        assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
                .isEqualTo("attachment; filename=\"oat-linden-2.yaml\"; filename*=UTF-8''Oat%20%26%20Linden%202.yaml");
        assertThat(new String(file.body(), StandardCharsets.UTF_8))
                .isEqualTo(shop.book().version(id, 2).orElseThrow().text());
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_name_of_an_exported_file_is_safe_for_any_recipe(String name) {
        String id = shop.keep(RecipeShop.named(name));
        String disposition = shop.bytes("/recipes/" + id + "/1.yaml")
                .headers()
                .firstValue("Content-Disposition")
                .orElse("");
        assertThat(disposition)
                .matches("attachment; filename=\"[a-z0-9-]{1,80}\\.yaml\"; filename\\*=UTF-8''[A-Za-z0-9%._~-]{1,800}");
    }

    @Test
    void an_accent_does_not_part_a_word_in_the_name_of_a_file() {
        String id = shop.keep(RecipeShop.named("Crème brûlée"));
        assertThat(shop.bytes("/recipes/" + id + "/1.yaml")
                        .headers()
                        .firstValue("Content-Disposition")
                        .orElse(""))
                .startsWith("attachment; filename=\"creme-brulee-1.yaml\";");
    }

    // Duplicate, delete, put back

    @Test
    void a_copy_is_a_recipe_of_its_own() {
        String id = shop.keep(RecipeShop.named("n".repeat(200)));
        String copy = RecipeShop.onwards(shop.post("/recipes/" + id + "/duplicate"));
        assertThat(RecipeShop.idIn(copy)).isNotEqualTo(id);
        assertThat(shop.get(copy).body()).contains("This is the copy.").contains(", a copy");
    }

    @Test
    void a_deleted_recipe_can_be_put_back_at_once_and_later() {
        String id = shop.keep(RecipeShop.PLAIN);
        String list = RecipeShop.onwards(shop.post("/recipes/" + id + "/delete"));
        assertThat(shop.get(list).body())
                .contains("Plain is deleted.")
                .contains("action=\"/recipes/" + id + "/undelete\"");
        assertThat(shop.get("/recipes").body()).doesNotContain("Plain");
        assertThat(shop.get("/recipes/deleted").body())
                .contains("/recipes/" + id)
                .contains("deleted 25 Nov 2026");
        assertThat(shop.get("/recipes/" + id).body())
                .contains("This recipe was deleted on 25 Nov 2026")
                .doesNotContain("Make it</a>");
        assertThat(shop.get(RecipeShop.onwards(shop.post("/recipes/" + id + "/undelete")))
                        .body())
                .contains("Plain is back.");
        assertThat(shop.get(list).body()).doesNotContain("is deleted.");
    }

    @Test
    void deleting_twice_and_putting_back_twice_is_harmless() {
        String id = shop.keep(RecipeShop.PLAIN);
        for (String what : List.of("delete", "delete", "undelete", "undelete", "delete")) {
            assertThat(shop.post("/recipes/" + id + "/" + what).statusCode())
                    .as(what)
                    .isEqualTo(303);
        }
        assertThat(shop.book().find(id).orElseThrow().deletedAt()).isPresent();
    }

    @Test
    void what_is_deleted_is_neither_copied_nor_changed() {
        String id = changedOnce();
        shop.post("/recipes/" + id + "/delete");
        assertThat(shop.post("/recipes/" + id + "/duplicate").statusCode()).isEqualTo(409);
        assertThat(shop.post("/recipes/" + id + "/versions/1/again").statusCode())
                .isEqualTo(409);
        assertThat(shop.post("/recipes/" + id + "/duplicate").body()).contains("This recipe is not there any more");
        assertThat(shop.book().versions(id)).hasSize(2);
    }

    @Test
    void a_recipe_kept_from_the_notebook_leads_on_to_the_mould_that_was_said() {
        String id = shop.keep(RecipeShop.PLAIN);
        String page = "/recipes/" + id + "?done=notebook";
        assertThat(shop.get(page).body())
                .contains("<p>Kept.</p>")
                .contains("href=\"/make?recipe=" + id + "\">Make it</a>");
        assertThat(shop.get(page + "&inside=300x80x65+mm&mould=typed&much=full").body())
                .contains("href=\"/make?recipe=" + id
                        + "&amp;mould=typed&amp;inside=300x80x65+mm&amp;much=full\">Make it in your mould</a>");
        assertThat(shop.get(page + "&amount=1500+g&much=total").body())
                .contains("&amp;much=total&amp;amount=1500+g\">Make 1500 g of it</a>");
        assertThat(shop.get(page + "&mould=%22%3E%3Cscript%3E").body()).doesNotContain("\"><script>");
    }

    @Test
    void a_word_that_somebody_made_up_tells_nothing() {
        String id = shop.keep(RecipeShop.PLAIN);
        assertThat(shop.get("/recipes/" + id + "?done=%3Cscript%3E").body()).doesNotContain("role=\"status\"");
    }
}
