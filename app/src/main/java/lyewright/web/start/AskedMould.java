package lyewright.web.start;

import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;

/**
 * What a recipe is to fill.
 *
 * @param takes how the answer begins, with its verb: {@code Your loaf takes}
 * @param target what is to come out
 * @param mould what is known of the mould
 * @param cut how it is cut, if it is
 */
public record AskedMould(String takes, Fill.Target target, Mould mould, Optional<CutPlan> cut) {

    static AskedMould full(String takes, Mould mould) {
        return new AskedMould(takes, new Fill.FullMould(), mould, Optional.empty());
    }

    static AskedMould of(String takes, Fill.Target target) {
        return new AskedMould(takes, target, Mould.UNKNOWN, Optional.empty());
    }

    Fill fill(double holdBack) {
        return new Fill(target, mould, cut, holdBack);
    }
}
