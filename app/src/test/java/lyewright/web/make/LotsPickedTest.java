package lyewright.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.stock.LotStatus;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lots that are picked by hand on a sheet. */
class LotsPickedTest {

    @TempDir
    private Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private StockedShop shop;

    @BeforeEach
    void a_cupboard() {
        shop = new StockedShop(home);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private KeptLot olive(long grams, int days, LotStatus status) {
        return shop.came("olive-virgin", ItemKind.OIL, grams, shop.today.plusDays(days), status);
    }

    private static String first(KeptLot lot) {
        return "&first.olive-virgin=" + lot.id();
    }

    private static String leave(KeptLot lot) {
        return "&leave." + lot.id() + "=yes";
    }

    private static String code(KeptLot lot) {
        return lot.said().ownCode();
    }

    @Test
    void a_lot_that_is_picked_first_is_taken_first_and_the_rest_follows() throws Exception {
        KeptLot soon = olive(500, 100, LotStatus.USABLE);
        KeptLot late = olive(400, 300, LotStatus.USABLE);
        assertThat(shop.sheet())
                .containsSubsequence("500 g of lot " + code(soon), "250 g of lot " + code(late))
                .contains("Pick the lots yourself")
                .doesNotContain("picked by hand");
        assertThat(shop.sheet(first(late)))
                .containsSubsequence("400 g of lot " + code(late), "350 g of lot " + code(soon))
                .contains("Lots are picked by hand.");
        assertThat(shop.sheet(leave(soon)))
                .contains("400 g of lot " + code(late), "350 g short", "left alone: lot " + code(soon) + ", as chosen");
    }

    @Test
    void what_is_picked_goes_along_when_the_mould_changes_and_to_why() throws Exception {
        olive(500, 100, LotStatus.USABLE);
        KeptLot late = olive(900, 300, LotStatus.USABLE);
        String page = shop.sheet(first(late));
        String form = page.substring(page.indexOf("<form id=\"choice\""), page.indexOf("</form>"));
        assertThat(form).contains("name=\"first.olive-virgin\" value=\"" + late.id() + "\"");
        assertThat(page).containsPattern("href=\"/why\\?[^\"]*first\\.olive-virgin=" + late.id());
    }

    @Test
    void the_certificate_that_counts_is_that_of_the_lot_that_is_picked() throws Exception {
        KeptLot bare = olive(900, 100, LotStatus.USABLE);
        KeptLot certified = olive(900, 300, LotStatus.USABLE);
        shop.certify(certified, "olive-virgin", "saponification value: 196.0 ± 0.5 mg KOH/g");
        String asItComes = shop.sheet("&lots=certificates");
        String picked = shop.sheet("&lots=certificates" + first(certified));
        assertThat(asItComes).doesNotContain("Reckoned with");
        assertThat(picked).contains("Reckoned with the certificate of lot " + code(certified));
        assertThat(soda(picked)).isGreaterThan(soda(asItComes));
        assertThat(soda(shop.sheet("&lots=certificates" + leave(bare)))).isEqualTo(soda(picked));
    }

    private static double soda(String page) {
        var row = Pattern.compile(
                        "class=\"take\">Sodium hydroxide[^<]*</span>.*?number mass[^>]*>\\s*(?:<a[^>]*>)?([0-9.]+)",
                        Pattern.DOTALL)
                .matcher(page);
        assertThat(row.find()).isTrue();
        return Double.parseDouble(row.group(1));
    }

    @Test
    void two_lots_that_go_in_together_say_their_mixed_values() throws Exception {
        KeptLot one = olive(500, 100, LotStatus.USABLE);
        KeptLot other = olive(400, 300, LotStatus.USABLE);
        shop.certify(one, "olive-virgin", "saponification value: 189.0 mg KOH/g\nacid value: 0.5 mg KOH/g");
        assertThat(shop.sheet()).contains("Lot " + code(other) + " has no certificate, so the tables");
        shop.certify(other, "olive-virgin", "saponification value: 192.0 mg KOH/g");
        // 500 g of 189.0 and 250 g of 192.0: (94500 + 48000) / 750 = 190.0
        assertThat(shop.sheet())
                .contains(
                        "Mixed by mass: saponification value 190 mg KOH/g; not every certificate says its acid value");
    }

    @Test
    void a_lot_that_must_not_be_used_is_refused_in_a_sentence_and_nothing_is_printed_of_it() throws Exception {
        olive(900, 100, LotStatus.USABLE);
        KeptLot held = olive(900, 300, LotStatus.QUARANTINE);
        KeptLot bad = olive(900, 300, LotStatus.REFUSED);
        KeptLot gone = olive(900, -1, LotStatus.USABLE);
        KeptLot empty = olive(10, 300, LotStatus.USABLE);
        shop.records()
                .lots()
                .take(
                        shop.records().author(),
                        "",
                        List.of(new Taking(empty.id(), 10_000, "")),
                        StockMove.Told.of(MoveKind.USE, 0))
                .orThrow();
        KeptLot coconut = shop.came("coconut", ItemKind.OIL, 900, shop.today.plusDays(100), LotStatus.USABLE);
        Map<KeptLot, String> refused = Map.of(
                held, "is in quarantine",
                bad, "is refused",
                gone, "is past its best before",
                empty, "holds nothing",
                coconut, "is of another material");
        for (Map.Entry<KeptLot, String> wrong : refused.entrySet()) {
            String lot = first(wrong.getKey());
            assertThat(shop.sheet(lot))
                    .as(wrong.getValue())
                    .contains("ot " + code(wrong.getKey()) + " " + wrong.getValue())
                    .contains("750 g of lot");
            HttpResponse<String> paper =
                    shop.workshop.get("/make/sheet.pdf?recipe=" + shop.recipe + "&much=written" + lot);
            assertThat(paper.statusCode()).isEqualTo(422);
            assertThat(paper.body()).contains(wrong.getValue());
        }
    }

    @Test
    void the_printed_sheet_names_the_lots() throws Exception {
        olive(500, 100, LotStatus.USABLE);
        KeptLot late = olive(400, 300, LotStatus.USABLE);
        HttpResponse<byte[]> paper =
                shop.workshop.download("/make/sheet.pdf?recipe=" + shop.recipe + "&much=written" + first(late));
        assertThat(paper.statusCode()).isEqualTo(200);
        try (PDDocument document = Loader.loadPDF(paper.body())) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                    .contains("From the cupboard")
                    .contains("400 g of lot " + code(late));
        }
    }
}
