package lyewright.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchLine;
import lyewright.formula.Disperse;
import lyewright.formula.OilLine;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;

/**
 * What is ticked off at the balance, in order.
 *
 * @param portions whether the batter is shared out, so that some rows are for one portion
 * @param vessels in the order of weighing, alkali last
 * @param taring how to tare and which way to err, in sentences
 * @param balances which balances are meant, in a sentence
 * @param room vessels that must not be heavy
 */
public record WeighPlan(
        boolean portions, List<WeighVessel> vessels, String taring, String balances, List<RoomLeft> room) {

    /** Copies its lists. */
    public WeighPlan {
        vessels = List.copyOf(vessels);
        room = List.copyOf(room);
    }

    /** The plan of a sheet, in grams and what else was written. */
    public static WeighPlan of(MakingSheet sheet) {
        return of(sheet, UnitsShown.METRIC);
    }

    /** The plan of a sheet, each mass as its balance shows it and in the units that are wanted. */
    public static WeighPlan of(MakingSheet sheet, UnitsShown units) {
        return new WeighPlan(
                !sheet.formula().portions().isEmpty(),
                vessels(sheet, units),
                taring(sheet, units),
                balances(sheet),
                sheet.vessels().stream()
                        .flatMap(vessel -> roomLeft(sheet, units, vessel).stream())
                        .toList());
    }

    private static List<WeighVessel> vessels(MakingSheet sheet, UnitsShown units) {
        List<WeighVessel> vessels = new ArrayList<>();
        List<WeighRow> cups = new ArrayList<>();
        for (int v = 0; v < sheet.vessels().size(); v++) {
            Vessel vessel = sheet.vessels().get(v);
            List<WeighRow> rows = rows(sheet, units, vessel, v);
            if (isCupOfOne(vessel)) {
                cups.addAll(rows);
            } else {
                addCups(vessels, cups);
                vessels.add(vessel(sheet, units, vessel, rows));
            }
        }
        addCups(vessels, cups);
        return vessels;
    }

    /** Alkali in a cup of its own is told apart from powders. */
    private static boolean isCupOfOne(Vessel vessel) {
        return vessel.kind() == Vessel.Kind.CUP
                && vessel.weighings().size() == 1
                && vessel.weighings().get(0).line().kind() != BatchLine.Kind.ALKALI;
    }

    private static void addCups(List<WeighVessel> vessels, List<WeighRow> cups) {
        if (!cups.isEmpty()) {
            vessels.add(new WeighVessel(
                    Vessel.Kind.CUP, "Cups, one for each line", true, Optional.empty(), Optional.empty(), cups));
            cups.clear();
        }
    }

    private static WeighVessel vessel(MakingSheet sheet, UnitsShown units, Vessel vessel, List<WeighRow> rows) {
        String name = vessel.words();
        Optional<ShownMass> empty = vessel.emptyGrams() > 0
                ? Optional.of(units.shown(vessel.weighings().get(0).balance(), vessel.emptyGrams()))
                : Optional.empty();
        return new WeighVessel(vessel.kind(), Sentences.upperFirst(name), false, empty, hint(sheet, vessel), rows);
    }

    private static Optional<String> hint(MakingSheet sheet, Vessel vessel) {
        BatchLine first = vessel.weighings().get(0).line();
        if (vessel.kind() == Vessel.Kind.CUP && first.kind() == BatchLine.Kind.ALKALI) {
            return sheet.formula().alkali().stock().isPresent()
                    ? Optional.empty()
                    : Optional.of("dry, and into the jug's water later");
        }
        if (vessel.kind() != Vessel.Kind.CUP || vessel.weighings().size() < 2) {
            return Optional.empty();
        }
        Optional<Disperse> disperse =
                sheet.formula().additions().get(first.place()).written().disperse();
        return disperse.map(d -> d.ahead().isPresent()
                ? "stir together " + d.ahead().get() + " ahead"
                : "stir together before the lye is made");
    }

    private static List<WeighRow> rows(MakingSheet sheet, UnitsShown units, Vessel vessel, int place) {
        List<WeighRow> rows = new ArrayList<>();
        for (int i = 0; i < vessel.weighings().size(); i++) {
            rows.add(row(sheet, units, vessel.weighings().get(i), "vessels[" + place + "].items[" + i + "]"));
        }
        return rows;
    }

    private static WeighRow row(MakingSheet sheet, UnitsShown units, Weighing weighing, String path) {
        Balance balance = weighing.balance();
        return new WeighRow(
                path,
                weighing.name(),
                weighing.portion(),
                weigh(sheet, units, weighing),
                Figures.shown(balance, weighing.reading().grams()),
                balance.name(),
                Figures.fixed(weighing.percentOfOils(), 2),
                Figures.grams(weighing.exactGrams(), 3),
                tolerance(sheet, weighing),
                weighing);
    }

    private static String tolerance(MakingSheet sheet, Weighing weighing) {
        var really = weighing.reallyWeighed(sheet.formula().tables());
        int decimals = Math.min(3, Figures.gramDecimals(weighing.balance()) + 1);
        return "± " + Figures.fixed(really.oneHalf() + really.otherHalf(), decimals) + " g";
    }

    /** An oil that was typed in ounces or pounds is shown in ounces too. */
    private static ShownMass weigh(MakingSheet sheet, UnitsShown units, Weighing weighing) {
        Balance balance = weighing.balance();
        double grams = weighing.weigh().grams();
        BatchLine line = weighing.line();
        boolean typed = line.kind() == BatchLine.Kind.OIL
                && sheet.formula().formula().oils().get(line.place()).amount() instanceof OilLine.Weight weight
                && UnitsShown.inOunces(weight.mass().unit());
        return (typed ? new UnitsShown(true, units.fahrenheit()) : units).shown(balance, grams);
    }

    private static String taring(MakingSheet sheet, UnitsShown units) {
        return (sheet.equipment().vesselGrams().isEmpty()
                        ? "Tare each vessel empty."
                        : "Tare each vessel empty, except where its weight is given.")
                + " A vessel's own weight counts towards what its balance carries, tared or not" + usual(sheet, units)
                + ". While weighing: oils rather over than under, alkali never over; it comes last and is rounded down.";
    }

    private static String usual(MakingSheet sheet, UnitsShown units) {
        String usual = sheet.vessels().stream()
                .filter(vessel -> vessel.emptyGrams() == 0)
                .map(Vessel::kind)
                .distinct()
                .sorted()
                .map(kind -> kind.word() + " "
                        + units.whole(kind.usualGrams(sheet.formula().tables())))
                .collect(Collectors.joining(", "));
        if (usual.isEmpty()) {
            return "";
        }
        // brackets are taken where masses are said twice
        return units.ounces()
                ? "; where nobody gave it, the usual one of common practice is reckoned: " + usual
                : "; where nobody gave it, the usual one is reckoned (" + usual + "; common practice)";
    }

    private static String balances(MakingSheet sheet) {
        Set<Balance> used = new LinkedHashSet<>();
        sheet.vessels().forEach(vessel -> vessel.weighings().forEach(weighing -> used.add(weighing.balance())));
        return used.stream()
                .map(balance -> balance.name() + ", " + balance.capacity() + " in steps of " + balance.step()
                        + " (OIML class " + balance.classTaken()
                        + (balance.accuracyClass().isPresent() ? ")" : " assumed)"))
                .collect(Collectors.joining("; ", "Balances: ", "."));
    }

    /** Only where the balance carries what is in the vessel, but not the vessel as it usually is. */
    private static Optional<RoomLeft> roomLeft(MakingSheet sheet, UnitsShown units, Vessel vessel) {
        Weighing last = vessel.weighings().get(vessel.weighings().size() - 1);
        double room = last.balance().capacity().grams() - last.reading().grams();
        double usual = vessel.kind().usualGrams(sheet.formula().tables());
        if (vessel.kind() == Vessel.Kind.CUP || vessel.emptyGrams() > 0 || room < 0 || room >= usual) {
            return Optional.empty();
        }
        return Optional.of(new RoomLeft(
                vessel.name(), units.whole(Math.floor(room)), last.balance().name()));
    }
}
