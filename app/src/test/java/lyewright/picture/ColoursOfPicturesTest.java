package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether what is drawn can be told from what it is drawn on: WCAG 2.2, 1.4.3 and 1.4.11. */
class ColoursOfPicturesTest {

    private static final double WORDS = 4.5;
    private static final double LINES = 3;

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark", "print"})
    void words_stand_out_from_all_they_are_written_on(String medium) throws IOException {
        Map<String, String> colours = colours(medium);
        for (String on : new String[] {"paper", "panel", "pic-soft", "pic-none", "pic-stop-soft"}) {
            assertThat(contrast(colours, "ink", on))
                    .as("%s: ink on %s", medium, on)
                    .isGreaterThanOrEqualTo(WORDS);
            assertThat(contrast(colours, "muted", on))
                    .as("%s: muted on %s", medium, on)
                    .isGreaterThanOrEqualTo(WORDS);
        }
        for (String on : new String[] {"paper", "panel"}) {
            assertThat(contrast(colours, "pic-stop", on))
                    .as("%s: stop on %s", medium, on)
                    .isGreaterThanOrEqualTo(WORDS);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark", "print"})
    void outlines_textures_and_scales_stand_out_from_all_they_are_drawn_on(String medium) throws IOException {
        Map<String, String> colours = colours(medium);
        for (String on : new String[] {"paper", "panel", "pic-soft", "pic-none"}) {
            assertThat(contrast(colours, "accent", on))
                    .as("%s: accent on %s", medium, on)
                    .isGreaterThanOrEqualTo(LINES);
            assertThat(contrast(colours, "pic-full", on))
                    .as("%s: full on %s", medium, on)
                    .isGreaterThanOrEqualTo(LINES);
        }
        for (String on : new String[] {"paper", "panel", "pic-none"}) {
            assertThat(contrast(colours, "pic-line", on))
                    .as("%s: line on %s", medium, on)
                    .isGreaterThanOrEqualTo(LINES);
        }
        for (String on : new String[] {"paper", "panel", "pic-stop-soft"}) {
            assertThat(contrast(colours, "pic-stop", on))
                    .as("%s: stop on %s", medium, on)
                    .isGreaterThanOrEqualTo(LINES);
        }
        assertThat(contrast(colours, "accent", "pic-mid"))
                .as("%s: accent on mid", medium)
                .isGreaterThanOrEqualTo(LINES);
    }

    @Test
    void the_contrast_of_black_on_white_is_21() {
        assertThat(contrast(Map.of("a", "#000", "b", "#ffffff"), "a", "b")).isEqualTo(21.0);
    }

    private static double contrast(Map<String, String> colours, String one, String other) {
        double a = luminance(resolve(colours, one));
        double b = luminance(resolve(colours, other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static String resolve(Map<String, String> colours, String name) {
        String value = Objects.requireNonNull(colours.get(name), name);
        return value.startsWith("var(--") ? resolve(colours, value.substring(6, value.length() - 1)) : value;
    }

    private static double luminance(String hex) {
        String full = hex.length() == 4 ? hex.substring(1).replaceAll("(.)", "$1$1") : hex.substring(1);
        int rgb = Integer.parseInt(full, 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** What the pages' stylesheet says and what the pictures' own adds, as a medium has it. */
    private static Map<String, String> colours(String medium) throws IOException {
        Map<String, String> colours = new HashMap<>();
        for (String file : new String[] {"lyewright.css", "pictures.css"}) {
            String css = resource("/lyewright/web/static/" + file);
            String dark = block(css, "@media (prefers-color-scheme: dark)");
            String print = block(css, "@media print");
            read(css.replace(dark, "").replace(print, ""), colours);
            if (medium.equals("dark")) {
                read(dark, colours);
            } else if (medium.equals("print")) {
                read(print, colours);
            }
        }
        return colours;
    }

    private static String block(String css, String start) {
        int from = css.indexOf(start);
        int depth = 0;
        for (int i = css.indexOf('{', from); i < css.length(); i++) {
            depth += css.charAt(i) == '{' ? 1 : css.charAt(i) == '}' ? -1 : 0;
            if (depth == 0) {
                return css.substring(from, i + 1);
            }
        }
        throw new IllegalStateException(start);
    }

    private static void read(String css, Map<String, String> colours) {
        Matcher found =
                Pattern.compile("--([a-z-]+): (#[0-9a-f]+|var\\(--[a-z-]+\\));").matcher(css);
        while (found.find()) {
            colours.put(found.group(1), found.group(2));
        }
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = Picture.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
