package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.Stoichiometry;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.material.ReckonedValue;
import lyewright.uncertainty.Distribution;
import lyewright.uncertainty.Input;
import lyewright.uncertainty.Model;

/**
 * The superfat of a sheet, or of one portion of it, as a function of everything uncertain that it hangs on: the
 * saponification value of each oil, how much of a wax reacts, the purity of each alkali, and what each weighing may be off.
 * What takes no part in the alkali (water, salt, clay) is left out. One oil in several vessels has one saponification value.
 */
final class SuperfatModel implements Model {

    /** Which way an input lies when the bar is at its most caustic. */
    private enum Worst {
        LEAST,
        MOST
    }

    private final BatchLines batch;
    private final ResolvedFormula formula;
    private final List<Input> inputs = new ArrayList<>();
    private final List<Worst> worst = new ArrayList<>();
    private final List<Double> sheetValues = new ArrayList<>();
    private final Map<String, OilInput> oils = new LinkedHashMap<>();
    private final Map<String, Integer> strengths = new LinkedHashMap<>();

    private final Terms oilTerms = new Terms();
    private final Terms fatTerms = new Terms();
    private final Terms takenTerms = new Terms();
    private final Terms alkaliTerms = new Terms();

    /**
     * Of a whole sheet or of one portion.
     *
     * @param batch the sheet's lines
     * @param vessels its weighings
     * @param portion which portion, -1 for the whole batch
     */
    SuperfatModel(BatchLines batch, List<Vessel> vessels, int portion) {
        this.batch = batch;
        this.formula = batch.formula();
        for (Vessel vessel : vessels) {
            for (Weighing weighing : vessel.weighings()) {
                double share = batch.shareIn(portion, weighing.line());
                if (share > 0) {
                    lay(weighing, share);
                }
            }
        }
        oilTerms.close();
        fatTerms.close();
        takenTerms.close();
        alkaliTerms.close();
    }

    /** An oil and the place of its saponification value among the inputs. */
    record OilInput(Oil oil, int place) {

        /** Whether a certificate could narrow it: a range of the tables, and no wax, whose range is what may react. */
        boolean wantsCertificate() {
            return oil.kind() != OilKind.WAX
                    && oil.reckoned().basis() != ReckonedValue.Basis.CERTIFICATE
                    && oil.saponificationValue().spread() != Figure.Spread.EXACT;
        }
    }

    private void lay(Weighing weighing, double share) {
        BatchLine line = weighing.line();
        if (line.kind() == BatchLine.Kind.ALKALI) {
            Alkali alkali = formula.alkaliOf(line.key());
            alkaliTerms.add(weighed(weighing, Worst.MOST), strength(alkali), share / 100 / alkali.molarMass());
        } else if (batch.isOil(line)) {
            int mass = weighed(weighing, Worst.LEAST);
            for (OilBlend.Part part : oilPart(line).parts()) {
                double factor = share * part.fraction() / Stoichiometry.MILLIGRAMS_KOH_PER_MOLE;
                oilTerms.add(mass, saponificationValue(part.oil()), factor);
            }
        } else if (line.equivalents() > 0 || line.taken() > 0) {
            int mass = weighed(weighing, Worst.LEAST);
            fatTerms.add(mass, mass, share * line.equivalents());
            takenTerms.add(mass, mass, share * line.taken());
        }
    }

    private OilPart oilPart(BatchLine line) {
        if (line.kind() == BatchLine.Kind.OIL) {
            return formula.oils().get(line.place());
        }
        DispersingLiquid liquid = formula.additions().get(line.place()).liquid().orElseThrow();
        return formula.oils().get(liquid.oil());
    }

    private int weighed(Weighing weighing, Worst direction) {
        double permitted =
                weighing.balance().permittedErrorGrams(weighing.reading().grams(), formula.tables());
        double grams = weighing.weigh().grams();
        return input(
                "weighing of " + inSentence(weighing.name())
                        + (weighing.portion().isEmpty() ? "" : " for " + weighing.portion()),
                new Distribution.Trapezoidal(
                        grams, permitted, weighing.balance().stepGrams() / 2),
                direction,
                grams);
    }

