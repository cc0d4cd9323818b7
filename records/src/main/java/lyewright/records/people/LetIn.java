package lyewright.records.people;

/**
 * A device that has just been let in.
 *
 * @param device which
 * @param token what it shows from now on; nobody else knows it, and it is kept nowhere but there
 */
public record LetIn(Device device, String token) {

    /** Without the token, which has no place in a log. */
    @Override
    public String toString() {
        return "LetIn[" + device + "]";
    }
}
