package lyewright.records.people;

import java.time.Instant;
import java.util.Optional;

/**
 * A telephone or a computer that was let in, or a browser in which somebody signed in.
 *
 * @param id its id
 * @param name what it is called
 * @param person whose it is, or who signed in there
 * @param way how it came in
 * @param addedAt when
 * @param seenAt when it last asked for something, to the hour; empty where it has to be let in anew, as after a restore
 */
public record Device(String id, String name, Person person, Way way, Instant addedAt, Optional<Instant> seenAt) {

    /** How a device comes in. */
    public enum Way {
        /** By a code that a maker shows. */
        CODE("code"),
        /** By a password. */
        PASSWORD("password");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        /** As it is kept. */
        String word() {
            return word;
        }

        static Way ofWord(String word) {
            return word.equals(CODE.word) ? CODE : PASSWORD;
        }
    }
}
