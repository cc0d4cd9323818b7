package lyewright.cli;

import java.util.List;
import lyewright.measure.Problem;

/** What a command comes to. A refusal prints nothing on standard output, so the two are kept apart by type. */
sealed interface Answer {

    /** All is well. */
    int FINE = 0;

    /** Our own fault. */
    int OUR_FAULT = 1;

    /** What was asked cannot be done. */
    int REFUSED = 2;

    /** Done, but a caution says stop. */
    int STOPPED = 3;

    /**
     * Something to print.
     *
     * @param text whole lines
     * @param exit the exit code
     */
    record Printed(String text, int exit) implements Answer {}

    /**
     * A refusal.
     *
     * @param problems why, their paths being places as they are printed: {@code FILE:3:5} or {@code --total}
     */
    record Refused(List<Problem> problems) implements Answer {}

    /**
     * Something that goes on until it is stopped.
     *
     * @param text whole lines, told first
     * @param untilStopped comes back when it is stopped
     */
    record Running(String text, Runnable untilStopped) implements Answer {}

    static Answer print(String text) {
        return new Printed(text, FINE);
    }

    static Answer refuse(String place, String what, String remedy) {
        return new Refused(List.of(new Problem(place, what, remedy)));
    }
}
