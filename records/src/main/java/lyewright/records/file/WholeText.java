package lyewright.records.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a file is text: UTF-8 from the first byte to the last, and nothing in it that a screen would not show. */
enum WholeText {
    /** Text. */
    TEXT,
    /** Spaces and ends of lines only. */
    NOTHING,
    /** Text perhaps, in letters of another code. */
    OTHER_LETTERS,
    /** No text. */
    NO_TEXT;

    private static final char BYTE_ORDER_MARK = 0xFEFF;

    static WholeText of(Path path) throws IOException {
        try {
            return read(path, StandardCharsets.UTF_8);
        } catch (CharacterCodingException e) {
            // read byte by byte, text of other letters still has no control characters below the space
            return read(path, StandardCharsets.ISO_8859_1) == TEXT ? OTHER_LETTERS : NO_TEXT;
        }
    }

    private static WholeText read(Path path, Charset letters) throws IOException {
        try (InputStream file = Files.newInputStream(path);
                Reader in = new BufferedReader(new InputStreamReader(
                        file,
                        letters.newDecoder()
                                .onMalformedInput(CodingErrorAction.REPORT)
                                .onUnmappableCharacter(CodingErrorAction.REPORT)))) {
            boolean says = false;
            char[] buffer = new char[FileShelf.BUFFER];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                for (int i = 0; i < read; i++) {
                    char c = buffer[i];
                    if ((c < ' ' && !isBetweenLines(c)) || c == 0x7F) {
                        return NO_TEXT;
                    }
                    says |= !Character.isWhitespace(c) && c != BYTE_ORDER_MARK;
                }
            }
            return says ? TEXT : NOTHING;
        }
    }

    private static boolean isBetweenLines(char c) {
        return c == '\n' || c == '\r' || c == '\t' || c == '\f';
    }
}
