package lyewright.web;

import lyewright.records.setting.Units;

/**
 * Examples of what may be typed, in the units that a workshop is used to.
 *
 * @param ounces whether it weighs in ounces, and so measures in inches
 */
public record Hints(boolean ounces) {

    /** Of a workshop with these units. */
    public static Hints of(Units units) {
        return new Hints(units == Units.OUNCES);
    }

    private String say(String inGrams, String inOunces) {
        return ounces ? inOunces : inGrams;
    }

    /** A mould or an amount, where either may be typed. */
    public String moulds() {
        return say("300 x 80 x 65 mm, 12 x 95 ml, 1.2 l or 1500 g", "12 x 3 x 2 1/2 in, 12 x 95 ml, 1.2 l or 52 oz");
    }

    /** A mould's inside, of every kind. */
    public String inside() {
        return say(
                "300x80x65mm a box, 300x76mm a tube, 12x95ml cavities, or 1450g water, what fills it",
                "12 x 3 x 2 1/2 in a box, 12 x 3 in a tube, 12x95ml cavities, or 51 oz water, what fills it");
    }

    /** So much in the mould. */
    public String total() {
        return say("1500 g or 2 lb", "52 oz or 3 lb 4 oz");
    }

    /** So many bars. */
    public String bars() {
        return say("10 x 110 g", "10 x 4 oz");
    }

    /** How a mould is cut. */
    public String cut() {
        return say("25mm, or 60x80mm for a slab", "1 in, or 2 1/2 x 3 in for a slab");
    }

    /** What a cut takes away. */
    public String blade() {
        return say("1mm", "1/16 in");
    }

    /** What is cut off an end. */
    public String ends() {
        return say("5mm", "1/4 in");
    }

    /** What is planed off the top. */
    public String trim() {
        return say("3mm", "1/8 in");
    }

    /** So much of an oil. */
    public String oil() {
        return say("350 g", "12 oz");
    }

    /** A line of a notebook. */
    public String line() {
        return "coconut oil " + oil();
    }

    /** So much of an addition. */
    public String addition() {
        return say("2 % of oils, 12 g per kg oils, 20 g or 15 ml", "2 % of oils, 0.2 oz per lb oils, 0.7 oz or 15 ml");
    }

    /** Every way of saying the water. */
    public String water() {
        return "33 % lye, 26 % of oils, 2 to 1, " + say("265 g", "9 oz");
    }

    /** An alkali by its mass. */
    public String alkali() {
        return say("76 g", "2.7 oz") + " sodium as weighed";
    }
}
