package lyewright.formula;

import java.util.List;
import java.util.Optional;
import lyewright.measure.Share;

/**
 * A formula as written: names and figures as typed, nothing looked up. Immutable. {@link FormulaRules} says what is wrong
 * with one, {@link ResolvedFormula} looks its names up.
 *
 * @param recipe the recipe's name, any script
 * @param version its version, from 1
 * @param use own use or for sale
 * @param notes free text, perhaps empty
 * @param oils the oil phase in order, all percent or all masses
 * @param alkali which alkali, or how much
 * @param superfat percent of the oil phase's equivalents left without alkali; empty when the alkali is given instead
 * @param water how the water is said
 * @param acids what is done about additions that take alkali, if written
 * @param curedWater water of the cured bar, if written
 * @param process temperatures, oven and pour
 * @param additions everything else, in the order of making
 * @param portions how the base batter is shared, none for a single batter
 * @param materials what the tables lack, or what a certificate says otherwise
 * @param comments remarks of the file it was read from
 */
public record Formula(
        String recipe,
        int version,
        Use use,
        String notes,
        List<OilLine> oils,
        AlkaliChoice alkali,
        Optional<Share> superfat,
        WaterRule water,
        Optional<AcidRule> acids,
        Optional<Share> curedWater,
        Process process,
        List<Addition> additions,
        List<PortionLine> portions,
        List<OwnMaterial> materials,
        Comments comments) {

    /** Water of the cured bar where none is written, percent; common practice. */
    public static final Share USUAL_CURED_WATER = Share.ofPercent("10");

    /** Copies its lists. */
    public Formula {
        oils = List.copyOf(oils);
        additions = List.copyOf(additions);
        portions = List.copyOf(portions);
        materials = List.copyOf(materials);
    }

    /**
     * The same formula under another name and number.
     *
     * @param name the recipe's name
     * @param number the version, from 1
     * @return the formula, all else as it is
     */
    public Formula as(String name, int number) {
        return with(name, number, oils, additions, materials, comments);
    }

    /**
     * The same formula with other oils.
     *
     * @param others the oil phase in order
     * @return the formula, all else as it is
     */
    public Formula withOils(List<OilLine> others) {
        return with(recipe, version, others, additions, materials, comments);
    }

    /**
     * The same formula with other additions.
     *
     * @param others everything else, in the order of making
     * @return the formula, all else as it is
     */
    public Formula withAdditions(List<Addition> others) {
        return with(recipe, version, oils, others, materials, comments);
    }

    /**
     * The same formula with other materials.
     *
     * @param others what the tables lack, or what a certificate says otherwise
     * @return the formula, all else as it is
     */
    public Formula withMaterials(List<OwnMaterial> others) {
        return with(recipe, version, oils, additions, others, comments);
    }

    /**
     * The same formula with other remarks, each where it is said to stand; {@link FormulaFile#withComments} moves them to where
     * writing puts them.
     *
     * @param others remarks
     * @return the formula, all else as it is
     */
    public Formula withComments(Comments others) {
        return with(recipe, version, oils, additions, materials, others);
    }

    private Formula with(
            String name,
            int number,
            List<OilLine> otherOils,
            List<Addition> otherAdditions,
            List<OwnMaterial> otherMaterials,
            Comments otherComments) {
        return new Formula(
                name,
                number,
                use,
                notes,
                otherOils,
                alkali,
                superfat,
                water,
                acids,
                curedWater,
                process,
                otherAdditions,
                portions,
                otherMaterials,
                otherComments);
    }

    /**
     * Whether the oils are masses, so that every mass of the formula belongs to that mass of oils.
     *
     * @return true if the first oil is a mass
     */
    public boolean inMasses() {
        return !oils.isEmpty() && oils.get(0).amount() instanceof OilLine.Weight;
    }

    /**
     * What is done about additions that take alkali: as written, else by the use.
     *
     * @return own use compensates, for sale stays as written
     */
    public AcidRule acidRule() {
        return acids.orElse(use == Use.OWN ? AcidRule.COMPENSATE : AcidRule.AS_WRITTEN);
    }
}
