package lyewright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ways into a workshop. */
class StartPagesTest {

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
    void until_a_workshop_is_begun_every_page_leads_to_the_start() throws Exception {
        for (String path : new String[] {"/", "/recipes", "/recipes/x", "/make", "/stores", "/settings", "/nothing"}) {
            HttpResponse<String> answer = server.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(303);
            assertThat(answer.headers().firstValue("Location")).as(path).contains("/start");
        }
        assertThat(server.post("/recipes").headers().firstValue("Location")).contains("/start");
        assertThat(server.post("/settings").headers().firstValue("Location")).contains("/start");
    }

    @Test
    void the_start_the_notebook_and_what_they_need_are_open() throws Exception {
        String page = server.get("/start").body();
        assertThat(page)
                .contains("Type a recipe from your notebook")
                .contains("<textarea")
                .contains("Look round the demo workshop")
                .contains("Start mine");
        assertThat(page.indexOf("<textarea")).isLessThan(page.indexOf("action=\"/start/mine\""));
        assertThat(server.get("/notebook").statusCode()).isEqualTo(200);
        String style = page.replaceAll("(?s).*href=\"(/static/[^\"]+start.css)\".*", "$1");
        assertThat(server.get(style).statusCode()).isEqualTo(200);
        assertThat(page.length()).isLessThan(150 * 1024);
    }

    @Test
    void a_workshop_is_begun_with_a_name_and_units() throws Exception {
        HttpResponse<String> answer = server.post("/start/mine", "workshop", "Quay Lane Soap", "units", "ounces");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).contains("/recipes");
        assertThat(server.get("/recipes").body()).contains("Recipes of Quay Lane Soap");
        assertThat(server.shop.workshop().units()).hasToString("OUNCES");
        assertThat(server.get("/").headers().firstValue("Location")).contains("/recipes");
    }

    @Test
    void beginning_a_second_time_leaves_the_settings_as_they_are() throws Exception {
        server.post("/start/mine", "workshop", "Quay Lane Soap", "units", "ounces");
        server.post("/start/demo");

        HttpResponse<String> again = server.post("/start/mine", "workshop", "Another", "units", "grams");

        assertThat(again.statusCode()).isEqualTo(303);
        assertThat(server.shop.showsDemo()).isFalse();
        assertThat(server.shop.workshop().name()).isEqualTo("Quay Lane Soap");
        assertThat(server.shop.workshop().units()).hasToString("OUNCES");
    }

    @Test
    void a_name_that_is_none_comes_back_as_typed_and_begins_nothing() throws Exception {
        for (String name : new String[] {"", "   ", "x".repeat(300), "two\nlines", "<b>\u0007</b>"}) {
            HttpResponse<String> page = server.post("/start/mine", "workshop", name, "units", "ounces");
            assertThat(page.statusCode()).as(name).isEqualTo(422);
            assertThat(page.body()).contains("class=\"trouble\"").contains("value=\"ounces\" checked");
            assertThat(server.shop.hasMine()).isFalse();
        }
        assertThat(server.post("/start/mine", "workshop", "x".repeat(300)).body())
                .contains("x".repeat(300));
    }

    @Test
    void a_name_with_marks_in_it_is_a_name() throws Exception {
        server.post("/start/mine", "workshop", "<script>alert(1)</script> & Töchter");
        assertThat(server.shop.workshop().name()).isEqualTo("<script>alert(1)</script> & Töchter");
        assertThat(server.get("/notebook").body())
                .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; Töchter")
                .doesNotContain("<script>alert");
    }

    @Test
    void a_demo_workshop_that_cannot_be_opened_is_told_of() throws Exception {
        Files.writeString(folder.resolve("demo"), "a file where its folder would be");
        HttpResponse<String> page = server.post("/start/demo");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(StartServer.text(page))
                .contains("The demo workshop cannot be shown.")
                .contains("is a file, not a folder");
        assertThat(server.shop.started()).isFalse();
    }

    @Test
    void from_the_demo_one_press_leads_to_ones_own_workshop_or_to_begin_it() throws Exception {
        server.post("/start/demo");
        assertThat(server.get("/start").body())
                .contains(
                        "<form method=\"post\" action=\"/start/back\"><button class=\"button quiet\">To my own workshop");

        server.post("/start/back");
        assertThat(server.get("/recipes").headers().firstValue("Location")).contains("/start");
        assertThat(server.get("/start").body()).doesNotContain("Demo workshop.").contains("action=\"/start/mine\"");

        server.post("/start/mine", "workshop", "Quay Lane Soap");
        server.post("/start/demo");
        server.post("/start/back");
        assertThat(server.get("/recipes").body()).contains("Quay Lane Soap").doesNotContain("Demo workshop.");
    }

    @Test
    void the_demo_workshop_is_looked_round_and_left_again() throws Exception {
        assertThat(server.post("/start/demo").headers().firstValue("Location")).contains("/recipes");
        assertThat(server.get("/recipes").body()).contains("Gannet Stair Soap");
        String start = server.get("/start").body();
        assertThat(start)
                .contains("Demo workshop.")
                .contains("To my own workshop")
                .doesNotContain("action=\"/start/demo\"");

        server.post("/start/mine", "workshop", "Quay Lane Soap");
        assertThat(server.get("/recipes").body()).contains("Quay Lane Soap");
        assertThat(server.get("/start").body())
                .contains("action=\"/start/demo\"")
                .doesNotContain("action=\"/start/mine\"");

        server.post("/start/demo");
        assertThat(server.get("/start").body()).contains("Back to my workshop");
        server.post("/start/back");
        assertThat(server.get("/recipes").body()).contains("Quay Lane Soap");
    }
}
