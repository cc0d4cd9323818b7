package lyewright.web.photograph;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;

/**
 * What stands at the head of a JPEG that Java's reader does not tell: how the camera was held, and whether the picture comes in
 * passes. After ITU-T T.81 annex B (markers) and the Exif standard CIPA DC-008 (tag 274, orientation).
 *
 * @param orientation 1 to 8 as Exif counts; 1, upright, where nothing is said
 * @param inPasses whether all of it has to be held until the last pass, which takes memory by its size
 */
record JpegHeader(int orientation, boolean inPasses) {

    private static final int START_OF_SCAN = 0xDA;
    private static final int END = 0xD9;
    private static final int APP1 = 0xE1;
    private static final int MOST_MARKERS = 1000;
    private static final int ORIENTATION = 274;
    private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

    /** Reads as far as the picture itself. What makes no sense is passed over: the picture's own reader judges it. */
    static JpegHeader of(Path file) throws IOException {
        int orientation = 1;
        boolean inPasses = false;
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            in.seek(2);
            for (int i = 0; i < MOST_MARKERS; i++) {
                int marker = marker(in);
                if (marker == START_OF_SCAN || marker == END) {
                    break;
                }
                int length = in.readUnsignedShort() - 2;
                long next = in.getFilePointer() + length;
                if (marker == APP1 && length > EXIF.length) {
                    byte[] body = new byte[length];
                    in.readFully(body);
                    orientation = orientation(body, orientation);
                }
                inPasses |= marker == 0xC2 || marker == 0xC6 || marker == 0xCA || marker == 0xCE;
                in.seek(next);
            }
        } catch (EOFException e) {
            // a head without an end: the reader of the picture will say so
        }
        return new JpegHeader(orientation, inPasses);
    }

    /** The next marker's second byte; fill bytes and stray bytes before it are skipped. */
    private static int marker(RandomAccessFile in) throws IOException {
        int before = 0;
        while (true) {
            int now = in.readUnsignedByte();
            if (before == 0xFF && now != 0xFF && now != 0) {
                return now;
            }
            before = now;
        }
    }

    private static int orientation(byte[] app1, int unless) {
        for (int i = 0; i < EXIF.length; i++) {
            if (app1[i] != EXIF[i]) {
                return unless;
            }
        }
        ByteBuffer tiff =
                ByteBuffer.wrap(app1, EXIF.length, app1.length - EXIF.length).slice();
        if (tiff.capacity() < 14) {
            return unless;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long at = Integer.toUnsignedLong(tiff.getInt(4));
        if (at < 8 || at + 2 > tiff.capacity()) {
            return unless;
        }
        int entries = Short.toUnsignedInt(tiff.getShort((int) at));
        for (int i = 0; i < entries; i++) {
            int entry = (int) at + 2 + 12 * i;
            if (entry + 12 > tiff.capacity()) {
                return unless;
            }
            if (Short.toUnsignedInt(tiff.getShort(entry)) == ORIENTATION) {
                int value = Short.toUnsignedInt(tiff.getShort(entry + 8));
                return value >= 1 && value <= 8 ? value : unless;
            }
        }
        return unless;
    }
}
