package lyewright.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The typeface of papers, in its two weights; each paper embeds what it uses of them. */
final class Typeface {

    static final Typeface REGULAR = new Typeface("IBMPlexSans-Regular.ttf", 400);

    /** Both weights. */
    static final List<Typeface> ALL = List.of(REGULAR, new Typeface("IBMPlexSans-SemiBold.ttf", 600));

    /** What a style sheet calls both. */
    static final String FAMILY = "Plex";

    private final int weight;
    private final byte[] bytes;

    private Typeface(String file, int weight) {
        this.weight = weight;
        this.bytes = read(file);
    }

    private static byte[] read(String file) {
        try (InputStream in = Typeface.class.getResourceAsStream("fonts/" + file)) {
            if (in == null) {
                throw new IllegalStateException("the typeface " + file + " is not in the application");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int weight() {
        return weight;
    }

    /** The letters, without joining any: text that is searched for or copied comes out as it went in. */
    TrueTypeFont letters() throws IOException {
        TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
        letters.setEnableGsub(false);
        return letters;
    }

    /** Whether every letter of a text is there. */
    static boolean has(String text) {
        try (TrueTypeFont letters = REGULAR.letters()) {
            CmapLookup known = letters.getUnicodeCmapLookup();
            return text.codePoints().allMatch(c -> Character.isWhitespace(c) || known.getGlyphId(c) != 0);
        } catch (IOException e) {
            throw new UncheckedIOException("a typeface in memory cannot fail to be read", e);
        }
    }
}
