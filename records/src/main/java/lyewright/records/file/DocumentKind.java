package lyewright.records.file;

import java.util.Arrays;
import java.util.Optional;

/** What a document may be: what every browser shows by itself, and what can still be read in many years. */
public enum DocumentKind {
    /** Portable Document Format, ISO 32000. */
    PDF("application/pdf", "pdf", "PDF"),
    /** A photograph of a paper, ITU-T T.81. */
    JPEG("image/jpeg", "jpg", "JPEG"),
    /** Text in UTF-8, such as a letter. */
    TEXT("text/plain", "txt", "text");

    private final String mediaType;
    private final String ending;
    private final String words;

    DocumentKind(String mediaType, String ending, String words) {
        this.mediaType = mediaType;
        this.ending = ending;
        this.words = words;
    }

    /** As it is kept and as a browser is told. */
    public String mediaType() {
        return mediaType;
    }

    /** How the name of a file of it ends. */
    public String ending() {
        return ending;
    }

    /** What people call it. */
    public String words() {
        return words;
    }

    /** The kind of a media type. */
    public static Optional<DocumentKind> ofMediaType(String mediaType) {
        return Arrays.stream(values())
                .filter(kind -> kind.mediaType.equals(mediaType))
                .findFirst();
    }
}
