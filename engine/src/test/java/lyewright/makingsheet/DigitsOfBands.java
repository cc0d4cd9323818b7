package lyewright.makingsheet;

import java.util.List;
import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;

/** A program that prints every bit of some sheets' bands, to be run on machines of other sizes. */
final class DigitsOfBands {

    private DigitsOfBands() {}

    /** Prints, and says on how many processors. */
    public static void main(String[] args) {
        System.out.println(Runtime.getRuntime().availableProcessors());
        System.out.println(all());
    }

    static String all() {
        MakingSheet kitchen = AFormula.ofOils(
                        "olive-virgin", "65 %", "coconut", "25 %", "castor", "5 %", "beeswax", "5 %")
                .superfat("3 %")
                .puritiesAssumed()
                .portions("plain", "60 %", "clay", "rest")
                .add("kaolin", "20 g per kg portion oils", "portion clay")
                .dispersed("oil", "2 to 1")
                .sheet(Fill.mouldMass(1500));
        MakingSheet soft = AFormula.ofOils("coconut", "100 %")
                .own(HouseMaterials.certificate("coconut", "256.5 ± 2"))
                .mixed("70 %", "30 %", AlkaliChoice.Basis.PURE_MASS)
                .puritiesAssumed()
                .superfat("1 %")
                .sheet(Fill.oilMass(300));
        StringBuilder digits = new StringBuilder();
        for (SuperfatBand band : List.of(
                kitchen.band(),
                kitchen.portions().get(0).band(),
                kitchen.portions().get(1).band(),
                soft.band())) {
            digits.append(digits(band));
        }
        return digits.toString();
    }

    private static String digits(SuperfatBand band) {
        StringBuilder digits = new StringBuilder()
                .append(band.draws())
                .append(' ')
                .append(Double.toHexString(band.lowPercent()))
                .append(' ')
                .append(Double.toHexString(band.highPercent()))
                .append(' ')
                .append(Double.toHexString(band.worstPercent()))
                .append(' ')
                .append(Double.toHexString(band.freeAlkaliProbability()));
        band.contributions().forEach(c -> digits.append(' ').append(Double.toHexString(c.percentOfVariance())));
        band.certificateGain().ifPresent(g -> digits.append(' ').append(Double.toHexString(g.lowPercent())));
        return digits.append(' ').append(band.sentence()).append(';').toString();
    }
}
