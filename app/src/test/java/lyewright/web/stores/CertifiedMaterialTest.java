package lyewright.web.stores;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.setting.Units;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A certificate for a material that the tables know: which material first, then the figures of its kind. */
class CertifiedMaterialTest {

    private static final String NEW = "/stores/materials/new?kind=tables";

    @TempDir
    private Path home;

    private TestWorkshop workshop;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new StoresPages(shop)));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private String page(String address) throws Exception {
        HttpResponse<String> page = workshop.get(address);
        assertThat(page.statusCode()).isEqualTo(200);
        return page.body();
    }

    @Test
    void which_material_is_asked_first_by_the_names_that_people_use() throws Exception {
        assertThat(page(NEW))
                .contains("Which material is it?")
                .contains("<option value=\"Olive oil (virgin)\">")
                .doesNotContain("name=\"source\"");
    }

    @Test
    void a_name_of_several_is_asked_about_and_each_leads_on() throws Exception {
        assertThat(page(NEW + "&key=olive+oil"))
                .contains("Which 'olive oil' is it?")
                .contains("kind=tables&amp;key=olive-virgin")
                .contains("Olive oil (virgin)")
                .doesNotContain("name=\"source\"");
        assertThat(page(NEW + "&key=sunflour"))
                .contains("'sunflour' is not known")
                .contains("kind=tables&amp;key=sunflower");
        assertThat(page(NEW + "&key=qqqq")).contains("'qqqq' is not known").doesNotContain("name=\"source\"");
    }

    @Test
    void the_boxes_are_those_of_the_material() throws Exception {
        for (String typed : List.of("olive-virgin", "Olive+oil+%28virgin%29")) {
            assertThat(page(NEW + "&key=" + typed))
                    .contains("<h1>Olive oil (virgin)</h1>")
                    .contains("name=\"saponification value\"")
                    .contains("name=\"acid value\"")
                    .contains("type=\"hidden\" name=\"key\" value=\"olive-virgin\"")
                    .doesNotContain("name=\"sugar\"");
        }
        assertThat(page(NEW + "&key=honey")).contains("name=\"sugar\"").doesNotContain("name=\"saponification value\"");
        assertThat(page(NEW + "&key=kaolin")).contains("name=\"density\"").contains("<details class=\"fold\" open>");
    }

    @Test
    void a_certificate_that_says_nothing_is_refused_with_its_form() throws Exception {
        HttpResponse<String> refused = workshop.post(
                "/stores/materials", "kind", "", "key", "olive-virgin", "source", "certificate L-204", "inci", "X");

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("no figure of it is given").contains("value=\"certificate L-204\"");
        assertThat(workshop.shop().records().materials().list()).isEmpty();
        assertThat(workshop.post("/stores/materials", "kind", "", "key", "olive-virgin", "acid value", "0.8")
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void each_kind_has_an_example_of_its_own() throws Exception {
        List<String> examples = java.util.Arrays.stream(MaterialKind.values())
                .filter(kind -> kind != MaterialKind.OF_TABLES)
                .map(MaterialKind::example)
                .toList();
        assertThat(examples).doesNotHaveDuplicates().allMatch(example -> example.startsWith("as in "));
        assertThat(page("/stores/materials/new?kind=lye"))
                .contains("as in lye-50")
                .doesNotContain("house-olive");
        assertThat(page("/stores/materials/new?kind=clay"))
                .contains("as in red-clay-north")
                .contains("as in 2.6");
    }
}
