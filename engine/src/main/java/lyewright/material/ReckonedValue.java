package lyewright.material;

import java.util.Optional;

/**
 * The saponification value that a sheet computes with, and why that one: a certificate's; else the middle of the
 * published range; else, where the source is memory or the range is wide, the lower of that middle and the value
 * computed from the fatty acids, since too low a value leaves oil over and too high a one leaves alkali; for a wax only
 * what surely reacts.
 *
 * @param milligramsKohPerGram mg KOH/g that surely reacts
 * @param acidPart mg KOH/g of it that is free acid, which gives water and no glycerol
 * @param basis why this value
 * @param remembered whether the range behind it is memory
 * @param wide whether the range behind it is over a tenth of its middle
 */
public record ReckonedValue(
        double milligramsKohPerGram, double acidPart, Basis basis, boolean remembered, boolean wide) {

    /** Why a value was taken. */
    public enum Basis {
        /** The maker's own figure for this lot or material. */
        CERTIFICATE,
        /** The middle of the published range. */
        MIDDLE,
        /** The range is wide or remembered and its middle is the lower of the two. */
        LOWER_MIDDLE,
        /** The range is wide or remembered and the fatty acids give less. */
        FATTY_ACIDS,
        /** Only the wax's free acid, or nothing. */
        WAX_ACID
    }

    /**
     * Of a table's oil.
     *
     * @param kind what it is
     * @param saponificationValue the published range
     * @param acidValue acid value, if known
     * @param acids its fatty acids
     * @return the value to compute with
     */
    public static ReckonedValue ofTable(
            OilKind kind, Figure saponificationValue, Optional<Figure> acidValue, FattyAcidProfile acids) {
        boolean doubtful = saponificationValue.remembered() || saponificationValue.wide();
        double middle = saponificationValue.middle();
        if (kind == OilKind.WAX) {
            return wax(saponificationValue, acidValue);
        }
        if (!doubtful) {
            return of(kind, middle, acidValue, Basis.MIDDLE, saponificationValue);
        }
        double fromAcids =
                acids.known() && kind == OilKind.TRIGLYCERIDE ? acids.saponificationValue() : Double.POSITIVE_INFINITY;
        return fromAcids < middle
                ? of(kind, fromAcids, acidValue, Basis.FATTY_ACIDS, saponificationValue)
                : of(kind, middle, acidValue, Basis.LOWER_MIDDLE, saponificationValue);
    }

    /**
     * Of an oil whose value the maker gives.
     *
     * @param kind what it is
     * @param saponificationValue the maker's figure
     * @param acidValue acid value, if given
     * @return the value to compute with
     */
    public static ReckonedValue ofCertificate(OilKind kind, Figure saponificationValue, Optional<Figure> acidValue) {
        return kind == OilKind.WAX
                ? wax(saponificationValue, acidValue)
                : of(kind, saponificationValue.middle(), acidValue, Basis.CERTIFICATE, saponificationValue);
    }

    private static ReckonedValue wax(Figure saponificationValue, Optional<Figure> acidValue) {
        double sure = acidValue.map(Figure::middle).orElse(0.0);
        return new ReckonedValue(
                sure, sure, Basis.WAX_ACID, saponificationValue.remembered(), saponificationValue.wide());
    }

    private static ReckonedValue of(
            OilKind kind, double value, Optional<Figure> acidValue, Basis basis, Figure behind) {
        double acidPart = kind == OilKind.FATTY_ACID
                ? value
                : Math.min(value, acidValue.map(Figure::middle).orElse(0.0));
        return new ReckonedValue(value, acidPart, basis, behind.remembered(), behind.wide());
    }
}
