package lyewright.why;

import java.util.List;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.DispersingLiquid.From;
import lyewright.formula.WaterRule;
import lyewright.why.Term.Given;

/** Plain water before rounding: what the rule asks for, less what is elsewhere already. */
final class ExactWater {

    private final Ledger ledger;
    private final ResolvedFormula formula;

    ExactWater(Ledger ledger) {
        this.ledger = ledger;
        this.formula = ledger.formula();
    }

    Account account() {
        Term plain = rule().as("rule", "g", "water that the formula's rule asks for");
        List<Line> elsewhere = ledger.where(this::elsewhere);
        for (Line line : elsewhere) {
            plain = plain.minus(line.exact());
        }
        if (formula.alkali().stock().isPresent()) {
            plain = plain.minus(stockWater());
        }
        return new Account(
                elsewhere.isEmpty() && formula.alkali().stock().isEmpty()
                        ? "What the formula's water rule asks for."
                        : "What the formula's water rule asks for, less what is in dispersions, liquids and lye already.",
                plain);
    }

    /** Water of dispersions, and liquids that replace water. */
    private boolean elsewhere(Line line) {
        if (line.is(Kind.DISPERSING_LIQUID)) {
            return ledger.batch().liquidFrom(line.line()) == From.WATER;
        }
        return line.is(Kind.ADDITION)
                && formula.additions().get(line.line().place()).written().replacesWater();
    }

    private Term stockWater() {
        return Ledger.sum(
                ledger.of(Kind.ALKALI),
                line -> line.exact().times(Term.number(1).minus(Alkalis.strength(ledger, line))));
    }

    private Term rule() {
        WaterRule rule = formula.formula().water();
        if (rule instanceof WaterRule.LyeStrength lye) {
            Given strength = Written.percent(
                    "lye strength", lye.strength().percent().doubleValue(), "alkali in alkali and water");
            return alkali(lye.asWeighed())
                    .times(Term.number(100).minus(strength))
                    .over(strength);
        }
        if (rule instanceof WaterRule.OfOils ofOils) {
            Given share = Written.percent("water", ofOils.share().percent().doubleValue(), "water against oils");
            return ledger.exactOils().times(share).over(Term.number(100));
        }
        if (rule instanceof WaterRule.Ratio ratio) {
            double parts = ratio.parts().doubleValue() / ratio.toAlkali().doubleValue();
            String typed =
                    ratio.parts().toPlainString() + " to " + ratio.toAlkali().toPlainString();
            return alkali(ratio.asWeighed())
                    .times(new Given("water to alkali", parts, "g/g", "as written: " + typed, Sources.FORMULA));
        }
        WaterRule.Weight weight = (WaterRule.Weight) rule;
        return ExactMass.scaled(
                ledger, Written.mass("written water", weight.mass(), "water as written"), weight.fixed());
    }

    /** Alkali that the rule is of: pure, or as it comes; a stock lye has no product beside its water. */
    private Term alkali(boolean asWeighed) {
        boolean product = asWeighed && formula.alkali().stock().isEmpty();
        return Ledger.sum(
                        ledger.of(Kind.ALKALI),
                        line -> product ? line.exact() : line.exact().times(Alkalis.strength(ledger, line)))
                .as("alkali", "g", product ? "alkali as it comes, before rounding" : "pure alkali, before rounding");
    }
}
