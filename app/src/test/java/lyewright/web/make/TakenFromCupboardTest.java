package lyewright.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Taking;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sheet weighs is taken from the lots that it names: all of it or nothing, once, and all of it back. */
class TakenFromCupboardTest {

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

    private KeptLot came(String key, ItemKind kind, long grams, int days) {
        return shop.came(key, kind, grams, shop.today.plusDays(days), LotStatus.USABLE);
    }

    private long left(KeptLot lot) {
        return shop.records().lots().find(lot.id()).orElseThrow().left();
    }

    private StockMove last(KeptLot lot) {
        return shop.records().lots().moves(lot.id()).get(0);
    }

    private static String token(String page) {
        Matcher token = Pattern.compile("name=\"token\" value=\"([^\"]+)\"").matcher(page);
        assertThat(token.find()).as("the form that takes").isTrue();
        return token.group(1);
    }

    private HttpResponse<String> take(String token) throws Exception {
        return take(token, "");
    }

    private HttpResponse<String> take(String token, String lots) throws Exception {
        return shop.workshop.post("/make/take", "recipe", shop.recipe, "much", "written", "token", token, "lots", lots);
    }

    private static String whereTo(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow();
    }

    /** 750 g of olive: 500 of what expires first and 250 of the other; 250 g of coconut, 10 g of kaolin. */
    @Test
    void what_the_sheet_weighs_is_taken_from_the_lots_that_it_names() throws Exception {
        KeptLot soon = came("olive-virgin", ItemKind.OIL, 500, 60);
        KeptLot late = came("olive-virgin", ItemKind.OIL, 1000, 200);
        KeptLot coconut = came("coconut", ItemKind.OIL, 400, 200);

        String told = shop.workshop.get(whereTo(take(token(shop.sheet())))).body();

        assertThat(left(soon)).isZero();
        assertThat(left(late)).isEqualTo(750_000);
        assertThat(left(coconut)).isEqualTo(150_000);
        assertThat(last(late).told().kind()).isEqualTo(MoveKind.USE);
        assertThat(last(late).told().purpose()).isEqualTo("Harbour Plain, version 1");
        assertThat(told).contains("from 3 lots").contains("Take it all back");
        assertThat(shop.records()
                        .recipes()
                        .version(shop.recipe, 1)
                        .orElseThrow()
                        .madeAt())
                .isPresent();
    }

    @Test
    void the_mixed_values_of_two_lots_stand_beside_what_was_taken() throws Exception {
        KeptLot soon = came("olive-virgin", ItemKind.OIL, 500, 60);
        KeptLot late = came("olive-virgin", ItemKind.OIL, 1000, 200);
        KeptLot coconut = came("coconut", ItemKind.OIL, 400, 200);
        shop.certify(soon, "olive-virgin", "saponification value: 189 mg KOH/g");
        shop.certify(late, "olive-virgin", "saponification value: 192 mg KOH/g");

        whereTo(take(token(shop.sheet("&lots=certificates")), "certificates"));

        // 500 x 189 and 250 x 192 are 142 500 for 750
        assertThat(last(late).told().why())
                .contains(soon.said().ownCode())
                .contains(late.said().ownCode())
                .contains("saponification value 190 mg KOH/g");
        assertThat(last(coconut).told().why()).isEmpty();
    }

