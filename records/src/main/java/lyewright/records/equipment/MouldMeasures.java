package lyewright.records.equipment;

import java.util.Optional;
import lyewright.measure.Length;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;

/**
 * What is known of a mould, in the units it was typed in: its inside, what water it takes, what it usually takes; at least one of them.
 *
 * @param inside its shape, if measured
 * @param waterFill the water that fills it, if weighed
 * @param usual what it usually takes, if known
 * @param cut how what comes out is cut, if it is
 */
public record MouldMeasures(
        Optional<Inside> inside, Optional<WrittenMass> waterFill, Optional<UsualMass> usual, Optional<Cut> cut) {

    /** The inside of a mould. */
    public sealed interface Inside {}

    /** A loaf, cut across its length. */
    public record Loaf(Length length, Length width, Length height) implements Inside {}

    /** A slab, cut in a grid. */
    public record Slab(Length length, Length width, Length height) implements Inside {}

    /** A tube, cut across its length. */
    public record Tube(Length length, Length diameter) implements Inside {}

    /** Cavities that are bars already. */
    public record Cavities(int count, Volume each) implements Inside {}

    /**
     * What it usually takes.
     *
     * @param mass in the mould
     * @param recipeId the recipe that was in it
     * @param version that recipe's version
     */
    public record UsualMass(WrittenMass mass, String recipeId, int version) {}

    /**
     * How a loaf, slab or tube is cut.
     *
     * @param thickness of a bar along the mould's length
     * @param across of a bar along a slab's width; empty where bars are as wide as the mould
     * @param blade what a cut takes away, if anything
     * @param ends what is cut off each end, if anything
     * @param trim what is planed off the top, if anything
     */
    public record Cut(
            Length thickness,
            Optional<Length> across,
            Optional<Length> blade,
            Optional<Length> ends,
            Optional<Length> trim) {}
}
