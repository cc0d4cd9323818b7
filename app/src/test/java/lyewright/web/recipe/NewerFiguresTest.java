package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.Formula;
import lyewright.formula.OwnMaterial;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.setting.Units;
import lyewright.web.TestWorkshop;
import lyewright.web.make.MakePages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A certificate that comes after a recipe was kept changes no version, and no page keeps silent about it. */
class NewerFiguresTest {

    private static final String DIFFERS = "Olive oil (virgin): saponification value 190 (184 to 196) mg KOH/g";
    private static final String OWN = "188 ± 1 mg KOH/g (certificate L-204) in Stores.";
    private static final Pattern STRIP = Pattern.compile("<div id=\"strip\".*?</div>", Pattern.DOTALL);

    @TempDir
    private Path home;

    private TestWorkshop workshop;
    private String recipe;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(
                home, Units.GRAMS, shop -> List.of(new EditorPages(shop), new RecipePages(shop), new MakePages(shop)));
        recipe = book().add(RecipeShop.formula(RecipeShop.PLAIN)).orThrow().recipeId();
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private RecipeBook book() {
        return workshop.shop().records().recipes();
    }

    private RecipeVersion newest() {
        return book().find(recipe).orElseThrow().newest();
    }

    private void certify(String figures) {
        Formula with = RecipeShop.formula(RecipeShop.PLAIN + "materials:\n  olive-virgin: {" + figures + "}\n");
        OwnMaterial own = with.materials().get(0);
        workshop.shop()
                .records()
                .materials()
                .findKey("olive-virgin")
                .ifPresentOrElse(
                        kept -> workshop.shop()
                                .records()
                                .materials()
                                .change(kept.id(), own)
                                .orThrow(),
                        () -> workshop.shop().records().materials().add(own).orThrow());
    }

    private void certify() {
        certify("saponification value: 188 ± 1, source: certificate L-204");
    }

    private HttpResponse<String> press(String address, String... form) throws Exception {
        HttpResponse<String> answer = workshop.post(address, form);
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer;
    }

    /** The editor's form as a browser would send it back untouched. */
    private HttpResponse<String> send(String page, String pressed) throws Exception {
        List<String> sent = new ArrayList<>();
        FormulaForm form = FormulaForm.of(newest().formula());
        for (Map.Entry<String, String> field : form.fields().entrySet()) {
            sent.addAll(List.of(field.getKey(), field.getValue()));
        }
        for (String hidden : List.of("draft", "revision", "window", "serial", "based-on")) {
            Matcher found = Pattern.compile("name=\"" + hidden + "\" value=\"([^\"]*)\"")
                    .matcher(page);
            assertThat(found.find()).as(hidden).isTrue();
            sent.addAll(List.of(hidden, found.group(1)));
        }
        sent.addAll(List.of("do", pressed));
        return workshop.post(edit(), sent.toArray(String[]::new));
    }

    private String edit() {
        return "/recipes/" + recipe + "/edit";
    }

    private String page(String address) throws Exception {
        HttpResponse<String> page = workshop.get(address);
        assertThat(page.statusCode()).isEqualTo(200);
        return page.body();
    }

    /** What the editor shows of the superfat, its range, alkali and water. */
    private static String figures(String editor) {
        Matcher found = STRIP.matcher(editor);
        assertThat(found.find()).isTrue();
        return found.group().replaceAll("<[^>]*>", "").replaceAll("\\s+", " ").strip();
    }

    @Test
    void the_pages_of_a_version_say_which_figures_it_has_not() throws Exception {
        assertThat(page("/recipes/" + recipe)).doesNotContain("in Stores");
        certify();

        for (String address :
                List.of("/recipes/" + recipe, edit(), "/make?recipe=" + recipe + "&much=total&amount=1+kg")) {
            assertThat(page(address)).as(address).contains(DIFFERS).contains(OWN);
        }
        assertThat(page("/recipes/" + recipe))
                .contains("/recipes/" + recipe + "/versions/1/own-figures")
                .contains("Nothing was made from version 1 yet, so this writes over it.");
    }

