package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.Stoichiometry;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.material.ReckonedValue;
import lyewright.material.StockLye;
import lyewright.material.Tables;
import lyewright.uncertainty.Distribution;
import lyewright.uncertainty.Input;
import lyewright.uncertainty.Model;

/**
 * The superfat of a sheet, or of one portion of it, as a function of everything uncertain that it hangs on: the
 * saponification value of each oil, how much of a wax reacts, the purity of each alkali, the acid of juices and milks, and
 * what each weighing may be off.
 * What takes no part in the alkali (water, salt, clay) is left out. One oil in several vessels has one saponification value.
 */
final class SuperfatModel implements Model {

    /** Which way an input lies when the bar is at its most caustic. */
    private enum Worst {
        LEAST,
        MOST
    }

    /** What an input is about. */
    enum About {
        /** What a balance may be off. */
        WEIGHING,
        /** The saponification value of an oil. */
        OIL,
        /** How much of a wax reacts. */
        WAX,
        /** The acid of a juice or a milk. */
        ACID,
        /** The purity of an alkali. */
        PURITY,
        /** The strength of a stock lye. */
        STRENGTH
    }

    private static final String CERTIFICATE = "certificate-exactness";

    /** Kinds of additions whose acid nature makes, not a works. */
    private static final Set<AdditiveKind> NATURAL = Set.of(AdditiveKind.LIQUID, AdditiveKind.MILK);

    /** Kinds whose acid is a substance with a formula; of the rest, such as rosin, nobody says how sure it is. */
    private static final Set<AdditiveKind> PURE =
            Set.of(AdditiveKind.ACID, AdditiveKind.ALKALI_SALT, AdditiveKind.CHELATOR, AdditiveKind.SALT);

