package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnsTest {

    @Test
    void the_longest_column_is_as_short_as_can_be_and_the_order_is_kept() {
        // lines of 1, 1, 3, 1, 1 and 2
        List<String> items = List.of("a", "b", "c".repeat(130), "d", "e", "f".repeat(70));

        assertThat(Columns.of(items, 3, String::length))
                .containsExactly(items.subList(0, 2), items.subList(2, 4), items.subList(4, 6));
        assertThat(Columns.of(items, 1, String::length)).containsExactly(items);
    }
}
