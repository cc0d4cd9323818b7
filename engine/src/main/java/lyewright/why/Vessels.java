package lyewright.why;

import java.util.List;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.why.Term.Given;

/** Everything that is weighed: exact mass, what goes on the balance, what the balance reads. */
final class Vessels {

    private final Ledger ledger;

    private Vessels(Ledger ledger) {
        this.ledger = ledger;
    }

    static void addTo(Figures figures, Ledger ledger) {
        new Vessels(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        List<Vessel> vessels = ledger.sheet().vessels();
        for (int v = 0; v < vessels.size(); v++) {
            Vessel vessel = vessels.get(v);
            String path = "vessels[" + v + "]";
            figures.called(path, "vessels." + vessel.name());
            figures.add(
                    path + ".vesselGrams",
                    "Empty weight of the " + vessel.words(),
                    "g",
                    vessel.emptyGrams(),
                    () -> new Account("What the vessel weighs by itself, where it is not tared.", empty(vessel)));
            for (int i = 0; i < vessel.weighings().size(); i++) {
                addItem(figures, vessel, i, path);
            }
        }
    }

    private void addItem(Figures figures, Vessel vessel, int i, String vesselPath) {
        Weighing weighing = vessel.weighings().get(i);
        Line line = ledger.line(weighing);
        String path = vesselPath + ".items[" + i + "]";
        figures.called(path, "vessels." + vessel.name() + "." + line.line().key());
        String what = line.words();
        figures.add(
                path + ".exactGrams",
                what + ": before rounding",
                "g",
                weighing.exactGrams(),
                () -> new ExactMass(ledger).account(line));
        figures.add(
                path + ".weighGrams",
                what + ": to weigh",
                "g",
                weighing.weigh().grams(),
                () -> line.is(Kind.ALKALI) ? new AlkaliMass(ledger).weighed(line) : rounded(line));
        figures.add(
                path + ".readingGrams",
                what + ": what the balance reads after it",
                "g",
                weighing.reading().grams(),
                () -> reading(vessel, i, vesselPath));
        figures.add(
                path + ".percentOfOils",
                what + ": against all oils",
                "%",
                weighing.percentOfOils(),
                () -> percentOfOils(line));
    }

    private Account rounded(Line line) {
        return new Account(
                        "The exact mass to the nearest step of the balance.",
                        Term.call(
                                Function.NEAREST,
                                line.exact(),
                                AlkaliMass.step(line.weighing().balance())))
                .note(mayErr(line));
    }

    private String mayErr(Line line) {
        Balance balance = line.weighing().balance();
        double error = balance.permittedErrorGrams(line.weighing().reading().grams(), ledger.tables());
        return "Balance " + balance.name() + " may err by " + Digits.figure(error) + " g at this load, class "
                + balance.classTaken() + (balance.accuracyClass().isPresent() ? "" : " assumed") + ".";
    }

    private static Given empty(Vessel vessel) {
        return new Given(
                "empty vessel",
                vessel.emptyGrams(),
                "g",
                "empty weight of the " + vessel.words(),
                vessel.emptyGrams() == 0 ? "the vessel is tared" : "given with the sheet");
    }

    private Account reading(Vessel vessel, int i, String path) {
        Term sum = Ledger.sum(
                vessel.weighings().subList(0, i + 1).stream().map(ledger::line).toList(), ledger::weighed);
        return new Account(
                "What is in the vessel by then"
                        + (vessel.emptyGrams() == 0 ? "; the vessel itself is tared." : ", with the vessel."),
                vessel.emptyGrams() == 0 ? sum : withVessel(vessel, path).plus(sum));
    }

    /** To the milligram, as everything on a balance. */
    private static Term withVessel(Vessel vessel, String path) {
        return Term.call(
                Function.NEAREST,
                Ledger.figure(
                        "empty vessel",
                        path + ".vesselGrams",
                        vessel.emptyGrams(),
                        "g",
                        "empty weight of the " + vessel.words()),
                Term.number(0.001));
    }

    private Account percentOfOils(Line line) {
        return new Account(
                "The exact mass in percent of all oils, before rounding.",
                Term.percent(line.exact(), ledger.exactOils()));
    }
}
