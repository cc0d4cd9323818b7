package lyewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.material.Additive;
import lyewright.material.Tables;
import lyewright.why.Term.Given;

/** One sheet as its rules look at it: what is weighed, in the order of the formula, with where it stands on the sheet. */
final class Ledger {

    /** Between what wets something out and that. */
    static final String FOR = " for ";

    private static final String WATER = "water";

    private final MakingSheet sheet;
    private final List<Line> lines = new ArrayList<>();

    Ledger(MakingSheet sheet) {
        this.sheet = sheet;
        for (BatchLine line : sheet.batch().lines()) {
            addWhereWeighed(line);
        }
    }

    /** A line of which there is nothing stands in no vessel. */
    private void addWhereWeighed(BatchLine line) {
        for (int v = 0; v < sheet.vessels().size(); v++) {
            Vessel vessel = sheet.vessels().get(v);
            for (int i = 0; i < vessel.weighings().size(); i++) {
                Weighing weighing = vessel.weighings().get(i);
                if (weighing.line().equals(line)) {
                    lines.add(new Line(line, weighing, "vessels[" + v + "].items[" + i + "]", label(line)));
                }
            }
        }
    }

    /** What a line is called in formulas. */
    String label(BatchLine line) {
        return switch (line.kind()) {
            case OIL -> Labels.of(formula().oils().get(line.place()));
            case WATER -> WATER;
            case ALKALI ->
                formula()
                        .alkali()
                        .stock()
                        .map(stock -> Labels.said(stock.name()))
                        .orElseGet(() -> Alkalis.name(formula().alkaliOf(line.key())));
            case ADDITION -> addition(line);
            case DISPERSING_LIQUID -> liquid(line) + FOR + addition(line);
        };
    }

    private String addition(BatchLine line) {
        return Labels.of(formula().additions().get(line.place()).material());
    }

    private String liquid(BatchLine line) {
        return switch (batch().liquidFrom(line)) {
            case WATER -> WATER;
            case EXTRA -> Labels.of(glycerin());
            case OILS ->
                formula().oils().stream()
                        .filter(part -> part.key().equals(line.key()))
                        .map(Labels::of)
                        .findFirst()
                        .orElse(line.key());
        };
    }

    MakingSheet sheet() {
        return sheet;
    }

    BatchLines batch() {
        return sheet.batch();
    }

    ResolvedFormula formula() {
        return sheet.formula();
    }

    Tables tables() {
        return sheet.formula().tables();
    }

    List<Line> lines() {
        return lines;
    }

    List<Line> where(Predicate<Line> test) {
        return lines.stream().filter(test).toList();
    }

    List<Line> of(Kind kind) {
        return where(line -> line.is(kind));
    }

    /** The glycerin that something may be wetted out with. */
    Additive glycerin() {
        return tables().additive("glycerin").orElseThrow(() -> new IllegalStateException("the tables lack glycerin"));
    }

    boolean isOil(Line line) {
        return batch().isOil(line.line());
    }

    /** Masses as weighed of some lines, added up. */
    Term weighed(List<Line> some) {
        return sum(some, this::weighed);
    }

    Term weighed(Line line) {
        return line.weighed(tables());
    }

    /** The line of a weighing. */
    Line line(Weighing weighing) {
        return lines.stream()
                .filter(line -> line.weighing().equals(weighing))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(weighing.name() + " is no line of the batch"));
    }

    /** All oils before rounding. */
    Term exactOils() {
        return sum(where(this::isOil), Line::exact).as("oils", "g", "all oils before rounding");
    }

    /** Another figure of the sheet, put in. */
    static Given figure(String name, String path, double value, String unit, String meaning) {
        return new Given(name, value, unit, meaning, "", Optional.of(path), Optional.empty());
    }

    static Term sum(List<Line> some, Function<Line, Term> of) {
        return Term.sum(some.stream().map(of).toList());
    }
}
