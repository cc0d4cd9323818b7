package lyewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.AFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Additive;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** The formula of every figure gives the figure again, from its inputs as they are written. A case is its seed. */
class EveryFigureRecomputesTest {

    /** Half a unit of the last digit shown, and what two ways of adding doubles may differ by. */
    private static final double LAST_DIGIT = 0.5e-6 + 1e-8;

    /** Shares of variance, percent: the engine takes slopes by differences, which lose digits where hardly anything reacts. */
    private static final double BY_DIFFERENCES = 1e-4;

    private static final int CASES = 300;

    private static final List<Purities> PURITIES = List.of(
            Purities.ASSUMED,
            Purities.parse("naoh=98.5,koh=90").orThrow(),
            Purities.parse("naoh=99 ± 0.5,koh=85 to 88.4").orThrow());

    private static final List<Equipment> REGISTERS = List.of(
            Equipment.USUAL,
            register("one:20kg:0.05oz"),
            register("counter:25lb:0.1oz,fine:1lb:0.005oz"),
            register("shop:30kg:5g,kitchen:5kg:1g,fine:200g:0.01g:II"),
            register("laboratory:50kg:0.01g")
                    .withVessels("lye jug:312.5g,oil pot:1480g,jug plain:205g,jug kelp:7.3oz")
                    .orThrow());

    private static final List<String> STAGES =
            List.of("trace", "portion kelp", "lye", "every portion", "oils", "top", "trace");

    private static Equipment register(String text) {
        return Equipment.parseBalances(text).orThrow();
    }

    @Test
    void for_random_formulas_in_every_fill_on_every_balance() {
        Random random = new Random(20261125);
        int sheets = 0;
        for (long seed = 0; seed < CASES; seed++) {
            Purities purities = PURITIES.get(random.nextInt(PURITIES.size()));
            Equipment equipment = REGISTERS.get(random.nextInt(REGISTERS.size()));
            Outcome<ResolvedFormula> formula = ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), purities);
            Fill fill = SomeFills.of(random);
            Outcome<MakingSheet> sheet = formula.then(f -> MakingSheet.of(f, fill, equipment));
            if (!(sheet instanceof Outcome.Ok)) {
                // this fill does not suit this formula
                sheet = formula.then(f -> MakingSheet.of(f, Fill.mouldMass(1500), equipment));
            }
            if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
                sheets++;
                recompute("case " + seed + " " + fill, ok.value());
            }
        }
        assertThat(sheets)
                .as("the others are refused, as too small, too dry or too fatty")
                .isGreaterThan(CASES * 2 / 5);
    }

    @Test
    void with_every_oil_of_the_tables() {
        List<Oil> oils = List.copyOf(Tables.bundled().oils());
        for (int i = 0; i < oils.size(); i += 5) {
            List<String> lines = new ArrayList<>(List.of("olive-virgin", "200 g"));
            for (Oil oil : oils.subList(i, Math.min(oils.size(), i + 5))) {
                if (!oil.key().equals("olive-virgin")) {
                    lines.addAll(List.of(oil.key(), 90 + i + " g"));
                }
            }
            AFormula formula = AFormula.ofOils(lines.toArray(String[]::new))
                    .mixed("70 %", "30 %", AlkaliChoice.Basis.AS_WEIGHED)
                    .superfat("7 %")
                    .puritiesAssumed();
            recompute("oils from " + i, formula.sheet(Fill.mouldMass(2000), REGISTERS.get(4)));
        }
    }

    @Test
    void with_every_addition_of_the_tables() {
        List<Additive> additions = List.copyOf(Tables.bundled().additives());
        int sheets = 0;
        for (int i = 0; i < additions.size(); i += 6) {
            AFormula formula = AFormula.ofOils("coconut", "30 %", "stearic-acid-50", "5 %", "olive-virgin", "rest")
                    .superfat("8 %")
                    .portions("plain", "55 %", "kelp", "rest")
                    .forSale();
            for (Additive additive : additions.subList(i, Math.min(additions.size(), i + 6))) {
                formula.add(additive.key(), "2.5 % of oils", STAGES.get(sheets++ % STAGES.size()));
            }
            recompute("additions from " + i, formula.sheet(Fill.oilMass(3000)));
        }
        assertThat(sheets).isEqualTo(additions.size());
    }

    static void recompute(String as, MakingSheet sheet) {
        for (Reason reason : Why.of(sheet).all()) {
            if (reason.value().isPresent()) {
                recompute(as + " " + reason.path(), reason);
            }
        }
    }

    private static void recompute(String as, Reason reason) {
        Map<String, Double> names = new HashMap<>();
        reason.inputs().forEach(input -> names.put(input.name(), Double.parseDouble(input.text())));
        List<Reason.Step> steps = reason.steps();
        for (int i = steps.size() - 1; i > 0; i--) {
            compute(as, steps.get(i), names);
        }
        for (Reason.Check check : reason.checks()) {
            double left = Calculator.value(check.left().formula(), names);
            double right = Calculator.value(check.right().formula(), names);
            assertThat(left).as("%s: %s", as, check).isCloseTo(right, within(1e-8 * right));
        }
        if (isDrawn(steps.get(0))) {
            return;
        }
        double value = Calculator.value(steps.get(0).formula(), names);
        assertThat(value)
                .as("%s: %s", as, reason)
                .isCloseTo(
                        reason.value().get(),
                        within(reason.path().endsWith("percentOfVariance") ? BY_DIFFERENCES : LAST_DIGIT));
    }

    /** What is drawn has no formula that gives it; the command line's {@code WhyDrawnTest} draws it again. */
    private static boolean isDrawn(Reason.Step step) {
        return step.formula().startsWith("below(") || step.formula().startsWith("chance(");
    }

    private static void compute(String as, Reason.Step step, Map<String, Double> names) {
        double value = Calculator.value(step.formula(), names);
        assertThat(value).as("%s: %s", as, step).isCloseTo(step.value(), within(1e-9 * Math.max(1, Math.abs(value))));
        assertThat(names.put(step.name(), value)).as("%s: %s", as, step).isNull();
    }
}
