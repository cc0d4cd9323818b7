package lyewright.records;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import lyewright.measure.Outcome;
import lyewright.records.backup.Backups;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.file.Photographs;
import lyewright.records.ledger.Ledger;
import lyewright.records.material.OwnMaterials;
import lyewright.records.people.Devices;
import lyewright.records.people.Passwords;
import lyewright.records.people.People;
import lyewright.records.people.Signatures;
import lyewright.records.recipe.Drafts;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.setting.WorkshopSettings;
import lyewright.records.stock.Lots;
import lyewright.records.stock.StockBook;
import lyewright.records.stock.StockCheck;
import lyewright.records.stock.StockImport;
import lyewright.records.stock.StockItems;
import lyewright.records.stock.Suppliers;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import lyewright.records.store.Opening;

/**
 * What a workshop keeps, behind one door for each thing. Doors are safe for any thread, and each of their methods is one transaction.
 * What a person may do something about is an {@link Outcome}; what lies outside, such as a full disk, is a {@link RecordsTrouble}.
 */
public final class Records implements AutoCloseable {

    private static final Logger LOG = Logger.getLogger(Records.class.getName());

    private final Database database;
    private final Place place;

    private Records(Place place, Database database) {
        this.place = place;
        this.database = database;
    }

    /**
     * Opens the records of a place; what is missing there is made. A folder is held until it is closed, so that no second application
     * opens it.
     *
     * @param place where
     * @param clock the time that is written beside what is kept
     * @return the records, or why not, with what to do; nothing is touched then
     */
    public static Outcome<Records> open(Place place, Clock clock) {
        return Opening.toWrite(place, clock).then(database -> Outcome.ok(new Records(place, database).tidied()));
    }

    private Records tidied() {
        try {
            photographs().sweep();
        } catch (RecordsTrouble e) {
            // what is left over harms nobody, and the next start tries again
            LOG.log(Level.WARNING, e, () -> "photographs that nobody has any more are still there");
        }
        return this;
    }

    /**
     * Opens records only to be read, such as for a backup, beside an application that may be using them. Whatever writes is refused by
     * the database.
     *
     * @param place where; there must be records
     * @param clock the time
     * @return the records, or why not
     */
    public static Outcome<Records> openToRead(Place place, Clock clock) {
        return Opening.toRead(place, clock).then(database -> Outcome.ok(new Records(place, database)));
    }

    /**
     * Whether there are records in a place, of whichever release. Nothing is made there.
     *
     * @param place where
     * @return whether there are
     */
    public static boolean areIn(Place place) {
        return Opening.isThere(place);
    }

    /** The recipes. */
    public RecipeBook recipes() {
        return new RecipeBook(database);
    }

    /** What is being typed. */
    public Drafts drafts() {
        return new Drafts(database);
    }

    /** Moulds, balances and jugs. */
    public EquipmentRegister equipment() {
        return new EquipmentRegister(database);
    }

    /** What the workshop is set to. */
    public WorkshopSettings settings() {
        return new WorkshopSettings(database);
    }

    /** The maker's own materials. */
    public OwnMaterials materials() {
        return new OwnMaterials(database);
    }

    /** Photographs. */
    public Photographs photographs() {
        return new Photographs(database, place.files(), place instanceof Place.Server);
    }

    /**
     * The same records as somebody writes in them. Closing either closes both.
     *
     * @param author who signs what is written
     */
    public Records as(Author author) {
        return author.equals(database.author()) ? this : new Records(place, database.by(author));
    }

    /** Who signs what is written: the maker at the computer itself, unless {@link #as} says otherwise. */
    public Author author() {
        return database.author();
    }

    /** Who works here. */
    public People people() {
        return new People(database);
    }

    /** Their devices. */
    public Devices devices() {
        return new Devices(database);
    }

    /** Their passwords, on a server. */
    public Passwords passwords() {
        return new Passwords(database);
    }

    /** Who did what. */
    public Signatures signatures() {
        return new Signatures(database);
    }

    /** The ledger. */
    public Ledger ledger() {
        return new Ledger(database, List.of(new StockCheck()));
    }

    /** Who sells materials. */
    public Suppliers suppliers() {
        return new Suppliers(database);
    }

    /** What is stocked. */
    public StockItems items() {
        return new StockItems(database);
    }

    /** Lots and their moves. */
    public Lots lots() {
        return new Lots(database);
    }

    /** The way into the cupboard for the rows of a file. */
    public StockImport stockImport() {
        return new StockImport(database);
    }

    /** All of the cupboard, of this moment. */
    public StockBook stockBook() {
        return StockBook.of(database);
    }

    /** Backups. */
    public Backups backups() {
        Path workplace = place instanceof Place.Folder folder ? folder.home() : place.files();
        return new Backups(database, place.files(), workplace);
    }

    /** Lets go of the database and the folder. Closing twice is harmless. */
    @Override
    public void close() {
        database.close();
    }
}
