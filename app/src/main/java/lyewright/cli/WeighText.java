package lyewright.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lyewright.chemistry.BatchLine;
import lyewright.formula.Disperse;
import lyewright.formula.OilLine;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.measure.MassUnit;

/** The part of a sheet that is ticked off at the balance. */
final class WeighText {

    private static final String TICK = "[ ]";

    private final SheetView view;
    private final Page page;
    private final boolean portions;

    WeighText(SheetView view, Page page) {
        this.view = view;
        this.page = page;
        this.portions = !view.formula().portions().isEmpty();
    }

    /** Hardly a jug or a pot weighs less, grams; this project's own rule. */
    private static final double LIGHT_VESSEL = 150;

    static boolean oil(BatchLine line) {
        return line.kind() == BatchLine.Kind.OIL
                || (line.kind() == BatchLine.Kind.DISPERSING_LIQUID && line.equivalents() > 0);
    }

    void write() {
        page.heading("Weigh");
        notToBeMade(view.sheet(), page);
        TextTable table = portions
                ? new TextTable(
                        0,
                        TextTable.words(""),
                        TextTable.words(""),
                        TextTable.words("for"),
                        TextTable.figures("weigh"),
                        TextTable.figures("balance reads"),
                        TextTable.words("balance"),
                        TextTable.figures("% of oils"))
                : new TextTable(
                        0,
                        TextTable.words(""),
                        TextTable.words(""),
                        TextTable.figures("weigh"),
                        TextTable.figures("balance reads"),
                        TextTable.words("balance"),
                        TextTable.figures("% of oils"));
        rows(table);
        page.table(table);
        page.blank();
        balances();
    }

    /** A sheet that is stopped says so wherever somebody might begin to follow it. */
    static void notToBeMade(MakingSheet sheet, Page page) {
        if (sheet.stopped()) {
            page.line("*** NOT TO BE MADE AS IT STANDS: see STOP at the head ***");
            page.blank();
        }
    }

    private void rows(TextTable table) {
        boolean grouped = false;
        for (Vessel vessel : view.sheet().vessels()) {
            boolean single = vessel.kind() == Vessel.Kind.CUP
                    && vessel.weighings().size() == 1
                    && vessel.weighings().get(0).line().kind() != BatchLine.Kind.ALKALI;
            if (!single || !grouped) {
                table.across("");
                table.across(single ? "Cups, one for each line" : heading(vessel));
            }
            grouped = single;
            vessel.weighings().forEach(weighing -> row(table, weighing));
        }
    }

    private String heading(Vessel vessel) {
        String name =
                Character.toUpperCase(vessel.name().charAt(0)) + vessel.name().substring(1);
        String tare = vessel.emptyGrams() > 0
                ? ", " + Figures.on(vessel.weighings().get(0).balance(), vessel.emptyGrams()) + " empty, not tared"
                : "";
        return name + tare + wettedOut(vessel).map(text -> "; " + text).orElse("");
    }

    private Optional<String> wettedOut(Vessel vessel) {
        if (vessel.kind() != Vessel.Kind.CUP || vessel.weighings().size() < 2) {
            return Optional.empty();
        }
        BatchLine first = vessel.weighings().get(0).line();
        if (first.kind() != BatchLine.Kind.ADDITION) {
            return Optional.of("dry, and into the jug's water later");
        }
        Optional<Disperse> disperse =
                view.formula().additions().get(first.place()).written().disperse();
        return disperse.map(d -> d.ahead().isPresent()
                ? "stir together " + d.ahead().get() + " ahead"
                : "stir together before the lye is made");
    }

    private void row(TextTable table, Weighing weighing) {
        String weigh = Figures.on(weighing.balance(), weighing.weigh()) + alsoInOunces(weighing);
        String reads = Figures.on(weighing.balance(), weighing.reading());
        String balance = weighing.balance().name();
        String share = Figures.fixed(weighing.percentOfOils(), 2);
        if (portions) {
            table.row(TICK, weighing.name(), weighing.portion(), weigh, reads, balance, share);
        } else {
            table.row(TICK, weighing.name(), weigh, reads, balance, share);
        }
    }

    /** An oil that was typed in ounces or pounds is shown in ounces too. */
    private String alsoInOunces(Weighing weighing) {
        boolean typed = weighing.line().kind() == BatchLine.Kind.OIL
                && view.formula().formula().oils().get(weighing.line().place()).amount()
                        instanceof OilLine.Weight weight
                && (weight.mass().unit() == MassUnit.OUNCE || weight.mass().unit() == MassUnit.POUND);
        MassUnit shown = weighing.balance().step().unit();
        if (!typed || shown == MassUnit.OUNCE || shown == MassUnit.POUND) {
            return "";
        }
        double ounces = weighing.weigh().grams() / MassUnit.OUNCE.grams().doubleValue();
        return " (" + Figures.fixed(ounces, 2) + " oz)";
    }

    private void balances() {
        Set<Balance> used = new LinkedHashSet<>();
        view.all().forEach(weighing -> used.add(weighing.balance()));
        List<String> said = new ArrayList<>();
        for (Balance balance : used) {
            String assumed = balance.accuracyClass().isPresent() ? ")" : " assumed)";
            said.add(balance.name() + ", " + balance.capacity() + " in steps of " + balance.step() + " (OIML class "
                    + balance.classTaken() + assumed);
        }
        page.paragraph(
                (view.sheet().equipment().vesselGrams().isEmpty()
                                ? "Tare each vessel empty."
                                : "Tare each vessel empty, except where its weight is given.")
                        + " A vessel's own weight counts towards what its balance carries, tared or not. While weighing:"
                        + " oils rather over than under, alkali never over; it comes last and is rounded down.",
                0);
        page.paragraph("Balances: " + String.join("; ", said) + ".", 0);
        view.sheet().vessels().forEach(this::room);
    }

    /** A jug or a pot that leaves its balance little room for its own weight; whether it is too heavy nobody here knows. */
    private void room(Vessel vessel) {
        Weighing last = vessel.weighings().get(vessel.weighings().size() - 1);
        double room = last.balance().capacity().grams() - last.reading().grams();
        if (vessel.kind() == Vessel.Kind.CUP || vessel.emptyGrams() > 0 || room < 0 || room >= LIGHT_VESSEL) {
            return;
        }
        page.paragraph(
                "Look: the " + vessel.name() + " may itself weigh no more than " + Figures.fixed(Math.floor(room), 0)
                        + " g, or balance " + last.balance().name()
                        + " is overloaded. If it is heavier, give its weight, as in --vessels \"" + vessel.name()
                        + ":312g\", and the sheet takes another balance.",
                0);
    }
}
