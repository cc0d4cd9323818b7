package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import java.lang.reflect.Proxy;
import org.junit.jupiter.api.Test;

/** Who is taken for the maker at the computer itself, whenever the doors are opened and shut. */
class DeskTest {

    private static final int DESK = 4310;
    private static final int NETWORK = 4311;
    private static final int CUT_OFF = -1;

    private final Doors doors = Doors.ofDesk();

    private static <T> T stub(Class<T> type, Object answer) {
        return type.cast(Proxy.newProxyInstance(
                DeskTest.class.getClassLoader(), new Class<?>[] {type}, (proxy, method, arguments) -> answer));
    }

    private static Context by(int port) {
        return stub(Context.class, stub(HttpServletRequest.class, port));
    }

    @Test
    void only_the_desks_own_door_makes_a_maker_of_whoever_comes_by_it() {
        doors.openedDesk(DESK);
        doors.opened(NETWORK);

        assertThat(doors.isDesk(by(DESK))).isTrue();
        assertThat(doors.isDesk(by(NETWORK))).isFalse();
    }

    @Test
    void who_came_by_a_door_that_was_shut_meanwhile_is_no_maker() {
        doors.openedDesk(DESK);
        doors.opened(NETWORK);
        doors.shut();

        assertThat(doors.isDesk(by(NETWORK))).isFalse();
        assertThat(doors.isDesk(by(DESK))).isTrue();
    }

    @Test
    void who_was_cut_off_is_no_maker() {
        doors.openedDesk(DESK);
        doors.opened(NETWORK);

        assertThat(doors.isDesk(by(CUT_OFF))).isFalse();
        assertThat(doors.isDesk(by(0))).isFalse();

        doors.shut();
        assertThat(doors.isDesk(by(CUT_OFF))).isFalse();
    }

    @Test
    void nobody_is_the_maker_before_the_desks_door_is_open_or_where_both_doors_are_one() {
        assertThat(doors.isDesk(by(DESK))).isFalse();
        assertThat(doors.isDesk(by(CUT_OFF))).isFalse();

        doors.openedDesk(DESK);
        doors.opened(DESK);
        assertThat(doors.isDesk(by(DESK))).isFalse();
    }
}
