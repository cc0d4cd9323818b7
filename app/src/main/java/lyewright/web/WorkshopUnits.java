package lyewright.web;

import lyewright.measure.LengthUnit;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.words.UnitsShown;

/** A workshop's units as words and pictures ask for them. */
public final class WorkshopUnits {

    private WorkshopUnits() {}

    /** Of masses and temperatures. */
    public static UnitsShown of(Workshop workshop) {
        return new UnitsShown(workshop.units() == Units.OUNCES, workshop.degrees() == Degrees.FAHRENHEIT);
    }

    /** That lengths are drawn in: who weighs in ounces measures in inches. */
    public static LengthUnit lengths(Units units) {
        return units == Units.OUNCES ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    }
}
