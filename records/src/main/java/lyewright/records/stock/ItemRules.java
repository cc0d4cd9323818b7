package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lyewright.measure.Problem;
import lyewright.records.store.Typed;

/** What may be said of a stocked material. */
final class ItemRules {

    private static final int LONGEST_INCI = 500;
    private static final int LONGEST_WORD = 200;
    private static final int LONGEST_SPOON = 60;

    private ItemRules() {}

    static List<Problem> check(ItemSaid said) {
        List<Problem> problems = new ArrayList<>();
        Identity identity = said.identity();
        Typed.name("name", "its name", said.name()).ifPresent(problems::add);
        line(problems, "inci", "its INCI name", identity.inci(), LONGEST_INCI);
        line(problems, "cas", "its CAS number", identity.cas(), LONGEST_WORD);
        line(problems, "species", "the plant's name", identity.species(), LONGEST_WORD);
        line(problems, "part", "the part of the plant", identity.part(), LONGEST_WORD);
        line(problems, "productCode", "the product code", identity.productCode(), LONGEST_WORD);
        line(problems, "certificateVersion", "the certificate's version", identity.certificateVersion(), LONGEST_WORD);
        Typed.text("notes", "the note", said.notes(), Suppliers.LONGEST_NOTES).ifPresent(problems::add);
        identity.materialKey().ifPresent(key -> line(problems, "material", "what recipes call it", key, LONGEST_WORD));
        LotFits.nameOfAnotherKind(said).ifPresent(problems::add);
        spoons(problems, said.spoons());
        boolean weighed = said.counting() == Counting.MASS;
        if (!weighed && said.kind() != ItemKind.PACKAGING) {
            problems.add(new Problem("counting", "only packaging is counted", "weigh it, or say that it is packaging"));
        }
        if ((said.reorderMass().isPresent() && !weighed)
                || (said.reorderPieces().isPresent() && weighed)) {
            problems.add(new Problem(
                    "reorder",
                    weighed ? "it is weighed, not counted" : "it is counted, not weighed",
                    weighed ? "write a mass, as in 500 g" : "write how many, as in 50"));
        }
        if (said.reorderMass().filter(mass -> mass.value().signum() == 0).isPresent()
                || said.reorderPieces().filter(pieces -> pieces <= 0).isPresent()) {
            problems.add(new Problem("reorder", "that is nothing", "leave it empty, or write when to buy more"));
        }
        return problems;
    }

    private static void spoons(List<Problem> problems, Map<String, Long> spoons) {
        spoons.forEach((name, milligrams) -> {
            if (name.isBlank() || milligrams <= 0) {
                problems.add(new Problem("spoons", "a spoon has a name and holds something", "as in teaspoon: 2.1 g"));
            } else {
                line(problems, "spoons", "a spoon's name", name, LONGEST_SPOON);
            }
        });
    }

    static void line(List<Problem> problems, String path, String whose, String text, int longest) {
        if (text.lines().count() > 1) {
            problems.add(new Problem(path, whose + " is more than one line", "write it on one"));
        } else {
            Typed.text(path, whose, text, longest).ifPresent(problems::add);
        }
    }
}
