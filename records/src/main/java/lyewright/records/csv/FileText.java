package lyewright.records.csv;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * The text of a file, and in which encoding it was found.
 *
 * @param text without a byte order mark
 * @param encoding how it was encoded, in words
 */
record FileText(String text, String encoding) {

    static final int LARGEST = 5 << 20;

    private static final Pattern NOTHING = Pattern.compile("[\\s,;\"]*+");

    private static final String SAVE_AS = "save it as CSV, in UTF-8 where the program asks, and send that file";

    static Outcome<FileText> of(byte[] bytes) {
        if (bytes.length == 0) {
            return refused("the file is empty", "choose a CSV file with a row of column names and rows beneath");
        }
        if (bytes.length > LARGEST) {
            return refused("the file is larger than 5 MB", "split it, and send the parts one after the other");
        }
        Optional<String> alien = alien(bytes);
        if (alien.isPresent()) {
            return refused("the file is " + alien.get() + ", not CSV", SAVE_AS);
        }
        return decoded(bytes).then(FileText::checked);
    }

    /** Text that was pasted. */
    static Outcome<FileText> of(String text) {
        return text.length() > LARGEST
                ? refused("the text is longer than 5 MB", "split it, and send the parts one after the other")
                : checked(new FileText(text.startsWith("\uFEFF") ? text.substring(1) : text, "pasted text"));
    }

    private static Outcome<FileText> checked(FileText read) {
        int nul = read.text().indexOf('\0');
        if (nul >= 0) {
            long line =
                    read.text().substring(0, nul).chars().filter(c -> c == '\n').count() + 1;
            return refused("line " + line + " has a NUL character in it, so this is no text", SAVE_AS);
        }
        return NOTHING.matcher(read.text()).matches()
                ? refused("the file is empty", "choose a CSV file with a row of column names and rows beneath")
                : Outcome.ok(read);
    }

    private static Outcome<FileText> decoded(byte[] bytes) {
        if (begins(bytes, 0xef, 0xbb, 0xbf)) {
            return marked(bytes, 3, StandardCharsets.UTF_8, "UTF-8 with a byte order mark");
        }
        if (begins(bytes, 0xff, 0xfe)) {
            return marked(bytes, 2, StandardCharsets.UTF_16LE, "UTF-16");
        }
        if (begins(bytes, 0xfe, 0xff)) {
            return marked(bytes, 2, StandardCharsets.UTF_16BE, "UTF-16");
        }
        Optional<String> utf8 = text(bytes, 0, StandardCharsets.UTF_8);
        if (utf8.isPresent()) {
            return Outcome.ok(new FileText(utf8.get(), "UTF-8"));
        }
        // where no byte is of the 27 signs that Windows has and Latin-1 lacks, the two are one
        String name = hasWindowsSigns(bytes) ? "Windows-1252 (Western European)" : "Latin-1 (Western European)";
        return text(bytes, 0, Charset.forName("windows-1252"))
                .<Outcome<FileText>>map(text -> Outcome.ok(new FileText(text, name)))
                .orElseGet(() -> refused("the file is neither UTF-8 nor Western European text", SAVE_AS));
    }

    private static Outcome<FileText> marked(byte[] bytes, int mark, Charset charset, String name) {
        return text(bytes, mark, charset)
                .<Outcome<FileText>>map(text -> Outcome.ok(new FileText(text, name)))
                .orElseGet(() -> refused("the file begins as " + charset + " does, and is not", SAVE_AS));
    }

    private static Optional<String> text(byte[] bytes, int from, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static boolean hasWindowsSigns(byte[] bytes) {
        for (byte b : bytes) {
            if ((b & 0xff) >= 0x80 && (b & 0xff) <= 0x9f) {
                return true;
            }
        }
        return false;
    }

    /** What other kind of file it is, by its first bytes. */
    private static Optional<String> alien(byte[] bytes) {
        if (begins(bytes, 'P', 'K', 3, 4)) {
            return Optional.of("a spreadsheet's own file or a zip");
        }
        if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
            return Optional.of("an old spreadsheet's own file");
        }
        if (begins(bytes, '%', 'P', 'D', 'F')) {
            return Optional.of("a PDF");
        }
        if (begins(bytes, 0xff, 0xd8, 0xff)
                || begins(bytes, 0x89, 'P', 'N', 'G')
                || begins(bytes, 'G', 'I', 'F', '8')) {
            return Optional.of("a picture");
        }
        return begins(bytes, 0x1f, 0x8b) ? Optional.of("a packed file") : Optional.empty();
    }

    private static boolean begins(byte[] bytes, int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((bytes[i] & 0xff) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static <T> Outcome<T> refused(String what, String remedy) {
        return Outcome.refused(new Problem("", what, remedy));
    }
}
