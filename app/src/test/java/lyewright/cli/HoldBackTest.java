package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lyewright.fill.Fill;
import lyewright.measure.Share;
import lyewright.records.setting.Workshop;
import org.junit.jupiter.api.Test;

/** What stays in jugs where nobody says how much is the same on the command line as on the pages. */
class HoldBackTest {

    private static final Path ROOT = Path.of("..");

    private static String sheet(String... more) {
        String[] all = new String[more.length + 4];
        all[0] = "sheet";
        all[1] = "examples/kitchen-notebook.yaml";
        all[2] = "--total";
        all[3] = "1500g";
        System.arraycopy(more, 0, all, 4, more.length);
        return Run.in(ROOT, all).out();
    }

    @Test
    void the_sheet_says_what_is_held_back_unless_nothing_is() {
        assertThat(sheet())
                .contains("1 % of it, 15.1 g, stays in jugs and tools")
                .isEqualTo(sheet("--hold-back", "1%"));
        assertThat(sheet("--hold-back", "0%")).doesNotContain("stays in jugs and tools");
    }

    @Test
    void a_new_workshop_holds_back_as_much_as_the_command_line() {
        assertThat(Share.parse(Workshop.USUAL_HOLD_BACK).orThrow().fraction()).isEqualTo(Fill.USUAL_HOLD_BACK);
        assertThat(Workshop.USUAL_HOLD_BACK).isEqualTo("1 %");
    }
}
