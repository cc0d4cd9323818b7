package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;

/** What tests ask of a making sheet. */
final class Sheets {

    /** One balance for everything, so fine that rounding hides nothing. */
    static final Equipment LABORATORY =
            Equipment.parseBalances("laboratory:50kg:0.01g").orThrow();

    private Sheets() {}

    /** All weighings in the order of the sheet. */
    static List<Weighing> weighings(MakingSheet sheet) {
        List<Weighing> all = new ArrayList<>();
        for (Vessel vessel : sheet.vessels()) {
            all.addAll(vessel.weighings());
        }
        return all;
    }

    /** Grams to weigh of a key, over all vessels. */
    static double weighed(MakingSheet sheet, String key) {
        return weighings(sheet).stream()
                .filter(w -> w.line().key().equals(key))
                .mapToDouble(w -> w.weigh().grams())
                .sum();
    }

    /** Grams of a key before rounding, over all vessels. */
    static double exact(MakingSheet sheet, String key) {
        return weighings(sheet).stream()
                .filter(w -> w.line().key().equals(key))
                .mapToDouble(Weighing::exactGrams)
                .sum();
    }

    /** Grams before rounding of a key's lines of one kind. */
    static double exact(MakingSheet sheet, String key, BatchLine.Kind kind) {
        return weighings(sheet).stream()
                .filter(w -> w.line().key().equals(key) && w.line().kind() == kind)
                .mapToDouble(Weighing::exactGrams)
                .sum();
    }

    static boolean weighs(MakingSheet sheet, String key) {
        return weighings(sheet).stream().anyMatch(w -> w.line().key().equals(key));
    }

    static Optional<Caution> caution(MakingSheet sheet, String id) {
        return sheet.cautions().stream().filter(c -> c.id().equals(id)).findFirst();
    }

    static List<String> ids(MakingSheet sheet) {
        return sheet.cautions().stream().map(Caution::id).toList();
    }
}
