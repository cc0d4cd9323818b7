package lyewright.records.backup;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import lyewright.measure.Outcome;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.file.FileShelf;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Files that are no backup, were harmed, or were made to do harm: each is refused and nothing is touched. */
@OnBoth
class BadBackupTest extends Workbench {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Path good = Path.of("");
    private Map<String, String> rows = Map.of();
    private Map<String, String> files = Map.of();

    @BeforeEach
    void makeAGoodOne() throws IOException {
        Filled.fill(records);
        good = folder.resolve("good.lyewright");
        try (OutputStream out = Files.newOutputStream(good)) {
            records.backups().write(out);
        }
        rows = Filled.everything(place);
        files = lengths();
    }

    /** Every file of the workshop with the digest of its content; of a database's own log only that it is there. */
    private Map<String, String> lengths() throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString();
                if (name.endsWith(".db") || name.contains("files")) {
                    found.put(name, FileShelf.nameOf(Files.readAllBytes(file)));
                }
            }
        }
        return found;
    }

    private void refused(byte[] bytes, String why) throws IOException {
        Path bad = folder.resolve("bad.lyewright");
        Files.write(bad, bytes);
        Outcome<Restored> outcome = records.backups().restore(bad);
        assertThat(outcome.problems())
                .as(why)
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains(why));
        assertThat(lengths()).as(why).isEqualTo(files);
        assertThat(Filled.everything(place)).as(why).isEqualTo(rows);
    }

    // The file as a whole

    @Test
    void what_is_no_backup_at_all_is_refused() throws IOException {
        refused(new byte[0], "not a backup");
        refused("Dear diary".getBytes(UTF_8), "not a backup");
        refused(zipped(Map.of("letter.txt", "Dear diary".getBytes(UTF_8))), "not a backup");
        assertThat(records.backups().restore(folder.resolve("nowhere")).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains("there is no file"));
        assertThat(records.backups().restore(folder).problems()).hasSize(1);
    }

    @Test
    void a_backup_cut_short_anywhere_is_refused() throws IOException {
        byte[] whole = Files.readAllBytes(good);
        for (int length = whole.length - 1; length > 0; length -= Math.max(1, whole.length / 23)) {
            refused(Arrays.copyOf(whole, length), "");
        }
    }

    @Test
    void a_backup_with_any_byte_of_its_content_harmed_is_refused_or_is_the_same() throws IOException {
        byte[] whole = Files.readAllBytes(good);
        Map<String, byte[]> content = unzipped();
        for (int at = 7; at < whole.length; at += 97) {
            byte[] harmed = whole.clone();
            harmed[at] ^= 0x10;
            Path bad = folder.resolve("bad.lyewright");
            Files.write(bad, harmed);
            if (Backups.check(bad) instanceof Outcome.Ok) {
                // times and the like that nothing depends on
                assertThat(unzipped(bad)).usingRecursiveComparison().isEqualTo(content);
            }
        }
        assertThat(lengths()).isEqualTo(files);
    }

    @Test
    void a_backup_whose_manifest_has_one_byte_harmed_is_refused() throws IOException {
        // stored as it is, so that a byte of the file is a byte of the manifest
        byte[] whole = Files.readAllBytes(storedManifest());
        int missing = new String(whole, ISO_8859_1).indexOf("\"missing\"");
        assertThat(missing).isPositive();
        whole[missing + 2] ^= 0x10;
        refused(whole, "damaged");
    }

    private Path storedManifest() throws IOException {
        Path stored = folder.resolve("stored.lyewright");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(stored))) {
            zip.setLevel(Deflater.NO_COMPRESSION);
            for (Map.Entry<String, byte[]> part : unzipped().entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        assertThat(Backups.check(stored).problems()).isEmpty();
        return stored;
    }

    @Test
    void a_backup_of_a_newer_format_or_schema_is_refused_as_such() throws IOException {
        refused(withManifest(manifest -> manifest.put("format", 2)), "newer Lyewright");
        refused(withManifest(manifest -> manifest.put("schema", 99)), "newer Lyewright");
        refused(withManifest(manifest -> manifest.put("format", 0)), "damaged");
        refused(withManifest(manifest -> manifest.put("schema", 0)), "damaged");
        refused(withManifest(manifest -> manifest.put("format", "one")), "damaged");
        refused(withManifest(manifest -> manifest.remove("parts")), "damaged");
    }

    @Test
    void a_backup_whose_ledger_does_not_go_as_far_as_it_says_is_refused() throws IOException {
        refused(withManifest(manifest -> manifest.remove("ledger")), "damaged");
        refused(withManifest(manifest -> manifest.putObject("ledger")), "damaged");
        refused(withManifest(manifest -> ((ObjectNode) manifest.get("ledger")).put("number", 8)), "damaged");
        refused(withManifest(manifest -> ((ObjectNode) manifest.get("ledger")).put("number", "9")), "damaged");
        refused(
                withManifest(manifest -> ((ObjectNode) manifest.get("ledger")).put("sha256", "0".repeat(64))),
                "damaged");
    }

    // Its parts

    @Test
    void a_part_more_or_less_or_under_another_name_is_refused() throws IOException {
        for (String name :
                List.of("../../etc/cron.d/x", "/etc/passwd", "files/../x", "tables/..", "tables/recipe.jsonl/", "x")) {
            Map<String, byte[]> parts = unzipped();
            parts.put(name, "x".getBytes(UTF_8));
            refused(zipped(parts), "damaged");
            refused(zipped(listed(parts)), "damaged");
        }
        Map<String, byte[]> less = unzipped();
        less.remove("tables/jug.jsonl");
        refused(zipped(less), "damaged");
        refused(zipped(listed(less)), "damaged");
    }

    @Test
    void a_photograph_that_is_not_what_its_name_says_is_refused() throws IOException {
        Map<String, byte[]> parts = unzipped();
        String name = parts.keySet().stream()
                .filter(part -> part.startsWith("files/"))
                .findFirst()
                .orElseThrow();
        parts.put(name, "something else".getBytes(UTF_8));
        refused(zipped(listed(parts)), "damaged");
        parts.remove(name);
        refused(zipped(listed(parts)), "damaged");
    }

    @Test
    void a_file_that_would_unpack_to_more_than_a_disk_holds_is_refused_before_it_is_unpacked() throws IOException {
        Map<String, byte[]> parts = unzipped();
        parts.put("tables/jug.jsonl", new byte[64 << 20]);
        refused(zipped(listed(parts)), "damaged");
        refused(
                withManifest(
                        manifest -> ((ObjectNode) manifest.withArray("parts").get(0)).put("bytes", 1L << 40)),
                "damaged");
        refused(
                withManifest(
                        manifest -> ((ObjectNode) manifest.withArray("parts").get(0)).put("bytes", -1)),
                "damaged");
    }

    @Test
    void a_manifest_that_says_far_more_than_there_are_parts_is_refused_before_it_is_read() throws IOException {
        refused(withManifest(manifest -> manifest.put("more", "x".repeat(2 << 20))), "damaged");
    }

    // Its rows

    @Test
    void rows_that_the_records_would_never_write_are_refused() throws IOException {
        rowsRefused("tables/jug.jsonl", text -> text.replace("\"used_for\":\"lye jug\"", "\"used_for\":\"teapot\""));
        rowsRefused("tables/jug.jsonl", text -> text.replace("\"empty_unit\":\"oz\"", "\"empty_unit\":7"));
        rowsRefused("tables/jug.jsonl", text -> text.replace("\"empty_unit\":\"oz\"", "\"bees\":\"oz\""));
        rowsRefused(
                "tables/jug.jsonl", text -> text.replaceAll("\"empty_milligrams\":\\d+", "\"empty_milligrams\":1.5"));
        rowsRefused(
                "tables/jug.jsonl", text -> text.replaceAll("\"empty_milligrams\":\\d+", "\"empty_milligrams\":1e99"));
        rowsRefused("tables/jug.jsonl", text -> text.replace("white jug", "white\\u0000jug"));
        rowsRefused("tables/jug.jsonl", text -> text.replace("white jug", "white\\ud800jug"));
        rowsRefused("tables/jug.jsonl", text -> text + text);
        rowsRefused("tables/jug.jsonl", text -> text + "[]\n");
        rowsRefused("tables/jug.jsonl", text -> text + "{\n");
        rowsRefused("tables/jug.jsonl", text -> "[".repeat(100_000) + "\n");
        rowsRefused("tables/recipe_version.jsonl", text -> text.replace("superfat: ", "superfats: "));
        rowsRefused(
                "tables/recipe_version.jsonl", text -> text.lines().findFirst().orElseThrow() + "\n");
        rowsRefused(
                "tables/recipe.jsonl",
                text -> text.replaceAll("\"newest_version\":2", "\"newest_version\":99999999999"));
        rowsRefused("tables/recipe.jsonl", text -> text.replaceAll("\"newest_version\":2", "\"newest_version\":1"));
        rowsRefused("tables/photograph.jsonl", text -> "");
        rowsRefused(
                "tables/workshop.jsonl",
                text -> text.replaceAll("\"hold_back\":\"[^\"]*\"", "\"hold_back\":\"some of it\""));
        rowsRefused(
                "tables/workshop.jsonl", text -> text.replaceFirst("\\{", "{\"potassium_purity\":\"nearly pure\","));
    }

    private void rowsRefused(String part, UnaryOperator<String> change) throws IOException {
        Map<String, byte[]> parts = unzipped();
        String before = new String(parts.get(part), UTF_8);
        String after = change.apply(before);
        assertThat(after).as(part).isNotEqualTo(before);
        parts.put(part, after.getBytes(UTF_8));
        refused(zipped(listed(parts)), "damaged");
    }

    @Test
    void taken_apart_and_put_together_again_a_backup_is_still_good() throws IOException {
        Path again = folder.resolve("again.lyewright");
        Files.write(again, zipped(listed(unzipped())));

        assertThat(records.backups().restore(again).problems()).isEmpty();
        assertThat(Filled.everything(place)).isEqualTo(rows);
    }

    // Taking apart and putting together

    private Map<String, byte[]> unzipped() throws IOException {
        return unzipped(good);
    }

    private static Map<String, byte[]> unzipped(Path file) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Enumeration<? extends ZipEntry> entries = zip.entries();
            while (entries.hasMoreElements()) {
                ZipEntry entry = entries.nextElement();
                try (InputStream in = zip.getInputStream(entry)) {
                    parts.put(entry.getName(), in.readAllBytes());
                }
            }
        }
        return parts;
    }

    private static byte[] zipped(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private byte[] withManifest(Consumer<ObjectNode> change) throws IOException {
        Map<String, byte[]> parts = unzipped();
        ObjectNode manifest = (ObjectNode) JSON.readTree(parts.get(Manifest.NAME));
        change.accept(manifest);
        parts.put(Manifest.NAME, JSON.writeValueAsBytes(manifest));
        return zipped(parts);
    }

    /** The parts with a manifest that vouches for them as they are. */
    private static Map<String, byte[]> listed(Map<String, byte[]> parts) throws IOException {
        ObjectNode manifest = (ObjectNode) JSON.readTree(parts.get(Manifest.NAME));
        ArrayNode list = manifest.putArray("parts");
        Map<String, byte[]> all = new LinkedHashMap<>(parts);
        all.remove(Manifest.NAME);
        all.forEach((name, bytes) -> list.addObject()
                .put("name", name)
                .put("rows", name.startsWith("files/") ? 0 : lines(bytes))
                .put("bytes", bytes.length)
                .put("sha256", FileShelf.nameOf(bytes)));
        all.put(Manifest.NAME, JSON.writeValueAsBytes(manifest));
        return all;
    }

    private static int lines(byte[] bytes) {
        int lines = 0;
        for (byte b : bytes) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }
}
