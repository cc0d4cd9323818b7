package lyewright.web.photograph;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Pictures to try with: their left upper corner is red, the rest runs from orange to blue. */
final class Pictures {

    private Pictures() {}

    static BufferedImage picture(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = picture.createGraphics();
        g.setPaint(new GradientPaint(0, 0, Color.ORANGE, width, height, Color.BLUE));
        g.fillRect(0, 0, width, height);
        g.setPaint(Color.RED);
        g.fillRect(0, 0, width / 2, height / 2);
        g.dispose();
        return picture;
    }

    static byte[] jpeg(int width, int height) {
        return jpeg(picture(width, height), false);
    }

    static byte[] jpeg(BufferedImage picture, boolean inPasses) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            if (inPasses) {
                param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
            }
            writer.write(null, new IIOImage(picture, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    static byte[] png(BufferedImage picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** A JPEG with what a camera writes: how it was held, and where it was. */
    static byte[] taken(byte[] jpeg, int orientation) {
        ByteBuffer exif = ByteBuffer.allocate(72);
        exif.put("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1))
                .putInt(8)
                .putShort((short) 1);
        exif.putShort((short) 274)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        exif.putInt(0).put("GPS 51.5N 0.1W SECRET PLACE".getBytes(StandardCharsets.ISO_8859_1));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (72 + 2)});
        out.writeBytes(exif.array());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** A PNG that says it is so large, and has next to nothing in it. */
    static byte[] pngThatSays(int width, int height) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        ByteBuffer head = ByteBuffer.allocate(17);
        head.put("IHDR".getBytes(StandardCharsets.ISO_8859_1)).putInt(width).putInt(height);
        head.put(new byte[] {8, 2, 0, 0, 0});
        CRC32 check = new CRC32();
        check.update(head.array());
        out.writeBytes(ByteBuffer.allocate(4).putInt(13).array());
        out.writeBytes(head.array());
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
        out.writeBytes(new byte[] {0, 0, 0, 0, 'I', 'E', 'N', 'D', (byte) 0xAE, 0x42, 0x60, (byte) 0x82});
        return out.toByteArray();
    }
}
