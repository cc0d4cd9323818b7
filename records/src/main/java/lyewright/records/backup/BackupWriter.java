package lyewright.records.backup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lyewright.records.file.FileShelf;
import lyewright.records.ledger.Head;

/** Writes one backup: the tables a row to a line, the photographs and documents, and last the manifest that vouches for them. */
final class BackupWriter {

    private static final JsonFactory JSON = JsonFactory.builder().build();

    private final Connection connection;
    private final FileShelf shelf;
    private final ZipOutputStream zip;
    private final List<Part> parts = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    BackupWriter(Connection connection, FileShelf shelf, OutputStream out) {
        this.connection = connection;
        this.shelf = shelf;
        this.zip = new ZipOutputStream(out);
    }

    void write(int schema, long now, Head ledger) throws SQLException, IOException {
        for (String table : TableOrder.TABLES) {
            table(table);
        }
        // pictures and PDFs are packed as they are, and a text of one sign a million times may not be packed too
        // tightly to be believed
        zip.setLevel(Deflater.NO_COMPRESSION);
        for (String name : files()) {
            file(name);
        }
        zip.setLevel(Deflater.DEFAULT_COMPRESSION);
        zip.putNextEntry(new ZipEntry(Manifest.NAME));
        zip.write(new Manifest(Manifest.FORMAT, schema, now, Optional.of(ledger), parts, missing).bytes());
        zip.closeEntry();
        zip.finish();
        zip.flush();
    }

    private void table(String table) throws SQLException, IOException {
        String name = Part.ofTable(table);
        zip.putNextEntry(new ZipEntry(name));
        Measured out = new Measured(zip);
        long rows = 0;
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT * FROM " + table + " ORDER BY 1, 2");
                JsonGenerator json = JSON.createGenerator(out)) {
            json.setRootValueSeparator(null);
            while (row.next()) {
                line(json, row);
                json.writeRaw('\n');
                rows++;
            }
        }
        zip.closeEntry();
        parts.add(out.part(name, rows));
    }

    private static void line(JsonGenerator json, ResultSet row) throws SQLException, IOException {
        json.writeStartObject();
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
            Object value = row.getObject(i);
            if (value == null) {
                continue;
            }
            json.writeFieldName(row.getMetaData().getColumnName(i));
            if (value instanceof Number number) {
                json.writeNumber(number.longValue());
            } else {
                json.writeString(value.toString());
            }
        }
        json.writeEndObject();
    }

    private List<String> files() throws SQLException {
        List<String> names = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(
                        "SELECT sha256 FROM photograph UNION SELECT sha256 FROM document ORDER BY 1")) {
            while (row.next()) {
                names.add(row.getString(1));
            }
        }
        return names;
    }

    /** Looked at first, then copied: however long, it is never all in memory. */
    private void file(String hash) throws IOException {
        if (!shelf.isSound(hash)) {
            // gone, or harmed on the disk: what it holds is no longer what was kept
            missing.add(hash);
            return;
        }
        String name = Part.ofFile(hash);
        zip.putNextEntry(new ZipEntry(name));
        Measured out = new Measured(zip);
        Files.copy(shelf.at(hash), out);
        zip.closeEntry();
        Part part = out.part(name, 0);
        if (!part.sha256().equals(hash)) {
            throw new IOException("a file was changed while it was copied");
        }
        parts.add(part);
    }

    /** Counts and digests what goes through it, and leaves what is below open. */
    private static final class Measured extends DigestOutputStream {

        private long bytes;

        Measured(OutputStream out) {
            super(out, FileShelf.sha256());
        }

        @Override
        public void write(int b) throws IOException {
            super.write(b);
            bytes++;
        }

        @Override
        public void write(byte[] from, int start, int length) throws IOException {
            super.write(from, start, length);
            bytes += length;
        }

        @Override
        public void close() {
            // the file goes on
        }

        @Override
        public void flush() {
            // at the file's end
        }

        Part part(String name, long rows) {
            MessageDigest digest = getMessageDigest();
            return new Part(name, rows, bytes, HexFormat.of().formatHex(digest.digest()));
        }
    }
}
