package lyewright.records.backup;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.formula.FormulaFile;
import lyewright.measure.Outcome;
import lyewright.records.setting.WorkshopSettings;
import lyewright.records.store.Staging;

/** Reads a backup's rows into a database of their own, which refuses what does not belong together. */
final class RowReader {

    private static final int LONGEST_TEXT = 4 << 20;

    static final ObjectReader ROWS = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxStringLength(LONGEST_TEXT)
                            .maxNestingDepth(3)
                            .maxNumberLength(20)
                            .build())
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build()
            .readerFor(JsonNode.class);

    private static final Set<String> FORMULAS = Set.of("formula_text", "material_text", "certificate_text");

    private final BackupFile file;
    private final Staging staging;

    RowReader(BackupFile file, Staging staging) {
        this.file = file;
        this.staging = staging;
    }

    /** Reads all rows; what does not fit is refused as damage. */
    Outcome<Boolean> read() throws IOException {
        Set<String> expected = new HashSet<>(staging.tables());
        TableOrder.STAYS.forEach(expected::remove);
        for (Part part : file.manifest().parts()) {
            if (!part.isFile() && !expected.remove(part.table())) {
                return BackupFile.damaged();
            }
        }
        if (!expected.isEmpty()) {
            return BackupFile.damaged();
        }
        try {
            for (Part part : file.manifest().parts()) {
                if (!part.isFile()) {
                    read(part);
                }
            }
            return staging.holdsTogether() && filesAreThere() ? Outcome.ok(true) : BackupFile.damaged();
        } catch (JacksonException | Unfit e) {
            return BackupFile.damaged();
        } catch (SQLException e) {
            // a constraint says that a row cannot be so
            if (staging.refusedARow(e)) {
                return BackupFile.damaged();
            }
            throw new IOException(e);
        }
    }

    private void read(Part part) throws IOException, SQLException, Unfit {
        Map<String, Staging.Column> columns = staging.columns(part.table());
        try (InputStream in = file.content(part);
                MappingIterator<JsonNode> rows = ROWS.readValues(in);
                Staging.Filling filling = staging.fill(part.table(), columns)) {
            while (rows.hasNextValue()) {
                filling.add(row(rows.nextValue(), columns));
            }
            filling.finish();
        }
    }

    private static Map<String, Object> row(JsonNode line, Map<String, Staging.Column> columns) throws Unfit {
        if (!line.isObject()) {
            throw new Unfit();
        }
        Map<String, Object> row = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> field : line.properties()) {
            Staging.Column column = columns.get(field.getKey());
            if (column == null) {
                throw new Unfit();
            }
            row.put(field.getKey(), value(field.getKey(), field.getValue(), column));
        }
        return row;
    }

    private static Object value(String name, JsonNode value, Staging.Column column) throws Unfit {
        switch (column) {
            case TEXT -> {
                String text = value.textValue();
                if (text == null || text.indexOf('\0') >= 0 || !isWhole(text) || !reads(name, text)) {
                    throw new Unfit();
                }
                return text;
            }
            case INT -> {
                if (!value.isInt()) {
                    throw new Unfit();
                }
                return value.longValue();
            }
            default -> {
                if (!value.isIntegralNumber() || !value.canConvertToLong()) {
                    throw new Unfit();
                }
                return value.longValue();
            }
        }
    }

    /** Half a character has no place in any database. */
    private static boolean isWhole(String text) {
        return StandardCharsets.UTF_8.newEncoder().canEncode(text);
    }

    /** A text that only pages would stumble over is found out here. */
    private static boolean reads(String column, String text) {
        if (column.endsWith("_day")) {
            return isDay(text);
        }
        return FORMULAS.contains(column)
                ? FormulaFile.read(text).formula().isPresent()
                : WorkshopSettings.reads(column, text);
    }

    private static boolean isDay(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    private boolean filesAreThere() throws SQLException {
        Set<String> there = new HashSet<>(file.manifest().missing());
        for (Part part : file.manifest().parts()) {
            if (part.isFile()) {
                there.add(part.hash());
            }
        }
        // an older schema has no documents
        return there.containsAll(staging.texts("SELECT sha256 FROM photograph"))
                && (!staging.tables().contains("document")
                        || there.containsAll(staging.texts("SELECT sha256 FROM document")));
    }

    static Optional<String> workshopName(BackupFile file, Part part) throws IOException {
        try (InputStream in = file.content(part);
                MappingIterator<JsonNode> rows = ROWS.readValues(in)) {
            return rows.hasNextValue()
                    ? Optional.ofNullable(rows.nextValue().path("name").textValue())
                    : Optional.empty();
        }
    }

    /** A row that is not of its table. */
    private static final class Unfit extends Exception {
        private static final long serialVersionUID = 1L;
    }
}
