package lyewright.web.stores;

import java.util.List;
import lyewright.web.TextField;

/**
 * The form of a material of the maker's own.
 *
 * @param head what every form has
 * @param kind what it is, as it is sent
 * @param kindLabel what a maker calls that
 * @param kindWhat what it is, a sentence; empty where nothing need be said
 * @param key field: what recipes call it
 * @param asked fields
 * @param folded fields, folded away
 * @param openFold whether their fold stands open
 * @param alkali of a stock lye, which is chosen; empty for all else
 * @param keys of the tables, to choose from; empty where the key is the maker's to choose
 * @param chosen whether the key is one of the tables and stays
 * @param acids names of acids to choose from; empty where none is asked
 * @param shown what stands beside it
 */
public record MaterialPage(
        FormHead head,
        String kind,
        String kindLabel,
        String kindWhat,
        TextField key,
        List<TextField> asked,
        List<TextField> folded,
        boolean openFold,
        String alkali,
        List<String> keys,
        boolean chosen,
        List<String> acids,
        MaterialShown shown) {

    /** Copies its lists. */
    public MaterialPage {
        asked = List.copyOf(asked);
        folded = List.copyOf(folded);
        keys = List.copyOf(keys);
        acids = List.copyOf(acids);
    }
}
