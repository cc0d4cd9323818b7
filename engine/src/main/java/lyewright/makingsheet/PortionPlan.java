package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.formula.ResolvedFormula.PortionPart;
import lyewright.makingsheet.PortionSheet.PortionAddition;

/** Shares the base batter out and adds what each portion gets. */
final class PortionPlan {

    private PortionPlan() {}

    static List<PortionSheet> of(BatchLines batch, double[] weighed, List<Vessel> vessels, Equipment equipment) {
        List<PortionPart> parts = batch.formula().portions();
        if (parts.isEmpty()) {
            return List.of();
        }
        Sums base = new Sums(batch);
        double allOils = batch.oilsIn(weighed);
        for (int i = 0; i < weighed.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.inBaseBatter()) {
                base.add(line, weighed[i]);
            }
        }
        List<PortionSheet> sheets = new ArrayList<>(parts.size());
        for (int p = 0; p < parts.size(); p++) {
            sheets.add(portion(batch, weighed, vessels, p, base, allOils, equipment));
        }
        return sheets;
    }

    private static PortionSheet portion(
            BatchLines batch,
            double[] weighed,
            List<Vessel> vessels,
            int p,
            Sums base,
            double allOils,
            Equipment equipment) {
        PortionPart part = batch.formula().portions().get(p);
        double empty = equipment.vesselGrams("jug " + part.name());
        Sums sums = base.times(part.fraction());
        double baseGrams = sums.grams;
        double portionOils = allOils * part.fraction();
        List<PortionAddition> additions = new ArrayList<>(4);
        for (int i = 0; i < weighed.length; i++) {
            BatchLine line = batch.lines().get(i);
            if (line.portion() != p) {
                continue;
            }
            sums.add(line, weighed[i]);
            if (line.kind() == Kind.ADDITION) {
                double liquid = liquidAfter(batch, weighed, i);
                additions.add(new PortionAddition(
                        line.key(),
                        weighed[i],
                        liquid,
                        1000 * weighed[i] / allOils,
                        1000 * weighed[i] / portionOils,
                        empty + sums.grams + liquid));
            }
        }
        return new PortionSheet(
                part.name(),
                100 * part.fraction(),
                empty,
                baseGrams,
                sums.oils,
                sums.water,
                sums.superfatPercent(),
                new SuperfatBand(batch, vessels, p, sums.superfatPercent()),
                additions,
                sums.grams);
    }

    private static double liquidAfter(BatchLines batch, double[] weighed, int i) {
        return i + 1 < weighed.length && batch.lines().get(i + 1).kind() == Kind.DISPERSING_LIQUID ? weighed[i + 1] : 0;
    }

    /** What a batter holds so far. */
    private static final class Sums {
        private final BatchLines batch;
        private double grams;
        private double oils;
        private double water;
        private double equivalents;
        private double taken;
        private double alkali;

        Sums(BatchLines batch) {
            this.batch = batch;
        }

        void add(BatchLine line, double mass) {
            grams += mass;
            oils += batch.isOil(line) ? mass : 0;
            water += mass * line.water();
            equivalents += mass * line.equivalents();
            taken += mass * line.taken();
            alkali += mass * line.alkali();
        }

        double superfatPercent() {
            return 100 * (1 - Math.max(0, alkali - taken) / equivalents);
        }

        Sums times(double fraction) {
            Sums part = new Sums(batch);
            part.grams = grams * fraction;
            part.oils = oils * fraction;
            part.water = water * fraction;
            part.equivalents = equivalents * fraction;
            part.taken = taken * fraction;
            part.alkali = alkali * fraction;
            return part;
        }
    }
}
