package lyewright.records.equipment;

import java.util.Optional;
import lyewright.chemistry.BatchLines;
import lyewright.fill.CutPlan;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.formula.FormulaFile;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.measure.Length;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;

/**
 * A mould of the workshop.
 *
 * @param id its id
 * @param name what it is called
 * @param measures what is known of it
 * @param usualText the formula file of the version that its usual mass was measured with, if there is one
 */
public record KeptMould(String id, String name, MouldMeasures measures, Optional<String> usualText) {

    /** Its shape, if it was measured. */
    public Optional<Shape> shape() {
        return measures.inside().map(KeptMould::shape);
    }

    private static Shape shape(MouldMeasures.Inside inside) {
        if (inside instanceof MouldMeasures.Loaf loaf) {
            return new Shape.Loaf(mm(loaf.length()), mm(loaf.width()), mm(loaf.height()));
        }
        if (inside instanceof MouldMeasures.Slab slab) {
            return new Shape.Slab(mm(slab.length()), mm(slab.width()), mm(slab.height()));
        }
        if (inside instanceof MouldMeasures.Tube tube) {
            return new Shape.Tube(mm(tube.length()), mm(tube.diameter()));
        }
        MouldMeasures.Cavities cavities = (MouldMeasures.Cavities) inside;
        return new Shape.Cavities(cavities.count(), cavities.each().millilitres());
    }

    /** How what comes out is cut, if it is. */
    public Optional<CutPlan> cutPlan() {
        return measures.cut()
                .map(cut -> new CutPlan(
                        mm(cut.thickness()),
                        cut.across().map(KeptMould::mm),
                        cut.blade().map(KeptMould::mm).orElse(0.0),
                        cut.ends().map(KeptMould::mm).orElse(0.0),
                        cut.trim().map(KeptMould::mm).orElse(0.0)));
    }

    /**
     * The mould to compute with.
     *
     * @param tables for the formula that its usual mass was measured with
     * @param purities of the alkalis at hand
     * @return the mould, or why that formula cannot be laid out any more
     */
    public Outcome<Mould> mould(Tables tables, Purities purities) {
        Optional<Double> water = measures.waterFill().map(WrittenMass::grams);
        if (measures.usual().isEmpty() || usualText.isEmpty()) {
            return Outcome.ok(new Mould(shape(), water, Optional.empty()));
        }
        double grams = measures.usual().get().mass().grams();
        FormulaFile.Read read = FormulaFile.read(usualText.get());
        if (read.formula().isEmpty()) {
            return new Outcome.Refused<>(read.problems());
        }
        return ResolvedFormula.of(read.formula().get(), tables, purities)
                .then(BatchLines::of)
                .then(lines -> Outcome.ok(new Mould(shape(), water, Optional.of(new Mould.Usual(grams, lines)))));
    }

    private static double mm(Length length) {
        return length.millimetres();
    }
}
