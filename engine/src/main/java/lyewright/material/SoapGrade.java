package lyewright.material;

/**
 * A limit that a published soap standard sets, to be shown as a fact beside a computed figure, never to pass or fail a bar by.
 *
 * @param standard which standard
 * @param product the product or grade it is for
 * @param parameter what is limited, such as {@code total fatty matter min}
 * @param limit the limit as printed: a number, a range or several
 * @param unit its unit
 * @param status how the figure was read: opened, or memory
 * @param confidence high, medium or low
 */
public record SoapGrade(
        String standard,
        String product,
        String parameter,
        String limit,
        String unit,
        String status,
        String confidence) {

    /** Parameter of the least total fatty matter. */
    public static final String LEAST_FATTY_MATTER = "total fatty matter min";

    /** Parameter of the most chloride, as sodium chloride. */
    public static final String MOST_CHLORIDE = "chlorides as NaCl max";
}
