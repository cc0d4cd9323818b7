package lyewright.web.start;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;

/**
 * What a recipe is to fill.
 *
 * @param called how the answer calls it
 * @param target what is to come out
 * @param mould what is known of the mould
 * @param cut how it is cut, if it is
 * @param make the same in the fields of the making page, by name
 */
public record AskedMould(
        Called called, Fill.Target target, Mould mould, Optional<CutPlan> cut, Map<String, String> make) {

    /** Copies its map. */
    public AskedMould {
        make = Map.copyOf(make);
    }

    /**
     * A mould or an amount, in sentences.
     *
     * @param name such as {@code your loaf}, {@code 12 such bars}
     * @param many whether it is several things
     * @param amount whether it is no mould, only so much
     */
    record Called(String name, boolean many, boolean amount) {

        static Called mould(String name) {
            return new Called(name, false, false);
        }

        static Called moulds(String name) {
            return new Called(name, true, false);
        }

        static Called amount(String name, boolean many) {
            return new Called(name, many, true);
        }

        /** How a sentence begins of how much of a recipe it is. */
        String takes() {
            String verb = amount ? (many ? " are " : " is ") : many ? " take " : " takes ";
            return Character.toUpperCase(name.charAt(0)) + name.substring(1) + verb;
        }

        /** Of a recipe that is just right for it. */
        String fills() {
            return (amount ? "It makes " : "It fills ") + name;
        }
    }

    static AskedMould full(Called called, Mould mould, String inside) {
        Map<String, String> make = new LinkedHashMap<>();
        make.put("mould", "typed");
        make.put("inside", inside);
        make.put("much", "full");
        return new AskedMould(called, new Fill.FullMould(), mould, Optional.empty(), make);
    }

    static AskedMould kept(String id, String name, Mould mould, Optional<CutPlan> cut) {
        return new AskedMould(
                Called.mould(name), new Fill.FullMould(), mould, cut, Map.of("mould", id, "much", "full"));
    }

    static AskedMould amount(Called called, Fill.Target target, String much, String amount) {
        return new AskedMould(called, target, Mould.UNKNOWN, Optional.empty(), Map.of("much", much, "amount", amount));
    }

    Fill fill(double holdBack) {
        return new Fill(target, mould, cut, holdBack);
    }
}
