package lyewright.formula;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import lyewright.material.NearestKey;
import lyewright.measure.Share;

/** What must hold of the making: the fading pour, the additions, what they are wetted out in. */
final class MakingRules {

    private static final BigDecimal HUNDRED = Share.WHOLE.percent();
    private static final BigDecimal FEWEST_LAYERS = BigDecimal.valueOf(2);
    private static final BigDecimal MOST_LAYERS = HUNDRED;

    private final Formula formula;
    private final Report report;

    MakingRules(Formula formula, Report report) {
        this.formula = formula;
        this.report = report;
    }

    void check() {
        process();
        additions();
    }

    private void process() {
        if (formula.process().pour().isEmpty()) {
            return;
        }
        Process.Pour pour = formula.process().pour().get();
        poured(pour.plain());
        poured(pour.coloured());
        if (pour.plain().equals(pour.coloured())) {
            report.add("process.pour", Wording.quote(pour.plain()) + " is poured into itself", "name two portions");
        }
        if (pour.layers().scale() > 0
                || pour.layers().compareTo(FEWEST_LAYERS) < 0
                || pour.layers().compareTo(MOST_LAYERS) > 0) {
            report.add(
                    "process.pour",
                    "a pour in " + pour.layers().toPlainString() + " layers is not possible",
                    "write a whole number from 2 to 100");
        }
    }

    private void poured(String name) {
        if (!isPortion(name)) {
            report.add("process.pour", "there is no portion " + Wording.quote(name), knownPortions(name));
        } else if (name.contains("into") && (" " + name + " ").contains(" into ")) {
            report.add(
                    "process.pour",
                    "the name " + Wording.quote(name) + " has the word into in it, which a fade needs for itself",
                    "call the portion something else");
        }
    }

    private boolean isPortion(String name) {
        List<PortionLine> portions = formula.portions();
        for (int i = 0; i < portions.size(); i++) {
            if (portions.get(i).name().equals(name)) {
                return true;
            }
        }
        return false;
    }

    private String knownPortions(String name) {
        List<String> names = formula.portions().stream()
                .map(PortionLine::name)
                .limit(FormulaRules.MOST_LINES)
                .toList();
        return names.isEmpty() ? "list it under portions with its share" : Wording.offer(name, names);
    }

    private void additions() {
        List<Addition> additions = formula.additions();
        if (additions.size() > FormulaRules.MOST_LINES) {
            report.add(
                    "additions",
                    "there are " + additions.size() + " additions",
                    "write at most " + FormulaRules.MOST_LINES);
            return;
        }
        for (int i = 0; i < additions.size(); i++) {
            addition(additions.get(i), i);
        }
    }

    private void addition(Addition addition, int i) {
        String trouble = Characters.troubleWithName(addition.of());
        if (trouble != null) {
            report.add("additions." + i + ".of", "the name of an addition " + trouble, "write a material's name");
        }
        amount(addition, i);
        Stage stage = addition.stage();
        if (stage.kind() == Stage.Kind.PORTION && !isPortion(stage.portion())) {
            report.add(
                    "additions." + i + ".stage",
                    "there is no portion " + Wording.quote(stage.portion()),
                    knownPortions(stage.portion()));
        }
        replaces(addition, "additions." + i);
        if (addition.disperse().isPresent()) {
            disperse(addition, addition.disperse().get(), "additions." + i + ".disperse");
        }
    }

    private void amount(Addition addition, int i) {
        Amount amount = addition.amount();
        Amount.Base base = null;
        boolean nothing;
        if (amount instanceof Amount.Percent percent) {
            base = percent.base();
            nothing = percent.share().percent().signum() == 0;
            if (base == Amount.Base.BATCH && percent.share().percent().compareTo(HUNDRED) >= 0) {
                report.add(
                        "additions." + i + ".amount",
                        "'" + percent + "' leaves nothing for the soap",
                        "write less than 100 %");
            }
        } else if (amount instanceof Amount.Per per) {
            base = per.base();
            nothing = per.mass().value().signum() == 0;
            if (base == Amount.Base.BATCH) {
                report.add(
                        "additions." + i + ".amount",
                        "'" + per + "' is not a rate used here",
                        "write it in % of batch");
            }
        } else if (amount instanceof Amount.Weight weight) {
            nothing = weight.mass().value().signum() == 0;
        } else {
            nothing = ((Amount.Bulk) amount).volume().value().signum() == 0;
        }
        if (nothing) {
            report.add(
                    "additions." + i + ".amount",
                    "'" + amount + "' is nothing",
                    "leave the addition out, or write more than 0");
        }
        Stage.Kind stage = addition.stage().kind();
        if (base == Amount.Base.PORTION_OILS && stage != Stage.Kind.PORTION && stage != Stage.Kind.EVERY_PORTION) {
            report.add(
                    "additions." + i + ".amount",
                    "'" + amount + "' needs a portion, but it goes in at stage "
                            + Wording.quote(addition.stage().toString()),
                    "write of oils, or name the portion as its stage");
        }
    }

    /** What lies on top is not in the batter, so it cannot stand in for the batter's water. */
    private void replaces(Addition addition, String path) {
        if (addition.replacesWater() && addition.stage().kind() == Stage.Kind.TOP) {
            report.add(
                    path + ".replaces",
                    "a topping cannot replace water",
                    "leave replaces out, or choose another stage");
        }
    }

    private void disperse(Addition addition, Disperse disperse, String path) {
        if (disperse.liquid().signum() == 0 || disperse.toSolid().signum() == 0) {
            report.add(path + ".ratio", "'" + disperse.ratioText() + "' has a 0 in it", "write it as 3 to 1");
        }
        if (addition.replacesWater()) {
            report.add(path, "what replaces water is not dispersed as well", "leave disperse or replaces out");
        }
        if (addition.stage().kind() == Stage.Kind.TOP) {
            report.add(path, "a topping is not dispersed", "leave disperse out, or choose another stage");
        }
        String in = disperse.in();
        if (!in.equals(Disperse.WATER) && !in.equals(Disperse.OIL) && !in.equals(Disperse.GLYCERIN) && !isOil(in)) {
            report.add(
                    path + ".in",
                    Wording.quote(in) + " is neither water, oil, glycerin nor one of the formula's oils",
                    nearestLiquid(in));
        }
    }

    private boolean isOil(String key) {
        List<OilLine> oils = formula.oils();
        for (int i = 0; i < oils.size(); i++) {
            if (oils.get(i).key().equals(key)) {
                return true;
            }
        }
        return false;
    }

    private String nearestLiquid(String in) {
        List<String> liquids = new ArrayList<>(List.of(Disperse.WATER, Disperse.OIL, Disperse.GLYCERIN));
        formula.oils().stream().limit(FormulaRules.MOST_LINES).forEach(line -> liquids.add(line.key()));
        List<String> near = NearestKey.among(in, liquids);
        return near.isEmpty() ? "write water, oil, glycerin or an oil's key" : "did you mean " + near.get(0) + "?";
    }
}
