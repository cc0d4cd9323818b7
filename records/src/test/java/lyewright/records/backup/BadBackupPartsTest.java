package lyewright.records.backup;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lyewright.records.OnBoth;
import org.junit.jupiter.api.Test;

/** Backups whose parts were made to do harm, or do not belong together. */
@OnBoth
class BadBackupPartsTest extends BadBackups {

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

    @Test
    void taken_apart_and_put_together_again_a_backup_is_still_good() throws IOException {
        Path again = folder.resolve("again.lyewright");
        Files.write(again, zipped(listed(unzipped())));

        assertThat(records.backups().restore(again).problems()).isEmpty();
        assertThat(Filled.everything(place)).isEqualTo(rows);
    }

    private void rowsRefused(String part, UnaryOperator<String> change) throws IOException {
        Map<String, byte[]> parts = unzipped();
        String before = new String(parts.get(part), UTF_8);
        String after = change.apply(before);
        assertThat(after).as(part).isNotEqualTo(before);
        parts.put(part, after.getBytes(UTF_8));
        refused(zipped(listed(parts)), "damaged");
    }
}
