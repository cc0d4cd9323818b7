package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatterVolume;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Alkali;
import lyewright.measure.Temperature;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** The volume of a batter: each thing's mass over its density, the lye as one solution. Toppings take none. */
final class Batter {

    private final Reacting reacting;
    private final Ledger ledger;
    private final ResolvedFormula formula;

    Batter(Reacting reacting) {
        this.reacting = reacting;
        this.ledger = reacting.ledger();
        this.formula = ledger.formula();
    }

    static Given waterDensity() {
        return new Given(
                "density of water",
                BatterVolume.WATER_DENSITY,
                "g/ml",
                "water at 20 °C",
                "CRC Handbook, 102nd edition, table of solutions");
    }

    /** Everything but toppings. */
    Term grams() {
        return Ledger.sum(ledger.where(line -> !line.line().onTop()), reacting.mass())
                .as("batter", "g", "everything but toppings");
    }

    Stage millilitres() {
        List<Term> parts = new ArrayList<>();
        for (Line line : ledger.where(line -> !line.line().onTop())) {
            if (!line.line().inLyeJug()) {
                parts.add(mass(line).over(density(line)));
            } else {
                addRest(line, parts);
            }
        }
        parts.add(lye());
        return Term.sum(parts).as("volume", "ml", "everything but toppings");
    }

    private Term mass(Line line) {
        return reacting.mass().apply(line);
    }

    private Given density(Line line) {
        double value = line.line().gramsPerMillilitre();
        if (ledger.isOil(line)) {
            return OilDensity.of(
                    Contents.oil(ledger, line),
                    value,
                    celsius(formula.formula().process().oils()));
        }
        if (line.is(Kind.ADDITION)) {
            return Contents.density(formula.additions().get(line.line().place()).material());
        }
        return line.line().water() == 1 ? waterDensity() : Contents.density(ledger.glycerin());
    }

    static double celsius(java.util.Optional<Temperature> written) {
        return written.map(Temperature::celsius).orElse(OilDensity.USUAL_TEMPERATURE);
    }

    /** What a line in the jug adds beside its water and alkali, which are the lye's. */
    private void addRest(Line line, List<Term> parts) {
        if (line.is(Kind.ADDITION)
                || (line.is(Kind.DISPERSING_LIQUID) && line.line().water() < 1)) {
            Term dry = mass(line).over(density(line));
            Term wet = mass(line).times(Contents.water(ledger, line)).over(waterDensity());
            parts.add(line.line().water() == 0 ? dry : Term.call(Function.MAX, Term.number(0), dry.minus(wet)));
        } else if (line.is(Kind.ALKALI) && line.line().water() == 0) {
            parts.add(mass(line)
                    .times(Term.number(1).minus(Alkalis.strength(ledger, line)))
                    .over(new Given(
                            "density of the rest",
                            line.line().gramsPerMillilitre(),
                            "g/ml",
                            "of what soda's purity leaves out, taken as common salt's",
                            "CRC standard table (docs/sources.md)")));
        }
    }

    private Term lye() {
        Term water = Ledger.sum(
                        ledger.where(
                                line -> line.line().inLyeJug() && line.line().water() > 0),
                        line -> line.line().water() == 1
                                ? mass(line)
                                : mass(line).times(Contents.water(ledger, line)))
                .as("lye water", "g", "water in the jug");
        Term sodium = pure(Alkali.SODIUM);
        Term potassium = pure(Alkali.POTASSIUM);
        boolean both = formula.alkali().has(Alkali.SODIUM) && formula.alkali().has(Alkali.POTASSIUM);
        Term alkali = both
                ? sodium.plus(potassium).as("pure alkali", "g", "all pure alkali")
                : formula.alkali().has(Alkali.SODIUM) ? sodium : potassium;
        Term solution = alkali.plus(water);
        Stage percent = Term.percent(alkali, solution).as("strength", "%", "pure alkali in the lye");
        LyeDensity densities = new LyeDensity(
                ledger.tables(), percent, celsius(formula.formula().process().lye()));
        if (!both) {
            Alkali only = formula.alkali().has(Alkali.SODIUM) ? Alkali.SODIUM : Alkali.POTASSIUM;
            return solution.over(densities.of(only)).as("lye", "ml", "the lye");
        }
        return solution.times(sodium)
                .over(alkali)
                .over(densities.of(Alkali.SODIUM))
                .plus(solution.times(potassium).over(alkali).over(densities.of(Alkali.POTASSIUM)))
                .as("lye", "ml", "the lye, as if its two alkalis were apart");
    }

    /** Pure alkali of one kind, at the formula's share of all moles. */
    private Term pure(Alkali alkali) {
        boolean both = formula.alkali().has(Alkali.SODIUM) && formula.alkali().has(Alkali.POTASSIUM);
        Term moles = reacting.alkali(ledger.lines());
        Term share = both ? moles.times(new AlkaliMix(ledger).share(alkali)) : moles;
        return share.times(Alkalis.molarMass(alkali))
                .as("pure " + Alkalis.formula(alkali), "g", "pure " + Alkalis.name(alkali));
    }
}
