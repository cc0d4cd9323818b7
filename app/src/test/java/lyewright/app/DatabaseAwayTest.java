package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import lyewright.records.Places;
import lyewright.records.setting.Units;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A database server that is gone, and what it cannot hold: a form comes back with all that was in it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DatabaseAwayTest {

    private static final String TYPED = "typed \"with\" care & <hands>";

    private EmbeddedPostgres server;
    private TestWorkshop workshop;

    @BeforeAll
    void start(@TempDir Path home) throws Exception {
        server = EmbeddedPostgres.start();
        Places places = Places.of(
                        home,
                        Map.of(Places.DATABASE, server.getJdbcUrl("postgres", "postgres"), Places.USER, "postgres"))
                .orThrow();
        workshop = TestWorkshop.start(places.mine(), places.demo(), Units.GRAMS, shop -> OwnPages.features(shop, home));
    }

    @AfterAll
    void stop() throws Exception {
        workshop.close();
        server.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/recipes/new",
                "/recipes/x/edit",
                "/recipes/import",
                "/recipes/x/delete",
                "/recipes/x/undelete",
                "/recipes/x/duplicate",
                "/recipes/x/versions/1/again",
                "/recipes/x/photograph",
                "/stores/jugs",
                "/stores/jugs/x",
                "/stores/balances",
                "/stores/moulds",
                "/stores/moulds/shown",
                "/stores/materials",
                "/stores/materials/shown",
                "/settings",
                "/notebook",
                "/notebook/answer",
                "/notebook/keep",
                "/make/sheet",
                "/why/draft",
                "/start/mine"
            })
    void a_character_that_is_no_text_is_refused_and_what_was_typed_comes_back(String path) throws Exception {
        HttpResponse<String> answer =
                workshop.post(path, "draft", "a\0b", "name", TYPED + "\0", "id", "\0", "text", "\0", "do", "save");

        assertThat(answer.statusCode()).as(path).isEqualTo(400);
        assertThat(read(answer)).contains("(NUL)").contains(TYPED).doesNotContain("\0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/recipes?q=%00",
                "/recipes/new?draft=%00",
                "/recipes/%00",
                "/recipes/compare?a=%00&b=%00",
                "/stores?done=changed&what=jug&id=%00",
                "/stores/jugs/%00",
                "/stores/tables?q=%00",
                "/make?recipe=%00",
                "/recipes/x/edit%00",
                "/why?recipe=%00"
            })
    void nor_does_an_address_have_it(String path) throws Exception {
        assertThat(workshop.get(path).statusCode()).isBetween(400, 499);
    }

    @Test
    void nor_a_field_that_comes_beside_a_file() throws Exception {
        String edge = "--X\r\nContent-Disposition: form-data; name=\"";
        for (String path : List.of("/recipes/import", "/recipes/x/photograph", "/settings/restore")) {
            for (String name : List.of("text", "token", "sent", "file")) {
                HttpResponse<String> answer =
                        workshop.postParts(path, "X", edge + name + "\"\r\n\r\na\0b\r\n--X--\r\n");
                assertThat(answer.statusCode()).as(path + " " + name).isBetween(303, 499);
            }
        }
    }

    @Test
    void what_was_typed_comes_back_when_the_server_is_gone_and_may_be_sent_again() throws Exception {
        List<String[]> forms = new ArrayList<>();
        forms.add(new String[] {
            "/recipes/new", "do", "save", "recipe", "Tideline", "notes", TYPED + "\nmore", "oils.0.name", "olive"
        });
        forms.add(new String[] {"/stores/jugs", "name", TYPED, "empty", "312 g", "use", "lye jug"});
        forms.add(new String[] {"/stores/moulds", "kind", "loaf", "name", TYPED, "size", "30 x 8 x 6 cm"});
        forms.add(new String[] {"/stores/materials", "kind", "clay", "key", TYPED});
        forms.add(new String[] {"/settings", "seen", "x", "name", TYPED, "units", "grams"});
        forms.add(new String[] {"/notebook/keep", "text", TYPED + "\nolive oil 500 g", "name", "Castile"});
        forms.add(new String[] {"/recipes/import", "text", "recipe: Plain\nnotes: " + TYPED});
        server.close();

        for (String[] form : forms) {
            String path = form[0];
            String[] fields = Arrays.copyOfRange(form, 1, form.length);
            HttpResponse<String> answer = workshop.post(path, fields);

            assertThat(answer.statusCode()).as(path).isIn(422, 503);
            assertThat(read(answer)).as(path).contains(TYPED);
            if (answer.statusCode() == 503) {
                assertThat(answer.body()).contains("The database server does not answer.");
                assertThat(answer.body()).contains("action=\"" + path + "\"").contains("Send it again");
                assertThat(given(answer.body())).as(path).containsAll(names(fields));
            }
        }
    }

    private static String read(HttpResponse<String> answer) {
        return answer.body()
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
    }

    private static List<String> names(String[] fields) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            names.add(fields[i]);
        }
        return names;
    }

    private static List<String> given(String page) {
        return Pattern.compile("<(?:input|textarea)[^>]* name=\"([^\"]+)\"")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
