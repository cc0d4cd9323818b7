package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;
import lyewright.web.TextField;
import lyewright.words.Labelled;

/**
 * The form of a stocked material.
 *
 * @param frame around it
 * @param title above it
 * @param action where it is sent
 * @param back where one goes who wants none of it
 * @param name field
 * @param kind what is chosen
 * @param kinds what may be
 * @param material field
 * @param identity fields of what it is, beyond its name
 * @param reorder field
 * @param spoons field
 * @param notes field
 * @param known names of recipes
 * @param troubles what is wrong that belongs to no field
 * @param alike where it is asked what is easily taken for it
 * @param opens whether what is folded away is open
 * @param asks whether it is asked if a spoon is so large
 * @param sure whether it was said that it is
 */
public record ItemFormPage(
        Frame frame,
        String title,
        String action,
        String back,
        TextField name,
        String kind,
        List<Labelled> kinds,
        TextField material,
        List<TextField> identity,
        TextField reorder,
        TextField spoons,
        TextField notes,
        List<Labelled> known,
        List<String> troubles,
        String alike,
        boolean opens,
        boolean asks,
        boolean sure) {

    /** Copies its lists. */
    public ItemFormPage {
        kinds = List.copyOf(kinds);
        identity = List.copyOf(identity);
        known = List.copyOf(known);
        troubles = List.copyOf(troubles);
    }
}
