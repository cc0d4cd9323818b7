package lyewright.records.backup;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.records.file.FileShelf;
import lyewright.records.ledger.Head;

/**
 * What a backup says of itself: its format, the schema its rows are of, when it was made, and each part with its length and digest.
 *
 * @param format the format's number
 * @param schema the schema's version
 * @param madeEpochMs when it was made
 * @param ledger how far its ledger goes, which tells what comes later; nothing where there was no ledger yet
 * @param parts all parts but the manifest itself
 * @param missing names of photographs and documents whose files had gone
 */
record Manifest(
        int format, int schema, long madeEpochMs, Optional<Head> ledger, List<Part> parts, List<String> missing) {

    /** Its name in the file. */
    static final String NAME = "manifest.json";

    /** The format that is written. */
    static final int FORMAT = 1;

    private static final String WHAT = "lyewright backup";

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    Manifest {
        parts = List.copyOf(parts);
        missing = List.copyOf(missing);
    }

    byte[] bytes() {
        ObjectNode root = JSON.createObjectNode()
                .put("what", WHAT)
                .put("format", format)
                .put("schema", schema)
                .put("made_epoch_ms", madeEpochMs);
        ledger.ifPresent(
                head -> root.putObject("ledger").put("number", head.number()).put("sha256", head.seal()));
        ArrayNode list = root.putArray("parts");
        for (Part part : parts) {
            list.addObject()
                    .put("name", part.name())
                    .put("rows", part.rows())
                    .put("bytes", part.bytes())
                    .put("sha256", part.sha256());
        }
        missing.forEach(root.putArray("missing")::add);
        return root.toPrettyString().getBytes(StandardCharsets.UTF_8);
    }

    /** Reads one; empty where it is none. Of a newer format only the number is read. */
    static Optional<Manifest> read(byte[] bytes) throws IOException {
        try {
            JsonNode root = JSON.readTree(bytes);
            if (root == null
                    || !root.path("what").asText().equals(WHAT)
                    || !root.path("format").isInt()) {
                return Optional.empty();
            }
            int format = root.path("format").intValue();
            return format > FORMAT
                    ? Optional.of(new Manifest(format, 0, 0, Optional.empty(), List.of(), List.of()))
                    : read(root, format);
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    private static Optional<Manifest> read(JsonNode root, int format) {
        if (format < 1
                || !root.path("schema").isInt()
                || !root.path("made_epoch_ms").isIntegralNumber()) {
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        for (JsonNode part : root.path("parts")) {
            if (!part.path("rows").isIntegralNumber() || !part.path("bytes").isIntegralNumber()) {
                return Optional.empty();
            }
            parts.add(new Part(
                    part.path("name").asText(),
                    part.path("rows").longValue(),
                    part.path("bytes").longValue(),
                    part.path("sha256").asText()));
        }
        List<String> missing = new ArrayList<>();
        root.path("missing").forEach(name -> missing.add(name.asText()));
        Optional<Head> ledger = ledger(root.path("ledger"));
        if (ledger.isEmpty() && root.has("ledger")) {
            return Optional.empty();
        }
        return Optional.of(new Manifest(
                format,
                root.path("schema").intValue(),
                root.path("made_epoch_ms").longValue(),
                ledger,
                parts,
                missing));
    }

    private static Optional<Head> ledger(JsonNode head) {
        return head.path("number").isIntegralNumber()
                        && head.path("number").longValue() >= 0
                        && FileShelf.isName(head.path("sha256").asText())
                ? Optional.of(new Head(
                        head.path("number").longValue(), head.path("sha256").asText()))
                : Optional.empty();
    }

    /** The part of a table, if it is there. */
    Optional<Part> table(String table) {
        String name = Part.ofTable(table);
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }
}
