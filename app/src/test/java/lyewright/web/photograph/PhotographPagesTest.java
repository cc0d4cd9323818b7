package lyewright.web.photograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import lyewright.web.recipe.RecipeShop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Photographs on their way in and out. */
class PhotographPagesTest {

    @TempDir
    static Path home;

    private static RecipeShop shop;
    private String recipe;

    @BeforeAll
    static void open() {
        shop = new RecipeShop(home);
    }

    @BeforeEach
    void empty() {
        shop.empty();
        recipe = shop.keep(RecipeShop.PLAIN);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private HttpResponse<String> give(byte[] file) {
        return shop.upload("/recipes/" + recipe + "/photograph", "photograph", "bar.jpg", "image/jpeg", file);
    }

    private String kept() {
        return shop.book().find(recipe).orElseThrow().photograph().orElseThrow();
    }

    private BufferedImage shown(String address) throws IOException {
        HttpResponse<byte[]> answer = shop.bytes(address);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(answer.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
        return ImageIO.read(new ByteArrayInputStream(answer.body()));
    }

    @Test
    void a_photograph_is_shown_large_on_the_page_and_small_in_the_list() throws IOException {
        assertThat(RecipeShop.onwards(give(Pictures.jpeg(4000, 3000)))).endsWith("?done=photograph");
        assertThat(shop.get("/recipes/" + recipe).body()).contains("src=\"/photographs/" + kept() + "\"");
        assertThat(shop.get("/recipes").body()).contains("src=\"/photographs/" + kept() + "/small\"");
        BufferedImage large = shown("/photographs/" + kept());
        assertThat(large.getWidth()).isEqualTo(1600);
        assertThat(large.getHeight()).isEqualTo(1200);
        BufferedImage small = shown("/photographs/" + kept() + "/small");
        assertThat(small.getWidth()).isEqualTo(480);
        assertThat(small.getHeight()).isEqualTo(360);
    }

    @Test
    void a_small_photograph_is_made_again_where_it_is_forgotten() throws IOException {
        give(Pictures.jpeg(1000, 2000));
        shop.close();
        shop = new RecipeShop(home);
        BufferedImage small = shown("/photographs/" + kept() + "/small");
        assertThat(small.getWidth()).isEqualTo(240);
        assertThat(small.getHeight()).isEqualTo(480);
    }

    @Test
    void a_small_picture_is_not_made_larger() throws IOException {
        give(Pictures.png(Pictures.picture(40, 30)));
        assertThat(shown("/photographs/" + kept()).getWidth()).isEqualTo(40);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_camera_held_any_way_gives_an_upright_photograph(int orientation) throws IOException {
        // the corner that is first in the file is, by the Exif standard, seen at: left or right, top or bottom
        boolean right = orientation == 2 || orientation == 3 || orientation == 6 || orientation == 7;
        boolean bottom = orientation == 3 || orientation == 4 || orientation == 7 || orientation == 8;
        give(Pictures.taken(Pictures.jpeg(400, 200), orientation));
        BufferedImage seen = shown("/photographs/" + kept());
        assertThat(seen.getWidth()).isEqualTo(orientation >= 5 ? 200 : 400);
        int x = right ? seen.getWidth() - 10 : 10;
        int y = bottom ? seen.getHeight() - 10 : 10;
        Color corner = new Color(seen.getRGB(x, y));
        assertThat(corner.getRed()).isGreaterThan(200);
        assertThat(corner.getGreen()).isLessThan(60);
    }

    @Test
    void where_it_was_taken_is_not_kept() {
        byte[] taken = Pictures.taken(Pictures.jpeg(400, 200), 1);
        assertThat(new String(taken, StandardCharsets.ISO_8859_1)).contains("SECRET PLACE");
        give(taken);
        String kept = new String(shop.bytes("/photographs/" + kept()).body(), StandardCharsets.ISO_8859_1);
        assertThat(kept).doesNotContain("SECRET PLACE").doesNotContain("Exif");
    }

    @Test
    void what_shows_through_is_white() throws IOException {
        give(Pictures.png(new BufferedImage(50, 50, BufferedImage.TYPE_INT_ARGB)));
        assertThat(new Color(shown("/photographs/" + kept()).getRGB(25, 25))).isEqualTo(Color.WHITE);
    }

    static Stream<Arguments> refused() {
        byte[] jpeg = Pictures.jpeg(800, 600);
        byte[] png = Pictures.png(Pictures.picture(800, 600));
        String svg = "<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>";
        return Stream.of(
                Arguments.of("a drawing with a program in it", bytes(svg), "a drawing (SVG)"),
                Arguments.of("a web page", bytes("<!doctype html><script>alert(1)</script>"), "a web page"),
                Arguments.of("a WebP", bytes("RIFF\0\0\0\0WEBPVP8 "), "a WebP picture"),
                Arguments.of("a HEIC", bytes("\0\0\0\u0018ftypheic"), "a HEIC"),
                Arguments.of("a GIF", bytes("GIF89a"), "a GIF"),
                Arguments.of("a zip", bytes("PK\u0003\u0004"), "a zip archive"),
                Arguments.of("a text", bytes("recipe: Plain"), "no picture that is known here"),
                Arguments.of("nothing", new byte[0], "is empty; choose another, or save it anew"),
                Arguments.of("half a JPEG", Arrays.copyOf(jpeg, jpeg.length / 2), "damaged or cut off"),
                Arguments.of("a JPEG without its end", Arrays.copyOf(jpeg, jpeg.length - 200), "damaged or cut off"),
                Arguments.of("half a PNG", Arrays.copyOf(png, png.length / 2), "damaged or cut off"),
                Arguments.of("the head of a JPEG", Arrays.copyOf(jpeg, 20), "damaged or cut off"),
                Arguments.of("three bytes of a JPEG", Arrays.copyOf(jpeg, 3), "damaged or cut off"),
                Arguments.of("a PNG of nothing", Pictures.pngThatSays(0, 0), "damaged or cut off"),
                Arguments.of("a PNG that says it is huge", Pictures.pngThatSays(60_000, 60_000), "60000 by 60000"),
                Arguments.of("a PNG as long as a street", Pictures.pngThatSays(2_000_000, 1), "2000000 by 1"),
                Arguments.of("33 megabytes", new byte[33 << 20], "more than 32 MB"));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void what_is_no_photograph_is_refused_with_what_it_is(String what, byte[] file, String words) {
        HttpResponse<String> answer = give(file);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("<input autofocus id=\"photograph\"");
        assertThat(answer.body()).contains("class=\"trouble\"").contains(words).contains("<h1>Plain</h1>");
        assertThat(shop.book().find(recipe).orElseThrow().photograph()).isEmpty();
    }

    @Test
    void far_too_much_is_not_listened_to_until_its_end() {
        try {
            HttpResponse<String> answer = give(new byte[70 << 20]);
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("larger than 64 MB").contains("<h1>Plain</h1>");
        } catch (IllegalStateException hungUp) {
            assertThat(hungUp).hasCauseInstanceOf(IOException.class);
        }
        assertThat(shop.book().find(recipe).orElseThrow().photograph()).isEmpty();
    }

    @Test
    void a_form_that_is_put_together_wrongly_is_no_fault_of_ours() {
        HttpResponse<String> answer = shop.send(
                "/recipes/" + recipe + "/photograph",
                "multipart/form-data; boundary=seam",
                bytes("--seam\r\nContent-Disposition: form-data; name=\"photograph\""));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("did not come whole").contains("<h1>Plain</h1>");
    }

    @Test
    void a_photograph_can_be_taken_off_and_a_worse_one_changes_nothing() {
        give(Pictures.jpeg(200, 100));
        String first = kept();
        give(new byte[] {1, 2, 3});
        assertThat(kept()).isEqualTo(first);
        shop.post("/recipes/" + recipe + "/photograph/remove");
        assertThat(shop.book().find(recipe).orElseThrow().photograph()).isEmpty();
        assertThat(shop.post("/recipes/" + recipe + "/photograph/remove").statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_deleted_recipe_takes_no_photograph() {
        shop.post("/recipes/" + recipe + "/delete");
        assertThat(give(Pictures.jpeg(200, 100)).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/photographs/x",
                "/photographs/..%2f..%2flyewright.db",
                "/photographs/%2e%2e/lyewright.db",
                "/photographs/0000000000000000000000000000000000000000000000000000000000000000",
                "/photographs/0000000000000000000000000000000000000000000000000000000000000000/small",
                "/photographs/00000000000000000000000000000000000000000000000000000000000000ZZ"
            })
    void no_other_file_can_be_reached(String address) {
        assertThat(shop.get(address).statusCode()).isBetween(400, 404);
    }
}
