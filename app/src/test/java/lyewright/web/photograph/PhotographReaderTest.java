package lyewright.web.photograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Random;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of strangers, read without asking much of the machine. */
class PhotographReaderTest {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private Outcome<Photograph> read(byte[] file) throws IOException {
        return PhotographReader.read(Files.write(folder.resolve("file"), file));
    }

    @Test
    void fifty_megapixels_are_read_in_a_while() throws IOException {
        BufferedImage large = Pictures.picture(8660, 5774);
        byte[] jpeg = Pictures.jpeg(large, false);
        byte[] png = Pictures.png(large);
        Instant start = Instant.now();
        Photograph ofJpeg = read(jpeg).orThrow();
        Photograph ofPng = read(png).orThrow();
        assertThat(Duration.between(start, Instant.now())).isLessThan(PATIENCE);
        assertThat(ofJpeg.large().length).isLessThan(1_000_000);
        assertThat(ofPng.small().length).isLessThan(100_000);
    }

    @Test
    void a_jpeg_that_comes_in_passes_is_read_too() throws IOException {
        assertThat(read(Pictures.jpeg(Pictures.picture(2000, 1500), true)).problems())
                .isEmpty();
    }

    @Test
    void sixteen_bits_a_colour_and_a_see_through_ground_are_read() throws IOException {
        ComponentColorModel colours = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_sRGB),
                new int[] {16, 16, 16, 16},
                true,
                false,
                Transparency.TRANSLUCENT,
                DataBuffer.TYPE_USHORT);
        BufferedImage deep = new BufferedImage(
                colours, Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, 900, 900, 4, null), false, null);
        assertThat(read(Pictures.png(deep)).problems()).isEmpty();
    }

    @Test
    void grey_and_bits_are_read() throws IOException {
        assertThat(read(Pictures.png(new BufferedImage(300, 200, BufferedImage.TYPE_BYTE_GRAY)))
                        .problems())
                .isEmpty();
        assertThat(read(Pictures.png(new BufferedImage(300, 200, BufferedImage.TYPE_BYTE_BINARY)))
                        .problems())
                .isEmpty();
        assertThat(read(Pictures.jpeg(new BufferedImage(300, 200, BufferedImage.TYPE_BYTE_GRAY), false))
                        .problems())
                .isEmpty();
    }

    @Test
    void a_file_with_bytes_changed_by_chance_is_read_or_refused_and_nothing_else() throws IOException {
        Random chance = new Random(7);
        byte[] jpeg = Pictures.taken(Pictures.jpeg(120, 90), 6);
        byte[] png = Pictures.png(Pictures.picture(120, 90));
        int refused = 0;
        for (int i = 0; i < 400; i++) {
            byte[] file = (i % 2 == 0 ? jpeg : png).clone();
            for (int n = 0; n < 1 + i % 5; n++) {
                file[8 + chance.nextInt(file.length - 8)] = (byte) chance.nextInt(256);
            }
            refused += read(file).problems().isEmpty() ? 0 : 1;
        }
        assertThat(refused).isBetween(1, 399);
    }
}
