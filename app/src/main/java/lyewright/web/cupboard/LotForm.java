package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
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
 */
record LotForm(String ownCode, String supplierLot, String opened, String bestBefore, String price, String notes) {

    static final Set<String> FIELDS = Set.of("ownCode", "supplierLot", "opened", "bestBefore", "price", "notes");

    static LotForm of(LotSaid said) {
        return new LotForm(
                said.ownCode(),
                said.supplierLot(),
                said.opened().map(LocalDate::toString).orElse(""),
                said.bestBefore().map(LocalDate::toString).orElse(""),
                LotView.price(said.price()),
                said.notes());
    }

    static LotForm sent(Context ctx) {
        return new LotForm(
                Typed.line(ctx, "ownCode"),
                Typed.line(ctx, "supplierLot"),
                Typed.line(ctx, "opened"),
                Typed.line(ctx, "bestBefore"),
                Typed.line(ctx, "price"),
                Typed.line(ctx, "notes"));
    }

    List<TextField> fields(List<Problem> problems) {
        return List.of(
                TextField.of("ownCode", "Its code", "as written on the jar", ownCode)
                        .with(problems),
                TextField.of("supplierLot", "Supplier's lot", "", supplierLot).with(problems),
                TextField.of("opened", "Opened", "the day", opened).with(problems),
                TextField.of("bestBefore", "Best before", "the last day it is good on", bestBefore)
                        .with(problems),
                TextField.of("price", "Price of all of it", "without the currency", price)
                        .with(problems)
                        .forFigures(),
                TextField.of("notes", "Notes", "", notes).with(problems));
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
