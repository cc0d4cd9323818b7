package lyewright.records.file;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;

/** Says what a file is, and whether it is whole, by its content alone: neither its name nor what a browser calls it says anything. */
final class DocumentJudge {

    private static final int FIRST = 1024;

    /** A PDF's last line is %%EOF, with startxref and where the table is before it (ISO 32000-1, 7.5.5); readers look no further. */
    private static final int LAST = 1024;

    private static final Pattern END_OF_PDF = Pattern.compile("startxref\\s+([0-9]{1,19})\\s+%%EOF");

    private static final String GIVE = "give it as a PDF, a photograph as JPEG, or a text in UTF-8";

    private DocumentJudge() {}

    /** What a file is, or why it is not kept. */
    static Outcome<DocumentKind> judge(Path path) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            if (file.length() == 0) {
                return refused("the file is empty", "choose another, or save it anew");
            }
            String first = part(file, 0, FIRST);
            if (first.startsWith("\u00FF\u00D8\u00FF")) {
                return WholeJpeg.is(path) ? Outcome.ok(DocumentKind.JPEG) : cutOff("photograph");
            }
            if (first.strip().startsWith("%PDF-")) {
                return isWholePdf(file) ? Outcome.ok(DocumentKind.PDF) : cutOff("PDF");
            }
            return other(path, first);
        }
    }

    /** Each byte as one sign. */
    private static String part(RandomAccessFile file, long from, int most) throws IOException {
        byte[] bytes = new byte[(int) Math.min(most, file.length() - from)];
        file.seek(from);
        file.readFully(bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** A PDF that was made to be shown as it comes has an end near its beginning too, which points at 0. */
    private static boolean isWholePdf(RandomAccessFile file) throws IOException {
        long length = file.length();
        Matcher end = END_OF_PDF.matcher(part(file, Math.max(0, length - LAST), LAST));
        long table = 0;
        while (end.find()) {
            table = end.group(1).length() > 18 ? 0 : Long.parseLong(end.group(1));
        }
        return table > 0 && table < length;
    }

    private static Outcome<DocumentKind> other(Path path, String first) throws IOException {
        String stranger = stranger(first);
        if (!stranger.isEmpty()) {
            return refused("the file is " + stranger, GIVE);
        }
        return switch (WholeText.of(path)) {
            case TEXT -> Outcome.ok(DocumentKind.TEXT);
            case NOTHING -> refused("the file has nothing in it but spaces", "choose another");
            case OTHER_LETTERS -> refused("the text is not in UTF-8", "save it again as text in UTF-8, or as a PDF");
            case NO_TEXT -> refused("the file is neither a PDF, a JPEG nor a text", GIVE);
        };
    }

    /** What people give by mistake, or called something else; empty where it is none of these. */
    private static String stranger(String first) {
        String start = first.length() < 16 ? first : first.substring(0, 16);
        if (start.startsWith("\u0089PNG")) {
            return "a PNG picture, which is not kept as it would have to be drawn anew";
        }
        if ((start.startsWith("MZ") && start.indexOf('\0') > 0)
                || start.startsWith("\u007FELF")
                || start.startsWith("\u00CA\u00FE\u00BA\u00BE")
                || start.startsWith("\u00CF\u00FA\u00ED\u00FE")
                || start.startsWith("#!")) {
            return "a program";
        }
        if (start.startsWith("PK\u0003\u0004") || start.startsWith("\u00D0\u00CF\u0011\u00E0")) {
            return "an office document or an archive";
        }
        if (start.startsWith("ftyp", 4)) {
            return "a HEIC picture or a film, as some phones keep them";
        }
        if (start.startsWith("{\\rtf")) {
            return "a word processor's file (RTF)";
        }
        if (start.startsWith("GIF8") || start.startsWith("II*\0") || start.startsWith("MM\0*") || isWebp(start)) {
            return "a picture of another kind than JPEG";
        }
        return isMarkup(first) ? "a web page or a drawing that can carry programs" : "";
    }

    private static boolean isWebp(String start) {
        return start.startsWith("RIFF") && start.startsWith("WEBP", 8);
    }

    private static boolean isMarkup(String first) {
        String signs = first.toLowerCase(Locale.ROOT);
        return signs.contains("<!doctype html")
                || signs.contains("<html")
                || signs.contains("<svg")
                || signs.contains("<script");
    }

    private static Outcome<DocumentKind> cutOff(String what) {
        return refused(
                "the " + what + " is damaged or cut off: its end is missing",
                "fetch it again from where it came, or save it anew");
    }

    private static Outcome<DocumentKind> refused(String what, String remedy) {
        return Outcome.refused(what, remedy);
    }
}
