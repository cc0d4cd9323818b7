package lyewright.web.photograph;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Makes a picture smaller, upright and opaque, and writes it with nothing but its pixels. */
final class Redraw {

    private static final float QUALITY = 0.85f;

    private Redraw() {}

    /** A picture no wider nor higher than so many pixels, turned as Exif counts ways of holding a camera, on white. */
    static BufferedImage within(BufferedImage picture, int most, int orientation) {
        BufferedImage small = picture;
        while (Math.max(small.getWidth(), small.getHeight()) > 2 * most) {
            small = scaled(small, (small.getWidth() + 1) / 2, (small.getHeight() + 1) / 2);
        }
        double by = Math.min(1, most / (double) Math.max(small.getWidth(), small.getHeight()));
        int width = Math.max(1, (int) Math.round(small.getWidth() * by));
        int height = Math.max(1, (int) Math.round(small.getHeight() * by));
        return turned(scaled(small, width, height), orientation);
    }

    /** By half at most: then each new pixel is of all the old ones under it. */
    private static BufferedImage scaled(BufferedImage picture, int width, int height) {
        BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(picture, 0, 0, width, height, Color.WHITE, null);
        g.dispose();
        return out;
    }

    private static BufferedImage turned(BufferedImage picture, int orientation) {
        if (orientation == 1) {
            return picture;
        }
        int w = picture.getWidth();
        int h = picture.getHeight();
        boolean onItsSide = orientation >= 5;
        BufferedImage out = new BufferedImage(onItsSide ? h : w, onItsSide ? w : h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.drawImage(picture, turn(orientation, w, h), null);
        g.dispose();
        return out;
    }

    private static AffineTransform turn(int orientation, int w, int h) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }

    static byte[] jpeg(BufferedImage picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(picture, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
