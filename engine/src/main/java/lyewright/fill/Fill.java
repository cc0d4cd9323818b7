package lyewright.fill;

import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;

/**
 * How much is asked for.
 *
 * @param target what is to come out
 * @param mould what is known of the mould; it rules where the target says so, else it is compared
 * @param cut how the mould's content is cut, if it is
 * @param holdBack share of everything weighed that does not reach the mould, 0 and under 1
 */
public record Fill(Target target, Mould mould, Optional<CutPlan> cut, double holdBack) {

    /** Refuses a hold-back that leaves nothing: that is a broken promise of the caller. */
    public Fill {
        if (!(holdBack >= 0 && holdBack < 1)) {
            throw new IllegalArgumentException("hold-back must be 0 or more and under 1: " + holdBack);
        }
    }

    /** What is to come out. */
    public sealed interface Target {}

    /** A formula in masses as it stands. */
    public record AsWritten() implements Target {}

    /**
     * So much in the mould.
     *
     * @param grams mould mass
     */
    public record MouldMass(double grams) implements Target {}

    /**
     * So much oil.
     *
     * @param grams mass of all oils
     */
    public record OilMass(double grams) implements Target {}

    /** As much as the mould holds. */
    public record FullMould() implements Target {}

    /**
     * Bars.
     *
     * @param count how many
     * @param grams each
     * @param cured whether that is their mass once cured; else as cut
     */
    public record Bars(int count, double grams, boolean cured) implements Target {}

    /** What usually stays in jugs and on tools, where nothing else is said; common practice. */
    public static final double USUAL_HOLD_BACK = 0.01;

    /** A formula in masses, as it stands, nothing held back. */
    public static final Fill AS_WRITTEN = new Fill(new AsWritten(), Mould.UNKNOWN, Optional.empty(), 0);

    /**
     * So much in the mould, nothing held back.
     *
     * @param grams mould mass
     * @return the fill
     */
    public static Fill mouldMass(double grams) {
        return new Fill(new MouldMass(grams), Mould.UNKNOWN, Optional.empty(), 0);
    }

    /**
     * So much oil, nothing held back.
     *
     * @param grams mass of all oils
     * @return the fill
     */
    public static Fill oilMass(double grams) {
        return new Fill(new OilMass(grams), Mould.UNKNOWN, Optional.empty(), 0);
    }

    /**
     * The same with something held back.
     *
     * @param share of everything weighed, 0 and under 1
     * @return the fill
     */
    public Fill holdingBack(double share) {
        return new Fill(target, mould, cut, share);
    }

    /**
     * Reads bars, {@code 10x110g}.
     *
     * @param text the text
     * @param cured whether the mass is once cured
     * @return the bars, or why not
     */
    public static Outcome<Bars> parseBars(String text, boolean cured) {
        int x = Shape.times(text);
        if (x < 0) {
            return Outcome.refused("'" + text + "' does not say how many bars", "write it as 10x110g");
        }
        if (text.substring(x + 1).isBlank()) {
            return Outcome.refused("'" + text + "' does not say what a bar weighs", "write it as 10x110g");
        }
        return Shape.count(text.substring(0, x))
                .then(count -> WrittenMass.parse(text.substring(x + 1))
                        .then(mass -> mass.grams() > 0
                                ? Outcome.ok(new Bars(count, mass.grams(), cured))
                                : Outcome.refused("a bar of " + mass + " weighs nothing", "write it as 10x110g")));
    }
}
