package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every rule that raises a caution, in one list. A rule looks at the facts and adds what it finds. */
final class CautionRules {

    /** One rule. */
    interface Rule {
        void look(SheetFacts facts, List<Caution> found);
    }

    private static final List<Rule> ALL = List.of(
            LyeCautions::tooStrong,
            LyeCautions::tooWeak,
            LyeCautions::purityAssumed,
            LyeCautions::purityUnusual,
            LyeCautions::alkaliTakenAsWeighed,
            LyeCautions::jugHoldsTooMuch,
            LyeCautions::temperaturesApart,
            SuperfatCautions::unusual,
            SuperfatCautions::portions,
            SuperfatCautions::acidTakesAlkali,
            SuperfatCautions::curedAsPoured,
            OilCautions::waxes,
            OilCautions::doubtfulValues,
            OilCautions::hardAcidsNeedHeat,
            OilCautions::densityAssumed,
            SaltCautions::amount,
            SaltCautions::wrongKind,
            SaltCautions::lather,
            SaltCautions::undissolved,
            AdditionCautions::each,
            AdditionCautions::milk,
            AdditionCautions::sugar,
            AdditionCautions::fragrance,
            AdditionCautions::acidOnUltramarine,
            MakingCautions::balances,
            MakingCautions::mouldDisagrees,
            MakingCautions::mouldFits,
            MakingCautions::fade);

    private static final Comparator<Caution> GRAVEST_FIRST =
            (one, other) -> other.level().compareTo(one.level());

    private CautionRules() {}

    static List<Caution> of(SheetFacts facts) {
        List<Caution> found = new ArrayList<>(8);
        for (Rule rule : ALL) {
            rule.look(facts, found);
        }
        found.sort(GRAVEST_FIRST);
        return found;
    }

    /** With what hangs on how sure the superfat is, ahead of what is as grave. */
    static List<Caution> withBands(List<Caution> plain, SuperfatBand band, List<PortionSheet> portions) {
        List<Caution> found = new ArrayList<>(plain.size() + 1);
        FreeAlkaliCautions.look(band, portions, found);
        if (found.isEmpty()) {
            return plain;
        }
        found.addAll(plain);
        found.sort(GRAVEST_FIRST);
        return found;
    }
}
