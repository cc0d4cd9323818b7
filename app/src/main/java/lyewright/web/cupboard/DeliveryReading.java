package lyewright.web.cupboard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotDays;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockItem;
import lyewright.stock.LotStatus;
import lyewright.stock.SaidAmount;

/** Reads a delivery: each line by itself, so that all that is wrong is said at once. */
final class DeliveryReading {

    private static final Pattern BARE = Pattern.compile("[0-9]{1,12}(?:[.,][0-9]{1,6})?");

    /** What to do where a day is right though it is far off. */
    static final String FAR = "if it is right, say so below";

    private final Meant meant;
    private final String currency;
    private final LocalDate today;
    private final HereAlready here;
    private final List<Problem> problems = new ArrayList<>();

    DeliveryReading(Meant meant, String currency, LocalDate today, HereAlready here) {
        this.here = here;
        this.meant = meant;
        this.currency = currency;
        this.today = today;
    }

    /**
     * What came.
     *
     * @param form as typed
     * @return the delivery, its lines numbered as on the form by {@code places}; or all that is wrong, each at its field
     */
    Outcome<Read> read(DeliveryForm form) {
        Optional<LocalDate> day = ok("day", Typed.dayCome(form.day(), today));
        day.filter(came -> !form.longAgo())
                .flatMap(came -> LotDays.hardlySoLongAgo("day", came, today))
                .ifPresent(problem -> problems.add(asked(problem)));
        LotStatus status = form.quarantine() ? LotStatus.QUARANTINE : LotStatus.USABLE;
        List<Arrival> arrivals = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < form.lines().size(); i++) {
            if (!form.lines().get(i).isEmpty()) {
                arrival("lines." + i, form.lines().get(i), day.orElse(LocalDate.EPOCH), status)
                        .ifPresent(arrivals::add);
                places.add(i);
            }
        }
        if (places.isEmpty()) {
            problems.add(
                    new Problem("lines.0.material", "nothing is written down", "write what came, a line for each lot"));
        }
        return problems.isEmpty()
                ? Outcome.ok(new Read(new Delivery(form.supplier().strip(), arrivals), places))
                : new Outcome.Refused<>(problems);
    }

    /**
     * What came, and where it stands on the form.
     *
     * @param delivery what came
     * @param places the form's line of each arrival
     */
    record Read(Delivery delivery, List<Integer> places) {

        /** The same problem at its place on the form. */
        Problem onTheForm(Problem problem) {
            String[] path = problem.path().split("\\.", 3);
            if (!path[0].equals("lines") || path.length < 3) {
                return problem;
            }
            String field = switch (path[2]) {
                case "item", "name" -> "material";
                case "supplierLot" -> "lot";
                case "words" -> "amount";
                default -> path[2];
            };
            return new Problem(
                    "lines." + places.get(Integer.parseInt(path[1])) + "." + field, problem.what(), problem.remedy());
        }
    }

    private Optional<Arrival> arrival(String path, DeliveryForm.Line line, LocalDate day, LotStatus status) {
        Outcome<Meant.Found> said = meant.of(line.material(), Meant.kind(line.kind()));
        Optional<Meant.Found> found = ok(path, said);
        Optional<Optional<LocalDate>> bestBefore = ok(path + ".bestBefore", Typed.day(line.bestBefore()));
        Optional<Optional<Price>> price = ok(path + ".price", Amounts.price(line.price(), currency));
        // what is not known yet is taken for something that is weighed, so that its amount is looked at too; but a bare
        // number
        // may be a count, which the answer to what sort of thing it is will say
        boolean asked =
                said.problems().stream().anyMatch(problem -> problem.path().equals("kind"));
        Optional<SaidAmount> amount =
                asked && BARE.matcher(line.amount().strip()).matches()
                        ? Optional.empty()
                        : ok(path + ".amount", amount(line.amount(), found.map(Meant.Found::said)));
        bestBefore
                .flatMap(last -> last)
                .flatMap(last -> past(line, last, status))
                .ifPresent(problem -> problems.add(problem.within(path)));
        bestBefore
                .flatMap(last -> last)
                .flatMap(last -> far(line, last, day))
                .ifPresent(problem -> problems.add(problem.within(path)));
        found.flatMap(of -> here.asks(of, line)).ifPresent(problem -> problems.add(problem.within(path)));
        if (found.isEmpty() || bestBefore.isEmpty() || price.isEmpty() || amount.isEmpty()) {
            return Optional.empty();
        }
        boolean held = line.past().equals(DeliveryForm.Line.QUARANTINE)
                && bestBefore.get().filter(this::isPast).isPresent();
        LotSaid lot = LotSaid.of(day)
                .withSupplierLot(line.lot().strip())
                .withBestBefore(bestBefore.get())
                .withPrice(price.get())
                .withStatus(held ? LotStatus.QUARANTINE : status);
        return Optional.of(new Arrival(
                found.get().there().map(StockItem::id).orElse(""),
                found.get().fresh(),
                lot,
                amount.get().amount(),
                amount.get().words()));
    }

    /** A day that is past may be a slip, or what the label says: that is asked about once. */
    private Optional<Problem> past(DeliveryForm.Line line, LocalDate last, LotStatus status) {
        boolean answered = status == LotStatus.QUARANTINE
                || line.past().equals(DeliveryForm.Line.KEEP)
                || line.past().equals(DeliveryForm.Line.QUARANTINE);
        return isPast(last) && !answered
                ? Optional.of(new Problem(
                        "bestBefore",
                        DeliveryPage.Line.PAST,
                        "correct the day, or say below what is to be done with it"))
                : Optional.empty();
    }

    /** A day that is far off may be a slip too; what nobody lives to see is one. */
    private Optional<Problem> far(DeliveryForm.Line line, LocalDate last, LocalDate day) {
        LocalDate came = day.equals(LocalDate.EPOCH) ? today : day;
        return LotDays.neverSoLong(came, last)
                .or(() -> line.far()
                        ? Optional.empty()
                        : LotDays.hardlySoLong(came, last).map(DeliveryReading::asked));
    }

    /** The same, asked once. */
    static Problem asked(Problem problem) {
        return new Problem(problem.path(), problem.what(), problem.remedy() + "; " + FAR);
    }

    private boolean isPast(LocalDate last) {
        return last.isBefore(today);
    }

    static Outcome<SaidAmount> amount(String typed, Optional<ItemSaid> of) {
        return of.filter(said -> said.counting() == Counting.PIECES).isPresent()
                ? SaidAmount.pieces(typed)
                : SaidAmount.mass(typed, Known.of(of));
    }

    private <T> Optional<T> ok(String path, Outcome<T> read) {
        return Typed.ok(path, read, problems);
    }
}
