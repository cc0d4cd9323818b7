package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.OwnMaterial;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/** Whether a lot is what it is called: lye that is taken for an oil burns somebody. */
final class LotFits {

    private LotFits() {}

    /** Whether it is an alkali or lye, by what it is a lot of or by its certificate. */
    static boolean isAlkali(ItemKind kind, LotSaid said) {
        return kind == ItemKind.ALKALI
                || said.certificate().filter(LotFits::isLye).isPresent();
    }

    private static boolean isLye(OwnMaterial own) {
        return own.kind().equals(OwnMaterial.LYE) || own.strength().isPresent();
    }

    /** What is said of a lot, held against what it is a lot of. */
    static List<Problem> check(ItemSaid item, LotSaid said) {
        List<Problem> problems = new ArrayList<>();
        said.certificate().ifPresent(own -> {
            boolean lye = isLye(own);
            if (lye != (item.kind() == ItemKind.ALKALI)) {
                problems.add(another(item, lye ? "lye" : "no alkali"));
            } else if ((lye || own.kind().equals(OwnMaterial.OILS)) && isAnothers(item, own.key())) {
                problems.add(another(item, lye ? "another lye" : "a premix of other oils"));
            }
        });
        return problems;
    }

    /** Lye under another's name is known by what is kept of it alone, so that this is not written over. */
    static Optional<Problem> staysLye(ItemSaid item, LotSaid before) {
        return before.certificate()
                .filter(own -> item.kind() != ItemKind.ALKALI && isLye(own))
                .map(own -> new Problem(
                        "certificate",
                        "this is lye, by what is kept of it",
                        "refuse the lot, and get rid of it safely"));
    }

    private static boolean isAnothers(ItemSaid item, String key) {
        return Tables.bundled().has(key)
                || item.identity().materialKey().filter(key::equals).isEmpty();
    }

    private static Problem another(ItemSaid item, String is) {
        return new Problem(
                "item",
                "'" + item.name() + "' is in the cupboard, and this is " + is,
                "give this one a name of its own");
    }

    /** Whether something new is the thing that is in the cupboard under its name. */
    static Optional<Problem> sameKind(ItemSaid there, ItemKind fresh) {
        boolean alkali = there.kind() == ItemKind.ALKALI;
        return alkali == (fresh == ItemKind.ALKALI)
                ? Optional.empty()
                : Optional.of(new Problem(
                        "item",
                        "'" + there.name() + "' is in the cupboard as " + (alkali ? "an alkali" : "something else")
                                + ", and this is " + (alkali ? "none" : "an alkali"),
                        "give this one a name of its own"));
    }

    /** Whether what recipes call it is of its kind. */
    static Optional<Problem> nameOfAnotherKind(ItemSaid said) {
        return said.identity().materialKey().flatMap(key -> {
            boolean alkali = key.equals(Alkali.SODIUM.key()) || key.equals(Alkali.POTASSIUM.key());
            boolean stocked = said.kind() == ItemKind.ALKALI;
            boolean wrong = stocked ? Tables.bundled().has(key) : alkali;
            return wrong
                    ? Optional.of(new Problem(
                            "kind",
                            "'" + key + "' is what recipes call "
                                    + (stocked ? "something that is no alkali" : "an alkali"),
                            stocked ? "give it another name, or choose what it is" : "say that it is an alkali"))
                    : Optional.empty();
        });
    }
}
