package lyewright.formula;

import java.math.BigDecimal;
import lyewright.measure.Decimal;
import lyewright.measure.Outcome;
import lyewright.measure.Share;

/** Reads and writes every way of saying water. */
final class WaterText {

    private static final String AS_WEIGHED = " as weighed";

    private WaterText() {}

    /** A ratio and what stands after it. */
    record Ratio(BigDecimal first, BigDecimal second, String rest) {}

    /** Reads {@code 34 % lye}, {@code 26 % of oils}, {@code 2 to 1}, {@code 265 g fixed}. */
    static Outcome<WaterRule> parse(String text) {
        return Decimal.leading(text).then(lead -> {
            if (lead.rest().startsWith("%")) {
                Share share = new Share(lead.value());
                return percent(share, lead.rest().substring(1).strip());
            }
            if (lead.rest().startsWith("to ") || lead.rest().startsWith(":")) {
                return ratio(text).then(WaterText::rule);
            }
            if (lead.rest().isEmpty()) {
                return Outcome.refused(
                        Wording.quote(text) + " does not say what it is of",
                        "write "
                                + Wording.clip(
                                        text + " % lye, " + text + " % of oils, " + text + " to 1 or " + text + " g"));
            }
            return AmountText.mass(text).then(read -> Outcome.ok(new WaterRule.Weight(read.mass(), read.fixed())));
        });
    }

    private static Outcome<WaterRule> percent(Share share, String of) {
        return switch (of) {
            case "lye" -> Outcome.ok(new WaterRule.LyeStrength(share, false));
            case "lye as weighed" -> Outcome.ok(new WaterRule.LyeStrength(share, true));
            case "of oils" -> Outcome.ok(new WaterRule.OfOils(share));
            default ->
                Outcome.refused(
                        of.isEmpty()
                                ? "'" + share + "' does not say of what"
                                : Wording.quote(share + " " + of) + " is not a way of saying water",
                        "write " + share + " lye for the lye's strength, or " + share + " of oils");
        };
    }

    private static Outcome<WaterRule> rule(Ratio ratio) {
        boolean asWeighed = ratio.rest().equals(AS_WEIGHED.strip());
        if (!asWeighed && !ratio.rest().isEmpty()) {
            return Outcome.refused(
                    Wording.quote(ratio.rest()) + " after a ratio is not understood",
                    "leave it out, or write as weighed");
        }
        return Outcome.ok(new WaterRule.Ratio(ratio.first(), ratio.second(), asWeighed));
    }

    /** Reads {@code 3 to 1}. */
    static Outcome<Ratio> ratio(String text) {
        return Decimal.leading(text).then(first -> {
            if (!first.rest().startsWith("to ")) {
                return Outcome.refused(Wording.quote(text) + " is not a ratio", "write it as 2 to 1");
            }
            return Decimal.leading(first.rest().substring(3))
                    .then(second -> Outcome.ok(new Ratio(first.value(), second.value(), second.rest())));
        });
    }

    static String print(WaterRule rule) {
        if (rule instanceof WaterRule.LyeStrength lye) {
            return lye.strength() + " lye" + (lye.asWeighed() ? AS_WEIGHED : "");
        }
        if (rule instanceof WaterRule.OfOils ofOils) {
            return ofOils.share() + " of oils";
        }
        if (rule instanceof WaterRule.Ratio ratio) {
            return ratio.parts().toPlainString() + " to " + ratio.toAlkali().toPlainString()
                    + (ratio.asWeighed() ? AS_WEIGHED : "");
        }
        WaterRule.Weight weight = (WaterRule.Weight) rule;
        return weight.mass() + (weight.fixed() ? " fixed" : "");
    }
}
