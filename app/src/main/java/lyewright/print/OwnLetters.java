package lyewright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers with the papers' own typeface whichever is asked for. Papers ask for no other, but the library asks once a paper for
 * one that it never draws with; without this it would search the whole machine for it and leave a list in the maker's home.
 */
final class OwnLetters implements FontMapper {

    private final TrueTypeFont face;

    OwnLetters() {
        try {
            face = Typeface.REGULAR.letters();
        } catch (IOException e) {
            throw new UncheckedIOException("a typeface in memory cannot fail to be read", e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(face, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor descriptor) {
        return new FontMapping<>(face, false);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String name, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo system) {
        return new CIDFontMapping(null, face, false);
    }
}
