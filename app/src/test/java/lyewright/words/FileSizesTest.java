package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileSizesTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0 bytes",
        "1, 1 byte",
        "1023, 1023 bytes",
        "1024, 1 KB",
        "2225, 2.2 KB",
        "10240, 10 KB",
        "1048575, 1 MB",
        "1048576, 1 MB",
        "3565158, 3.4 MB",
        "41943040, 40 MB"
    })
    void a_length_is_said_as_people_say_it(long bytes, String said) {
        assertThat(FileSizes.said(bytes)).isEqualTo(said);
    }
}
