package lyewright.web.photograph;

import java.nio.charset.StandardCharsets;

/** Files that someone may give for a photograph. */
public final class SomePhotograph {

    private SomePhotograph() {}

    /** A sound one. */
    public static byte[] jpeg() {
        return Pictures.jpeg(2400, 1800);
    }

    /** A drawing with a program in it. */
    public static byte[] svg() {
        return "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>"
                .getBytes(StandardCharsets.UTF_8);
    }
}