    @Test
    void the_editor_reckons_a_version_as_its_page_does_and_saving_it_untouched_changes_nothing() throws Exception {
        String before = page(edit());
        RecipeVersion kept = newest();
        certify();
        String after = page(edit());

        assertThat(figures(after)).isEqualTo(figures(before)).isNotEmpty();
        assertThat(send(after, "save").statusCode()).isEqualTo(303);
        assertThat(newest().formula()).isEqualTo(kept.formula());
    }

    @Test
    void one_button_in_the_editor_takes_them_over_and_is_kept_as_typed() throws Exception {
        String before = page(edit());
        certify();

        HttpResponse<String> taken = send(page(edit()), "own-figures");

        assertThat(taken.statusCode()).isEqualTo(200);
        assertThat(taken.body()).doesNotContain("in Stores.").contains("188 ± 1 mg KOH/g");
        assertThat(figures(taken.body())).isNotEqualTo(figures(before));
        assertThat(figures(page(edit()))).isEqualTo(figures(taken.body()));
        assertThat(newest().formula().materials()).isEmpty();
        assertThat(page("/recipes/" + recipe)).contains("take the figures over there");
        assertThat(workshop.post("/recipes/" + recipe + "/versions/1/own-figures")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void one_button_writes_over_a_version_that_nothing_was_made_from() throws Exception {
        certify();

        String onwards = RecipeShop.onwards(press("/recipes/" + recipe + "/versions/1/own-figures"));

        assertThat(newest().number()).isEqualTo(1);
        assertThat(newest().why()).isEqualTo("own figures of olive oil (virgin) taken over");
        assertThat(newest().formula().materials().get(0).source()).isEqualTo("certificate L-204");
        assertThat(page(onwards)).contains("own figures now.").doesNotContain("in Stores.");
    }

    @Test
    void a_version_that_was_made_stays_and_the_next_has_them() throws Exception {
        book().markMade(recipe, 1).orThrow();
        certify();
        assertThat(page("/recipes/" + recipe)).contains("This makes version 2; version 1 stays.");

        String onwards = RecipeShop.onwards(
                press("/make/own-figures", "recipe", recipe, "version", "1", "much", "total", "amount", "1 kg"));

        assertThat(onwards).startsWith("/make?").contains("recipe=" + recipe).contains("amount=1");
        assertThat(newest().number()).isEqualTo(2);
        assertThat(newest().why()).isEqualTo("own figures of olive oil (virgin) taken over");
        assertThat(book().version(recipe, 1).orElseThrow().formula().materials())
                .isEmpty();
        assertThat(page(onwards)).doesNotContain("in Stores.");
        assertThat(page("/recipes/" + recipe + "/versions/1")).contains(DIFFERS).doesNotContain("/own-figures");
        assertThat(workshop.post("/recipes/" + recipe + "/versions/1/own-figures")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void figures_that_a_version_carries_are_told_when_a_later_certificate_comes() throws Exception {
        certify();
        press("/recipes/" + recipe + "/versions/1/own-figures");
        certify("saponification value: 191 ± 1, source: certificate L-209");

        assertThat(page("/recipes/" + recipe))
                .contains(
                        "Olive oil (virgin): saponification value 188 ± 1 mg KOH/g (certificate L-204) in this version,"
                                + " 191 ± 1 mg KOH/g (certificate L-209) in Stores.");
        send(page(edit()), "own-figures");
        assertThat(page(edit())).contains("191 ± 1 mg KOH/g").doesNotContain("in Stores.");
    }

    @Test
    void a_comparison_names_the_figure_and_both_its_sources() throws Exception {
        book().markMade(recipe, 1).orThrow();
        certify();
        press("/recipes/" + recipe + "/versions/1/own-figures");

        assertThat(page("/recipes/" + recipe + "/compare?a=1&b=2"))
                .contains("Figures of the materials")
                .contains(DIFFERS)
                .contains("→ 188 ± 1 mg KOH/g (certificate L-204).");
        assertThat(page("/recipes/" + recipe + "/compare?a=1&b=1")).doesNotContain("Figures of the materials");
    }
}
