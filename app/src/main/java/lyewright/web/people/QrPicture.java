package lyewright.web.people;

import java.util.stream.Collectors;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.graphics.Rectangle;

/**
 * An address as squares for a camera.
 *
 * @param size width and height, in squares, with the quiet zone
 * @param path the dark squares, as the path of an SVG
 */
public record QrPicture(int size, String path) {

    /** ISO/IEC 18004 asks for four squares of quiet all round. */
    private static final int QUIET = 4;

    static QrPicture of(String text) {
        QrCode code = new QrCode();
        code.setPreferredEccLevel(QrCode.EccLevel.M);
        code.setContent(text);
        String path = code.getRectangles().stream().map(QrPicture::square).collect(Collectors.joining());
        return new QrPicture(code.getWidth() + 2 * QUIET, path);
    }

    private static String square(Rectangle dark) {
        return "M%d %dh%dv%dh-%dz"
                .formatted(
                        Math.round(dark.x) + QUIET,
                        Math.round(dark.y) + QUIET,
                        Math.round(dark.width),
                        Math.round(dark.height),
                        Math.round(dark.width));
    }
}
