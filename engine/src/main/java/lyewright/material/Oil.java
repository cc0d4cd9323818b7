package lyewright.material;

import java.util.Optional;

/**
 * A member of the oil phase with its figures: an oil, a fat, a wax or a fatty acid.
 *
 * @param key its key in formulas
 * @param name its common name
 * @param kind what it is, chemically
 * @param saponificationValue mg KOH/g, the range as published or certified; for a fatty acid its acid value
 * @param acidValue mg KOH/g, where known
 * @param iodineValue g iodine/100 g, where known
 * @param density when liquid
 * @param acids its fatty acids
 * @param unsaponifiableMax g/kg, most, where known
 * @param names what it is called on paper
 * @param reckoned the saponification value a sheet computes with
 * @param notes what else a maker should know
 */
public record Oil(
        String key,
        String name,
        OilKind kind,
        Figure saponificationValue,
        Optional<Figure> acidValue,
        Optional<Figure> iodineValue,
        LiquidDensity density,
        FattyAcidProfile acids,
        Optional<Figure> unsaponifiableMax,
        Names names,
        ReckonedValue reckoned,
        String notes) {

    /** Over this iodine value a fat is taken to be liquid at room temperature; common practice. */
    private static final double LIQUID_FROM_IODINE_VALUE = 70;

    /**
     * Whether it pours at room temperature, judged by its iodine value: common practice, no published limit.
     *
     * @return true from an iodine value of 70, glycerides only
     */
    public boolean pours() {
        return kind == OilKind.TRIGLYCERIDE
                && iodineValue
                        .filter(iv -> iv.middle() >= LIQUID_FROM_IODINE_VALUE)
                        .isPresent();
    }

    /**
     * Whether it makes lather in salt water: lauric and myristic acid together over half of its acids; common practice.
     *
     * @return true for coconut, palm kernel, babassu and their like
     */
    public boolean lathersInSalt() {
        return acids.lauricAndMyristic() > 50;
    }
}
