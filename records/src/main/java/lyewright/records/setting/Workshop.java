package lyewright.records.setting;

import java.math.BigDecimal;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.measure.Share;

/**
 * What a workshop is set to.
 *
 * @param name what it is called
 * @param units the units that masses are shown in first
 * @param degrees the degrees that temperatures are shown in
 * @param currency the currency's code of ISO 4217, such as {@code GBP}
 * @param market where bars are sold
 * @param paper the paper in the printer
 * @param sodiumPurity what the tub of sodium hydroxide says, percent as typed; empty where it is assumed
 * @param potassiumPurity what the tub of potassium hydroxide says, percent as typed; empty where it is assumed
 * @param holdBack the share of a batch that usually stays in jugs, as typed, such as {@code 1 %}
 */
public record Workshop(
        String name,
        Units units,
        Degrees degrees,
        String currency,
        Market market,
        Paper paper,
        Optional<String> sodiumPurity,
        Optional<String> potassiumPurity,
        String holdBack) {

    /** The share that stays in jugs where nothing is set; common practice. */
    public static final String USUAL_HOLD_BACK =
            new Share(BigDecimal.valueOf(Fill.USUAL_HOLD_BACK).movePointRight(2)).toString();
}
