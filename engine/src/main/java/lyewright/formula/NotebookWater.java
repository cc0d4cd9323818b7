package lyewright.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import org.jspecify.annotations.Nullable;

/**
 * The water of a notebook. It is one line; what was steeped in water, such as tea, may be another, and the two are one water. A
 * liquid that goes into the lye as water takes the place of so much water where that is a rule; where it is a mass it comes
 * beside it, as a notebook has it; where none is said, it is all the water there is. A mass of water beside a weighed stock
 * lye is what is poured from the jug: the lye brings its own.
 */
final class NotebookWater {

    /** Stands in where the water is missing or cannot be read; the trouble is noted then. */
    static final WaterRule SOME = new WaterRule.Weight(new WrittenMass(BigDecimal.ONE, MassUnit.GRAM), false);

    private static final String NUMBER = "([0-9]*\\.?[0-9]+)";
    private static final String TO = "\\s*(?::|/|to)\\s*";
    private static final String ALKALI = "(?:lye|soda|alkali|naoh|koh|caustic soda)";

    private static final Pattern WATER_TO_ALKALI = Pattern.compile(
            "water(?:" + TO + ALKALI + ")?[\\s:=]*(?:ratio\\s*)?" + NUMBER + TO + NUMBER + "(?:\\s*" + ALKALI + ")?",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern RATIO_FIRST = Pattern.compile(
            NUMBER + TO + NUMBER + "\\s+water(?:" + TO + ALKALI + ")?(?:\\s+ratio)?", Pattern.CASE_INSENSITIVE);

    private static final Pattern ALKALI_TO_WATER = Pattern.compile(
            ALKALI + TO + "water[\\s:=]*(?:ratio\\s*)?" + NUMBER + TO + NUMBER, Pattern.CASE_INSENSITIVE);

    private final List<Integer> asWater = new ArrayList<>();
    private @Nullable WaterRule rule;
    private boolean steeped;

    /** A rule of water as a line of its own, such as {@code water 33 % lye}, {@code water 2:1}; empty where it is none. */
    static Optional<WaterRule> rule(String line) {
        String plain = NotebookUnits.withoutCommas(line);
        Optional<WaterRule> ratio = ratio(WATER_TO_ALKALI.matcher(plain), 1, 2)
                .or(() -> ratio(RATIO_FIRST.matcher(plain), 1, 2))
                .or(() -> ratio(ALKALI_TO_WATER.matcher(plain), 2, 1));
        int space = plain.indexOf(' ');
        if (ratio.isPresent() || space < 0 || !TradeWords.isWater(plain.substring(0, space))) {
            return ratio;
        }
        return WaterText.parse(plain.substring(space + 1)) instanceof Outcome.Ok<WaterRule> ok
                        && !(ok.value() instanceof WaterRule.Weight)
                ? Optional.of(ok.value())
                : Optional.empty();
    }

    private static Optional<WaterRule> ratio(Matcher line, int water, int alkali) {
        return line.matches()
                        && WaterText.parse(line.group(water) + " to " + line.group(alkali))
                                instanceof Outcome.Ok<WaterRule> ok
                ? Optional.of(ok.value())
                : Optional.empty();
    }

    boolean isSaid() {
        return rule != null || !asWater.isEmpty();
    }

    /** Whether another line may say more of it: one of the two was steeped. */
    boolean takesMore(boolean isSteeped) {
        return (steeped || isSteeped) && rule instanceof WaterRule.Weight;
    }

    void set(WaterRule said) {
        rule = said;
    }

    /** Water by mass; null where that cannot be read. */
    void add(@Nullable WrittenMass mass, boolean isSteeped) {
        steeped |= isSteeped;
        if (mass == null) {
            rule = rule == null ? SOME : rule;
        } else {
            rule = new WaterRule.Weight(rule instanceof WaterRule.Weight had ? sum(had.mass(), mass) : mass, false);
        }
    }

    private static WrittenMass sum(WrittenMass a, WrittenMass b) {
        return a.unit() == b.unit()
                ? new WrittenMass(a.value().add(b.value()), a.unit())
                : new WrittenMass(a.exactGrams().add(b.exactGrams()).stripTrailingZeros(), MassUnit.GRAM);
    }

    /** Notes that an addition goes into the lye as water. */
    void isTakenBy(int addition) {
        asWater.add(addition);
    }

    /**
     * The rule, those that replace water marked in the list.
     *
     * @param additions all of the recipe
     * @param gramsPerMillilitre density of an addition, for what was measured by volume
     */
    WaterRule settle(List<Addition> additions, ToDoubleFunction<Addition> gramsPerMillilitre) {
        boolean replaces = !(rule instanceof WaterRule.Weight);
        @Nullable WrittenMass all = null;
        for (int at : asWater) {
            Addition liquid = additions.get(at);
            if (replaces) {
                additions.set(at, new Addition(liquid.of(), liquid.amount(), liquid.stage(), liquid.disperse(), true));
            }
            @Nullable WrittenMass mass = mass(liquid, gramsPerMillilitre.applyAsDouble(liquid));
            if (mass != null) {
                all = all == null ? mass : sum(all, mass);
            }
        }
        if (rule != null) {
            return rule;
        }
        return all == null ? SOME : new WaterRule.Weight(all, false);
    }

    /**
     * The rule with what a weighed stock lye brings, where the water is a mass; any other rule counts it already.
     *
     * @param said the rule as the notebook says it
     * @param lyesOwn water in the lye, grams; rounded up, so that the jug is never short of what was typed
     */
    static WaterRule withLye(WaterRule said, BigDecimal lyesOwn) {
        return said instanceof WaterRule.Weight jug
                ? new WaterRule.Weight(
                        sum(jug.mass(), new WrittenMass(lyesOwn.setScale(2, RoundingMode.CEILING), MassUnit.GRAM)),
                        false)
                : said;
    }

    /** Rounded up, so that the water is never a hair less than what takes its place. */
    private static @Nullable WrittenMass mass(Addition liquid, double gramsPerMillilitre) {
        if (liquid.amount() instanceof Amount.Weight weight) {
            return weight.mass();
        }
        return liquid.amount() instanceof Amount.Bulk bulk
                ? new WrittenMass(
                        BigDecimal.valueOf(bulk.volume().millilitres() * gramsPerMillilitre)
                                .setScale(1, RoundingMode.CEILING),
                        MassUnit.GRAM)
                : null;
    }
}
