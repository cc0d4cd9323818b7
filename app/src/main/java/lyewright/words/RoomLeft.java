package lyewright.words;

/**
 * A tared vessel that leaves its balance little room for its own weight; whether it is too heavy nobody here knows.
 *
 * @param vessel what it is called
 * @param grams the most it may weigh by itself
 * @param balance the balance that carries it
 */
public record RoomLeft(String vessel, String grams, String balance) {

    /** In a sentence. */
    public String text() {
        return "Look: the " + vessel + " may itself weigh no more than " + grams + ", or balance " + balance
                + " is overloaded.";
    }
}
