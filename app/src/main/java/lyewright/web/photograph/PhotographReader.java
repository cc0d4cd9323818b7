package lyewright.web.photograph;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import lyewright.measure.Outcome;

/**
 * Reads a photograph from a file that somebody gave, and makes it anew. Its size is looked at before a pixel is; of a large one
 * only every second or third pixel is taken, so that memory does not grow with it.
 */
final class PhotographReader {

    static final String PATH = "photograph";

    private static final String TAKE_ANOTHER = "give a photograph as JPEG or PNG";
    private static final long MOST_PIXELS = 120_000_000;

    /** Of what comes in passes all is held outside Java's heap, some 2 to 6 bytes a pixel. */
    private static final long MOST_PIXELS_IN_PASSES = 60_000_000;

    private static final int LONGEST_SIDE = 30_000;

    /** So many bytes of pixels are taken at once. */
    private static final long MOST_BYTES = 48_000_000;

    private PhotographReader() {}

    /**
     * Reads one.
     *
     * @param file as it came
     * @return the photograph, or why it is none
     */
    static Outcome<Photograph> read(Path file) throws IOException {
        PictureKind kind = kind(file);
        if (kind.reader().isEmpty()) {
            return refused("the file is " + kind.words(), TAKE_ANOTHER);
        }
        JpegHeader head = kind == PictureKind.JPEG ? JpegHeader.of(file) : new JpegHeader(1, false);
        Iterator<ImageReader> readers =
                ImageIO.getImageReadersByFormatName(kind.reader().get());
        ImageReader reader = readers.next();
        try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
            reader.setInput(in, true, true);
            return read(reader, head);
        } catch (IOException | RuntimeException e) {
            // whatever the reader trips over in a stranger's file is the file's fault, and it says so in many ways
            return damaged();
        } finally {
            reader.dispose();
        }
    }

    private static Outcome<Photograph> read(ImageReader reader, JpegHeader head) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        long pixels = (long) width * height;
        if (pixels > (head.inPasses() ? MOST_PIXELS_IN_PASSES : MOST_PIXELS)
                || Math.max(width, height) > LONGEST_SIDE) {
            return refused(
                    "the photograph says it is " + width + " by " + height + " pixels, which is more than is read here",
                    "make it smaller, 1600 pixels are plenty");
        }
        AtomicBoolean cutOff = new AtomicBoolean();
        reader.addIIOReadWarningListener(new IIOReadWarningListener() {
            @Override
            public void warningOccurred(ImageReader source, String warning) {
                cutOff.compareAndSet(false, warning.contains("remature end") || warning.contains("Truncated"));
            }
        });
        BufferedImage raw = reader.read(0, sparingly(reader, width, height));
        if (cutOff.get()) {
            return damaged();
        }
        BufferedImage large = Redraw.within(raw, Photograph.LARGE, head.orientation());
        BufferedImage small = Redraw.within(large, Photograph.SMALL, 1);
        return Outcome.ok(new Photograph(Redraw.jpeg(large), Redraw.jpeg(small)));
    }

    /** Leaves pixels out where all of them would be too many. */
    private static ImageReadParam sparingly(ImageReader reader, int width, int height) throws IOException {
        int bits = reader.getRawImageType(0) == null
                ? 24
                : reader.getRawImageType(0).getColorModel().getPixelSize();
        long bytes = Math.max(3, (bits + 7) / 8);
        int step = 1;
        while ((long) ((width + step - 1) / step) * ((height + step - 1) / step) * bytes > MOST_BYTES) {
            step++;
        }
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(step, step, 0, 0);
        return param;
    }

    private static PictureKind kind(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return PictureKind.of(in.readNBytes(PictureKind.BYTES));
        }
    }

    private static Outcome<Photograph> damaged() {
        return refused(
                "the photograph is damaged or cut off, or of a kind that is not read here", "save it again as JPEG");
    }

    private static Outcome<Photograph> refused(String what, String remedy) {
        return Outcome.refused(new lyewright.measure.Problem(PATH, what, remedy));
    }
}
