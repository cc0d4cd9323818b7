package lyewright.web.cupboard;

import java.util.Locale;
import lyewright.formula.NameRules;
import lyewright.records.file.DocumentKind;
import lyewright.web.FileNames;

/** Names of documents, as they come with a file and as they go out with one. Nobody typed the first, so it is tidied, not refused. */
final class DocumentName {

    private static final String OTHERWISE = "document";

    private DocumentName() {}

    /** A file's own name, without the folders that some browsers tell and without what no name may have. */
    static String ofFile(String fileName) {
        String own = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        StringBuilder tidy = new StringBuilder();
        own.codePoints().filter(DocumentName::isKept).forEach(c -> {
            if (tidy.length() + Character.charCount(c) <= NameRules.LONGEST) {
                tidy.appendCodePoint(c);
            }
        });
        String name = tidy.toString().strip();
        return NameRules.check("", "", name).isEmpty() ? name : OTHERWISE;
    }

    private static boolean isKept(int c) {
        int type = Character.getType(c);
        return !Character.isISOControl(c)
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }

    /** The name of the file that goes out: plain letters, and the ending of what it is, whatever it was called. */
    static String forFile(String name, DocumentKind kind) {
        String small = name.toLowerCase(Locale.ROOT);
        String stem =
                small.endsWith(".pdf") || small.endsWith(".jpg") || small.endsWith(".jpeg") || small.endsWith(".txt")
                        ? name.substring(0, name.lastIndexOf('.'))
                        : name;
        return FileNames.plain(stem, OTHERWISE) + "." + kind.ending();
    }
}