    @Test
    void a_form_that_is_sent_twice_takes_once() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 2000, 60);
        String token = token(shop.sheet());

        take(token);
        String again = shop.workshop.get(whereTo(take(token))).body();

        assertThat(left(olive)).isEqualTo(1_250_000);
        assertThat(again)
                .contains("Nothing was taken now")
                .contains("Taken for this version on")
                .contains("Take it again, for another batch");
    }

    @Test
    void all_of_it_goes_back_and_the_ledger_keeps_both() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 2000, 60);
        KeptLot coconut = came("coconut", ItemKind.OIL, 400, 200);
        String told = shop.workshop.get(whereTo(take(token(shop.sheet())))).body();
        Matcher undo = Pattern.compile("action=\"(/make/take-back[^\"]+)\"").matcher(told);
        assertThat(undo.find()).isTrue();
        String address = undo.group(1).replace("&amp;", "&");

        String back = shop.workshop.get(whereTo(shop.workshop.post(address))).body();

        assertThat(back).contains("back in the cupboard");
        assertThat(List.of(left(olive), left(coconut))).containsExactly(2_000_000L, 400_000L);
        assertThat(shop.records().lots().moves(olive.id())).hasSize(3);
        assertThat(whereTo(shop.workshop.post(address))).endsWith("taken=back");
        assertThat(shop.records().lots().moves(olive.id())).hasSize(3);
    }

    @Test
    void nothing_is_taken_where_something_is_short() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 2000, 60);
        came("coconut", ItemKind.OIL, 100, 200);

        assertThat(shop.sheet()).contains("Short of").doesNotContain("/make/take");
        assertThat(shop.workshop.get(whereTo(take("take-none"))).body())
                .contains("Nothing was taken: the cupboard has not");
        assertThat(left(olive)).isEqualTo(2_000_000);
    }

    /** Both saw the sheet while nothing was taken; there is enough for two batches. */
    @Test
    void of_two_windows_one_takes_and_the_other_is_told() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 5000, 60);
        String first = token(shop.sheet());
        String second = token(shop.sheet());
        whereTo(take(first));

        String told = shop.workshop.get(whereTo(take(second))).body();

        assertThat(left(olive)).isEqualTo(4_250_000);
        assertThat(told).contains("Nothing was taken now");
        whereTo(take(token(told)));
        assertThat(left(olive)).isEqualTo(3_500_000);
    }

    @Test
    void what_was_taken_back_is_said_to_be_and_can_be_taken_anew() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 5000, 60);
        String told = shop.workshop.get(whereTo(take(token(shop.sheet())))).body();
        Matcher undo = Pattern.compile("action=\"(/make/take-back[^\"]+)\"").matcher(told);
        assertThat(undo.find()).isTrue();
        shop.workshop.post(undo.group(1).replace("&amp;", "&"));

        assertThat(shop.sheet()).contains(", and taken back.");
        whereTo(take(token(shop.sheet())));
        assertThat(left(olive)).isEqualTo(4_250_000);
    }

    /** Both saw the sheet while there was enough for one. */
    @Test
    void of_two_who_take_the_last_of_it_the_second_takes_nothing() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 1000, 60);
        String first = token(shop.sheet());
        String second = token(shop.sheet());

        whereTo(take(first));

        assertThat(shop.workshop.get(whereTo(take(second))).body()).contains("Nothing was taken");
        assertThat(left(olive)).isEqualTo(250_000);
    }

    /** An address that somebody typed, or one from before a backup was put back. */
    @Test
    void nothing_but_what_this_sheet_took_goes_back_by_it() throws Exception {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 5000, 60);
        String told = shop.workshop.get(whereTo(take(token(shop.sheet())))).body();
        Matcher undo = Pattern.compile("action=\"(/make/take-back[^\"]+taken=)([0-9]+)(-[0-9a-f]+)\"")
                .matcher(told);
        assertThat(undo.find()).isTrue();
        String address = undo.group(1).replace("&amp;", "&");
        long number = Long.parseLong(undo.group(2));

        for (String other : List.of("", "2", number + "", number + "-000000000000", (number - 1) + undo.group(3))) {
            assertThat(shop.workshop.post(address + other).statusCode())
                    .as(other)
                    .isEqualTo(409);
        }
        assertThat(left(olive)).isEqualTo(4_250_000);
    }

    @Test
    void what_was_taken_is_told_though_no_more_is_left() throws Exception {
        came("olive-virgin", ItemKind.OIL, 800, 60);
        take(token(shop.sheet()));

        assertThat(shop.sheet())
                .contains("Short of")
                .contains("Taken for this version on")
                .contains("Take it all back");
    }

    @Test
    void moves_are_taken_back_all_or_none() {
        KeptLot olive = came("olive-virgin", ItemKind.OIL, 1000, 60);
        long used = shop.records()
                .lots()
                .take(
                        shop.records().author(),
                        "",
                        List.of(new Taking(olive.id(), 100_000, "")),
                        StockMove.Told.of(MoveKind.USE, 0))
                .orThrow()
                .get(0);

        assertThat(shop.records()
                        .lots()
                        .correct(shop.records().author(), List.of(used, used), "twice")
                        .problems())
                .isNotEmpty();
        assertThat(left(olive)).isEqualTo(900_000);
    }
}
