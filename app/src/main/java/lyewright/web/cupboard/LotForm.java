package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.LotDays;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.Price;
import lyewright.web.TextField;
import lyewright.words.Dates;

/**
 * What can be changed of a lot, as typed.
 *
 * @param ownCode its own code
 * @param supplierLot the supplier's
 * @param opened the day it was opened
 * @param bestBefore its last day
 * @param price what it cost
 * @param notes the maker's own
 * @param far whether its last day is right though it is far off, asked only then
 */
record LotForm(
        String ownCode, String supplierLot, String opened, String bestBefore, String price, String notes, boolean far) {

    static final Set<String> FIELDS = Set.of("ownCode", "supplierLot", "opened", "bestBefore", "price", "notes");

    static LotForm of(LotSaid said) {
        return new LotForm(
                said.ownCode(),
                said.supplierLot(),
                said.opened().map(LocalDate::toString).orElse(""),
                said.bestBefore().map(LocalDate::toString).orElse(""),
                LotView.price(said.price()),
                said.notes(),
                false);
    }

    static LotForm sent(Context ctx) {
        return new LotForm(
                Typed.line(ctx, "ownCode"),
                Typed.line(ctx, "supplierLot"),
                Typed.line(ctx, "opened"),
                Typed.line(ctx, "bestBefore"),
                Typed.line(ctx, "price"),
                Typed.line(ctx, "notes"),
                Typed.ticked(ctx, "far"));
    }

    List<TextField> fields(List<Problem> problems) {
        return List.of(
                TextField.of("ownCode", "Its code", "as written on the jar", ownCode)
                        .with(problems),
                TextField.of("supplierLot", "Supplier's lot", "", supplierLot).with(problems),
                TextField.of("opened", "Opened", "the day", opened).with(problems),
                TextField.of("bestBefore", "Best before", "the last day it is good on", bestBefore)
                        .with(problems),
                TextField.of("price", "Price of all of it", "as in 42.50", price)
                        .with(problems)
                        .forFigures(),
                TextField.of("notes", "Notes", "", notes).with(problems));
    }

    /** Whether its last day is asked about. */
    DeliveryPage.Ask asksFar(List<Problem> problems) {
        return DeliveryPage.Ask.of(far, "bestBefore", DeliveryReading.FAR, problems);
    }

    /** What nobody lives to see is a slip; what is far off is asked about once, and not again where it stays as it is. */
    private Optional<Problem> far(LocalDate day, LotSaid before) {
        return LotDays.neverSoLong(before.received(), day)
                .or(() -> far || before.bestBefore().equals(Optional.of(day))
                        ? Optional.empty()
                        : LotDays.hardlySoLong(before.received(), day).map(DeliveryReading::asked));
    }

    /** The same lot with what was typed. */
    Outcome<LotSaid> read(LotSaid before, String currency, LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        Optional<Optional<LocalDate>> openedOn = Typed.ok("opened", Typed.dayComeIfAny(opened, today), problems);
        Optional<Optional<LocalDate>> lastDay = Typed.ok("bestBefore", Typed.day(bestBefore), problems);
        lastDay.flatMap(day -> day)
                .filter(day ->
                        day.isBefore(before.received()) && !before.bestBefore().equals(Optional.of(day)))
                .ifPresent(day -> problems.add(new Problem(
                        "bestBefore",
                        "it was past its day when it came, on " + Dates.day(before.received()),
                        "look at the label again, or refuse the lot")));
        lastDay.flatMap(day -> day).flatMap(day -> far(day, before)).ifPresent(problems::add);
        Optional<Optional<Price>> paid = Typed.ok("price", Amounts.price(price, currency), problems);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        return Outcome.ok(new LotSaid(
                ownCode.strip(),
                before.supplierId(),
                supplierLot.strip(),
                before.received(),
                openedOn.orElseThrow(),
                lastDay.orElseThrow(),
                paid.orElseThrow(),
                before.status(),
                before.certificate(),
                notes));
    }
}
