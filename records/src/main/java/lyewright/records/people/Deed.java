package lyewright.records.people;

import java.util.Locale;

/**
 * Something that somebody does to what is kept.
 *
 * @param thing what to
 * @param act what is done
 */
public record Deed(Thing thing, Act act) {

    /** What may be done something to, beside what the ledger is of. */
    public enum Thing {
        /** A recipe. */
        RECIPE,
        /** A mould. */
        MOULD,
        /** A balance. */
        BALANCE,
        /** A jug or a pot. */
        JUG,
        /** One of the maker's own materials. */
        MATERIAL,
        /** What the workshop is set to. */
        SETTINGS,
        /** Who sells materials. */
        SUPPLIER,
        /** A material of the cupboard. */
        STOCKED_MATERIAL,
        /** Somebody who works here. */
        PERSON,
        /** A telephone or a computer. */
        DEVICE,
        /** Somebody's password. */
        PASSWORD,
        /** Whether other devices may knock. */
        NETWORK;

        /** As it is kept, and as it is told. */
        public String word() {
            return Deed.word(this);
        }
    }

    /** What is done. */
    public enum Act {
        /** Added or changed. */
        KEPT,
        /** Taken out of the lists. */
        REMOVED,
        /** Put back into them. */
        PUT_BACK,
        /** A batch was made of it, or its sheet printed: the one thing here that a helper does. */
        MADE;

        /** As it is kept. */
        public String word() {
            return Deed.word(this);
        }
    }

    /** Adding or changing. */
    public static Deed kept(Thing thing) {
        return new Deed(thing, Act.KEPT);
    }

    /** Taking away. */
    public static Deed removed(Thing thing) {
        return new Deed(thing, Act.REMOVED);
    }

    /** Putting back. */
    public static Deed putBack(Thing thing) {
        return new Deed(thing, Act.PUT_BACK);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
