package lyewright.why;

import lyewright.why.Term.Given;

/** What the recipe says of itself. */
final class Recipe {

    private Recipe() {}

    static void addTo(Figures figures, Ledger ledger) {
        int version = ledger.formula().formula().version();
        figures.add(
                "recipe.version",
                "The recipe's version",
                "",
                version,
                () -> new Account(
                        "As it is written in the formula, 1 where nothing is written.",
                        new Given("written", version, "", "the version", Sources.FORMULA)));
    }
}
