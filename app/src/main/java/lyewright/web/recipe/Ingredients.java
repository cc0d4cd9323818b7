package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.Addition;
import lyewright.formula.Formula;
import lyewright.formula.OilLine;
import lyewright.formula.OwnMaterial;
import lyewright.formula.PortionLine;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.material.Names;
import lyewright.words.Labelled;
import lyewright.words.UnitsShown;

/**
 * What is in a recipe: as written, and how much that is.
 *
 * @param oils the oils
 * @param lye water and alkali
 * @param additions all else, in the order of making
 * @param portions how the batter is shared
 * @param own materials of the maker's own, each with what is known of it
 * @param process how it is made
 */
public record Ingredients(
        List<Ingredient> oils,
        List<Ingredient> lye,
        List<Ingredient> additions,
        List<Ingredient> portions,
        List<Labelled> own,
        String process) {

    /** Copies its lists. */
    public Ingredients {
        oils = List.copyOf(oils);
        lye = List.copyOf(lye);
        additions = List.copyOf(additions);
        portions = List.copyOf(portions);
        own = List.copyOf(own);
    }

    /** Of a formula; without masses where no sheet can be made of it. */
    static Ingredients of(Formula formula, Optional<MakingSheet> sheet, Address address) {
        return new Reading(formula, sheet, address).all();
    }

    /** Whose figures they are, and the units they are said in. */
    record Address(String recipeId, int version, UnitsShown units) {

        String why(String figure) {
            return RecipeSheet.why(recipeId, version, figure);
        }
    }

    private record Reading(Formula formula, Optional<MakingSheet> sheet, Address address) {

        Ingredients all() {
            return new Ingredients(
                    oils(),
                    lye(),
                    additions(),
                    portions(),
                    own(),
                    WrittenWords.process(formula.process(), address.units()));
        }

        private List<Ingredient> oils() {
            List<Ingredient> oils = new ArrayList<>();
            for (int i = 0; i < formula.oils().size(); i++) {
                OilLine line = formula.oils().get(i);
                int place = i;
                oils.add(new Ingredient(
                        WrittenWords.name(line.key()),
                        "",
                        WrittenWords.amount(line.amount()),
                        whole(
                                "sums.oils[" + i + "].weighedGrams",
                                "in the pot",
                                l -> l.kind() == Kind.OIL && l.place() == place,
                                l -> wets(l, DispersingLiquid.From.OILS)
                                        && l.key().equals(line.key()))));
            }
            return oils;
        }

        private List<Ingredient> lye() {
            String alkali = sheet.flatMap(s -> weighed(s, l -> l.kind() == Kind.ALKALI).stream()
                            .map(Weighing::name)
                            .reduce((one, other) -> one + " and " + other))
                    .orElse("Alkali");
            return List.of(
                    new Ingredient(
                            "Water",
                            "",
                            WrittenWords.water(formula.water()),
                            whole(
                                    "sums.waterGrams",
                                    "in the lye jug",
                                    l -> l.kind() == Kind.WATER,
                                    l -> wets(l, DispersingLiquid.From.WATER))),
                    new Ingredient(alkali, "", WrittenWords.alkali(formula), masses(l -> l.kind() == Kind.ALKALI)));
        }

        private List<Ingredient> additions() {
            List<Ingredient> additions = new ArrayList<>();
            for (int i = 0; i < formula.additions().size(); i++) {
                Addition addition = formula.additions().get(i);
                int place = i;
                additions.add(new Ingredient(
                        WrittenWords.name(addition.of()),
                        WrittenWords.how(addition),
                        addition.amount().toString(),
                        masses(l -> l.kind() == Kind.ADDITION && l.place() == place)));
            }
            return additions;
        }

        private List<Ingredient> portions() {
            List<Ingredient> portions = new ArrayList<>();
            for (int i = 0; i < formula.portions().size(); i++) {
                PortionLine portion = formula.portions().get(i);
                String path = "portions[" + i + "].baseBatterGrams";
                int place = i;
                portions.add(new Ingredient(
                        portion.name(),
                        "",
                        portion.share().map(Object::toString).orElse("the rest") + " of the base batter",
                        sheet.map(s -> List.of(new Ingredient.Part(
                                        "",
                                        address.units()
                                                .about(s.portions().get(place).baseBatterGrams()),
                                        address.why(path))))
                                .orElse(List.of())));
            }
            return portions;
        }

        private List<Labelled> own() {
            return formula.materials().stream()
                    .map(material -> new Labelled(material.key(), ownWords(material)))
                    .toList();
        }

        private static String ownWords(OwnMaterial own) {
            List<String> words = new ArrayList<>();
            own.saponificationValue().ifPresent(value -> words.add("saponification value " + value + " mg KOH/g"));
            if (!own.inci().isEmpty()) {
                words.add(own.inci());
            }
            if (!own.supplier().isEmpty()) {
                words.add("from " + own.supplier());
            }
            words.add(own.source().isEmpty() ? "no source given" : "source: " + own.source());
            return String.join("; ", words);
        }

        private boolean wets(BatchLine line, DispersingLiquid.From from) {
            return line.kind() == Kind.DISPERSING_LIQUID
                    && sheet.filter(s -> s.batch().liquidFrom(line) == from).isPresent();
        }

        /** All of it first, then where it goes, if some of it wets something out. */
        private List<Ingredient.Part> whole(
                String sum, String where, Predicate<BatchLine> most, Predicate<BatchLine> wetting) {
            List<Ingredient.Part> wet = masses(wetting, this::wetsOut);
            if (wet.isEmpty()) {
                return masses(most);
            }
            List<Ingredient.Part> parts = new ArrayList<>();
            sheet.ifPresent(s -> parts.add(
                    new Ingredient.Part("", address.units().sum(weighed(s, most.or(wetting))), address.why(sum))));
            parts.addAll(masses(most, weighing -> where));
            parts.addAll(wet);
            return parts;
        }

        private String wetsOut(Weighing weighing) {
            String what = Names.inSentence(WrittenWords.name(
                    formula.additions().get(weighing.line().place()).of()));
            return "wets out the " + what + (weighing.portion().isEmpty() ? "" : " for " + weighing.portion());
        }

        private List<Ingredient.Part> masses(Predicate<BatchLine> which) {
            return masses(which, Weighing::portion);
        }

        private List<Ingredient.Part> masses(Predicate<BatchLine> which, Function<Weighing, String> where) {
            List<Ingredient.Part> parts = new ArrayList<>();
            sheet.ifPresent(s -> {
                for (int v = 0; v < s.vessels().size(); v++) {
                    Vessel vessel = s.vessels().get(v);
                    for (int i = 0; i < vessel.weighings().size(); i++) {
                        Weighing weighing = vessel.weighings().get(i);
                        if (which.test(weighing.line())) {
                            String path = "vessels[" + v + "].items[" + i + "].weighGrams";
                            String mass = address.units().on(weighing.balance(), weighing.weigh());
                            parts.add(new Ingredient.Part(where.apply(weighing), mass, address.why(path)));
                        }
                    }
                }
            });
            return parts;
        }

        private static List<Weighing> weighed(MakingSheet sheet, Predicate<BatchLine> which) {
            return sheet.vessels().stream()
                    .flatMap(vessel -> vessel.weighings().stream())
                    .filter(weighing -> which.test(weighing.line()))
                    .toList();
        }
    }
}
