package lyewright.records.backup;

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
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import lyewright.measure.Outcome;
import lyewright.records.Workbench;
import lyewright.records.file.FileShelf;
import org.junit.jupiter.api.BeforeEach;

/** A good backup, and what makes a bad one of it: each is refused and nothing is touched. */
abstract class BadBackups extends Workbench {

    static final ObjectMapper JSON = new ObjectMapper();

    Path good = Path.of("");
    Map<String, String> rows = Map.of();
    Map<String, String> files = Map.of();

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
    Map<String, String> lengths() throws IOException {
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

    void refused(byte[] bytes, String why) throws IOException {
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

    // Taking apart and putting together

    Map<String, byte[]> unzipped() throws IOException {
        return unzipped(good);
    }

    static Map<String, byte[]> unzipped(Path file) throws IOException {
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

    static byte[] zipped(Map<String, byte[]> parts) throws IOException {
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

    byte[] withManifest(Consumer<ObjectNode> change) throws IOException {
        Map<String, byte[]> parts = unzipped();
        ObjectNode manifest = (ObjectNode) JSON.readTree(parts.get(Manifest.NAME));
        change.accept(manifest);
        parts.put(Manifest.NAME, JSON.writeValueAsBytes(manifest));
        return zipped(parts);
    }

    /** The parts with a manifest that vouches for them as they are. */
    static Map<String, byte[]> listed(Map<String, byte[]> parts) throws IOException {
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

    static int lines(byte[] bytes) {
        int lines = 0;
        for (byte b : bytes) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }
}
