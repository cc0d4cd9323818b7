package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;
import lyewright.web.TextField;

/**
 * Who sells materials, and the form of one.
 *
 * @param frame around it
 * @param suppliers by name
 * @param form the form; of a new one unless one is being changed
 */
public record SuppliersPage(Frame frame, List<Line> suppliers, Form form) {

    /** Copies its list. */
    public SuppliersPage {
        suppliers = List.copyOf(suppliers);
    }

    /**
     * One of them.
     *
     * @param name what they are called
     * @param address where they are changed
     * @param contact how they are reached
     * @param notes the maker's own
     */
    public record Line(String name, String address, String contact, String notes) {}

    /**
     * The form of one.
     *
     * @param title above it
     * @param action where it is sent
     * @param isNew whether it adds one
     * @param name field
     * @param contact field
     * @param notes field
     * @param troubles what is wrong that belongs to no field
     * @param remove where they are taken out of the list; empty for a new one
     */
    public record Form(
            String title,
            String action,
            boolean isNew,
            TextField name,
            TextField contact,
            TextField notes,
            List<String> troubles,
            String remove) {

        /** Copies its list. */
        public Form {
            troubles = List.copyOf(troubles);
        }
    }
}
