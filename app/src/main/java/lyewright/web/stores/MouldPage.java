package lyewright.web.stores;

import java.util.List;
import java.util.Set;
import lyewright.web.TextField;

/**
 * The form of a mould.
 *
 * @param head what every form has
 * @param kind what it is
 * @param name field
 * @param size field; not asked of a mould of any other shape
 * @param bar field; of those that are cut
 * @param losses fields, folded: what cutting takes away
 * @param fills fields, folded except where nothing else is known: what goes into it
 * @param openLosses whether their fold stands open
 * @param openFills whether their fold stands open
 * @param recipes names to choose from
 * @param shown the mould as it is drawn
 */
public record MouldPage(
        FormHead head,
        MouldKind kind,
        TextField name,
        TextField size,
        TextField bar,
        List<TextField> losses,
        List<TextField> fills,
        boolean openLosses,
        boolean openFills,
        List<String> recipes,
        MouldShown shown) {

    static final Set<String> FIELDS =
            Set.of("name", "size", "bar", "blade", "ends", "trim", "water", "usual", "usualOf");

    /** Copies its lists. */
    public MouldPage {
        losses = List.copyOf(losses);
        fills = List.copyOf(fills);
        recipes = List.copyOf(recipes);
    }
}
