package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.setting.Units;
import lyewright.web.recipe.EditorPages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.setting.SettingPages;
import lyewright.web.stores.StoresPages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records that take nothing just now: every form comes back as it was typed and says so. */
class UnwritableTest {

    @TempDir
    private Path home;

    private TestWorkshop workshop;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(
                home,
                Units.GRAMS,
                shop -> List.of(
                        new EditorPages(shop),
                        new RecipePages(shop),
                        new StoresPages(shop),
                        new SettingPages(shop, home.resolve("mine"))));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private void move(String from, String to) throws IOException {
        Files.move(home.resolve("mine").resolve(from), home.resolve("mine").resolve(to));
    }

    private void comesBack(String path, String... namesAndValues) throws Exception {
        HttpResponse<String> refused = workshop.post(path, namesAndValues);
        assertThat(refused.statusCode()).as(path).isEqualTo(422);
        assertThat(refused.body())
                .as(path)
                .contains("is not there any more, so nothing was kept")
                .contains("typed with care");
    }

    @Test
    void a_form_that_cannot_be_kept_comes_back_as_typed() throws Exception {
        String seen = TestWorkshop.hidden(workshop.get("/settings"), "seen");
        move("lyewright.db", "elsewhere.db");

        comesBack("/recipes/new", "do", "save", "recipe", "Tideline", "notes", "typed with care");
        comesBack("/recipes/new", "do", "oils.add", "recipe", "Tideline", "notes", "typed with care");
        comesBack("/stores/jugs", "name", "typed with care", "empty", "312 g", "use", "lye jug");
        comesBack("/stores/balances", "name", "typed with care", "capacity", "5 kg", "step", "1 g");
        comesBack(
                "/settings",
                "seen",
                seen,
                "name",
                "typed with care",
                "units",
                "grams",
                "degrees",
                "celsius",
                "paper",
                "a4",
                "market",
                "gb",
                "currency",
                "GBP",
                "holdBack",
                "1 %");
        comesBack("/recipes/import", "text", """
                recipe: Plain
                notes: typed with care
                oils:
                  olive-virgin: 100 %
                alkali: sodium
                superfat: 5 %
                water: 33 % lye
                """);

        move("elsewhere.db", "lyewright.db");
        assertThat(workshop.post("/stores/jugs", "name", "a jug", "empty", "312 g", "use", "lye jug")
                        .statusCode())
                .isEqualTo(303);
    }
}
