package lyewright.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lyewright.chemistry.BatchLine;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.Stage;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Weighing;

/** A sheet's weighings, looked at by where they go instead of by vessel. Immutable. */
public final class SheetView {

    private final MakingSheet sheet;
    private final List<Weighing> all;

    public SheetView(MakingSheet sheet) {
        this.sheet = sheet;
        this.all = sheet.vessels().stream()
                .flatMap(vessel -> vessel.weighings().stream())
                .toList();
    }

    public MakingSheet sheet() {
        return sheet;
    }

    public ResolvedFormula formula() {
        return sheet.formula();
    }

    public List<Weighing> all() {
        return all;
    }

    public List<Weighing> where(Predicate<BatchLine> test) {
        return all.stream().filter(w -> test.test(w.line())).toList();
    }

    /** Whether a line is an oil: for the pot, or to wet something out with. */
    public static boolean isOil(BatchLine line) {
        return line.kind() == BatchLine.Kind.OIL
                || (line.kind() == BatchLine.Kind.DISPERSING_LIQUID && line.equivalents() > 0);
    }

    /** What is weighed for one stage outside portions, additions and their liquids, in the order of making. */
    public List<Weighing> additionsAt(Stage.Kind stage) {
        return inOrder(where(
                line -> line.stage().kind() == stage && line.portion() < 0 && line.kind() == BatchLine.Kind.ADDITION));
    }

    /** What goes into one portion, without liquids, in the order of making. */
    public List<Weighing> additionsOf(int portion) {
        return inOrder(where(line -> line.portion() == portion && line.kind() == BatchLine.Kind.ADDITION));
    }

    /** Vessels come in the order of weighing; making follows the order of the formula. */
    private static List<Weighing> inOrder(List<Weighing> weighings) {
        return weighings.stream()
                .sorted(Comparator.comparingInt(w -> w.line().place()))
                .toList();
    }

    /** The liquid an addition is wetted out with. */
    public Optional<Weighing> liquidOf(Weighing addition) {
        return all.stream()
                .filter(w -> w.line().kind() == BatchLine.Kind.DISPERSING_LIQUID
                        && w.line().place() == addition.line().place()
                        && w.line().portion() == addition.line().portion())
                .findFirst();
    }

    /** An addition and its liquid, if it has one. */
    public List<Weighing> withLiquid(Weighing addition) {
        List<Weighing> both = new ArrayList<>(List.of(addition));
        liquidOf(addition).ifPresent(both::add);
        return both;
    }
}
