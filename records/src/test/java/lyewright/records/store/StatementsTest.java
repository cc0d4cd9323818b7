package lyewright.records.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import lyewright.makingsheet.Balance;
import lyewright.measure.WrittenMass;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Place;
import lyewright.records.RecordsTrouble;
import lyewright.records.Workbench;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.recipe.Drafts;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.Search;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** However much is kept, asking for it takes the same few statements. */
@OnBoth
class StatementsTest extends Workbench {

    private static final int MOST = 3;

    private final AtomicInteger statements = new AtomicInteger();

    @Test
    void what_a_door_asks_of_the_database_does_not_grow_with_what_is_kept() {
        fill(2);
        Map<String, Integer> few = counts();
        fill(12);
        Map<String, Integer> many = counts();

        assertThat(many).isEqualTo(few);
        assertThat(many.values()).allSatisfy(count -> assertThat(count).isBetween(1, MOST));
    }

    private void fill(int more) {
        EquipmentRegister register = records.equipment();
        for (int i = 0; i < more; i++) {
            String id =
                    records.recipes().add(Formulas.named("Tideline")).orThrow().recipeId();
            records.recipes().save(id, 1, Formulas.named("Tideline"), true, "").orThrow();
            records.drafts().create(Optional.of(id), 2, "{}");
            UsualMass usual = new UsualMass(WrittenMass.ofGrams("1500"), id, 1);
            register.addMould(
                            "Mould " + register.moulds().size(),
                            new MouldMeasures(Optional.empty(), Optional.empty(), Optional.of(usual), Optional.empty()))
                    .orThrow();
            register.addBalance(Balance.parse("kitchen %d:5kg:1g"
                                    .formatted(register.balances().size()))
                            .orThrow())
                    .orThrow();
        }
    }

    private Map<String, Integer> counts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        try (Database database = new Database(counting(), clock, null, true)) {
            RecipeBook book = new RecipeBook(database);
            Drafts drafts = new Drafts(database);
            EquipmentRegister register = new EquipmentRegister(database);
            List<String> ids = new ArrayList<>();
            count(
                    counts,
                    "list",
                    () -> book.list(new Search("tideline olive", 1, 200))
                            .items()
                            .forEach(line -> ids.add(line.id())));
            count(counts, "find", () -> book.find(ids.get(0)));
            count(counts, "versions", () -> book.versions(ids.get(0)));
            count(counts, "deleted", () -> book.deleted(1, 200));
            count(counts, "drafts", drafts::all);
            count(counts, "moulds", register::moulds);
            count(counts, "equipment", register::equipment);
        }
        return counts;
    }

    private void count(Map<String, Integer> counts, String door, Runnable ask) {
        statements.set(0);
        ask.run();
        counts.put(door, statements.get());
    }

    // The dialect as it is, its connections counting what is prepared on them

    private Dialect counting() {
        Dialect real = place instanceof Place.Folder folder
                ? new SqliteDialect(folder.database())
                : new PostgresDialect((Place.Server) place);
        return new Dialect() {
            @Override
            public DataSource readers() {
                return through(DataSource.class, real.readers());
            }

            @Override
            public Connection openWriter() throws SQLException {
                return real.openWriter();
            }

            @Override
            public DataSource migrating() {
                return real.migrating();
            }

            @Override
            public void beginRead(Connection connection) throws SQLException {
                real.beginRead(connection);
            }

            @Override
            public void beginWrite(Connection connection) throws SQLException {
                real.beginWrite(connection);
            }

            @Override
            public void commit(Connection connection) throws SQLException {
                real.commit(connection);
            }

            @Override
            public void rollback(Connection connection) throws SQLException {
                real.rollback(connection);
            }

            @Override
            public @Nullable RecordsTrouble trouble(SQLException error) {
                return real.trouble(error);
            }

            @Override
            public String migrations() {
                return real.migrations();
            }

            @Override
            public String schema() {
                return real.schema();
            }

            @Override
            public Guards unguard(Connection connection) throws SQLException {
                return real.unguard(connection);
            }
        };
    }

    private <T> T through(Class<T> type, T real) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(), new Class<?>[] {type}, (proxy, method, arguments) -> {
                    try {
                        Object answer = method.invoke(real, arguments);
                        if (method.getName().equals("prepareStatement")) {
                            statements.incrementAndGet();
                        }
                        return answer instanceof Connection connection ? through(Connection.class, connection) : answer;
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                }));
    }
}
