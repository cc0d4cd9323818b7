package lyewright.formula;

import java.math.BigDecimal;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;

/** How the water is said. What it gives is the water the formula adds; what potash or vinegar bring is beside it. */
public sealed interface WaterRule {

    /**
     * By the strength of the lye: alkali ÷ (alkali + water).
     *
     * @param strength percent alkali, above 0 and under 100
     * @param asWeighed of the product as it comes; else of the pure alkali
     */
    record LyeStrength(Share strength, boolean asWeighed) implements WaterRule {}

    /**
     * By the oils.
     *
     * @param share percent of the oils' mass
     */
    record OfOils(Share share) implements WaterRule {}

    /**
     * By the alkali: so many parts of water to one.
     *
     * @param parts parts of water
     * @param toAlkali parts of alkali
     * @param asWeighed of the product as it comes; else of the pure alkali
     */
    record Ratio(BigDecimal parts, BigDecimal toAlkali, boolean asWeighed) implements WaterRule {}

    /**
     * A mass.
     *
     * @param mass as typed
     * @param fixed whether it stays when a formula in masses is scaled
     */
    record Weight(WrittenMass mass, boolean fixed) implements WaterRule {}
}
