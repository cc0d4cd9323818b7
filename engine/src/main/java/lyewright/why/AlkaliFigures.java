package lyewright.why;

import java.util.Optional;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.makingsheet.LyeSheet;
import lyewright.material.Alkali;
import lyewright.why.Term.Given;

/** The sheet's figures of alkali and its jug. */
final class AlkaliFigures {

    private final Ledger ledger;
    private final LyeSheet lye;

    private AlkaliFigures(Ledger ledger) {
        this.ledger = ledger;
        this.lye = ledger.sheet().lye();
    }

    static void addTo(Figures figures, Ledger ledger) {
        new AlkaliFigures(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        figures.add(
                "alkali.naohGrams", "Sodium hydroxide to weigh", "g", lye.naohGrams(), () -> weighed(Alkali.SODIUM));
        figures.add(
                "alkali.kohGrams",
                "Potassium hydroxide to weigh",
                "g",
                lye.kohGrams(),
                () -> weighed(Alkali.POTASSIUM));
        figures.add("alkali.naohPureGrams", "Pure NaOH weighed", "g", lye.naohPureGrams(), () -> pure(Alkali.SODIUM));
        figures.add("alkali.kohPureGrams", "Pure KOH weighed", "g", lye.kohPureGrams(), () -> pure(Alkali.POTASSIUM));
        figures.add(
                "alkali.potassiumMolesPercent",
                "Potassium's share of the alkali by moles",
                "%",
                lye.potassiumMolesPercent(),
                this::byMoles);
        figures.add(
                "alkali.potassiumPurePercent",
                "Potassium's share of the alkali by pure mass",
                "%",
                lye.potassiumPurePercent(),
                this::byPureMass);
        figures.add(
                "alkali.potassiumWeighedPercent",
                "Potassium's share of the alkali as weighed",
                "%",
                lye.potassiumWeighedPercent(),
                this::asWeighed);
        figures.add(
                "alkali.jugConcentrationPercent",
                "Strength of the lye in its jug",
                "%",
                lye.concentrationPercent(),
                this::concentration);
        figures.add(
                "alkali.waterInJugGrams",
                "Water in the lye jug when the alkali goes in",
                "g",
                lye.waterInJugGrams(),
                this::waterInJug);
    }

    private Optional<Line> line(Alkali alkali) {
        return ledger.of(Kind.ALKALI).stream()
                .filter(line -> Alkalis.of(ledger, line) == alkali)
                .findFirst();
    }

    private static Account none(Alkali alkali) {
        return new Account("No " + Alkalis.name(alkali) + " is used.", Term.number(0));
    }

    private Account weighed(Alkali alkali) {
        return line(alkali).map(new AlkaliMass(ledger)::weighed).orElseGet(() -> none(alkali));
    }

    private Account pure(Alkali alkali) {
        return line(alkali)
                .map(line -> new Account(
                        "What is weighed times the share of it that is pure.",
                        ledger.weighed(line).times(Alkalis.strength(ledger, line))))
                .orElseGet(() -> none(alkali));
    }

    /** Pure alkali of one kind, a figure of the sheet. */
    static Given pure(LyeSheet lye, Alkali alkali) {
        String field = alkali == Alkali.SODIUM ? "naohPureGrams" : "kohPureGrams";
        return Ledger.figure(
                "pure " + Alkalis.formula(alkali),
                "alkali." + field,
                alkali == Alkali.SODIUM ? lye.naohPureGrams() : lye.kohPureGrams(),
                "g",
                "pure " + Alkalis.name(alkali) + " weighed");
    }

    /** Pure alkali of both kinds; of one where there is only one. */
    static Term pure(LyeSheet lye) {
        if (lye.kohPureGrams() == 0) {
            return pure(lye, Alkali.SODIUM);
        }
        return lye.naohPureGrams() == 0
                ? pure(lye, Alkali.POTASSIUM)
                : pure(lye, Alkali.SODIUM).plus(pure(lye, Alkali.POTASSIUM));
    }

    private Term moles(Alkali alkali) {
        return pure(lye, alkali).over(Alkalis.molarMass(alkali));
    }

    private Account byMoles() {
        Term potassium = moles(Alkali.POTASSIUM).as("moles of KOH", "mol", "potassium hydroxide");
        return new Account(
                "Potassium's share of all alkali molecules, which is what decides how soft the soap is.",
                Term.percent(
                        potassium,
                        moles(Alkali.SODIUM)
                                .as("moles of NaOH", "mol", "sodium hydroxide")
                                .plus(potassium)));
    }

    private Account byPureMass() {
        return new Account(
                "Potassium hydroxide's share of the pure alkali by mass.",
                Term.percent(
                        pure(lye, Alkali.POTASSIUM), pure(lye, Alkali.SODIUM).plus(pure(lye, Alkali.POTASSIUM))));
    }

    private static Given weighed(LyeSheet lye, Alkali alkali) {
        boolean sodium = alkali == Alkali.SODIUM;
        return Ledger.figure(
                Alkalis.name(alkali),
                sodium ? "alkali.naohGrams" : "alkali.kohGrams",
                sodium ? lye.naohGrams() : lye.kohGrams(),
                "g",
                Alkalis.name(alkali) + " as weighed");
    }

    /** Alkali of both kinds as weighed; of one where there is only one. */
    static Term weighed(LyeSheet lye) {
        if (lye.kohGrams() == 0) {
            return weighed(lye, Alkali.SODIUM);
        }
        return lye.naohGrams() == 0
                ? weighed(lye, Alkali.POTASSIUM)
                : weighed(lye, Alkali.SODIUM).plus(weighed(lye, Alkali.POTASSIUM));
    }

    private Account asWeighed() {
        Term potassium = weighed(lye, Alkali.POTASSIUM);
        return new Account(
                "Potassium hydroxide's share of the alkali as it goes on the balance.",
                Term.percent(potassium, weighed(lye, Alkali.SODIUM).plus(potassium)));
    }

    private Account concentration() {
        return new Account(
                "Pure alkali in the alkali and all the water that is in the jug with it, other liquids' water included.",
                Term.percent(pure(lye), pure(lye).plus(waterInJug(lye))));
    }

    static Given waterInJug(LyeSheet lye) {
        return Ledger.figure(
                "water in jug", "alkali.waterInJugGrams", lye.waterInJugGrams(), "g", "all water in the lye jug");
    }

    private Account waterInJug() {
        return new Account(
                "Water of everything that is in the jug when the alkali goes in, the alkali's own included.",
                Ledger.sum(
                        ledger.where(
                                line -> line.line().inLyeJug() && line.line().water() > 0),
                        this::waterOf));
    }

    private Term waterOf(Line line) {
        return line.line().water() == 1
                ? ledger.weighed(line)
                : ledger.weighed(line).times(Contents.water(ledger, line));
    }
}
