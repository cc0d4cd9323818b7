package lyewright.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.DispersingLiquid.From;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Comparison.Group;
import lyewright.makingsheet.Comparison.Row;

/**
 * The figures that two sheets are compared by and that no sheet shows alone: shares of the oils, masses for a kilogram of oils, before
 * anything is rounded.
 */
final class Compared {

    private static final String BEFORE = "compared.";
    private static final String CURED = "cured.";
    private static final double KILOGRAM = 1000;

    private final Ledger ledger;
    private final Reacting exact;
    private final AcidFigures acids;
    private final Map<String, Row> rows = new LinkedHashMap<>();

    private Compared(Ledger ledger) {
        this.ledger = ledger;
        this.exact = Reacting.exact(ledger);
        this.acids = new AcidFigures(ledger);
        Comparison.figures(ledger.sheet()).forEach(row -> rows.put(row.path(), row));
    }

    static void addTo(Figures figures, Ledger ledger) {
        Compared compared = new Compared(ledger);
        compared.addOils(figures);
        compared.addAdditions(figures);
        compared.addAlkali(figures);
        compared.addWater(figures);
        compared.addSuperfat(figures);
    }

    /** Where a row of a comparison is told of: here, among the kinds of the cured bar, or with the sheet's own figures. */
    static List<String> paths(String row, String cured) {
        List<String> paths = new ArrayList<>();
        paths.add(BEFORE + row);
        paths.add(BEFORE + row + ".percent");
        paths.add(BEFORE + row + ".grams");
        if (row.startsWith(CURED) && row.endsWith("Percent")) {
            String word = row.substring(CURED.length(), row.length() - "Percent".length());
            paths.add(Kinds.path(cured, word, "percent"));
            paths.add(cured + "." + word + "Percent");
        }
        paths.add(row + ".percent");
        paths.add(row);
        return paths;
    }

    private void add(Figures figures, String path, String title, String unit, Supplier<Account> account) {
        Row row = rows.get(path);
        Optional<Double> value = row == null ? Optional.empty() : row.a();
        value.ifPresent(v -> figures.add(BEFORE + path, title, unit, v, account));
    }

    // What goes in

    private void addOils(Figures figures) {
        List<Row> oils = of(Group.OILS);
        for (int i = 0; i < oils.size(); i++) {
            Row row = oils.get(i);
            String key = row.path().substring("oils.".length());
            String path = BEFORE + "oils[" + i + "]";
            figures.called(path, BEFORE + row.path());
            figures.add(
                    path + ".percent",
                    row.label() + ", share of all oils",
                    "%",
                    row.a().orElse(0.0),
                    () -> new Account(
                            "As the formula asks, of a premix with its part in that.",
                            Term.number(100)
                                    .times(Term.sum(
                                            acids.shares(oil -> oil.key().equals(key), oil -> Term.number(1))))));
        }
    }

    private void addAdditions(Figures figures) {
        List<Row> additions = of(Group.ADDITIONS);
        for (int i = 0; i < additions.size(); i++) {
            Row row = additions.get(i);
            String key = row.path().substring("additions.".length());
            String path = BEFORE + "additions[" + i + "]";
            figures.called(path, BEFORE + row.path());
            figures.add(
                    path + ".grams",
                    row.label() + " for a kilogram of oils",
                    "g",
                    row.a().orElse(0.0),
                    () -> perKilogram(ledger.where(
                            line -> isOnTop(line) && line.line().key().equals(key))));
        }
    }

    /** Additions, and what they are wetted out with where that is neither of the oils nor of the water. */
    private boolean isOnTop(Line line) {
        return line.is(Kind.ADDITION)
                || (line.is(Kind.DISPERSING_LIQUID) && ledger.batch().liquidFrom(line.line()) == From.EXTRA);
    }

    private List<Row> of(Group group) {
        return rows.values().stream().filter(row -> row.group() == group).toList();
    }

    private Account perKilogram(List<Line> lines) {
        return perKilogram(Ledger.sum(lines, Line::exact));
    }

    private Account perKilogram(Term grams) {
        return new Account(
                "Before anything is rounded, so that batches of different size can be compared.",
                Term.number(KILOGRAM).times(grams).over(ledger.exactOils()));
    }

    // Alkali and water

    private void addAlkali(Figures figures) {
        for (String key : List.of("naoh", "koh")) {
            Predicate<Line> which = line ->
                    line.is(Kind.ALKALI) && Alkalis.of(ledger, line).key().equals(key);
            String name = key.equals("naoh") ? "Sodium hydroxide" : "Potassium hydroxide";
            add(
                    figures,
                    "perKgOils." + key + "Grams",
                    name + " as weighed, for a kilogram of oils",
                    "g",
                    () -> perKilogram(ledger.where(which)));
            add(
                    figures,
                    "perKgOils." + key + "PureGrams",
                    name + ", pure, for a kilogram of oils",
                    "g",
                    () -> perKilogram(Ledger.sum(ledger.where(which), this::pure)));
        }
    }

    private Term pure(Line line) {
        return line.exact().times(Alkalis.strength(ledger, line));
    }

    private void addWater(Figures figures) {
        add(
                figures,
                "perKgOils.waterGrams",
                "Water by the formula's rule, for a kilogram of oils",
                "g",
                () -> perKilogram(waterByRule()));
        add(
                figures,
                "perKgOils.allWaterGrams",
                "All water, for a kilogram of oils",
                "g",
                () -> perKilogram(water(line -> true)));
    }

    private Term waterByRule() {
        return Totals.byRule(ledger, Line::exact).as("water", "g", "water by the rule, before rounding");
    }

    private Term water(Predicate<Line> which) {
        return Ledger.sum(
                ledger.where(line -> which.test(line) && line.line().water() > 0),
                line -> line.line().water() == 1 ? line.exact() : line.exact().times(Contents.water(ledger, line)));
    }

    // Superfat and what the oils take

    private void addSuperfat(Figures figures) {
        add(
                figures,
                "superfat.exactPercent",
                "Superfat before rounding",
                "%",
                () -> new Account(
                        "The share of the oils that finds no alkali, before anything is rounded.",
                        Superfat.percent(exact.reaching(ledger.lines()), exact.equivalents(ledger.lines()))));
        add(
                figures,
                "oilPhase.saponificationValueUsed",
                "Saponification value of the oils as used",
                "mg KOH/g",
                () -> new Account(
                        "Each oil's as the alkali is computed from it, mixed by mass.", saponificationValue()));
    }

    private Term saponificationValue() {
        ResolvedFormula formula = ledger.formula();
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < formula.oils().size(); i++) {
            OilPart part = formula.oils().get(i);
            terms.add(Written.share(formula, i).times(Contents.saponificationValue(part)));
        }
        return Term.sum(terms);
    }
}
