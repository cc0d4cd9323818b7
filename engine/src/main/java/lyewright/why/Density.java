package lyewright.why;

/** The batter's density. */
final class Density {

    private Density() {}

    static void addTo(Figures figures, Ledger ledger) {
        figures.add(
                "batterDensityGramsPerMl",
                "Density of the batter",
                "g/ml",
                ledger.sheet().batterDensity(),
                () -> account(new Batter(Reacting.asWeighed(ledger))));
    }

    private static Account account(Batter batter) {
        return new Account(
                        "Everything but toppings over its volume: each thing's own, the lye as one solution.",
                        batter.grams().over(batter.millilitres()))
                .note(
                        "Trapped air and the shrinking of what mixes are left out; a mould's usual mass corrects for them.");
    }
}
