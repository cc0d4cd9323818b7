package lyewright.records.file;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Documents that somebody may give, invented. */
public final class SomeDocument {

    private SomeDocument() {}

    /** A PDF of one page with a sentence on it. */
    public static byte[] pdf(String sentence) {
        return pdf(sentence, 0);
    }

    /** The same, and so many bytes longer by a comment. */
    public static byte[] pdf(String sentence, int padding) {
        String drawn = "BT /F1 24 Tf 72 720 Td (" + sentence + ") Tj ET";
        String[] objects = {
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R"
                    + " /Resources << /Font << /F1 5 0 R >> >> >>",
            "<< /Length " + drawn.length() + " >>\nstream\n" + drawn + "\nendstream",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>"
        };
        StringBuilder file = new StringBuilder("%PDF-1.4\n");
        file.append("%".repeat(padding));
        file.append('\n');
        StringBuilder table = new StringBuilder("0000000000 65535 f \n");
        for (int i = 0; i < objects.length; i++) {
            table.append(String.format("%010d 00000 n %n", file.length()).replace(System.lineSeparator(), "\n"));
            file.append(i + 1).append(" 0 obj\n").append(objects[i]).append("\nendobj\n");
        }
        int at = file.length();
        file.append("xref\n0 6\n").append(table);
        file.append("trailer\n<< /Size 6 /Root 1 0 R >>\nstartxref\n")
                .append(at)
                .append("\n%%EOF\n");
        return file.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    /** A photograph of a paper. */
    public static byte[] jpeg() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB), "jpeg", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A text. */
    public static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
