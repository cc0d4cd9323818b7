package lyewright.records.file;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whether a JPEG goes as far as its end, by its markers (ITU-T T.81, annex B): a picture is begun, and ended. A small picture of it
 * within has an end of its own, so segments are stepped over by their length.
 */
final class WholeJpeg {

    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int TEMPORARY = 0x01;
    private static final int FIRST_WITHOUT_LENGTH = 0xD0;

    private WholeJpeg() {}

    static boolean is(Path path) throws IOException {
        try (InputStream file = Files.newInputStream(path);
                DataInputStream in = new DataInputStream(new BufferedInputStream(file, FileShelf.BUFFER))) {
            in.skipNBytes(2);
            boolean scanned = false;
            for (int marker = marker(in); marker != END; marker = marker(in)) {
                boolean hasLength = marker != TEMPORARY && (marker < FIRST_WITHOUT_LENGTH || marker >= SCAN);
                if (hasLength) {
                    in.skipNBytes(Math.max(0, in.readUnsignedShort() - 2));
                }
                scanned |= marker == SCAN;
            }
            return scanned;
        } catch (EOFException e) {
            return false;
        }
    }

    /** The next marker; what is drawn lies between, where 0 after 255 and restarts are no markers of their own. */
    private static int marker(DataInputStream in) throws IOException {
        int before = 0;
        while (true) {
            int now = in.readUnsignedByte();
            boolean restart = now >= FIRST_WITHOUT_LENGTH && now < FIRST_WITHOUT_LENGTH + 8;
            if (before == 0xFF && now != 0xFF && now != 0 && !restart) {
                return now;
            }
            before = now;
        }
    }
}
