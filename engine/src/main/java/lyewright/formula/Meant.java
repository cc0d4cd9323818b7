package lyewright.formula;

import java.util.List;

/**
 * What a name may mean.
 *
 * @param how how sure that is
 * @param keys the materials' keys; of what is only near to a name perhaps words of the trade
 */
record Meant(How how, List<String> keys) {

    /** How sure it is. */
    enum How {
        /** One material. */
        ONE,
        /** One of several. */
        SEVERAL,
        /** One whose name holds the word, but is not called so. */
        PERHAPS,
        /** Nothing known, but something is written nearly so. */
        NEAR,
        /** Nothing known. */
        UNKNOWN,
        /** No name at all. */
        NOTHING
    }

    Meant {
        keys = List.copyOf(keys);
    }

    boolean isOne() {
        return how == How.ONE;
    }

    String key() {
        return keys.get(0);
    }
}
