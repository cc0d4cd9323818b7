package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.web.Notice;
import lyewright.web.Shop;
import lyewright.words.Dates;

/** What has just been done with a lot, as its address says. */
final class LotDone {

    private static final String TAKEN = "taken";
    private static final String MADE = "made";
    private static final String CERTIFIED = "certified";
    private static final String UNCERTIFIED = "uncertified";

    private LotDone() {}

    /** After taking; nothing new was written where the form had been sent before. */
    static String taken(String lot, List<Long> numbers) {
        return LotPages.addressOf(lot) + "?done=" + TAKEN + (numbers.isEmpty() ? "" : "&move=" + numbers.get(0));
    }

    /** After it was made here. */
    static String made(String lot) {
        return LotPages.addressOf(lot) + "?done=" + MADE;
    }

    /** After its certificate was typed, or taken off; its form stands further down than what is told. */
    static String certified(KeptLot lot) {
        return LotPages.addressOf(lot.id()) + "?done="
                + (lot.said().certificate().isPresent() ? CERTIFIED : UNCERTIFIED) + "#top";
    }

    /** The sentence for it. */
    static Optional<Notice> told(Context ctx, Shop shop, KeptLot lot) {
        String done = Optional.ofNullable(ctx.queryParam("done")).orElse("");
        return switch (done) {
            case TAKEN -> Optional.of(Notice.of(taken(ctx, shop, lot)));
            case MADE ->
                lot.said()
                        .certificate()
                        .map(made -> Notice.of("Kept as lot " + lot.said().ownCode() + ". Recipes name it '"
                                + made.key() + "' from now on; every other name means what it did."
                                + lot.said()
                                        .bestBefore()
                                        .map(day -> " Best before " + Dates.day(day) + ".")
                                        .orElse("")));
            case CERTIFIED ->
                lot.said()
                        .certificate()
                        .map(certificate -> Notice.of("The certificate is kept: " + certificate.source() + "."));
            case UNCERTIFIED -> Optional.of(Notice.of("This lot has no certificate any more."));
            default -> Optional.empty();
        };
    }

    private static String taken(Context ctx, Shop shop, KeptLot lot) {
        Units units = shop.workshop().units();
        Counting counting =
                shop.records().items().find(lot.itemId()).orElseThrow().said().counting();
        String number = Optional.ofNullable(ctx.queryParam("move")).orElse("");
        String what = shop.records().lots().moves(lot.id()).stream()
                .filter(move -> number.equals(Long.toString(move.number())))
                .findFirst()
                .map(move -> verb(move, Amounts.said(counting, -move.told().amount(), units)))
                .orElse("That was taken before, and not twice");
        return what + "; " + Amounts.said(counting, lot.left(), units) + " left.";
    }

    private static String verb(StockMove move, String amount) {
        return amount
                + (move.told().kind() == MoveKind.RETURN
                        ? " sent back"
                        : move.told().kind() == MoveKind.LOSS ? " lost" : " taken");
    }
}
