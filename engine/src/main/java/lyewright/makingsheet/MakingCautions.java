package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.fill.Fill;
import lyewright.fill.Filled.MouldSays;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.AdditiveKind;
import lyewright.material.Names;
import lyewright.measure.Outcome;

/** What to beware of about balances, mould and pour. */
final class MakingCautions {

    /** Figures of one mould may lie this far apart before it is said. */
    private static final double APART = 0.03;

    private MakingCautions() {}

    static void balances(SheetFacts facts, List<Caution> found) {
        List<String> coarse = null;
        boolean grave = false;
        for (int i = 0; i < facts.exact.length; i++) {
            BatchLine line = facts.batch.lines().get(i);
            Balance balance = facts.plan.balance(i);
            if (WeighingPlan.coarse(facts.exact[i], balance, facts.plan.stepsNeeded(line))) {
                coarse = coarse == null ? new ArrayList<>(2) : coarse;
                coarse.add(called(facts, line));
                grave |= line.kind() == Kind.ALKALI || facts.weighed[i] == 0 || fragrance(facts, line);
            }
        }
        if (coarse != null) {
            found.add(new Caution(
                    "balance-coarse",
                    grave ? Level.CARE : Level.NOTE,
                    "The balance is coarse for {}: under {} steps for alkali, {} for fragrance or {} for the rest.",
                    "Use a finer balance for these, or make a larger batch.",
                    "this project's own rule",
                    List.of(
                            String.join(", ", coarse),
                            WeighingPlan.STEPS_FOR_ALKALI,
                            WeighingPlan.STEPS_FOR_FRAGRANCE,
                            WeighingPlan.STEPS_FOR_OTHERS)));
        }
        overload(facts, found);
    }

    private static String called(SheetFacts facts, BatchLine line) {
        return switch (line.kind()) {
            case OIL -> Names.inSentence(facts.formula.oils().get(line.place()).name());
            case WATER -> "water";
            case ALKALI -> alkali(line.key());
            case ADDITION -> facts.formula.additions().get(line.place()).nameInSentence();
            case DISPERSING_LIQUID ->
                facts.formula.oils().stream()
                        .filter(oil -> oil.key().equals(line.key()))
                        .map(oil -> Names.inSentence(oil.name()))
                        .findFirst()
                        .orElse(line.key());
        };
    }

    private static String alkali(String key) {
        return switch (key) {
            case "naoh" -> "sodium hydroxide";
            case "koh" -> "potassium hydroxide";
            default -> key;
        };
    }

    private static boolean fragrance(SheetFacts facts, BatchLine line) {
        return line.kind() == Kind.ADDITION
                && facts.formula.additions().get(line.place()).material().kind() == AdditiveKind.FRAGRANCE;
    }

    private static void overload(SheetFacts facts, List<Caution> found) {
        for (Vessel vessel : facts.plan.vessels()) {
            Weighing last = vessel.weighings().get(vessel.weighings().size() - 1);
            if (last.reading().grams() > last.balance().capacityGrams()) {
                found.add(new Caution(
                        "balance-overload",
                        Level.CARE,
                        "The {} comes to {}, more than the {} balance carries.",
                        "Weigh it in parts, or use a stronger balance.",
                        "this project's own rule",
                        List.of(
                                vessel.words(),
                                Caution.mass(last.reading().grams()),
                                last.balance().name())));
            }
        }
    }

    static void mouldDisagrees(SheetFacts facts, List<Caution> found) {
        List<MouldSays> says = facts.filled.mouldSays();
        if (says.isEmpty()) {
            return;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        List<Object> figures = new ArrayList<>();
        for (MouldSays one : says) {
            least = Math.min(least, one.grams());
            most = Math.max(most, one.grams());
            figures.add(one.figure());
            figures.add(Caution.gram(one.grams()));
        }
        if (most > least * (1 + APART)) {
            found.add(new Caution(
                    "mould-data-disagree",
                    Level.CARE,
                    "What is known of the mould disagrees by more than 3 %: "
                            + String.join(", ", Collections.nCopies(says.size(), "{} {}")) + ".",
                    "Measure it again; a full mould of water on the balance is the surest.",
                    "this project's own rule",
                    figures));
        }
    }

    /** Nothing to say where the mould itself was asked to be full. */
    static void mouldFits(SheetFacts facts, List<Caution> found) {
        Optional<Double> known = facts.filled.mouldHoldsGrams();
        if (known.isEmpty() || facts.fill.target() instanceof Fill.FullMould) {
            return;
        }
        double holds = known.get();
        double poured = facts.totals.mould();
        if (!facts.filled.takes(poured)) {
            found.add(new Caution(
                    "mould-overfull",
                    Level.CARE,
                    "This is {} more than this mould holds: it holds {}, and {} would go in.",
                    "Make less, or have a second mould ready.",
                    "this project's own rule",
                    List.of(Caution.mass(poured - holds), Caution.mass(holds), Caution.mass(poured))));
        } else if (poured * (1 + APART) < holds) {
            found.add(new Caution(
                    "mould-not-full",
                    Level.NOTE,
                    "This fills the mould to {} %: it holds {}, and {} go in.",
                    "Make the mould full, or expect lower bars.",
                    "this project's own rule",
                    List.of(Caution.whole(100 * poured / holds), Caution.mass(holds), Caution.mass(poured))));
        }
    }

    static void fade(SheetFacts facts, List<Caution> found) {
        if (facts.fade instanceof Outcome.Refused<List<FadingPour.Layer>> refused) {
            found.add(new Caution(
                    "fade-runs-dry",
                    Level.CARE,
                    "The fading pour is left out: {}.",
                    upperFirst(refused.problems().get(0).remedy()) + ".",
                    "arithmetic of the pour",
                    List.of(refused.problems().get(0).what())));
        }
    }

    private static String upperFirst(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
