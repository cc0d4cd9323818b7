package lyewright.records.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.measure.Problem;
import lyewright.records.material.MaterialText;
import lyewright.records.store.Typed;

/** What may be said of a lot and of a move. */
final class LotRules {

    private static final int LONGEST_CODE = 60;
    private static final int LONGEST_WORD = 200;
    private static final int LONGEST_PURPOSE = 500;
    private static final int LONGEST_WHY = 2_000;

    /** A billion kilograms, or as many pieces: far more than anybody has, and far less than a sum could overflow with. */
    static final long MOST = 1_000_000_000_000_000L;

    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    private LotRules() {}

    static List<Problem> check(LotSaid said) {
        List<Problem> problems = new ArrayList<>();
        ItemRules.line(problems, "ownCode", "its own code", said.ownCode(), LONGEST_CODE);
        ItemRules.line(problems, "supplierLot", "the supplier's lot", said.supplierLot(), LONGEST_WORD);
        seen(problems, "ownCode", "its own code", said.ownCode());
        seen(problems, "supplierLot", "the supplier's lot", said.supplierLot());
        Typed.text("notes", "the note", said.notes(), Suppliers.LONGEST_NOTES).ifPresent(problems::add);
        said.opened()
                .filter(day -> day.isBefore(said.received()))
                .ifPresent(day -> problems.add(
                        new Problem("opened", "it was opened before it came", "write a day after it came")));
        said.price()
                .filter(price ->
                        price.minor() < 0 || !CURRENCY.matcher(price.currency()).matches())
                .ifPresent(price -> problems.add(new Problem("price", "that is no price", "write it as in 42.50")));
        said.certificate()
                .ifPresent(own -> MaterialText.check(own).forEach(p -> problems.add(p.within("certificate"))));
        return problems;
    }

    /** What was past its day when it came is asked about where it is typed; in a file, where it may well be so, it is pointed out. */
    static Optional<Problem> pastWhenItCame(LotSaid said) {
        return said.bestBefore()
                .filter(day -> day.isBefore(said.received()))
                .map(day -> new Problem(
                        "bestBefore", "it was past its day when it came", "look at the label again, or refuse it"));
    }

    /** Days that have not come, as the pages ask about them; tomorrow has come somewhere. */
    static List<Problem> notCome(LotSaid said, LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        LocalDate last = today.plusDays(1);
        if (said.received().isAfter(last)) {
            problems.add(notCome("received"));
        }
        said.opened().filter(day -> day.isAfter(last)).ifPresent(day -> problems.add(notCome("opened")));
        return problems;
    }

    private static Problem notCome(String path) {
        return new Problem(path, "that day has not come yet", "look at the year, the month and the day again");
    }

    /** A code that nobody can see, or that turns the writing round, could not be found again. */
    private static void seen(List<Problem> problems, String path, String whose, String code) {
        if (!code.isEmpty()
                && problems.stream().noneMatch(problem -> problem.path().equals(path))) {
            Typed.name(path, whose, code).ifPresent(problems::add);
        }
    }

    static List<Problem> check(StockMove.Told told) {
        List<Problem> problems = new ArrayList<>();
        ItemRules.line(problems, "purpose", "what it is for", told.purpose(), LONGEST_PURPOSE);
        ItemRules.line(problems, "words", "how much in words", told.words(), LONGEST_WORD);
        Typed.text("why", "the reason", told.why(), LONGEST_WHY).ifPresent(problems::add);
        if (Math.abs(told.amount()) > MOST) {
            problems.add(new Problem("amount", "that is more than there can be", "look at the number and its unit"));
        }
        return problems;
    }
}
