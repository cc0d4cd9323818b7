package lyewright.why;

import lyewright.formula.Purities;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.StockLye;
import lyewright.material.Tables.AlkaliFigures;
import lyewright.why.Term.Given;

/** What is put in about the alkali: molar masses, purity, a stock lye's strength. */
final class Alkalis {

    private Alkalis() {}

    /** Grams in a mole. */
    static Given molarMass(Alkali alkali) {
        return new Given(
                "M of " + formula(alkali),
                alkali.molarMass(),
                "g/mol",
                "molar mass of " + name(alkali),
                Sources.ATOMIC_WEIGHTS);
    }

    static String formula(Alkali alkali) {
        return alkali == Alkali.SODIUM ? "NaOH" : "KOH";
    }

    static String name(Alkali alkali) {
        return alkali == Alkali.SODIUM ? "sodium hydroxide" : "potassium hydroxide";
    }

    /** Which alkali a line is. */
    static Alkali of(Ledger ledger, Line line) {
        return ledger.formula().alkaliOf(line.line().key());
    }

    /** Pure alkali in a gram of what is weighed: a stock lye's strength, else the product's purity. */
    static Given strength(Ledger ledger, Line line) {
        return ledger.formula()
                .alkali()
                .stock()
                .map(Alkalis::strength)
                .orElseGet(() -> purity(ledger, of(ledger, line)));
    }

    private static Given strength(StockLye stock) {
        Given strength = new Given(
                "strength of " + Labels.said(stock.name()),
                stock.strength().middle() / 100,
                "",
                "share of " + stock.name() + " that is pure alkali, the rest is water",
                stock.source());
        return spread(strength, stock.strength());
    }

    private static Given spread(Given fraction, Figure percent) {
        return percent.low() == percent.high() ? fraction : fraction.spread(Spread.of(percent, 0.01));
    }

    /** How much of a product is pure. */
    static Given purity(Ledger ledger, Alkali alkali) {
        Purities purities = ledger.formula().purities();
        double fraction = purities.fraction(alkali);
        String name = "purity of " + name(alkali);
        String meaning = "share of the product that is pure " + name(alkali);
        if (purities.assumed(alkali)) {
            Figure assumed = assumed(ledger, alkali);
            return new Given(name, fraction, "", meaning + ", assumed since none is given", assumed.source())
                    .spread(Spread.of(assumed, 0.01));
        }
        Given given = new Given(name, fraction, "", meaning, "given with the sheet");
        Figure typed = (alkali == Alkali.SODIUM ? purities.sodium() : purities.potassium())
                .orElseThrow(() -> new IllegalStateException(alkali + " is given but has no purity"));
        return spread(given, typed);
    }

    private static Figure assumed(Ledger ledger, Alkali alkali) {
        return ledger.tables().alkalis().stream()
                .filter(figures -> figures.alkali() == alkali)
                .map(AlkaliFigures::assumed)
                .findFirst()
                .orElse(alkali.assumedPurity());
    }
}
