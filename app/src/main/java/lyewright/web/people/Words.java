package lyewright.web.people;

import java.util.OptionalInt;
import lyewright.records.people.Deed;
import lyewright.records.people.Role;
import lyewright.records.people.SignedLine;

/** What is said of people and of what they did. */
final class Words {

    private Words() {}

    static String may(Role role) {
        return role == Role.MAKER
                ? "A maker: may do everything."
                : "A helper: reads recipes and sheets, weighs, ticks and counts; changes no recipe, no lot and no price.";
    }

    /** Such as "changed a recipe, version 3". */
    static String deed(SignedLine line) {
        String thing = line.deed().thing() == Deed.Thing.SETTINGS
                ? "the settings"
                : line.deed().thing() == Deed.Thing.NETWORK
                        ? "the door"
                        : "a " + line.deed().thing().word();
        OptionalInt version = line.version();
        return act(line.deed()) + " " + thing + (version.isPresent() ? ", version " + version.getAsInt() : "");
    }

    private static String act(Deed deed) {
        boolean door = deed.thing() == Deed.Thing.NETWORK;
        return switch (deed.act()) {
            case KEPT -> door ? "opened" : deed.thing() == Deed.Thing.DEVICE ? "let in" : "saved";
            case REMOVED -> door ? "shut" : deed.thing() == Deed.Thing.DEVICE ? "showed out" : "took away";
            case PUT_BACK -> "put back";
            case MADE -> "printed or made";
        };
    }
}
