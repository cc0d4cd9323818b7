package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A notebook's recipe that is kept, and the workshop that begins with it. */
class NotebookKeptTest {

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
    private Path folder;

    private StartServer server;

    @BeforeEach
    void start() {
        server = new StartServer(folder);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void a_recipe_is_kept_and_the_workshop_begun_by_one_form() throws Exception {
        HttpResponse<String> answer =
                server.post("/notebook/keep", "text", RECIPE, "workshop", " Quay Lane Soap ", "units", "ounces");
        assertThat(answer.statusCode()).isEqualTo(303);
        String address = answer.headers().firstValue("Location").orElseThrow();
        assertThat(address).matches("/recipes/[0-9a-f-]{36}\\?done=notebook");
        assertThat(server.get(address).body()).contains("Harbour trial");
        assertThat(server.shop.workshop().name()).isEqualTo("Quay Lane Soap");
        assertThat(server.shop.workshop().units()).hasToString("OUNCES");
    }

    @Test
    void a_name_beside_the_text_goes_before_the_one_in_it() throws Exception {
        server.post("/notebook/keep", "text", RECIPE, "workshop", "Quay", "name", "  Harbour two ");
        server.post("/notebook/keep", "text", UNNAMED, "name", "Third");
        assertThat(server.shop.records().recipes().list(Search.all(1, 10)).items())
                .extracting(recipe -> recipe.name())
                .containsExactlyInAnyOrder("Harbour two", "Third");
    }

    @Test
    void a_form_sent_again_or_twice_at_once_is_one_recipe_and_another_text_is_another() throws Exception {
        String token = value(server.get("/notebook").body(), "token");
        assertThat(token).isNotEmpty();
        ExecutorService senders = Executors.newFixedThreadPool(4);
        Set<String> addresses = new HashSet<>();
        try {
            List<Future<HttpResponse<String>>> sent =
                    senders.invokeAll(Collections.nCopies(4, () -> sendWith(token, UNNAMED)));
            for (Future<HttpResponse<String>> answer : sent) {
                addresses.add(answer.get().headers().firstValue("Location").orElseThrow());
            }
        } finally {
            senders.shutdown();
        }
        addresses.add(sendWith(token, UNNAMED).headers().firstValue("Location").orElseThrow());
        assertThat(addresses).hasSize(1);
        assertThat(kept()).isEqualTo(1);
        sendWith(token, UNNAMED.replace("castor 50 g", "castor 51 g"));
        assertThat(kept()).isEqualTo(2);
        sendWith(value(server.get("/notebook").body(), "token"), UNNAMED);
        assertThat(kept()).isEqualTo(3);
    }

    private long kept() {
        return server.shop.records().recipes().list(Search.all(1, 10)).total();
    }

    private HttpResponse<String> sendWith(String token, String text) throws Exception {
        return server.post("/notebook/keep", "text", text, "workshop", "Quay", "name", "Once", "token", token);
    }

    private static String value(String page, String field) {
        Matcher hidden =
                Pattern.compile("name=\"" + field + "\" value=\"([^\"]*)\"").matcher(page);
        return hidden.find() ? hidden.group(1) : "";
    }

    @Test
    void without_a_name_it_is_asked_for_and_nothing_is_kept_or_begun() throws Exception {
        HttpResponse<String> page = server.post("/notebook/keep", "text", UNNAMED, "mouldText", "1500 g");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(StartServer.text(page))
                .contains("The recipe has no name yet.")
                .contains("The workshop's name is empty.");
        assertThat(page.body()).contains("coconut oil 350 g").contains("value=\"1500 g\"");
        assertThat(server.shop.started()).isFalse();
        assertThat(server.shop.records().recipes().list(Search.all(1, 10)).total())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "coconut 350 g", "castro 5 g\nsoda 1 g\nwater 2 g"})
    void what_is_no_whole_recipe_is_not_kept(String text) throws Exception {
        HttpResponse<String> page = server.post("/notebook/keep", "text", text, "workshop", "Quay", "name", "X");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(StartServer.text(page)).contains("There is no whole recipe yet.");
        assertThat(server.shop.started()).isFalse();
    }

