package lyewright.records.stock;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Roles;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import org.jdbi.v3.core.Handle;

/**
 * Lots, and the moves by which they come and go. Each method that writes is one transaction, in the ledger and beside it. A token that
 * a form carries makes sure that what was sent twice is done once; an empty one asks for nothing.
 */
public final class Lots {

    /** How a refusal ends that is told because a lot has not enough. */
    public static final String HOLDS_LESS = "holds less than that by now";

    private final Database database;

    /** The lots of a database; the records open it. */
    public Lots(Database database) {
        this.database = database;
    }

    /** All that hold something, the oldest first. */
    public List<KeptLot> held() {
        return database.read(handle -> new LotRows(handle).held());
    }

    /** All of a material, used up or not, the oldest first. */
    public List<KeptLot> of(String itemId) {
        return database.read(handle -> new LotRows(handle).of(itemId));
    }

    /** One. */
    public Optional<KeptLot> find(String id) {
        return database.read(handle -> new LotRows(handle).find(id));
    }

    /** The one of the workshop's own code. */
    public Optional<KeptLot> findCode(String code) {
        return database.read(handle -> new LotRows(handle).findCode(code));
    }

    /** The other lots of a delivery: those that the same supplier brought on the same day, without what was taken back. */
    public List<KeptLot> cameWith(String id) {
        return database.read(handle -> new LotRows(handle).cameWith(id));
    }

    /** The lots that a form brought, in its order; none where it was not received. */
    public List<KeptLot> broughtBy(String token) {
        return database.read(handle -> new LotRows(handle).broughtBy(token));
    }

    /** What came and went of a lot, the newest first. */
    public List<StockMove> moves(String lotId) {
        return database.read(handle -> new LotRows(handle).movesOf(lotId));
    }

    /** What went into a lot that was made here, in order; nothing where it was bought. */
    public List<StockMove> madeOf(String lotId) {
        return database.read(handle -> new LotRows(handle).madeOf(lotId));
    }

    /**
     * Receives a delivery: all of its lines or none.
     *
     * @param author who does it
     * @param token of the form
     * @param arrivals what came; problems name the line, as in {@code lines.2.bestBefore}
     * @return the lots, or none where the same form was received before
     */
    public Outcome<List<KeptLot>> receive(Author author, String token, List<Arrival> arrivals) {
        return byMaker(author, token, List.of(), work -> work.arrivals().receive(arrivals, ""));
    }

    /**
     * Receives a delivery of which the supplier, and some of what came, may not be known yet: they are added with it.
     *
     * @param author who does it
     * @param token of the form
     * @param delivery what came; problems name the line, or {@code supplier}
     * @return the lots, or none where the same form was received before
     */
    public Outcome<List<KeptLot>> receive(Author author, String token, Delivery delivery) {
        return byMaker(author, token, List.of(), work -> work.arrivals().receive(delivery));
    }

    /**
     * Makes a lot of others, as stock lye or premixed oils.
     *
     * @param author who does it
     * @param token of the form
     * @param made what is made
     * @param from what it is made of
     * @return the lot, or nothing where the same form was sent before
     */
    public Outcome<Optional<KeptLot>> make(Author author, String token, Arrival made, List<Taking> from) {
        return byMaker(author, token, Optional.empty(), work -> work.make(made, from));
    }

    /** Says something else of a lot: its status, its certificate, its days. */
    public Outcome<KeptLot> change(Author author, String id, LotSaid said) {
        List<Problem> problems = LotRules.check(said);
        return problems.isEmpty()
                ? database.decide(handle -> Roles.isMaker(handle, author)
                        .then(may -> work(handle, author).facts().change(id, said)))
                : new Outcome.Refused<>(problems);
    }

    /**
     * What was taken by forms whose tokens begin alike, so that a page can say that it was taken already.
     *
     * @param tokens the beginning
     * @param most how many are told of at most
     * @return how often, and the last ones
     */
    public TakenBefore takenBefore(String tokens, int most) {
        return database.read(handle -> new TakenRows(handle).before(tokens, most));
    }

    /**
     * Takes back what one form took, all that is not back already.
     *
     * @param author who does it
     * @param tokens the beginning of its token
     * @param head what tells it from all others
     * @param why why; not empty
     * @return the numbers of the moves that take it back; refused where no such form took anything
     */
    public Outcome<List<Long>> takeBack(Author author, String tokens, String head, String why) {
        return database.decide(handle -> Roles.isMaker(handle, author)
                .then(may -> new TakenRows(handle)
                        .open(tokens, head)
                        .then(open -> work(handle, author).correct(open, why))));
    }

    /**
     * Takes from lots: all of it or nothing. Refused where a lot holds less, is refused or in quarantine.
     *
     * @param author who does it
     * @param token of the form
     * @param from how much of which
     * @param told what is told of it; its amount is that of each taking
     * @return the numbers of the moves, none where the same form was sent before
     */
    public Outcome<List<Long>> take(Author author, String token, List<Taking> from, StockMove.Told told) {
        return write(author, token, List.of(), work -> work.take(from, told));
    }

    /**
     * Notes what somebody counted. What differs from the book is a move; what agrees is one too, of nothing.
     *
     * @param author who counted
     * @param token of the form
     * @param counted what there is of each lot, milligrams or pieces, by lot id
     * @param why what explains the differences, by lot id
     * @return the numbers of the moves
     */
    public Outcome<List<Long>> count(Author author, String token, Map<String, Long> counted, Map<String, String> why) {
        return write(author, token, List.of(), work -> work.count(counted, why));
    }

    /**
     * Takes a move back by one that undoes it, and names it. Once.
     *
     * @param author who does it
     * @param number of the move
     * @param why why; not empty
     * @return the number of the move that takes it back
     */
    public Outcome<Long> correct(Author author, long number, String why) {
        return database.decide(handle ->
                Roles.isMaker(handle, author).then(may -> work(handle, author).correct(number, why)));
    }

    /**
     * Takes moves back, as {@link #correct(Author, long, String)} does: all of them or none.
     *
     * @param author who does it
     * @param numbers of the moves
     * @param why why; not empty
     * @return the numbers of the moves that take them back
     */
    public Outcome<List<Long>> correct(Author author, List<Long> numbers, String why) {
        return database.decide(handle ->
                Roles.isMaker(handle, author).then(may -> work(handle, author).correct(numbers, why)));
    }

    private LotWork work(Handle handle, Author author) {
        return new LotWork(handle, author, database.now(), database::newId);
    }

    private <T> Outcome<T> byMaker(Author author, String token, T already, Function<LotWork, Outcome<T>> work) {
        return database.decide(
                handle -> Roles.isMaker(handle, author).then(may -> once(handle, author, token, already, work)));
    }

    private <T> Outcome<T> write(Author author, String token, T already, Function<LotWork, Outcome<T>> work) {
        return database.decide(
                handle -> Roles.maySign(handle, author).then(may -> once(handle, author, token, already, work)));
    }

    private <T> Outcome<T> once(
            Handle handle, Author author, String token, T already, Function<LotWork, Outcome<T>> work) {
        LotWork writing = work(handle, author);
        if (!writing.book().isFirstTime(token)) {
            return Outcome.ok(already);
        }
        Outcome<T> done = work.apply(writing);
        if (done instanceof Outcome.Ok<T> && writing.book().lastWritten() > 0) {
            writing.book().done(token, writing.book().lastWritten());
        }
        return done;
    }
}
