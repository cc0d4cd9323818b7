package lyewright.web.stores;

import java.util.List;
import java.util.Optional;
import lyewright.picture.Picture;
import lyewright.web.Frame;

/**
 * One material of the tables.
 *
 * @param frame around it
 * @param key its key
 * @param name its common name
 * @param facts all that is known
 * @param acids its fatty acids, for oils that have any known
 * @param acidSource where all of them were read; empty where they come from several places
 * @param picture of its fatty acids, for oils that have any known
 * @param edition of the tables
 * @param ownId the maker's own material under the same key; empty where there is none
 */
public record CardPage(
        Frame frame,
        String key,
        String name,
        List<Fact> facts,
        List<AcidRow> acids,
        String acidSource,
        Optional<Picture> picture,
        String edition,
        String ownId) {

    /** Copies its lists. */
    public CardPage {
        facts = List.copyOf(facts);
        acids = List.copyOf(acids);
    }
}
