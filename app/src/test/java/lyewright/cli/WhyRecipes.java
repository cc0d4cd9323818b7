package lyewright.cli;

import java.util.List;

/** Formulas that are unlike the others, each in its own way; invented. */
final class WhyRecipes {

    private static final String STOCK_LYE = """
            recipe: Stock lye
            oils: {winter-mix: 70 %, beeswax: 5 %, jojoba: 3 %, olive-virgin: rest}
            alkali: my-lye
            superfat: 5 %
            water: 33 % lye as weighed
            additions:
              - {of: glycerin, amount: 2 % of batch, stage: oils}
              - {of: honey, amount: 10 ml, stage: lye}
            materials:
              my-lye: {kind: lye, strength: 50 ± 0.5 % sodium}
              winter-mix: {kind: oils, oils: {coconut: 40 %, olive-virgin: 60 %}}
            """;

    private static final String BOTH_BY_WEIGHT = """
            recipe: Both alkalis
            use: sale
            oils: {stearic-acid-50: 45 %, coconut: 25 %, tallow: 20 %, castor: rest}
            alkali: {sodium: 30 %, potassium: 70 %, by: as weighed}
            superfat: 4 %
            water: 2 to 1 as weighed
            cured water: 14 %
            process: {make: cooked, oils: 75 C, lye: 70 C}
            additions:
              - {of: goat-milk, amount: 6 % of oils, stage: trace}
              - {of: citric-acid-anhydrous, amount: 8 g per kg oils, stage: trace}
            """;

    private static final String GIVEN_PURE = """
            recipe: Both given
            oils: {olive-pomace: 1 lb, lard: 9 oz, shea-butter: 70 g}
            alkali: {sodium: 60 g, potassium: 45 g, as: pure}
            water: 12 oz
            acids: as written
            additions:
              - {of: vinegar-5, amount: 40 g, stage: lye, replaces: water}
              - {of: titanium-dioxide, amount: 5 g fixed, stage: trace, disperse: {in: glycerin, ratio: 5 to 2}}
              - {of: rose-petals, amount: 4 g, stage: top}
              - {of: sodium-bicarbonate, amount: 3 g, stage: trace}
            """;

    private static final String PORTIONS = """
            recipe: Three portions
            oils: {coconut: 30 %, sunflower-high-oleic: 40 %, babassu: 30 %}
            alkali: potassium
            superfat: 9.5 %
            water: 70 % of oils
            portions: {"white, plain": 50 %, it's kelp: 30 %, rest of it: rest}
            additions:
              - {of: activated-charcoal, amount: 9 g per kg portion oils, stage: "portion it's kelp", disperse: {in: oil, ratio: 4 to 1}}
              - {of: lactic-acid-80, amount: 1 % of portion oils, stage: portion rest of it}
              - {of: lavender-oil, amount: 15 ml, stage: every portion}
              - {of: coconut-milk, amount: 5 % of oils, stage: lye, replaces: water}
              - {of: sea-salt, amount: 3 % of oils, stage: lye}
            """;

    static final List<String> ODD = List.of(STOCK_LYE, BOTH_BY_WEIGHT, GIVEN_PURE, PORTIONS);

    private WhyRecipes() {}
}
