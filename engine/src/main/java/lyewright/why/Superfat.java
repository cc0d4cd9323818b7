package lyewright.why;

import java.util.Optional;
import lyewright.formula.AcidRule;
import lyewright.makingsheet.MakingSheet;
import lyewright.why.Term.Given;

/** The superfat asked for and the one that the weights make. */
final class Superfat {

    private final Ledger ledger;
    private final MakingSheet sheet;

    private Superfat(Ledger ledger) {
        this.ledger = ledger;
        this.sheet = ledger.sheet();
    }

    static void addTo(Figures figures, Ledger ledger) {
        new Superfat(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        Optional<Double> asked = sheet.askedSuperfatPercent();
        if (asked.isPresent()) {
            figures.add(
                    "superfat.askedPercent",
                    "Superfat asked for",
                    "%",
                    asked.get(),
                    () -> new Account("As it is written in the formula.", asked(ledger)));
        } else {
            figures.absent(
                    "superfat.askedPercent",
                    "Superfat asked for",
                    "%",
                    "The formula gives the alkali, so no superfat is asked for: it follows from the alkali.");
        }
        figures.add(
                "superfat.sheetPercent", "Superfat of the sheet", "%", sheet.sheetSuperfatPercent(), this::ofTheSheet);
        Band.addTo(figures, ledger);
    }

    /** The superfat asked for, in percent. */
    static Given asked(Ledger ledger) {
        return new Given(
                "asked superfat",
                ledger.sheet().askedSuperfatPercent().orElse(0.0),
                "%",
                "share of the oils' equivalents to be left without alkali",
                Sources.FORMULA);
    }

    private Account ofTheSheet() {
        Reacting reacting = Reacting.asWeighed(ledger);
        return new Account(
                        "The share of the oils that finds no alkali, for everything as weighed."
                                + (sheet.askedSuperfatPercent().isPresent()
                                        ? " The alkali is rounded down, so it is not under what was asked."
                                        : ""),
                        percent(reacting.reaching(ledger.lines()), reacting.equivalents(ledger.lines())))
                .note(acids());
    }

    static Term percent(Term reaching, Term equivalents) {
        return Term.number(100).times(Term.number(1).minus(reaching.over(equivalents)));
    }

    private String acids() {
        if (ledger.where(Reacting::takesFirst).isEmpty()) {
            return "";
        }
        return ledger.formula().formula().acidRule() == AcidRule.COMPENSATE
                ? "What acids take was added to the alkali."
                : "What acids take was not added to the alkali, so the superfat rises by it.";
    }
}
