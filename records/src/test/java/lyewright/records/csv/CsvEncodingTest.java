package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The text of a file, whatever it was encoded in. */
class CsvEncodingTest {

    @Test
    void a_pasted_text_may_begin_with_a_mark_and_is_bounded_too() {
        assertThat(CsvFile.read("\uFEFFname,kind\nOlive oil,oil\n", Optional.empty())
                        .orThrow()
                        .columns())
                .containsExactly("name", "kind");
        assertThat(CsvFile.read("x".repeat((5 << 20) + 1), Optional.empty())
                        .problems()
                        .get(0)
                        .sentence())
                .contains("the text is longer than 5 MB");
    }

    @Test
    void encodings_that_are_told_apart() {
        assertThat(encoding("name,kind\nHuile d’olive,oil\n", StandardCharsets.UTF_8))
                .isEqualTo("UTF-8");
        assertThat(encoding("\uFEFFname,kind\nCrème,oil\n", StandardCharsets.UTF_8))
                .isEqualTo("UTF-8 with a byte order mark");
        assertThat(encoding("\uFEFFname,kind\nCrème,oil\n", StandardCharsets.UTF_16LE))
                .isEqualTo("UTF-16");
        assertThat(encoding("\uFEFFname,kind\nCrème,oil\n", StandardCharsets.UTF_16BE))
                .isEqualTo("UTF-16");
        assertThat(encoding("name,kind\nCrème,oil\n", StandardCharsets.ISO_8859_1))
                .isEqualTo("Latin-1 (Western European)");
        assertThat(encoding("name,kind\nHuile d’olive,oil\n", Charset.forName("windows-1252")))
                .isEqualTo("Windows-1252 (Western European)");
    }

    private static String encoding(String text, Charset charset) {
        CsvFile file = CsvFile.read(text.getBytes(charset), Optional.empty()).orThrow();
        assertThat(file.columns().get(0)).isEqualTo("name");
        assertThat(file.example(0)).isEqualTo(text.contains("Crème") ? "Crème" : "Huile d’olive");
        return file.encoding();
    }
}
