package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.makingsheet.LyeSheet;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Tables.SaltInLyePoint;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** Lye and salt: strengths, water to spare, and what salt dissolves. */
final class Lye {

    private final Ledger ledger;
    private final LyeSheet lye;

    private Lye(Ledger ledger) {
        this.ledger = ledger;
        this.lye = ledger.sheet().lye();
    }

    static void addTo(Figures figures, Ledger ledger) {
        new Lye(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        figures.add("lye.waterLeftGrams", "Water to spare in the lye jug", "g", lye.waterLeftGrams(), this::waterLeft);
        figures.add(
                "lye.pureStrengthPercent",
                "Lye concentration of the pure alkali",
                "%",
                lye.pureStrengthPercent(),
                this::pureStrength);
        figures.add(
                "lye.weighedStrengthPercent",
                "Lye concentration of the alkali as weighed",
                "%",
                lye.weighedStrengthPercent(),
                this::weighedStrength);
        figures.add(
                "lye.saltPerWaterPercent",
                "Common salt for each 100 g of water",
                "g",
                lye.saltPerWaterPercent(),
                this::saltPerWater);
        figures.add(
                "lye.saltHeldPercent",
                "Salt that 100 g of that water hold",
                "g",
                lye.saltHeldPercent(),
                this::saltHeld);
        figures.add(
                "lye.saltUndissolvedPercent",
                "Salt that stays solid",
                "%",
                lye.saltUndissolvedPercent(),
                this::saltUndissolved);
    }

    private Account waterLeft() {
        Term left = AlkaliFigures.waterInJug(lye);
        for (Alkali alkali : Alkali.values()) {
            if ((alkali == Alkali.SODIUM ? lye.naohPureGrams() : lye.kohPureGrams()) > 0) {
                left = left.minus(holding(alkali));
            }
        }
        return new Account("Water in the jug beyond what would just hold the alkali dissolved at 20 °C.", left)
                .note("Under 0 the jug cannot dissolve it all once it has cooled.");
    }

    private Term holding(Alkali alkali) {
        String solute = Alkalis.formula(alkali);
        Given saturated = ledger.tables().solubilities().stream()
                .filter(p -> p.solute().equals(solute) && p.celsius() == 20)
                .map(p -> new Given(
                        "saturated " + solute,
                        p.massPercent(),
                        "%",
                        solute + " in its saturated solution at 20 °C",
                        p.source()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no solubility of " + solute + " at 20 °C"));
        return AlkaliFigures.pure(lye, alkali)
                .times(Term.number(100).minus(saturated))
                .over(saturated)
                .as("to hold " + solute, "g", "water that just holds it");
    }

    private Given waterByRule() {
        return Ledger.figure(
                "water", "totals.waterGrams", ledger.sheet().totals().water(), "g", "water by the formula's rule");
    }

    private Account pureStrength() {
        Term pure = AlkaliFigures.pure(lye);
        return new Account(
                "Pure alkali in pure alkali and all water that the rule counts.",
                Term.percent(pure, pure.plus(waterByRule())));
    }

    private Account weighedStrength() {
        boolean stock = ledger.formula().alkali().stock().isPresent();
        Term alkali = stock ? AlkaliFigures.pure(lye) : AlkaliFigures.weighed(lye);
        return new Account(
                        "Alkali as it comes in that and all water that the rule counts.",
                        Term.percent(alkali, alkali.plus(waterByRule())))
                .note(stock ? "A stock lye is no product beside its water, so its pure alkali counts here too." : "");
    }

    private Stage allWater() {
        List<Line> wet = ledger.where(line -> line.line().water() > 0);
        return Ledger.sum(
                        wet,
                        line -> line.line().water() == 1
                                ? ledger.weighed(line)
                                : ledger.weighed(line).times(Contents.water(ledger, line)))
                .as("all water", "g", "all water, wherever it is");
    }

    private boolean salty(Line line) {
        return line.is(Kind.ADDITION)
                && !line.line().onTop()
                && material(line).makeup().salt() > 0;
    }

    private Additive material(Line line) {
        return ledger.formula().additions().get(line.line().place()).material();
    }

    private Account saltPerWater() {
        List<Line> salts = ledger.where(this::salty);
        if (salts.isEmpty()) {
            return new Account("No salt goes into the batter.", Term.number(0));
        }
        Term salt = Ledger.sum(salts, line -> ledger.weighed(line).times(Contents.salt(ledger, line)))
                .as("salt", "g", "common salt in everything but toppings");
        return new Account("All common salt of the batter against all its water.", Term.percent(salt, allWater()));
    }

    private Account saltHeld() {
        List<double[]> points = new ArrayList<>();
        List<SaltInLyePoint> rows = ledger.tables().saltInLye().stream()
                .filter(p -> !p.outlier())
                .sorted(java.util.Comparator.comparingDouble(p -> p.naohPercent() / p.waterPercent()))
                .toList();
        rows.forEach(p -> points.add(new double[] {100 * p.naohPercent() / p.waterPercent()}));
        double last = points.get(points.size() - 1)[0];
        Term perWater = Term.call(
                Function.MIN, Term.percent(AlkaliFigures.pure(lye), allWater()), strength(rows.get(rows.size() - 1)));
        Stage alkali = perWater.as("alkali", "g", "pure alkali for each 100 g of water, no more than was measured");
        int i = Points.above(
                points.stream().map(p -> p[0]).toList(), Math.min(last, alkali.value(new Reckoning(Reckoning.ALL))));
        return new Account(
                        "What salt 100 g of water hold with this much alkali in them, between the two measured points around.",
                        Term.call(
                                Function.BETWEEN,
                                alkali,
                                strength(rows.get(i - 1)),
                                held(rows.get(i - 1)),
                                strength(rows.get(i)),
                                held(rows.get(i))))
                .note("Measured at 90 °C in sodium hydroxide; potash is taken gram for gram.");
    }

    private static Term strength(SaltInLyePoint p) {
        return Term.percent(part(p, "NaOH", p.naohPercent()), part(p, "water", p.waterPercent()));
    }

    private static Term held(SaltInLyePoint p) {
        return Term.percent(part(p, "salt", p.naclPercent()), part(p, "water", p.waterPercent()));
    }

    private static Given part(SaltInLyePoint p, String what, double percent) {
        String at = Digits.figure(p.naohPercent());
        return new Given(
                what + " at " + at, percent, "%", what + " in the saturated lye of " + at + " % NaOH", p.source());
    }

    private Account saltUndissolved() {
        if (lye.saltPerWaterPercent() <= lye.saltHeldPercent()) {
            return new Account("There is no more salt than the water holds.", Term.number(0));
        }
        Term held = Ledger.figure(
                "held", "lye.saltHeldPercent", lye.saltHeldPercent(), "g", "salt that 100 g of water hold");
        Term there = Ledger.figure(
                "there", "lye.saltPerWaterPercent", lye.saltPerWaterPercent(), "g", "salt for each 100 g of water");
        return new Account(
                "The part of the salt that finds no room in the water.",
                Term.number(100).times(Term.number(1).minus(held.over(there))));
    }
}
