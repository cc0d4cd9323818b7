package lyewright.chemistry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lyewright.formula.ResolvedFormula;
import lyewright.material.FattyAcid;
import lyewright.measure.Outcome;

/**
 * The fatty acids of a whole formula's oils, waxes and free acids, and what is computed from them. Premixes count with
 * their parts. The fat of milk and the acids of rosin do not, since the tables of additions give no acids: they are named.
 *
 * <p>The weights are the oils' masses, those whose acids are known taken as the whole. A gram of nearly any oil brings
 * nearly as much acid as a gram of the next (95 to 96 % where chains are C16 and C18, 94 of coconut, all of a free acid,
 * about half of a liquid wax), and what an oil has beside glycerides is known as a maximum at best; so masses are what a
 * maker can follow by hand, and no figure that nobody measured is in them.
 *
 * <p>A percentage is each oil's middles scaled to 100 and mixed; low and high are mixed as published, unscaled. Published
 * ranges are independent of one another, so their middles need not add up to 100 (babassu 107, flaxseed 114, avocado 95), and
 * a scaled middle may lie outside its own low and high: avocado's linoleic acid, 13 to 14, scales to 14.2.
 *
 * @param acids every acid that one of the oils lists, by carbons, then double bonds
 * @param unknown oils whose acids nobody here knows
 * @param addedFats fats and fatty acids that additions bring, of which alkali takes but whose acids nobody here knows; percent
 *     of the oils' mass, in which they are not
 * @param waxes waxes whose acids are known and counted, but which are neither triglycerides nor free acids, so that they
 *     are left out of the three values
 * @param saponificationValue mg KOH/g from the acids, exact stoichiometry: each triglyceride and free acid by its own
 *     number-average molar mass, mixed by mass; unsaponifiable matter not taken off; empty where there is none of either
 * @param saponificationValueCd3a94 the same by AOCS Cd 3a-94 (weight-average molar masses, formula from memory), which the
 *     method gives for triglycerides only; free acids are taken with the same average
 * @param iodineValue g iodine/100 g from the acids by AOCS Cd 1c-85, triglycerides and free acids each with their own
 *     coefficients, mixed by mass; empty where there is none of either
 */
public record OilPhaseAcids(
        List<Share> acids,
        List<Gap> unknown,
        List<Gap> addedFats,
        List<Gap> waxes,
        Optional<Double> saponificationValue,
        Optional<Double> saponificationValueCd3a94,
        Optional<Double> iodineValue) {

    /** Short chains first, then few double bonds first. */
    public static final Comparator<FattyAcid> BY_SIZE = Comparator.comparingInt(FattyAcid::carbons)
            .thenComparingInt(FattyAcid::doubleBonds)
            .thenComparing(FattyAcid::code);

    /** Copies its lists. */
    public OilPhaseAcids {
        acids = List.copyOf(acids);
        unknown = List.copyOf(unknown);
        addedFats = List.copyOf(addedFats);
        waxes = List.copyOf(waxes);
    }

    /** What a formula in percent is looked at with, where nobody says how much, grams of oils. */
    private static final double USUAL_OILS = 1000;

    /**
     * Adds a formula's oils up, with its additions as they are for the oils as written, else for a kilogram of oils.
     *
     * @param formula resolved
     * @return its acids; none where no oil's are known, and nothing of additions where they make no batch
     */
    public static OilPhaseAcids of(ResolvedFormula formula) {
        return BatchLines.of(formula) instanceof Outcome.Ok<BatchLines> batch
                ? of(batch.value(), formula.writtenOilsGrams().orElse(USUAL_OILS))
                : new OilPhaseMixer(formula).mix(List.of());
    }

    /**
     * The same for a batch of known size, which additions of a fixed mass ask for.
     *
     * @param batch its lines
     * @param oilsGrams grams of oils, over 0
     * @return its acids; none where no oil's are known
     */
    public static OilPhaseAcids of(BatchLines batch, double oilsGrams) {
        return new OilPhaseMixer(batch.formula()).mix(AddedFats.of(batch, oilsGrams));
    }

    /**
     * One fatty acid.
     *
     * @param acid which
     * @param lowPercent the published lows, mixed by the oils' masses, an oil that does not list it counting 0
     * @param percent of the known acids by mass; all of them add up to 100
     * @param highPercent the published highs, mixed likewise
     */
    public record Share(FattyAcid acid, double lowPercent, double percent, double highPercent) {}

    /**
     * An oil or a fat about which something is not known.
     *
     * @param name what it is called
     * @param percent of all oils by mass
     */
    public record Gap(String name, double percent) {}

    /**
     * Whether anything is known.
     *
     * @return true if there is at least one acid
     */
    public boolean known() {
        return !acids.isEmpty();
    }

    /**
     * How much of the oils is without data.
     *
     * @return percent of all oils by mass, 0 to 100
     */
    public double unknownPercent() {
        return unknown.stream().mapToDouble(Gap::percent).sum();
    }

    /**
     * One acid's share.
     *
     * @param code the acid's code, such as {@code C18:1}
     * @return percent of the known acids by mass, 0 if none of the oils lists it
     */
    public double percent(String code) {
        return acids.stream()
                .filter(share -> share.acid().code().equals(code))
                .mapToDouble(Share::percent)
                .sum();
    }
}