    @Test
    void a_name_of_two_lines_or_of_a_thousand_letters_is_refused_beside_its_field() throws Exception {
        for (String name : new String[] {"a\nb", "x".repeat(1000), "\u0007"}) {
            HttpResponse<String> page = server.post("/notebook/keep", "text", RECIPE, "workshop", "Quay", "name", name);
            assertThat(page.statusCode()).as(name).isEqualTo(422);
            assertThat(page.body()).as(name).containsPattern("id=\"k-name-trouble\">[^<]+");
        }
        assertThat(server.shop.started()).isFalse();
    }

    @Test
    void the_workshops_own_moulds_can_be_chosen() throws Exception {
        server.shop.lookRound(DemoWorkshop::fill).orThrow();
        String page = server.get("/notebook").body();
        Matcher option = Pattern.compile("<option value=\"([0-9a-f-]{36})\"[^>]*>Ash loaf<")
                .matcher(page);
        assertThat(option.find()).isTrue();
        assertThat(StartServer.text(server.post("/notebook/answer", "text", RECIPE, "mould", option.group(1))))
                .contains("Ash loaf takes 1.4 times this recipe.")
                .contains("11 of 1");
        assertThat(StartServer.text(
                        server.post("/notebook/answer", "text", RECIPE, "mould", option.group(1), "mouldText", "1 kg")))
                .contains("1 kg is about nine tenths of it");
    }

    @Test
    void the_mould_that_was_said_leads_on_to_the_making_page() throws Exception {
        assertThat(kept("mouldText", "loaf 300 x 80 x 65 mm"))
                .endsWith("?done=notebook&inside=loaf+300+x+80+x+65+mm&mould=typed&much=full");
        assertThat(kept("mouldText", "1500 g")).endsWith("?done=notebook&amount=1500+g&much=total");
        assertThat(kept("mouldText", "a bucket")).endsWith("?done=notebook");
    }

    private String kept(String... more) throws Exception {
        String[] all = new String[more.length + 6];
        System.arraycopy(
                new String[] {"text", UNNAMED, "workshop", "Quay", "name", "N" + System.nanoTime()}, 0, all, 0, 6);
        System.arraycopy(more, 0, all, 6, more.length);
        return server.post("/notebook/keep", all)
                .headers()
                .firstValue("Location")
                .orElseThrow();
    }

    @Test
    void the_workshops_own_materials_are_known_and_kept_in_the_recipe() throws Exception {
        server.post("/start/mine", "workshop", "Quay");
        String text = "Trial\ncoconut oil 350 g\nlard 100 g\nsuperfat 5\nwater 130 g\nvanilla-fo 9 g";
        assertThat(StartServer.text(server.post("/notebook/answer", "text", text)))
                .contains("'vanilla-fo' is not known.")
                .contains("Describe it as a material of your own");
        String before = StartServer.text(server.post("/notebook/answer", "text", text.replace("\nvanilla-fo 9 g", "")));

        for (OwnMaterial own : FormulaFile.read("""
                        recipe: T
                        oils: {coconut: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        materials:
                          coconut oil: {kind: oil, saponification value: 230}
                          vanilla-fo: {kind: fragrance}
                        """).formula().orElseThrow().materials()) {
            server.shop.records().materials().add(own).orThrow();
        }
        String after = StartServer.text(server.post("/notebook/answer", "text", text));
        assertThat(after).contains("Worked out with your own figures for coconut oil and vanilla-fo.");
        assertThat(soda(after)).isLessThan(soda(before) - 3);
        server.post("/notebook/keep", "text", text);
        assertThat(server.shop
                        .records()
                        .recipes()
                        .list(Search.all(1, 10))
                        .items()
                        .get(0)
                        .id())
                .satisfies(id -> assertThat(server.shop
                                .records()
                                .recipes()
                                .find(id)
                                .orElseThrow()
                                .newest()
                                .formula()
                                .materials())
                        .extracting(OwnMaterial::key)
                        .containsExactly("coconut oil", "vanilla-fo"));
    }

    private static double soda(String answer) {
        Matcher soda = Pattern.compile("It takes ([0-9.]+) g of soda").matcher(answer);
        assertThat(soda.find()).isTrue();
        return Double.parseDouble(soda.group(1));
    }
}
