package lyewright.records.setting;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Purities;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Share;
import lyewright.records.people.Deed;
import lyewright.records.people.Signed;
import lyewright.records.store.Database;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/** What the workshop is set to. */
public final class WorkshopSettings {

    private static final int LONGEST_FIGURE = 40;
    private static final BigDecimal MOST_HELD_BACK = new BigDecimal(50);

    private final Database database;

    /** The settings of a database; the records open it. */
    public WorkshopSettings(Database database) {
        this.database = database;
    }

    /** What it is set to; empty before the first start. */
    public Optional<Workshop> workshop() {
        return database.read(handle -> handle.createQuery("SELECT * FROM workshop")
                .map((row, context) -> workshop(row))
                .findOne());
    }

    /** The units of a database that is being read; empty before the first start. */
    public static Optional<Units> units(Handle handle) {
        return handle.createQuery("SELECT * FROM workshop")
                .map((row, context) -> workshop(row).units())
                .findOne();
    }

    /** Sets it. Figures that do not read are refused with the name of their field. */
    public Outcome<Workshop> save(Workshop workshop) {
        List<Problem> problems = check(workshop);
        return problems.isEmpty()
                ? Signed.decide(database, Deed.kept(Deed.Thing.SETTINGS), done -> Signed.Subject.of("1"), handle -> {
                    handle.createUpdate("DELETE FROM workshop").execute();
                    handle.createUpdate("""
                            INSERT INTO workshop (id, name, units, degrees, currency, market, paper, sodium_purity,
                              potassium_purity, hold_back, changed_epoch_ms)
                            VALUES (1, :name, :units, :degrees, :currency, :market, :paper, :sodium, :potassium, :holdBack, :now)
                            """)
                            .bind("name", workshop.name())
                            .bind("units", workshop.units().word())
                            .bind("degrees", workshop.degrees().word())
                            .bind("currency", workshop.currency())
                            .bind("market", workshop.market().word())
                            .bind("paper", workshop.paper().word())
                            .bind("sodium", workshop.sodiumPurity().orElse(null))
                            .bind("potassium", workshop.potassiumPurity().orElse(null))
                            .bind("holdBack", workshop.holdBack())
                            .bind("now", database.now())
                            .execute();
                    return Outcome.ok(workshop);
                })
                : new Outcome.Refused<>(problems);
    }

    /** Whether a column of a row that comes from elsewhere holds a figure that reads. Currencies differ from Java to Java. */
    public static boolean reads(String column, String text) {
        return switch (column) {
            case "sodium_purity" -> purity(column, "naoh", text).isEmpty();
            case "potassium_purity" -> purity(column, "koh", text).isEmpty();
            case "hold_back" -> holdBack(text).isEmpty();
            default -> true;
        };
    }

    private static List<Problem> check(Workshop workshop) {
        List<Problem> problems = new ArrayList<>();
        Typed.name("name", "the workshop's name", workshop.name()).ifPresent(problems::add);
        currency(workshop.currency()).ifPresent(problems::add);
        workshop.sodiumPurity().ifPresent(typed -> problems.addAll(purity("sodiumPurity", "naoh", typed)));
        workshop.potassiumPurity().ifPresent(typed -> problems.addAll(purity("potassiumPurity", "koh", typed)));
        holdBack(workshop.holdBack()).ifPresent(problems::add);
        return problems;
    }

    private static Optional<Problem> currency(String code) {
        boolean known = Currency.getAvailableCurrencies().stream()
                .anyMatch(currency -> currency.getCurrencyCode().equals(code));
        return known
                ? Optional.empty()
                : Optional.of(new Problem(
                        "currency",
                        "'" + code + "' is not a currency's code",
                        "write three capitals, as in EUR or GBP"));
    }

    private static List<Problem> purity(String path, String key, String typed) {
        if (typed.length() > LONGEST_FIGURE || typed.contains(",")) {
            return List.of(
                    new Problem(path, "'" + shortened(typed) + "' is not a purity", "write percent, as in 98.5"));
        }
        return Purities.parse(key + "=" + typed).problems().stream()
                .map(problem -> problem.within(path))
                .toList();
    }

    private static Optional<Problem> holdBack(String typed) {
        Problem problem = new Problem(
                "holdBack", "'" + shortened(typed) + "' cannot be held back", "write 0 to 50 percent, as in 1 %");
        if (typed.length() > LONGEST_FIGURE) {
            return Optional.of(problem);
        }
        return Share.parse(typed) instanceof Outcome.Ok<Share> share
                        && share.value().percent().compareTo(MOST_HELD_BACK) <= 0
                ? Optional.empty()
                : Optional.of(problem);
    }

    private static String shortened(String typed) {
        return typed.length() <= LONGEST_FIGURE ? typed : typed.substring(0, LONGEST_FIGURE);
    }

    private static Workshop workshop(ResultSet row) throws SQLException {
        return new Workshop(
                row.getString("name"),
                Units.ofWord(row.getString("units")),
                Degrees.ofWord(row.getString("degrees")),
                row.getString("currency"),
                Market.ofWord(row.getString("market")),
                Paper.ofWord(row.getString("paper")),
                Optional.ofNullable(row.getString("sodium_purity")),
                Optional.ofNullable(row.getString("potassium_purity")),
                row.getString("hold_back"));
    }
}
