package lyewright.web.stores;

import java.util.Arrays;
import java.util.Optional;

/** What the stores hold. */
enum Thing {
    MOULD("mould", "moulds"),
    BALANCE("balance", "balances"),
    JUG("jug", "jugs"),
    MATERIAL("material", "materials");

    private final String word;
    private final String many;

    Thing(String word, String many) {
        this.word = word;
        this.many = many;
    }

    String word() {
        return word;
    }

    /** Where its pages are; also the heading they belong to on the page of all. */
    String address() {
        return "/stores/" + many;
    }

    String many() {
        return many;
    }

    static Optional<Thing> of(String word) {
        return Arrays.stream(values()).filter(thing -> thing.word.equals(word)).findFirst();
    }
}
