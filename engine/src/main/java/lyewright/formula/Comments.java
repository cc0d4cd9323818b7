package lyewright.formula;

import java.util.List;
import java.util.Map;

/**
 * The remarks of a formula file, kept so that writing it back loses none: whole lines before an entry, remarks at the end
 * of an entry's line, and lines after everything. Text without the number sign, otherwise as typed.
 *
 * @param before lines standing before the entry at a path
 * @param beside the remark on the entry's own line
 * @param after lines at the end of the file
 */
public record Comments(Map<String, List<String>> before, Map<String, String> beside, List<String> after) {

    /** No remarks. */
    public static final Comments NONE = new Comments(Map.of(), Map.of(), List.of());

    /** Copies what it is given. */
    public Comments {
        before = Map.copyOf(before);
        beside = Map.copyOf(beside);
        after = List.copyOf(after);
    }
}
