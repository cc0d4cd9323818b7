package lyewright.web.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import lyewright.measure.WrittenMass;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.equipment.JugUse;
import lyewright.records.ledger.Head;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import lyewright.web.Shop;
import lyewright.web.TestWorkshop;
import lyewright.web.WebServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings, backup and restore over HTTP, by whole pages. */
class SettingPagesTest {

    private static final List<String> USUAL = List.of(
            "name", "Gannet Stair Soap",
            "units", "grams",
            "degrees", "celsius",
            "currency", "GBP",
            "market", "gb",
            "paper", "a4",
            "sodiumPurity", "",
            "potassiumPurity", "",
            "holdBack", "1 %");

    @TempDir
    private static Path home;

    private static TestWorkshop workshop;

    @BeforeAll
    static void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new SettingPages(shop, home.resolve("mine"))));
    }

    @AfterAll
    static void stop() {
        workshop.close();
    }

    @BeforeEach
    void begin() {
        workshop.shop().backToMine();
        workshop.shop().startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        jugs().forEach(id -> workshop.shop().records().equipment().removeJug(id));
    }

    private static List<String> jugs() {
        return workshop.shop().records().equipment().jugs().stream()
                .map(jug -> jug.id())
                .toList();
    }

    private static void addJug(String name) {
        workshop.shop()
                .records()
                .equipment()
                .addJug(name, WrittenMass.ofGrams("312"), JugUse.LYE_JUG)
                .orThrow();
    }

    private static List<String> jugNames() {
        return workshop.shop().records().equipment().jugs().stream()
                .map(jug -> jug.name())
                .toList();
    }

    private HttpResponse<String> save(String... changes) throws Exception {
        return saveHavingSeen(TestWorkshop.hidden(workshop.get("/settings"), "seen"), changes);
    }

    private HttpResponse<String> saveHavingSeen(String seen, String... changes) throws Exception {
        List<String> fields = new ArrayList<>(USUAL);
        fields.addAll(List.of("seen", seen));
        for (int i = 0; i < changes.length; i += 2) {
            fields.set(fields.indexOf(changes[i]) + 1, changes[i + 1]);
        }
        return workshop.post("/settings", fields.toArray(String[]::new));
    }

    @Test
    void what_is_set_is_kept_and_can_be_set_back() throws Exception {
        HttpResponse<String> saved = save(
                "units",
                "ounces",
                "degrees",
                "fahrenheit",
                "currency",
                "cad",
                "market",
                "other",
                "paper",
                "letter",
                "sodiumPurity",
                "98.5 ± 0.5",
                "holdBack",
                "2");
        assertThat(saved.statusCode()).isEqualTo(303);
        Workshop kept = workshop.shop().workshop();
        assertThat(kept.units()).isEqualTo(Units.OUNCES);
        assertThat(kept.currency()).isEqualTo("CAD");
        assertThat(kept.sodiumPurity()).contains("98.5 ± 0.5");
        assertThat(kept.potassiumPurity()).isEmpty();
        assertThat(kept.holdBack()).isEqualTo("2 %");
        assertThat(workshop.get(TestWorkshop.wayOn(saved)).body()).contains("Undo the change");
        assertThat(workshop.post("/settings/undo").statusCode()).isEqualTo(303);
        assertThat(workshop.shop().workshop()).isEqualTo(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        assertThat(workshop.post("/settings/undo").statusCode()).isEqualTo(409);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "name | ``",
                "currency | pounds",
                "currency | <b>",
                "sodiumPurity | 0.98",
                "sodiumPurity | 98,5",
                "sodiumPurity | 101",
                "sodiumPurity | pure",
                "potassiumPurity | 90 ± 95",
                "potassiumPurity | 90,naoh=98",
                "holdBack | ``",
                "holdBack | 60",
                "holdBack | a little",
                "units | stones",
                "market | moon",
                "paper | ``"
            })
    void what_cannot_be_set_is_told_beside_its_field_and_comes_back_as_typed(String field, String typed)
            throws Exception {
        Workshop before = workshop.shop().workshop();
        HttpResponse<String> refused = save(field, typed);
        assertThat(refused.statusCode()).isEqualTo(422);
        if (!List.of("units", "market", "paper").contains(field)) {
            assertThat(refused.body())
                    .contains("id=\"f-" + field + "-trouble\"")
                    .contains("value=\"" + typed.replace("<", "&lt;") + "\"");
        } else {
            assertThat(refused.body()).contains("nothing is chosen");
        }
        assertThat(workshop.shop().workshop()).isEqualTo(before);
    }

    @Test
    void two_windows_do_not_write_over_each_other_unseen() throws Exception {
        String seen = TestWorkshop.hidden(workshop.get("/settings"), "seen");
        assertThat(saveHavingSeen(seen, "name", "First").statusCode()).isEqualTo(303);
        HttpResponse<String> late = saveHavingSeen(seen, "name", "Second");
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(late.body()).contains("changed in another window").contains("value=\"Second\"");
        assertThat(workshop.shop().workshop().name()).isEqualTo("First");
        assertThat(saveHavingSeen(TestWorkshop.hidden(late, "seen"), "name", "Second")
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_hostile_name_is_shown_as_text() throws Exception {
        assertThat(save("name", "<script>alert(1)</script>").statusCode()).isEqualTo(303);
        assertThat(workshop.get("/settings").body()).doesNotContain("<script>alert");
    }

    @Test
    void it_says_where_everything_is() throws Exception {
        assertThat(workshop.get("/settings").body())
                .contains(home.resolve("mine").toString())
                .contains("lyewright.log")
                .contains("edition of");
    }

    @Test
    void before_a_workshop_is_started_it_leads_to_the_beginning(@TempDir Path empty) throws Exception {
        Shop shop = Shop.open(
                        new Place.Folder(empty.resolve("mine")),
                        new Place.Folder(empty.resolve("demo")),
                        Clock.systemUTC())
                .orThrow();
        try (shop;
                WebServer server = WebServer.start("127.0.0.1", 0, List.of(new SettingPages(shop, empty)))
                        .orThrow()) {
            HttpResponse<String> answer = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(server.address() + "settings"))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
            assertThat(TestWorkshop.wayOn(answer)).endsWith("/start");
        }
    }

    // Backup

    @Test
    void a_backup_is_downloaded_looked_into_and_put_back() throws Exception {
        addJug("Before");
        HttpResponse<byte[]> backup = workshop.download("/settings/backup");
        assertThat(backup.statusCode()).isEqualTo(200);
        assertThat(backup.headers().firstValue("Content-Disposition").orElse(""))
                .matches("attachment; filename=\"lyewright-gannet-stair-soap-[0-9-]+\\.zip\"");
        addJug("After");
        HttpResponse<String> asked = workshop.postFile("/settings/restore", "backup", backup.body());
        assertThat(asked.statusCode()).isEqualTo(200);
        assertThat(asked.body())
                .contains("Put this backup back?")
                .contains("Gannet Stair Soap")
                .contains("is put into a backup");
        assertThat(jugNames()).contains("Before", "After");
        HttpResponse<String> restored = workshop.post(action(asked));
        assertThat(restored.statusCode()).isEqualTo(303);
        assertThat(jugNames()).contains("Before").doesNotContain("After");
        // the same answer sent twice does not put it back a second time
        assertThat(workshop.post(action(asked)).statusCode()).isEqualTo(409);
    }

    private static String action(HttpResponse<String> asked) {
        Matcher form =
                Pattern.compile("action=\"(/settings/restore/[0-9a-f-]{36})\"").matcher(asked.body());
        assertThat(form.find()).isTrue();
        return form.group(1);
    }

    private static void receive() {
        Records records = workshop.shop().records();
        LotSaid said = LotSaid.of(LocalDate.of(2026, 11, 25));
        ItemSaid coconut = ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.none());
        records.lots()
                .receive(records.author(), "", List.of(Arrival.of(coconut, said, 1_000_000)))
                .orThrow();
    }

    private static Head ledger() {
        return workshop.shop().records().ledger().head();
    }

    @Test
    void a_restore_that_would_lose_entries_of_the_ledger_asks_for_a_tick_once() throws Exception {
        receive();
        Head then = ledger();
        byte[] backup = workshop.download("/settings/backup").body();
        receive();
        Head newer = ledger();

        HttpResponse<String> asked = workshop.postFile("/settings/restore", "backup", backup);

        String first = (then.number() + 1) + " to " + newer.number();
        assertThat(asked.body())
                .contains("goes to " + then.printed())
                .contains("Entries " + first + " of the ledger are not in this backup and would be lost: 2 of "
                        + newer.number())
                .contains("The ledger here has gone on since this backup was made.");
        HttpResponse<String> unticked = workshop.post(action(asked), "upTo", Long.toString(newer.number()));
        assertThat(unticked.statusCode()).isEqualTo(422);
        assertThat(unticked.body()).contains("Nothing was put back: tick this first");
        assertThat(ledger()).isEqualTo(newer);
        receive();
        // what came after it was ticked was not asked about
        assertThat(workshop.post(action(asked), "over", "yes", "upTo", Long.toString(newer.number()))
                        .statusCode())
                .isEqualTo(422);
        assertThat(workshop.post(action(asked), "over", "yes", "upTo", Long.toString(newer.number() + 2))
                        .statusCode())
                .isEqualTo(303);
        // one more than the backup: it tells what was lost
        assertThat(ledger().number()).isEqualTo(then.number() + 1);
    }

    @Test
    void a_restore_that_loses_nothing_of_the_ledger_asks_for_no_tick() throws Exception {
        receive();
        byte[] backup = workshop.download("/settings/backup").body();

        HttpResponse<String> asked = workshop.postFile("/settings/restore", "backup", backup);

        assertThat(asked.body()).doesNotContain("name=\"over\"").doesNotContain("would be lost");
        assertThat(workshop.post(action(asked)).statusCode()).isEqualTo(303);
    }

    @Test
    void what_was_looked_into_can_be_left() throws Exception {
        byte[] backup = workshop.download("/settings/backup").body();
        addJug("After");
        HttpResponse<String> asked = workshop.postFile("/settings/restore", "backup", backup);
        assertThat(workshop.post(action(asked) + "/leave").statusCode()).isEqualTo(303);
        assertThat(workshop.post(action(asked)).statusCode()).isEqualTo(409);
        assertThat(jugNames()).contains("After");
    }

    @Test
    void every_way_of_being_damaged_is_refused_and_nothing_is_touched() throws Exception {
        addJug("Mine");
        byte[] backup = workshop.download("/settings/backup").body();
        List<byte[]> damaged = List.of(
                new byte[0],
                "not a backup".getBytes(StandardCharsets.UTF_8),
                Arrays.copyOf(backup, backup.length / 2),
                Arrays.copyOf(backup, backup.length - 30),
                changed(backup, inTheWorkshop(backup)),
                rewritten(backup, "jug", "\"name\":\"Mine\"", "\"name\":\"Yours\""));
        for (byte[] file : damaged) {
            HttpResponse<String> refused = workshop.postFile("/settings/restore", "backup", file);
            assertThat(refused.statusCode()).as("%d bytes", file.length).isEqualTo(422);
            assertThat(refused.body())
                    .contains("id=\"f-backup-trouble\"")
                    .contains("<input autofocus type=\"file\" id=\"f-backup\"")
                    .doesNotContain("Put this backup back?");
            assertThat(jugNames()).containsExactly("Mine");
        }
        assertThat(workshop.post("/settings/restore").statusCode()).isEqualTo(422);
    }

    @Test
    void a_backup_of_a_newer_lyewright_is_refused_and_nothing_is_touched() throws Exception {
        addJug("Mine");
        byte[] newer = rewritten(workshop.download("/settings/backup").body(), "", "\"schema\" : ", "\"schema\" : 9");
        HttpResponse<String> refused = workshop.postFile("/settings/restore", "backup", newer);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("made by a newer Lyewright");
        assertThat(jugNames()).containsExactly("Mine");
    }

    @Test
    void a_file_larger_than_is_taken_is_refused_in_words() throws Exception {
        assertThat(workshop.postFile("/settings/restore", "backup", new byte[0]).body())
                .contains("The file '")
                .contains("' is empty. Choose another, or save it anew.");
        HttpResponse<String> refused = workshop.postFile("/settings/restore", "backup", new byte[65 << 20]);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("larger than 64 MB");
    }

    @Test
    void nothing_is_put_back_into_the_demo_workshop() throws Exception {
        byte[] backup = workshop.download("/settings/backup").body();
        workshop.shop()
                .lookRound(records -> records.settings().save(Shop.usual("Demo", Units.GRAMS)))
                .orThrow();
        assertThat(workshop.get("/settings").body())
                .contains("looking round the demo workshop")
                .doesNotContain("name=\"backup\"");
        assertThat(workshop.postFile("/settings/restore", "backup", backup).statusCode())
                .isEqualTo(409);
    }

    @Test
    void an_answer_to_nothing_asked_is_refused() throws Exception {
        assertThat(workshop.post("/settings/restore/00000000-0000-0000-0000-000000000000")
                        .statusCode())
                .isEqualTo(409);
    }

    /** Somewhere in what is kept of the workshop itself; elsewhere a byte may be one that nothing depends on. */
    private static int inTheWorkshop(byte[] backup) {
        String name = "tables/workshop.jsonl";
        return new String(backup, StandardCharsets.ISO_8859_1).indexOf(name) + name.length() + 10;
    }

    private static byte[] changed(byte[] file, int at) {
        byte[] other = file.clone();
        other[at] ^= 0x55;
        return other;
    }

    /** The same file with a text replaced in every part whose name holds a word. */
    private static byte[] rewritten(byte[] file, String inPart, String text, String by) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        boolean found = false;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
                String content = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                boolean here = part.getName().contains(inPart) && content.contains(text);
                found |= here;
                out.putNextEntry(new ZipEntry(part.getName()));
                out.write((here ? content.replace(text, by) : content).getBytes(StandardCharsets.UTF_8));
                out.closeEntry();
            }
        }
        assertThat(found).as("'%s' in a part called '%s'", text, inPart).isTrue();
        return bytes.toByteArray();
    }
}
