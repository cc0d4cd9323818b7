package lyewright.web.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.recipe.Draft;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MakePagesTest {

    private static MakeShop shop;

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        shop = new MakeShop(home);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    // Picking a recipe

    @Test
    void without_a_recipe_the_page_lets_one_be_picked() {
        HttpResponse<String> page = shop.get("/make");

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("Harbour Plain", "Tideline", "/make?recipe=" + shop.recipe("plain"));
    }

    @Test
    void a_recipe_is_found_by_a_word_of_its_notes() {
        HttpResponse<String> found = shop.getInPlace("/make?q=fade");

        assertThat(found.body()).contains("Tideline").doesNotContain("Harbour Plain", "<html");
    }

    // How much

    @Test
    void a_recipe_in_masses_is_first_shown_as_it_stands() {
        String page = sheet(shop.make("notebook"));

        assertThat(masses(page)).contains("250 g", "650 g", "100 g");
    }

    @Test
    void without_scripts_the_first_mould_that_is_chosen_is_filled_too() {
        assertThat(sheet(shop.make("notebook")))
                .contains("<noscript><input type=\"hidden\" name=\"no-mould-before\" value=\"yes\">");

        String chosen = shop.make("notebook", "mould", "loaf", "much", "written");
        assertThat(sheet(chosen + "&no-mould-before=yes"))
                .contains("the mould takes")
                .doesNotContain("no-mould-before");
        assertThat(sheet(chosen)).doesNotContain("the mould takes");
    }

    @Test
    void a_recipe_in_percent_first_fills_the_first_mould() {
        assertThat(sheet(shop.make("plain"))).contains("the mould takes");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // what is chosen | what the sheet says of it
                "mould=loaf&much=full | the mould takes",
                "mould=loaf&much=full&cut=30mm | 9</a> of",
                // (300 + 1) ÷ 61 is 4 and a bit, (240 + 1) ÷ 81 is 2 and a bit
                "mould=slab&much=full | 8</a> of",
                "mould=ovals&much=full | 12</a> of",
                "mould=typed&inside=300x76mm&much=full | the mould takes",
                "mould=typed&inside=12x95ml&much=full | 12</a> of",
                "mould=typed&inside=1.2 l&much=full | the mould takes",
                "mould=typed&inside=1200ml | the mould takes",
                "mould=typed&inside=1450g water&much=full | the mould takes",
                "mould=typed&inside=300x80x65mm&much=full&cut=25mm&ends=10mm | 11</a> of",
                "much=total&amount=1500 g | 1500.0 g</a> asked",
                "much=total&amount=2 lb | 907.2 g</a> asked",
                "much=oils&amount=1 kg | 1000 g</a>",
                "much=bars&amount=10 x 110 g | 10</a> of <a",
                "much=bars&amount=10 bars of 110 g | 1100.0 g</a> asked",
                "much=cured&amount=8x120g | 120 g</a> once cured",
                "much=total&amount=1500g&hold-back=10 % | 10 % of it",
                "much=total&amount=1500g&hold-back=10 | 10 % of it"
            })
    void every_way_of_saying_how_much_gives_a_sheet(String chosen, String said) {
        assertThat(sheet(shop.make("plain", pairs(chosen)))).contains(said.strip());
    }

    @Test
    void what_stays_in_jugs_is_the_workshops_usual_share_unless_told_otherwise() {
        assertThat(sheet(shop.make("plain"))).contains("1 % of it");
        assertThat(sheet(shop.make("plain", "hold-back", "0 %"))).doesNotContain("stays in jugs and tools");
    }

    @Test
    void the_workshops_own_jug_is_under_the_readings() {
        assertThat(sheet(shop.make("notebook"))).contains("Lye jug, 312 g empty, not tared");
    }

    @Test
    void a_jug_chosen_for_a_portion_is_under_its_readings() {
        String tall = shop.records().equipment().jugs().stream()
                .filter(jug -> jug.name().equals("Tall jug"))
                .findFirst()
                .orElseThrow()
                .id();

        String page = sheet(shop.make("tideline", "jug.jug kelp", tall));

        assertThat(page.replaceAll("<[^>]+>", "")).contains("jug 210 g empty");
    }

    @Test
    void an_address_gives_the_same_sheet_again() {
        String chosen = shop.make("plain", "mould", "loaf", "much", "bars", "amount", "11x100g", "trim", "3mm");
        String canonical =
                shop.getInPlace(chosen).headers().firstValue("HX-Replace-Url").orElseThrow();

        assertThat(masses(sheet(canonical))).isEqualTo(masses(sheet(chosen))).isNotEmpty();
        assertThat(canonical).contains("amount=11x100g", "trim=3mm");
    }

    // What is wrong is said beside its field

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "much=total&amount=lots | amount | does not begin with a number",
                "much=total&amount=1500 | amount | has no unit",
                "much=total&amount=0 g | amount | is too small",
                "much=total&amount=1e9 kg | amount | ",
                "much=bars&amount=10 x | amount | does not say what a bar weighs",
                "much=bars&amount=110 g | amount | does not say how many bars",
                "much=bars&amount=10x110g&mould=loaf | amount | bars, not 10",
                "much=sideways&amount=1 | much | it is not said how much to make",
                "much=written | much | is in percent",
                "much=full | mould | without a mould nothing is full",
                "much=full&mould=gone | mould | is not among the workshop",
                "much=full&mould=typed&inside=large | inside | does not",
                "much=full&mould=typed&inside=1500 g | inside | is how much to make, not how large the mould is",
                "much=full&mould=typed&inside=3 lb | inside | choose 'so much in the mould'",
                "much=full&mould=typed&inside=300x80x65 | inside | has no unit",
                "much=full&mould=loaf&cut=thick | cut | does not begin with a number",
                "much=full&mould=loaf&cut=400mm | cut | no whole bar",
                "much=full&mould=loaf&blade=1 mile | blade | ",
                "much=full&mould=loaf&ends=- | ends | ",
                "much=full&mould=loaf&trim=70mm | cut | no whole bar",
                "much=total&amount=1kg&hold-back=100 % | hold-back | leaves nothing",
                "much=total&amount=1kg&hold-back=some | hold-back | ",
                "much=total&amount=1kg&out=coconut&in=concrete | in | ",
                "much=total&amount=1kg&out=concrete&in=babassu | out | is not one of the oils",
                "much=total&amount=1kg&out=coconut&in=coconut | in | it is the oil that goes"
            })
    void what_is_wrong_is_said_beside_its_field(String chosen, String field, String what) {
        String address = shop.make("plain", pairs(chosen));

        HttpResponse<String> whole = shop.get(address);
        HttpResponse<String> inPlace = shop.getInPlace(address);

        assertThat(whole.statusCode()).isEqualTo(200);
        assertThat(MakeShop.troubles(whole.body(), field))
                .isNotEmpty()
                .allSatisfy(said -> assertThat(said).contains(what == null ? "" : what.strip()));
        assertThat(MakeShop.troubles(inPlace.body(), field)).isEqualTo(MakeShop.troubles(whole.body(), field));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "much=total | amount | write it as 1500 g",
                "much=bars | amount | write it as 10 x 110 g",
                "much=full&mould=typed | inside | write it as 300x80x65mm"
            })
    void a_field_that_was_only_just_asked_for_is_not_wrong_yet(String chosen, String field, String what) {
        String page = shop.get(shop.make("plain", pairs(chosen))).body();

        assertThat(MakeShop.troubles(page, field)).isEmpty();
        assertThat(page).contains("The sheet comes once this is typed: " + what).doesNotContain("class=\"sheet");
        assertThat(page).doesNotContain("aria-invalid=\"true\"");
    }

    @Test
    void a_mould_that_is_chosen_is_full_unless_told_otherwise() {
        assertThat(sheet(shop.make("notebook", "mould", "loaf"))).contains("the mould takes");
    }

    @Test
    void a_recipe_as_it_stands_that_does_not_fit_its_mould_says_by_how_much() {
        assertThat(sheet(shop.make("notebook", "mould", "loaf", "much", "written")))
                .containsPattern("This fills the mould to [0-9]+ %: it holds [0-9]+ g, and [0-9]+ g go in");
        assertThat(sheet(shop.make("notebook", "mould", "typed", "inside", "1 l", "much", "written")))
                .containsPattern("This is [0-9]+ g more than this mould holds: it holds [0-9]+ g");
    }

    @Test
    void another_oil_is_told_by_the_superfat_that_the_sheet_shows() {
        shop.add("given", MakeShop.NOTEBOOK.replace("alkali: sodium\nsuperfat: 6 %", "alkali: {sodium: 132 g}"));
        String page =
                shop.get(shop.make("given", "out", "coconut", "in", "babassu")).body();
        Matcher sheet =
                Pattern.compile("figure=superfat.sheetPercent\">([0-9.]+) %").matcher(page);
        Matcher said = Pattern.compile("superfat ([0-9.]+) → ").matcher(page);

        assertThat(sheet.find()).isTrue();
        assertThat(said.find()).isTrue();
        assertThat(Double.parseDouble(said.group(1))).isCloseTo(Double.parseDouble(sheet.group(1)), within(0.05001));
        assertThat(page).doesNotContain("Superfat before rounding");
    }

    @Test
    void much_is_in_kilograms_and_its_figures_still_lead_to_their_reasons() {
        String page = sheet(shop.make("plain", "much", "oils", "amount", "9999 kg"));

        assertThat(page).contains("<a class=\"why\"").doesNotContainPattern("[0-9]{6,} g");
        assertThat(MakeShop.whys(page))
                .anySatisfy(
                        link -> assertThat(link.figure() + " " + link.text()).matches("totals.oilsGrams 9999\\.0+ kg"));
    }

    @Test
    void while_something_is_wrong_the_last_sheet_stays() {
        HttpResponse<String> answer = shop.getInPlace(shop.make("plain", "much", "total", "amount", "15"));

        assertThat(answer.headers().firstValue("HX-Reswap")).contains("none");
        assertThat(answer.body()).contains("hx-swap-oob").doesNotContain("class=\"sheet");
    }

    @Test
    void an_answer_in_place_replaces_no_field() {
        String answer = shop.getInPlace(shop.make("plain")).body();

        assertThat(answer).contains("class=\"sheet").doesNotContain("id=\"choice\"", "name=\"amount\" value=\"\"");
        assertThat(answer.split("<input")).allSatisfy(part -> assertThat(part).doesNotContain("type=\"text\""));
    }

    @Test
    void pasted_html_stays_text() {
        String page = shop.get(
                        shop.make("plain", "much", "total", "amount", "\"><script>alert(1)</script>", "in", "<b>x"))
                .body();

        assertThat(page).doesNotContain("<script>alert", "<b>x").contains("&lt;script>alert(1)&lt;/script>");
    }

    @Test
    void a_hostile_name_of_a_recipe_stays_text() {
        shop.add("hostile", MakeShop.PLAIN.replace("Harbour Plain", "\"<img src=x onerror=alert(1)>\""));

        String page = shop.get(shop.make("hostile")).body();

        assertThat(page).doesNotContain("<img src=x").contains("&lt;img src=x onerror=alert(1)&gt;");
    }

    @Test
    void a_text_without_end_is_cut_short() {
        HttpResponse<String> page = shop.get(shop.make("plain", "much", "total", "amount", "9".repeat(5000)));

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).doesNotContain("9".repeat(201));
    }

    @ParameterizedTest
    @CsvSource({
        "/make?recipe=nothing",
        "/make/sheet.pdf?recipe=nothing",
        "/make?recipe=%27%3B--",
        "/why?recipe=nothing&figure=bars.count"
    })
    void an_unknown_recipe_is_not_here(String address) {
        HttpResponse<String> page = shop.get(address);

        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("There is no such recipe");
    }

    @ParameterizedTest
    @CsvSource({"9", "0", "-1", "one", "99999999999"})
    void an_unknown_version_is_not_here(String version) {
        assertThat(shop.get(shop.make("plain", "version", version)).statusCode())
                .isEqualTo(404);
    }

    // Not to be made

    @Test
    void a_sheet_that_is_not_to_be_made_says_so_before_all_else() {
        String page = sheet(shop.make("caustic"));

        assertThat(page).contains("Not to be made as it stands", "class=\"cross\"", "data-level=\"stop\"");
        assertThat(page.indexOf("Not to be made")).isLessThan(page.indexOf("id=\"weigh\""));
        assertThat(sheet(shop.make("plain"))).doesNotContain("Not to be made", "class=\"cross\"");
    }

    @Test
    void the_face_of_a_sheet_has_three_cautions_at_most_the_gravest_first() {
        String page = sheet(shop.make("caustic"));
        String face = page.substring(
                page.indexOf("sheet-cautions"), page.indexOf("<details", page.indexOf("sheet-cautions")));

        List<String> levels = Pattern.compile("data-level=\"(\\w+)\"")
                .matcher(face)
                .results()
                .map(level -> level.group(1))
                .toList();
        assertThat(levels).hasSizeBetween(1, 3).first().isEqualTo("stop");
    }

    // Paper

    @ParameterizedTest
    @CsvSource({"tideline", "plain", "notebook", "shave", "caustic"})
    void every_mass_on_the_screen_is_on_the_paper(String recipe) throws Exception {
        for (String paper : List.of("A4", "LETTER")) {
            String text = text(shop.bytes("/make/sheet.pdf?" + shop.query(recipe) + "&paper=" + paper));

            assertThat(masses(sheet(shop.make(recipe))))
                    .isNotEmpty()
                    .allSatisfy(mass -> assertThat(text).contains(mass.replace(" ", "")));
        }
    }

    @Test
    void the_paper_is_shown_in_the_browser_under_a_plain_name() {
        HttpResponse<String> paper = shop.get("/make/sheet.pdf?" + shop.query("plain"));

        assertThat(paper.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(paper.headers().firstValue("Content-Disposition"))
                .contains("inline; filename=\"harbour-plain-1.pdf\"");
    }

    @Test
    void a_file_name_never_holds_what_a_computer_does_not_take() {
        shop.add("greek", MakeShop.PLAIN.replace("Harbour Plain", "\"../Σαπούνι \\\"Crème brûlée\\\"\""));

        assertThat(shop.get("/make/sheet.pdf?" + shop.query("greek")).headers().firstValue("Content-Disposition"))
                .contains("inline; filename=\"creme-brulee-1.pdf\"");
    }

    @Test
    void there_is_no_paper_of_a_sheet_that_cannot_be() {
        HttpResponse<String> paper = shop.get("/make/sheet.pdf?" + shop.query("plain", "much", "full"));

        assertThat(paper.statusCode()).isEqualTo(422);
        assertThat(paper.body()).contains("without a mould nothing is full");
    }

    // What printing keeps

    @Test
    void looking_at_a_sheet_and_its_paper_keeps_nothing() {
        String id = shop.add("looked at", MakeShop.PLAIN);

        shop.get(shop.make("looked at"));
        shop.get("/make/sheet.pdf?" + shop.query("looked at"));

        assertThat(isMade(id)).isFalse();
    }

    @Test
    void printing_keeps_the_version_and_leads_to_the_paper() {
        String id = shop.add("printed", MakeShop.PLAIN);

        HttpResponse<String> answer = shop.post(
                "/make/sheet.pdf", shop.query("printed", "much", "total", "amount", "1kg", "paper", "LETTER"));

        assertThat(answer.statusCode()).isEqualTo(303);
        String paper = answer.headers().firstValue("Location").orElseThrow();
        assertThat(paper).contains("/make/sheet.pdf?recipe=" + id, "amount=1kg", "paper=LETTER");
        assertThat(isMade(id)).isTrue();
        assertThat(shop.get(paper.replaceFirst("^https?://[^/]+", "")).statusCode())
                .isEqualTo(200);
    }

    @Test
    void printing_the_page_keeps_the_version_and_says_so() {
        String id = shop.add("page printed", MakeShop.PLAIN);

        HttpResponse<String> answer = shop.post("/make/printed", shop.query("page printed"));

        assertThat(isMade(id)).isTrue();
        String page = answer.headers().firstValue("Location").orElseThrow().replaceFirst("^https?://[^/]+", "");
        assertThat(shop.get(page).body()).contains("Version 1 is kept as it is");
    }

    @Test
    void nothing_is_made_from_a_sheet_that_is_not_to_be_made() {
        shop.post("/make/sheet.pdf", shop.query("caustic"));
        shop.post("/make/printed", shop.query("caustic"));

        assertThat(isMade(shop.recipe("caustic"))).isFalse();
    }

    private static boolean isMade(String id) {
        return shop.records().recipes().version(id, 1).orElseThrow().madeAt().isPresent();
    }

    // Another oil

    @Test
    void another_oil_is_compared_and_the_recipe_stays() {
        String page = sheet(shop.make("plain", "out", "coconut", "in", "Babassu oil"));

        assertThat(page).contains("Babassu oil in place of coconut oil", "less NaOH");
        assertThat(masses(page)).isEqualTo(masses(sheet(shop.make("plain"))));
    }

    @Test
    void the_recipe_with_another_oil_can_be_gone_on_with_in_the_editor() {
        String id = shop.add("swapped", MakeShop.PLAIN);

        HttpResponse<String> answer =
                shop.post("/make/draft", shop.query("swapped", "out", "coconut", "in", "babassu"));

        assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith("/recipes/" + id + "/edit");
        Draft draft = shop.records().drafts().forRecipe(id).orElseThrow();
        assertThat(draft.form())
                .contains("babassu", "Babassu oil in place of coconut oil")
                .doesNotContain("\"coconut\"");
        assertThat(shop.records().recipes().find(id).orElseThrow().newest().text())
                .contains("coconut");
    }

    @Test
    void what_is_being_typed_already_is_not_written_over() {
        String id = shop.add("typing", MakeShop.PLAIN);
        shop.post("/make/draft", shop.query("typing", "out", "coconut", "in", "babassu"));

        HttpResponse<String> answer = shop.post("/make/draft", shop.query("typing", "out", "coconut", "in", "castor"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("has changes that are not saved yet");
        assertThat(shop.records().drafts().forRecipe(id).orElseThrow().form()).contains("babassu");
    }

    // The page

    @Test
    void the_longest_page_is_no_heavier_than_is_good() {
        assertThat(shop.get(shop.make("tideline", "out", "coconut", "in", "babassu"))
                        .body()
                        .length())
                .isLessThan(150_000);
    }

    private static String sheet(String address) {
        HttpResponse<String> page = shop.get(address);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("class=\"sheet");
        return page.body();
    }

    private static String[] pairs(String chosen) {
        List<String> pairs = new ArrayList<>();
        for (String pair : chosen.strip().split("&", -1)) {
            pairs.add(pair.substring(0, pair.indexOf('=')));
            pairs.add(pair.substring(pair.indexOf('=') + 1));
        }
        return pairs.toArray(String[]::new);
    }

    /** What is to be weighed, as the screen shows it. */
    private static List<String> masses(String page) {
        Matcher mass = Pattern.compile("<td class=\"number mass\"><a [^>]*>([^<]+)</a>")
                .matcher(page);
        return mass.results().map(found -> found.group(1)).toList();
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s", "");
        }
    }
}