    private final BatchLines batch;
    private final ResolvedFormula formula;
    private final List<Input> inputs = new ArrayList<>();
    private final List<About> about = new ArrayList<>();
    private final List<Worst> worst = new ArrayList<>();
    private final List<Double> sheetValues = new ArrayList<>();
    private final Map<String, OilInput> oils = new LinkedHashMap<>();
    private final Map<String, Integer> strengths = new LinkedHashMap<>();
    private final Map<String, Integer> acids = new LinkedHashMap<>();
    private final List<String> takenAsExact = new ArrayList<>();

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
            if (line.taken() > 0) {
                takenTerms.add(mass, acid(line), share * line.taken());
            }
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
        return input(
                About.WEIGHING,
                "weighing of " + Names.inSentence(weighing.name()) + whatFor(weighing),
                weighing.reallyWeighed(formula.tables()),
                direction,
                weighing.weigh().grams());
    }

    /** Tells two weighings of one thing apart: by what it wets out, by the portion, by the stage. */
    private String whatFor(Weighing weighing) {
        BatchLine line = weighing.line();
        String wetting = line.kind() == BatchLine.Kind.DISPERSING_LIQUID
                ? " to wet out "
                        + Names.inSentence(
                                formula.additions().get(line.place()).material().name())
                : "";
        if (!weighing.portion().isEmpty()) {
            return wetting + " for " + weighing.portion();
        }
        boolean addedTwice = line.kind() == BatchLine.Kind.ADDITION
                && formula.additions().stream()
                                .filter(a -> a.written().of().equals(line.key()))
                                .count()
                        > 1;
        return addedTwice ? " at stage " + line.stage() : wetting;
    }

    private int saponificationValue(Oil oil) {
        OilInput known = oils.get(oil.key());
        if (known != null) {
            return known.place();
        }
        boolean wax = oil.kind() == OilKind.WAX;
        int place = input(
                wax ? About.WAX : About.OIL,
                (wax ? "how much reacts of " : "saponification value of ") + Names.inSentence(oil.name()),
                wax ? allOfWax(oil) : ofOil(oil),
                Worst.LEAST,
                oil.reckoned().milligramsKohPerGram());
        oils.put(oil.key(), new OilInput(oil, place));
        return place;
    }

    /** A single value is taken as exact, but said to be, unless it is computed from atomic weights. */
    private Distribution ofOil(Oil oil) {
        Figure value = oil.saponificationValue();
        if (value.spread() == Figure.Spread.EXACT && !value.source().contains("computed")) {
            takenAsExact.add("saponification value of " + Names.inSentence(oil.name()));
        }
        return Distribution.of(value);
    }

    /** Nothing of a wax is sure but the least of its free acid; all of it may react. */
    private static Distribution allOfWax(Oil oil) {
        return new Distribution.Rectangular(
                oil.acidValue().map(Figure::low).orElse(0.0),
                oil.saponificationValue().high());
    }

    /** What of a wax surely reacts, which is all that may be counted on: its free acid. */
    private static Distribution sureOfWax(Oil oil) {
        return oil.acidValue().map(Distribution::of).orElse(new Distribution.Exact(0));
    }

    /** How far the acid of what goes in differs from its figure: nothing for a pure acid, much for juices and milks. */
    private int acid(BatchLine line) {
        Integer known = acids.get(line.key());
        if (known != null) {
            return known;
        }
        Additive material = formula.additions().get(line.place()).material();
        Tables.Practice usual = formula.tables().practice("acid-of-liquids");
        String name = "acid of " + Names.inSentence(material.name());
        boolean natural = NATURAL.contains(material.kind());
        if (!natural && !PURE.contains(material.kind())) {
            takenAsExact.add(name);
        }
        int place = input(
                About.ACID,
                name,
                natural
                        ? new Distribution.Rectangular(usual.low() / 100, usual.high() / 100)
                        : new Distribution.Exact(1),
                Worst.LEAST,
                1);
        acids.put(line.key(), place);
        return place;
    }

    private int strength(Alkali alkali) {
        Integer known = strengths.get(alkali.key());
        if (known != null) {
            return known;
        }
        Optional<StockLye> stock = formula.alkali().stock();
        Figure figure =
                stock.isPresent() ? stock.get().strength() : formula.purities().figure(alkali);
        String name = stock.isPresent()
                ? "strength of " + stock.get().name()
                : "purity of " + (alkali == Alkali.SODIUM ? "sodium hydroxide" : "potassium hydroxide");
        if (figure.spread() == Figure.Spread.EXACT) {
            takenAsExact.add(name);
        }
        int place = input(
                stock.isPresent() ? About.STRENGTH : About.PURITY,
                name,
                Distribution.of(figure),
                Worst.MOST,
                figure.middle());
        strengths.put(alkali.key(), place);
        return place;
    }

    private int input(About what, String name, Distribution distribution, Worst direction, double sheetValue) {
        about.add(what);
        inputs.add(new Input(name, distribution));
        worst.add(direction);
        sheetValues.add(sheetValue);
        return inputs.size() - 1;
    }

    List<Input> inputs() {
        return inputs;
    }

    /** What they are about, by input. */
    List<About> about() {
        return about;
    }

    /** Its oils and where their values stand among the inputs. */
    Collection<OilInput> oils() {
        return oils.values();
    }

    /** What the sheet computes with, by input. */
    double[] sheetValues() {
        return sheetValues.stream().mapToDouble(v -> v).toArray();
    }

    /** Whether there is wax in it. */
    boolean hasWax() {
        return oils.values().stream().anyMatch(o -> o.oil().kind() == OilKind.WAX);
    }

    /** The same inputs with nothing of a wax reacting but what surely does. */
    List<Input> withoutWaxReacting(List<Input> some) {
        List<Input> careful = new ArrayList<>(some);
        for (OilInput oil : oils.values()) {
            if (oil.oil().kind() == OilKind.WAX) {
                careful.set(oil.place(), new Input(some.get(oil.place()).name(), sureOfWax(oil.oil())));
            }
        }
        return careful;
    }

    /** The same inputs with certificates for some oils, which say what the sheet computes with, as exactly as they do. */
    List<Input> certified(Collection<OilInput> some) {
        double reach = formula.tables().practice(CERTIFICATE).high();
        List<Input> certified = new ArrayList<>(inputs);
        for (OilInput oil : some) {
            double value = oil.oil().reckoned().milligramsKohPerGram();
            certified.set(
                    oil.place(),
                    new Input(
                            inputs.get(oil.place()).name(),
                            Distribution.fromCertificate(value, reach, Distribution.NORMAL_95)));
        }
        return certified;
    }

    /** What is taken as exact because nobody says how sure it is. */
    List<String> takenAsExact() {
        return takenAsExact;
    }

    @Override
    public double at(double[] x) {
        double equivalents = fatTerms.addTo(oilTerms.addProductsTo(0, x), x);
        double taken = takenTerms.addProductsTo(0, x);
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
            takenTerms.addProductsTo(taken, x, sets);
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
