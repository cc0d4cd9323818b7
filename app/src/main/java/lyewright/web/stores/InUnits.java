package lyewright.web.stores;

import lyewright.chemistry.BatterVolume;
import lyewright.measure.MassUnit;
import lyewright.measure.WrittenMass;
import lyewright.records.setting.Units;
import lyewright.words.Figures;

/** Masses and volumes in the workshop's units first. */
final class InUnits {

    private static final double POUND_FROM = 32;

    private InUnits() {}

    /** A mass as typed where that is in the workshop's units, else turned into them with what was typed in brackets. */
    static String mass(WrittenMass mass, Units units) {
        boolean typedInOunces = mass.unit() == MassUnit.OUNCE || mass.unit() == MassUnit.POUND;
        if (typedInOunces == (units == Units.OUNCES)) {
            return mass.toString();
        }
        return mass(mass.grams(), units) + " (" + mass + ")";
    }

    /** A mass that nobody typed. */
    static String mass(double grams, Units units) {
        if (units == Units.GRAMS) {
            return grams >= 10_000
                    ? Figures.upTo(grams / 1000, 2) + " kg"
                    : Figures.upTo(grams, grams < 100 ? 2 : 0) + " g";
        }
        double ounces = grams / MassUnit.OUNCE.grams().doubleValue();
        return ounces >= POUND_FROM * 10
                ? Figures.upTo(ounces / 16, 2) + " lb"
                : Figures.upTo(ounces, ounces < 10 ? 3 : 1) + " oz";
    }

    /** A volume; for whoever weighs in ounces, also the water that has it. */
    static String volume(double millilitres, Units units) {
        String said = Figures.upTo(millilitres, millilitres < 100 ? 1 : 0) + " ml";
        return units == Units.OUNCES
                ? said + " (" + mass(millilitres * BatterVolume.WATER_DENSITY, units) + " of water)"
                : said;
    }
}
