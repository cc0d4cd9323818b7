package lyewright.web.cupboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a certificate of a lot would gain, on the lot's page. */
class GainPagesTest {

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private TestWorkshop workshop;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CupboardPages(shop)));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private void recipe(String name, String oils) {
        records()
                .recipes()
                .add(FormulaFile.read(
                                "recipe: " + name + "\noils: {" + oils
                                        + "}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\nnotes: coconut is left out or not\n")
                        .formula()
                        .orElseThrow())
                .orThrow();
    }

    private KeptLot came(String key, ItemKind kind) {
        LotSaid said = LotSaid.of(LocalDate.now(ZoneOffset.UTC));
        ItemSaid item = ItemSaid.of(key, kind, Identity.ofKey(key));
        return records()
                .lots()
                .receive(records().author(), "", new Delivery("", List.of(Arrival.of(item, said, 900_000))))
                .orThrow()
                .get(0);
    }

    @Test
    void the_last_three_recipes_that_take_it_say_what_their_superfat_is_narrowed_to() throws Exception {
        recipe("Eldest", "coconut: 500 g, olive-virgin: 500 g");
        recipe("Second", "coconut: 600 g, olive-virgin: 400 g");
        recipe("Third", "coconut: 700 g, olive-virgin: 300 g");
        recipe("Newest", "coconut: 800 g, olive-virgin: 200 g");
        recipe("Without", "olive-virgin: 1000 g");
        KeptLot lot = came("coconut", ItemKind.OIL);
        assertThat(workshop.get("/stores/lots/" + lot.id()).body()).contains("/stores/lots/" + lot.id() + "/gain");
        String page = workshop.get("/stores/lots/" + lot.id() + "/gain").body();
        assertThat(page).contains("Newest", "Third", "Second").doesNotContain("Eldest", "Without");
        Matcher ends = Pattern.compile("from between ([0-9.]+) and ([0-9.]+).% to between ([0-9.]+) and ([0-9.]+).%")
                .matcher(page);
        int told = 0;
        while (ends.find()) {
            assertThat(Double.parseDouble(ends.group(3))).isGreaterThanOrEqualTo(Double.parseDouble(ends.group(1)));
            assertThat(Double.parseDouble(ends.group(4))).isLessThanOrEqualTo(Double.parseDouble(ends.group(2)));
            told++;
        }
        assertThat(told).isEqualTo(3);
    }

    @Test
    void a_lot_with_a_certificate_and_what_is_no_oil_ask_for_none() throws Exception {
        recipe("Bar", "coconut: 1000 g");
        KeptLot lot = came("coconut", ItemKind.OIL);
        OwnMaterial own =
                FormulaFile.read("""
                        recipe: x
                        oils: {coconut: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        materials:
                          coconut:
                            saponification value: 257.0 ± 0.5 mg KOH/g
                            source: NQ
                        """).formula().orElseThrow().materials().get(0);
        records()
                .lots()
                .change(records().author(), lot.id(), lot.said().withCertificate(Optional.of(own)))
                .orThrow();
        KeptLot clay = came("kaolin", ItemKind.COLOURANT);
        for (KeptLot none : List.of(lot, clay)) {
            assertThat(workshop.get("/stores/lots/" + none.id()).body()).doesNotContain("/gain");
            HttpResponse<String> page = workshop.get("/stores/lots/" + none.id() + "/gain");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("For none of the last recipes");
        }
    }
}
