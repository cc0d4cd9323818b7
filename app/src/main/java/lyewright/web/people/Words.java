package lyewright.web.people;

import java.util.Optional;
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

    /** Such as "saved Tideline, version 3"; a thing without a name is called by what it is. */
    static String deed(SignedLine line, Optional<String> name) {
        String thing = name.orElseGet(() -> switch (line.deed().thing()) {
            case SETTINGS -> "the settings";
            case NETWORK -> "the door";
            default -> "a " + line.deed().thing().word();
        });
        OptionalInt version = line.version();
        return act(line.deed()) + " " + thing + (version.isPresent() ? ", version " + version.getAsInt() : "");
    }

    private static String act(Deed deed) {
        return switch (deed.act()) {
            case KEPT ->
                switch (deed.thing()) {
                    case NETWORK -> "opened";
                    case DEVICE -> "let in";
                    case PASSWORD -> "set the password of";
                    default -> "saved";
                };
            case REMOVED ->
                switch (deed.thing()) {
                    case NETWORK -> "shut";
                    case DEVICE -> "showed out";
                    default -> "took away";
                };
            case PUT_BACK -> "put back";
            case MADE -> "printed or made";
        };
    }
}
