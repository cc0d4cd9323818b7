package lyewright.web.cupboard;

import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.RecordsTrouble;
import lyewright.records.stock.LotDays;
import lyewright.web.SentField;

/** What forms of the cupboard send. */
final class Typed {

    private static final int LONGEST_FIELD = 2_000;
    private static final int LONGEST_TEXT = 20_000;

    private Typed() {}

    /** One line. */
    static String line(Context ctx, String name) {
        return SentField.of(ctx, name, LONGEST_FIELD);
    }

    /** Several lines. */
    static String text(Context ctx, String name) {
        return SentField.of(ctx, name, LONGEST_TEXT).replace("\r\n", "\n");
    }

    /** Whether a box was ticked. */
    static boolean ticked(Context ctx, String name) {
        return ctx.formParam(name) != null;
    }

    /** A day as a browser sends it; nothing where nothing was typed. */
    static Outcome<Optional<LocalDate>> day(String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return Outcome.ok(Optional.empty());
        }
        try {
            LocalDate day = LocalDate.parse(text);
            if (day.getYear() >= 1900 && day.getYear() <= 2999) {
                return Outcome.ok(Optional.of(day));
            }
        } catch (DateTimeException e) {
            // said below
        }
        return Outcome.refused("that is not a day", "write year, month and day, as in 2027-03-31");
    }

    /** A day that must be there. */
    static Outcome<LocalDate> dayNeeded(String typed) {
        return day(typed)
                .then(day -> day.<Outcome<LocalDate>>map(Outcome::ok)
                        .orElseGet(() -> Outcome.refused("nothing says which day", "write it, as in 2026-11-25")));
    }

    /** A day that must be there, and must have come; tomorrow has somewhere. */
    static Outcome<LocalDate> dayCome(String typed, LocalDate today) {
        return dayNeeded(typed).then(day -> come(day, today));
    }

    /** The same of a day that need not be there. */
    static Outcome<Optional<LocalDate>> dayComeIfAny(String typed, LocalDate today) {
        return day(typed)
                .then(day -> day.map(it -> come(it, today).then(come -> Outcome.ok(Optional.of(come))))
                        .orElseGet(() -> Outcome.ok(Optional.empty())));
    }

    private static Outcome<LocalDate> come(LocalDate day, LocalDate today) {
        return day.isAfter(today.plusDays(1))
                ? Outcome.refused("that day has not come yet", "look at the year, the month and the day again")
                : LotDays.neverSoLongAgo("", day, today)
                        .<Outcome<LocalDate>>map(Outcome::refused)
                        .orElseGet(() -> Outcome.ok(day));
    }

    /** What was read; what is wrong with it is noted at its field. */
    static <T> Optional<T> ok(String path, Outcome<T> read, List<Problem> problems) {
        read.problems().forEach(problem -> problems.add(problem.within(path)));
        return read instanceof Outcome.Ok<T> ok ? Optional.of(ok.value()) : Optional.empty();
    }

    /** Writes what was typed; a full disk must not cost it. */
    static <T> Outcome<T> kept(Supplier<Outcome<T>> work) {
        try {
            return work.get();
        } catch (RecordsTrouble e) {
            return Outcome.refused(e.problem());
        }
    }
}
