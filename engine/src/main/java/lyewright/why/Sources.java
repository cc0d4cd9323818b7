package lyewright.why;

import lyewright.makingsheet.Balance;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Tables;

/** Who says so, where it is neither a table's cell nor another figure. */
final class Sources {

    static final String FORMULA = "asked in the formula";

    static final String ASKED = "asked for with the sheet";

    static final String ATOMIC_WEIGHTS = "IUPAC abridged atomic weights (memory)";

    static final String EQUIPMENT = "the balances given with the sheet, or those taken where none are";

    static final String COMMON_PRACTICE = "common practice";

    private Sources() {}

    /** Who gives an additive's physical figures: of the tables' three sources that one, else the maker's own. */
    static String physical(Additive additive) {
        String[] parts = additive.sources().split(" \\| ", -1);
        if (parts.length != 3) {
            return additive.sources();
        }
        return parts[additive.kind() == AdditiveKind.FRAGRANCE ? 0 : 1];
    }

    /** What a balance may err by. */
    static String balance(Balance balance, Tables tables) {
        String assumed = balance.accuracyClass().isPresent() ? "" : " assumed";
        return "balance " + balance.name() + ", class " + balance.classTaken() + assumed
                + ", in service, and half its step: "
                + tables.balanceErrors().get(0).source();
    }
}
