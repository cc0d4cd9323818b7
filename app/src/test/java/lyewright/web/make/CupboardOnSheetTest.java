package lyewright.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lyewright.formula.FormulaFile;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import lyewright.stock.LotStatus;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether the cupboard has what a sheet asks for. */
class CupboardOnSheetTest {

    private final LocalDate today = LocalDate.now(ZoneOffset.UTC);

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private TestWorkshop workshop;

    private String recipe = "";

    @BeforeEach
    void a_recipe_of_two_oils() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new MakePages(shop)));
        recipe = records()
                .recipes()
                .add(FormulaFile.read("""
                                recipe: Harbour Plain
                                oils: {olive-virgin: 750 g, coconut: 250 g}
                                alkali: sodium
                                superfat: 5 %
                                water: 33 % lye
                                additions: [{of: kaolin, amount: 10 g, stage: trace}]
                                """).formula().orElseThrow())
                .orThrow()
                .recipeId();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private void came(String key, ItemKind kind, long grams, LocalDate bestBefore, LotStatus status) {
        LotSaid said = new LotSaid(
                "",
                Optional.empty(),
                "",
                today.minusDays(90),
                Optional.empty(),
                Optional.of(bestBefore),
                Optional.empty(),
                status,
                Optional.empty(),
                "");
        records()
                .lots()
                .receive(
                        records().author(),
                        "",
                        new Delivery(
                                "",
                                List.of(Arrival.of(ItemSaid.of(key, kind, Identity.ofKey(key)), said, grams * 1000))))
                .orThrow();
    }

    private String sheet() throws Exception {
        return workshop.get("/make?recipe=" + recipe + "&much=written").body();
    }

    @Test
    void an_empty_cupboard_is_not_spoken_of() throws Exception {
        assertThat(sheet()).contains("Harbour Plain").doesNotContain("From the cupboard");
    }

    @Test
    void what_is_not_kept_holds_nothing_up() throws Exception {
        came("olive-virgin", ItemKind.OIL, 2000, today.plusDays(200), LotStatus.USABLE);
        assertThat(sheet()).contains("The cupboard has all of it.").contains("750.0 g of lot");
    }

    @Test
    void what_is_short_is_said_by_how_much() throws Exception {
        came("olive-virgin", ItemKind.OIL, 600, today.plusDays(200), LotStatus.USABLE);
        came("coconut", ItemKind.OIL, 250, today.plusDays(200), LotStatus.USABLE);
        assertThat(sheet()).contains("Short of 150.0 g of Olive oil (virgin).").contains("150.0 g short");
    }

    @Test
    void what_expires_first_is_taken_first_and_what_must_not_be_used_is_left_alone() throws Exception {
        came("coconut", ItemKind.OIL, 200, today.plusDays(400), LotStatus.USABLE);
        came("coconut", ItemKind.OIL, 100, today.plusDays(20), LotStatus.USABLE);
        came("coconut", ItemKind.OIL, 900, today.minusDays(1), LotStatus.USABLE);
        came("coconut", ItemKind.OIL, 900, today.plusDays(5), LotStatus.QUARANTINE);
        String page = sheet();
        String year = "%02d".formatted(today.minusDays(90).getYear() % 100);
        assertThat(page)
                .containsSubsequence("100.0 g of lot " + year + "-0002", "150.0 g of lot " + year + "-0001")
                .contains("left alone: lot " + year + "-0003, past its best before")
                .contains("left alone: lot " + year + "-0004, in quarantine");
    }

    private void certify(String key, String figures) {
        var own = FormulaFile.read(
                        "recipe: x\noils: {olive-virgin: 100 %}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n"
                                + "materials:\n  " + key + ":\n    source: certificate NQ-7\n" + figures.indent(4))
                .formula()
                .orElseThrow()
                .materials()
                .get(0);
        records()
                .lots()
                .of(records().items().findKey(key).orElseThrow().id())
                .forEach(lot -> records()
                        .lots()
                        .change(records().author(), lot.id(), lot.said().withCertificate(Optional.of(own)))
                        .orThrow());
    }

    @Test
    void a_certificate_narrows_what_the_superfat_may_be_and_the_sheet_says_so() throws Exception {
        came("olive-virgin", ItemKind.OIL, 2000, today.plusDays(200), LotStatus.USABLE);
        certify("olive-virgin", "saponification value: 190.0 ± 0.5 mg KOH/g");
        String offered = sheet();
        assertThat(offered).contains("would say more exactly").contains("lots=certificates");
        String reckoned = workshop.get("/make?recipe=" + recipe + "&much=written&lots=certificates")
                .body();
        assertThat(reckoned).contains("Reckoned with the certificate of lot").contains("Reckon without them");
        assertThat(width(reckoned)).isLessThan(width(offered) * 0.8);
    }

    private static double width(String page) {
        var band = java.util.regex.Pattern.compile("19 times in 20[^0-9]*<a[^>]*>([0-9.]+)</a>[^0-9]*<a[^>]*>([0-9.]+)")
                .matcher(page);
        assertThat(band.find()).isTrue();
        return Double.parseDouble(band.group(2)) - Double.parseDouble(band.group(1));
    }

    @Test
    void the_purity_of_the_alkali_is_that_of_its_lots() throws Exception {
        came("naoh", ItemKind.ALKALI, 1000, today.plusDays(400), LotStatus.USABLE);
        certify("naoh", "kind: lye\nstrength: 97.0 % sodium");
        String before = sheet();
        String reckoned = workshop.get("/make?recipe=" + recipe + "&much=written&lots=certificates")
                .body();
        assertThat(weighed(before, "Sodium hydroxide")).isNotEqualTo(weighed(reckoned, "Sodium hydroxide"));
    }

    private static String weighed(String page, String name) {
        var row = java.util.regex.Pattern.compile(
                        "class=\"take\">" + name + "[^<]*</span>.*?number mass[^>]*>\\s*(?:<a[^>]*>)?([0-9.]+)",
                        java.util.regex.Pattern.DOTALL)
                .matcher(page);
        assertThat(row.find()).as(name).isTrue();
        return row.group(1);
    }

    @Test
    void the_alkali_is_looked_for_too() throws Exception {
        came("naoh", ItemKind.ALKALI, 50, today.plusDays(400), LotStatus.USABLE);
        assertThat(sheet()).contains("of Sodium hydroxide");
    }
}