    private int saponificationValue(Oil oil) {
        OilInput known = oils.get(oil.key());
        if (known != null) {
            return known.place();
        }
        boolean wax = oil.kind() == OilKind.WAX;
        int place = input(
                (wax ? "how much reacts of " : "saponification value of ") + inSentence(oil.name()),
                wax ? ofWax(oil) : Distribution.of(oil.saponificationValue()),
                Worst.LEAST,
                oil.reckoned().milligramsKohPerGram());
        oils.put(oil.key(), new OilInput(oil, place));
        return place;
    }

    /** Of a wax nothing is sure but the least of its free acid; all of it may react. */
    private static Distribution ofWax(Oil oil) {
        return new Distribution.Rectangular(
                oil.acidValue().map(Figure::low).orElse(0.0),
                oil.saponificationValue().high());
    }

    private int strength(Alkali alkali) {
        Integer known = strengths.get(alkali.key());
        if (known != null) {
            return known;
        }
        Figure figure = formula.alkali().stock().isPresent()
                ? formula.alkali().stock().get().strength()
                : formula.purities().figure(alkali);
        String name = formula.alkali().stock().isPresent()
                ? "strength of " + formula.alkali().stock().get().name()
                : "purity of " + (alkali == Alkali.SODIUM ? "sodium hydroxide" : "potassium hydroxide");
        int place = input(name, Distribution.of(figure), Worst.MOST, figure.middle());
        strengths.put(alkali.key(), place);
        return place;
    }

    private int input(String name, Distribution distribution, Worst direction, double sheetValue) {
        inputs.add(new Input(name, distribution));
        worst.add(direction);
        sheetValues.add(sheetValue);
        return inputs.size() - 1;
    }

    /** A name within a sentence: its first letter small, unless it is a maker's own, which is kept. */
    static String inSentence(String name) {
        return name.isEmpty() ? name : Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    List<Input> inputs() {
        return inputs;
    }

    /** Its oils and where their values stand among the inputs. */
    Collection<OilInput> oils() {
        return oils.values();
    }

    /** What the sheet computes with, by input. */
    double[] sheetValues() {
        return sheetValues.stream().mapToDouble(v -> v).toArray();
    }

    @Override
    public double at(double[] x) {
        double equivalents = fatTerms.addTo(oilTerms.addProductsTo(0, x), x);
        double taken = takenTerms.addTo(0, x);
        return superfat(equivalents, alkaliTerms.addProductsTo(0, x) - taken);
    }

    private static double superfat(double equivalents, double reaching) {
        return 100 * (1 - Math.max(0, reaching) / equivalents);
    }

    /** Term by term, which the processor does for several sets at a time. */
    @Override
    public Columns columns(int most) {
        double[] equivalents = new double[most];
        double[] taken = new double[most];
        double[] alkali = new double[most];
        return (x, sets, outputs) -> {
            Arrays.fill(equivalents, 0, sets, 0);
            Arrays.fill(taken, 0, sets, 0);
            Arrays.fill(alkali, 0, sets, 0);
            oilTerms.addProductsTo(equivalents, x, sets);
            fatTerms.addTo(equivalents, x, sets);
            takenTerms.addTo(taken, x, sets);
            alkaliTerms.addProductsTo(alkali, x, sets);
            for (int set = 0; set < sets; set++) {
                outputs[set] = superfat(equivalents[set], alkali[set] - taken[set]);
            }
        };
    }

    /** The superfat with every input at its most caustic, normal ones so many standard deviations off. */
    double worstCorner(double deviations) {
        double[] x = new double[inputs.size()];
        for (int i = 0; i < x.length; i++) {
            Distribution d = inputs.get(i).distribution();
            x[i] = worst.get(i) == Worst.MOST ? d.most(deviations) : d.least(deviations);
        }
        return at(x);
    }
}
