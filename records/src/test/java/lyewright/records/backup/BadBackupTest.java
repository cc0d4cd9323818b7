package lyewright.records.backup;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lyewright.measure.Outcome;
import lyewright.records.OnBoth;
import org.junit.jupiter.api.Test;

/** Files that are no backup, or that were harmed or cut short as a whole. */
@OnBoth
class BadBackupTest extends BadBackups {

    @Test
    void what_is_no_backup_at_all_is_refused() throws IOException {
        refused(new byte[0], "is empty");
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
}
