package lyewright.web.photograph;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** What a file is, by its first bytes: neither its name nor what the browser calls it says anything. */
enum PictureKind {
    /** JPEG: read. */
    JPEG("a JPEG"),
    /** PNG: read. */
    PNG("a PNG"),
    WEBP("a WebP picture"),
    GIF("a GIF"),
    BMP("a Windows bitmap"),
    TIFF("a TIFF"),
    HEIC("a HEIC or AVIF picture, as some phones keep them"),
    PDF("a PDF"),
    ZIP("a zip archive or an office document"),
    SVG("a drawing (SVG), which can carry programs"),
    HTML("a web page"),
    NOTHING("empty"),
    UNKNOWN("no picture that is known here");

    /** How much of a file is needed to tell. */
    static final int BYTES = 1024;

    private final String words;

    PictureKind(String words) {
        this.words = words;
    }

    /** What it is, in a sentence after "is". */
    String words() {
        return words;
    }

    /** The name by which Java's own reader of it is found, where there is one that is trusted. */
    Optional<String> reader() {
        return switch (this) {
            case JPEG -> Optional.of("jpeg");
            case PNG -> Optional.of("png");
            default -> Optional.empty();
        };
    }

    /** What a file is. */
    static PictureKind of(byte[] first) {
        if (first.length == 0) {
            return NOTHING;
        }
        String signs = new String(first, StandardCharsets.ISO_8859_1);
        if (signs.startsWith("\u00FF\u00D8\u00FF")) {
            return JPEG;
        }
        if (signs.startsWith("\u0089PNG\r\n\u001A\n")) {
            return PNG;
        }
        return binary(signs);
    }

    private static PictureKind binary(String signs) {
        if (signs.startsWith("RIFF") && signs.startsWith("WEBP", 8)) {
            return WEBP;
        }
        if (signs.startsWith("ftyp", 4)) {
            return HEIC;
        }
        if (signs.startsWith("GIF8")) {
            return GIF;
        }
        if (signs.startsWith("BM")) {
            return BMP;
        }
        if (signs.startsWith("II*\0") || signs.startsWith("MM\0*")) {
            return TIFF;
        }
        if (signs.startsWith("%PDF")) {
            return PDF;
        }
        return signs.startsWith("PK\u0003\u0004") ? ZIP : text(signs.toLowerCase(Locale.ROOT));
    }

    private static PictureKind text(String signs) {
        if (signs.contains("<svg")) {
            return SVG;
        }
        return signs.contains("<html") || signs.contains("<!doctype html") || signs.contains("<script")
                ? HTML
                : UNKNOWN;
    }
}
