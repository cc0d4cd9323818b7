package lyewright.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether the cupboard has what a sheet asks for. */
class CupboardOnSheetTest {

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private StockedShop shop;

    @BeforeEach
    void a_recipe_of_two_oils() {
        shop = new StockedShop(home);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void an_empty_cupboard_is_not_spoken_of() throws Exception {
        assertThat(shop.sheet()).contains("Harbour Plain").doesNotContain("From the cupboard");
    }

    @Test
    void what_the_cupboard_does_not_know_is_named_and_not_said_to_be_there() throws Exception {
        shop.came("olive-virgin", ItemKind.OIL, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        assertThat(shop.sheet())
                .contains("The cupboard has enough of what it knows.")
                .contains("It does not know coconut oil, white clay (kaolin) and sodium hydroxide")
                .doesNotContain("The cupboard has all of it.")
                .contains("750 g of lot");
    }

    @Test
    void what_is_all_there_is_said_to_be() throws Exception {
        shop.came("olive-virgin", ItemKind.OIL, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        shop.came("coconut", ItemKind.OIL, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        shop.came("naoh", ItemKind.ALKALI, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        shop.came("kaolin", ItemKind.ADDITIVE, 100, shop.today.plusDays(200), LotStatus.USABLE);
        assertThat(shop.sheet()).contains("The cupboard has all of it.").doesNotContain("does not know");
    }

    @Test
    void what_is_short_is_said_by_how_much() throws Exception {
        shop.came("olive-virgin", ItemKind.OIL, 600, shop.today.plusDays(200), LotStatus.USABLE);
        shop.came("coconut", ItemKind.OIL, 250, shop.today.plusDays(200), LotStatus.USABLE);
        assertThat(shop.sheet())
                .contains("Short of 150 g of Olive oil (virgin).")
                .contains("150 g short");
    }

    @Test
    void what_expires_first_is_taken_first_and_what_must_not_be_used_is_left_alone() throws Exception {
        shop.came("coconut", ItemKind.OIL, 200, shop.today.plusDays(400), LotStatus.USABLE);
        shop.came("coconut", ItemKind.OIL, 100, shop.today.plusDays(20), LotStatus.USABLE);
        shop.came("coconut", ItemKind.OIL, 900, shop.today.minusDays(1), LotStatus.USABLE);
        shop.came("coconut", ItemKind.OIL, 900, shop.today.plusDays(5), LotStatus.QUARANTINE);
        String page = shop.sheet();
        String year = "%02d".formatted(shop.today.minusDays(90).getYear() % 100);
        assertThat(page)
                .containsSubsequence("100 g of lot " + year + "-0002", "150 g of lot " + year + "-0001")
                .contains("left alone: lot " + year + "-0003, past its best before")
                .contains("left alone: lot " + year + "-0004, in quarantine");
    }

    @Test
    void a_certificate_narrows_what_the_superfat_may_be_and_the_sheet_says_so() throws Exception {
        KeptLot lot = shop.came("olive-virgin", ItemKind.OIL, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        shop.certify(lot, "olive-virgin", "saponification value: 190.0 ± 0.5 mg KOH/g");
        String offered = shop.sheet();
        assertThat(offered).contains("would say more exactly").contains("lots=certificates");
        String reckoned = shop.sheet("&lots=certificates");
        assertThat(reckoned).contains("Reckoned with the certificate of lot").contains("Reckon without it");
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
        KeptLot lot = shop.came("naoh", ItemKind.ALKALI, 1000, shop.today.plusDays(400), LotStatus.USABLE);
        shop.certify(lot, "naoh", "kind: lye\nstrength: 97.0 % sodium");
        String before = shop.sheet();
        String reckoned = shop.sheet("&lots=certificates");
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
        shop.came("naoh", ItemKind.ALKALI, 50, shop.today.plusDays(400), LotStatus.USABLE);
        assertThat(shop.sheet()).contains("of Sodium hydroxide");
    }

    @Test
    void what_is_easily_taken_for_a_material_is_said_not_to_be_it() throws Exception {
        shop.came("olive-pomace", ItemKind.OIL, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        assertThat(shop.sheet())
                .contains("There is olive-pomace, which is not the same as olive oil (virgin).")
                .doesNotContain("The cupboard has all of it.");
    }

    @Test
    void a_material_of_another_plant_than_the_recipe_means_is_told_of() throws Exception {
        Identity other =
                new Identity(Optional.of("coconut"), "", "", "Elaeis guineensis", "kernel", Optional.empty(), "", "");
        shop.came(ItemSaid.of("Coconut oil", ItemKind.OIL, other), 900, shop.today.plusDays(200), LotStatus.USABLE);
        assertThat(shop.sheet())
                .contains("Recipes mean Cocos nucifera, flesh, by that name; Coconut oil here is said to be")
                .contains("250 g of lot");
    }

    @Test
    void what_a_certificate_would_gain_is_said_beside_the_lots_that_have_none() throws Exception {
        KeptLot olive = shop.came("olive-virgin", ItemKind.OIL, 2000, shop.today.plusDays(200), LotStatus.USABLE);
        String before = shop.sheet();
        String gain = "A certificate of lot " + olive.said().ownCode() + " would narrow the superfat from between ";
        assertThat(before).contains(gain);
        shop.certify(olive, "olive-virgin", "saponification value: 190.0 ± 0.5 mg KOH/g");
        assertThat(shop.sheet()).doesNotContain(gain);
    }
}
