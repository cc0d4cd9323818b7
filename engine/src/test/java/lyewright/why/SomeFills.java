package lyewright.why;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.chemistry.BatchLines;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Moulds;
import lyewright.fill.Shape;
import lyewright.makingsheet.AFormula;

/** Every way of saying how much, one of them at a time. */
final class SomeFills {

    private static final Mould.Usual USUAL = new Mould.Usual(1520, plain());

    private static final Shape LOAF = new Shape.Loaf(300, 80, 65);
    private static final Shape SLAB = new Shape.Slab(300, 240, 30);
    private static final Shape TUBE = new Shape.Tube(300, 76);
    private static final Shape CAVITIES = new Shape.Cavities(12, 95);

    private static final CutPlan CUT = CutPlan.parse("25mm").orThrow();
    private static final CutPlan GRID = CutPlan.parse("60x80mm").orThrow();

    private static final List<Fill> FILLS = List.of(
            Fill.AS_WRITTEN,
            Fill.oilMass(1000),
            Fill.mouldMass(987.6),
            Moulds.fullOf(Moulds.of(LOAF)),
            Moulds.fullOf(Moulds.of(SLAB)),
            Moulds.fullOf(Moulds.of(TUBE)),
            Moulds.fullOf(Moulds.of(CAVITIES)),
            cut(LOAF, CUT.losing(1, 5, 3)),
            cut(LOAF, CUT),
            cut(TUBE, CUT.losing(1.5, 4, 0)),
            cut(SLAB, GRID.losing(0.7, 2, 1.5)),
            cut(SLAB, CUT.losing(1, 0, 2)),
            Moulds.fullOf(Moulds.waterFill(1450)),
            Moulds.fullOf(new Mould(Optional.of(LOAF), Optional.of(1450.0), Optional.of(USUAL))),
            bars(10, 110, false, Mould.UNKNOWN, Optional.empty()),
            bars(10, 110, true, Mould.UNKNOWN, Optional.empty()),
            bars(12, 93.7, true, Moulds.of(CAVITIES), Optional.empty()),
            bars(12, 101, false, Moulds.of(LOAF), Optional.of(CUT)),
            bars(12, 101, true, Moulds.of(LOAF), Optional.of(CUT.losing(0, 0, 4))));

    private SomeFills() {}

    static Fill of(Random random) {
        Fill fill = FILLS.get(random.nextInt(FILLS.size()));
        return random.nextInt(3) == 0 ? fill.holdingBack(0.02) : fill;
    }

    private static Fill cut(Shape shape, CutPlan plan) {
        return new Fill(new Fill.FullMould(), Moulds.of(shape), Optional.of(plan), 0);
    }

    private static Fill bars(int count, double grams, boolean cured, Mould mould, Optional<CutPlan> cut) {
        return new Fill(new Fill.Bars(count, grams, cured), mould, cut, 0);
    }

    private static BatchLines plain() {
        return AFormula.ofOils("coconut", "25 %", "olive-virgin", "rest")
                .superfat("6 %")
                .add("lavender-oil", "20 g", "trace")
                .batch();
    }
}
