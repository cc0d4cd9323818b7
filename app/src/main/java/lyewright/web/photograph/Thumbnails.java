package lyewright.web.photograph;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Small photographs, made of the large ones when they are first asked for; the last ones asked for are remembered. */
final class Thumbnails {

    private static final int REMEMBERED = 200;

    private final Map<String, byte[]> made = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, byte[]> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** One at a time: a page full of them is asked for at once, and each takes a few megabytes. */
    synchronized byte[] of(String hash, Supplier<byte[]> large) {
        byte[] known = made.get(hash);
        if (known == null) {
            known = small(large.get());
            made.put(hash, known);
        }
        return known;
    }

    synchronized void put(String hash, byte[] small) {
        made.put(hash, small);
    }

    /** Of a photograph that we made ourselves. */
    private static byte[] small(byte[] large) {
        try {
            // closed by who reads it
            BufferedImage picture = ImageIO.read(new MemoryCacheImageInputStream(new ByteArrayInputStream(large)));
            return Redraw.jpeg(Redraw.within(picture, Photograph.SMALL, 1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
