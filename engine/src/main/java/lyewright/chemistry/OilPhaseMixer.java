package lyewright.chemistry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.AcidShare;
import lyewright.material.FattyAcid;
import lyewright.material.FattyAcidProfile;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;

/** Adds up the acids of one formula's oils, once. */
final class OilPhaseMixer {

    private final ResolvedFormula formula;
    private final Map<FattyAcid, double[]> sums = new TreeMap<>(OilPhaseAcids.BY_SIZE);
    private final Map<String, Double> unknown = new LinkedHashMap<>();
    private final Map<String, Double> waxes = new LinkedHashMap<>();
    private double known;
    private double reckoned;
    private double saponificationValue;
    private double saponificationValueCd3a94;
    private double iodineValue;

    OilPhaseMixer(ResolvedFormula formula) {
        this.formula = formula;
    }

    OilPhaseAcids mix(List<Gap> addedFats) {
        for (OilPart line : formula.oils()) {
            for (OilBlend.Part part : line.parts()) {
                add(part.oil(), line.fraction() * part.fraction());
            }
        }
        return new OilPhaseAcids(
                shares(),
                gaps(unknown),
                addedFats,
                gaps(waxes),
                mean(saponificationValue),
                mean(saponificationValueCd3a94),
                mean(iodineValue));
    }

    private void add(Oil oil, double fraction) {
        if (fraction == 0) {
            return;
        }
        if (!oil.acids().known()) {
            unknown.merge(oil.name(), fraction, Double::sum);
            return;
        }
        known += fraction;
        addAcids(oil.acids(), fraction);
        if (oil.kind() == OilKind.WAX) {
            waxes.merge(oil.name(), fraction, Double::sum);
        } else {
            addValues(oil, fraction);
        }
    }

    private void addAcids(FattyAcidProfile acids, double fraction) {
        double toHundred = 100 / acids.sumOfMiddles();
        for (AcidShare share : acids.acids()) {
            double[] sum = sums.computeIfAbsent(share.acid(), acid -> new double[3]);
            sum[0] += fraction * share.share().low();
            sum[1] += fraction * share.share().middle() * toHundred;
            sum[2] += fraction * share.share().high();
        }
    }

    private void addValues(Oil oil, double fraction) {
        FattyAcidProfile acids = oil.acids();
        boolean free = oil.kind() == OilKind.FATTY_ACID;
        reckoned += fraction;
        saponificationValue += fraction
                * (free
                        ? Stoichiometry.MILLIGRAMS_KOH_PER_MOLE / acids.numberAverageMolarMass()
                        : acids.saponificationValue());
        saponificationValueCd3a94 += fraction
                * (free
                        ? Stoichiometry.MILLIGRAMS_KOH_PER_MOLE / acids.weightAverageMolarMass()
                        : acids.saponificationValueCd3a94());
        iodineValue += fraction * (free ? IodineValue.ofFreeAcids(acids) : IodineValue.ofTriglycerides(acids));
    }

    private List<Share> shares() {
        List<Share> shares = new ArrayList<>(sums.size());
        sums.forEach((acid, sum) -> shares.add(new Share(acid, sum[0] / known, sum[1] / known, sum[2] / known)));
        return shares;
    }

    private static List<Gap> gaps(Map<String, Double> fractions) {
        List<Gap> gaps = new ArrayList<>(fractions.size());
        fractions.forEach((name, fraction) -> gaps.add(new Gap(name, 100 * fraction)));
        return gaps;
    }

    private Optional<Double> mean(double sum) {
        return reckoned == 0 ? Optional.empty() : Optional.of(sum / reckoned);
    }
}
