package lyewright.web.stores;

import java.util.Optional;

/**
 * Where a form stands: whether it changes something that is kept, and what of it was last seen.
 *
 * @param id of what is changed; empty for something new
 * @param seen tells apart what was kept when the form was opened; empty for something new
 */
record Standing(Optional<String> id, String seen) {

    static final Standing NEW = new Standing(Optional.empty(), "");

    static Standing of(String id, Object form) {
        return new Standing(Optional.of(id), seen(form));
    }

    /** The same form gives the same word, in every run of the application. */
    static String seen(Object form) {
        return Integer.toHexString(form.toString().hashCode());
    }

    boolean isNew() {
        return id.isEmpty();
    }

    /** Where the form is sent. */
    String action(Thing thing) {
        return thing.address() + id.map(i -> "/" + i).orElse("");
    }
}
