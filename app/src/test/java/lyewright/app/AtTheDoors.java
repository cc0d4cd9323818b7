package lyewright.app;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lyewright.records.people.Role;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A workshop with one helper, and its doors. */
abstract class AtTheDoors {

    static final String MAKER = Author.DESK.person();

    @TempDir
    private Path home;

    TestDoors doors;
    String wenna = "";

    @BeforeEach
    void a_workshop_with_a_helper() {
        doors = TestDoors.open(home, false);
        wenna = doors.shop()
                .records()
                .people()
                .add("Wenna", Role.HELPER)
                .orThrow()
                .id();
    }

    @AfterEach
    void stop() {
        doors.close();
    }

    static String wayOn(HttpResponse<?> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    List<String> routes() {
        return doors.server().routes();
    }

    static String path(String route) {
        return route.substring(route.indexOf(' ') + 1)
                .replaceAll("\\{[^}]*}", "1")
                .replaceAll("<[^>]*>", "x");
    }

    String lot() {
        String item = doors.shop()
                .records()
                .items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow()
                .id();
        LotSaid said = new LotSaid(
                "",
                Optional.empty(),
                "NQ-118",
                LocalDate.of(2026, 11, 25),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LotStatus.USABLE,
                Optional.empty(),
                "");
        return doors.shop()
                .records()
                .lots()
                .receive(Author.DESK, "", List.of(new Arrival(item, said, 1_000_000)))
                .orThrow()
                .get(0)
                .id();
    }
}
