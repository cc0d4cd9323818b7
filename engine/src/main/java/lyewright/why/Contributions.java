package lyewright.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.SuperfatBand.Contribution;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.material.OilBlend;
import lyewright.uncertainty.Distribution;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/**
 * What the width of the superfat's band hangs on, by straight lines (JCGM 100): what each input moves the superfat by when it
 * moves by itself, squared, against all of them.
 */
final class Contributions {

    /** Middles this near, as a share, are one but for arithmetic. */
    private static final double SAME = 1e-12;

    private final Ledger ledger;
    private final Term reaching;
    private final Term equivalents;
    private final Set<Given> seen = new LinkedHashSet<>();
    private final List<Stage> variances = new ArrayList<>();

    private Contributions(Ledger ledger) {
        this.ledger = ledger;
        Reacting reacting = Reacting.asWeighed(ledger);
        this.reaching = reacting.reaching(ledger.lines()).put(Contributions::middle);
        this.equivalents = reacting.equivalents(ledger.lines()).put(Contributions::middle);
        for (Vessel vessel : ledger.sheet().vessels()) {
            for (Weighing weighing : vessel.weighings()) {
                lay(ledger.line(weighing));
            }
        }
    }

    static void addTo(Figures figures, Ledger ledger) {
        List<Contribution> contributions = ledger.sheet().band().contributions();
        for (int i = 0; i < contributions.size(); i++) {
            add(figures, ledger, i, contributions.get(i));
        }
    }

    private static void add(Figures figures, Ledger ledger, int i, Contribution contribution) {
        String path = "superfat.contributions[" + i + "]";
        figures.called(path, "superfat.contributions." + contribution.input());
        figures.add(
                path + ".percentOfVariance",
                "Share of the superfat's doubt that is the " + contribution.input(),
                "%",
                contribution.percentOfVariance(),
                () -> new Contributions(ledger).account(i));
    }

    private Account account(int i) {
        List<Stage> greatestFirst = variances.stream()
                .sorted(Comparator.comparingDouble((Stage v) -> v.value(new Reckoning(Reckoning.ALL)))
                        .reversed())
                .toList();
        Term all = Term.sum(List.copyOf(variances)).as("variance", "points²", "all of them");
        return new Account(
                        "What this alone moves the superfat by, squared, against all inputs' squares.",
                        Term.percent(greatestFirst.get(i), all))
                .note(
                        "By straight lines around every input's middle (JCGM 100, 5.1): only for shares, not for the band itself.");
    }

    /** In the middle of where it may lie, which need not be what a sheet computes with. */
    private static Given middle(Given given) {
        return given.spread()
                .filter(s -> s.kind() == Spread.Kind.RECTANGULAR)
                .map(s -> (s.low() + s.high()) / 2)
                .filter(middle -> Math.abs(middle - given.amount()) > SAME * middle)
                .map(middle -> new Given(
                        given.name(),
                        middle,
                        given.unit(),
                        given.meaning() + ", in the middle of where it may lie",
                        given.source()))
                .orElse(given);
    }

    private void lay(Line line) {
        if (line.is(Kind.ALKALI)) {
            Given strength = Alkalis.strength(ledger, line);
            Term molarMass = Alkalis.molarMass(Alkalis.of(ledger, line));
            vary(mass(line), alkaliPull().times(middle(strength)).over(molarMass));
            vary(strength, alkaliPull().times(middle(mass(line))).over(molarMass));
        } else if (ledger.isOil(line)) {
            layOil(line, Contents.oil(ledger, line));
        } else if (line.line().equivalents() > 0 || line.line().taken() > 0) {
            vary(mass(line), additionPull(line));
            layAcid(line);
        }
    }

    private Given mass(Line line) {
        return line.weighed(ledger.tables());
    }

    private void layOil(Line line, OilPart part) {
        Term value = Contents.saponificationValue(part).put(Contributions::middle);
        vary(mass(line), oilPull().times(value).over(Reacting.milligramsPerMole()));
        for (OilBlend.Part in : part.parts()) {
            Given ownValue = Contents.saponificationValue(in.oil());
            vary(ownValue, oilPull().times(oilIn(in)).over(Reacting.milligramsPerMole()));
        }
    }

    /** The acid of one thing is one input, in however many portions it is. */
    private void layAcid(Line line) {
        if (line.line().taken() > 0) {
            List<Line> alike = ledger.where(other -> Reacting.takesFirst(other)
                    && other.line().key().equals(line.line().key()));
            vary(
                    Contents.acidOf(ledger, line),
                    alkaliPull()
                            .times(Ledger.sum(alike, this::mass)
                                    .as("all " + line.label(), "g", "all that is weighed of it")));
        }
    }

    /** All that is weighed of one oil, in whatever vessel and premix. */
    private Term oilIn(OilBlend.Part wanted) {
        List<Term> masses = new ArrayList<>();
        for (Line line : ledger.where(ledger::isOil)) {
            OilPart part = Contents.oil(ledger, line);
            for (OilBlend.Part in : part.parts()) {
                if (in.oil().key().equals(wanted.oil().key())) {
                    masses.add(
                            part.parts().size() == 1 ? mass(line) : mass(line).times(Contents.share(part, in)));
                }
            }
        }
        return Term.sum(masses).as("all " + Labels.of(wanted.oil()), "g", "all that is weighed of it");
    }

    /** Points that a mole of alkali takes off. */
    private Term alkaliPull() {
        return Term.number(100).over(equivalents).as("pull of alkali", "points/mol", "what a mole of alkali takes off");
    }

    /** Points that a mole of oil adds. */
    private Term oilPull() {
        return alkaliPull()
                .times(reaching)
                .over(equivalents)
                .as("pull of oil", "points/mol", "what a mole of oil adds");
    }

    private Term additionPull(Line line) {
        Term fat = oilPull().times(Contents.fat(ledger, line)).over(Reacting.milligramsPerMole());
        Term acid = alkaliPull().times(Contents.acidOf(ledger, line));
        if (line.line().taken() == 0) {
            return fat;
        }
        return line.line().equivalents() == 0 ? acid : fat.plus(acid);
    }

    /** What an input adds to the variance: its pull and its own spread, both squared. */
    private void vary(Given given, Term pull) {
        if (given.spread().isEmpty() || !seen.add(given)) {
            return;
        }
        Stage pulled = pull.as("pull of " + given.name(), "points", "what one unit of it changes");
        variances.add(pulled.times(pulled)
                .times(square(given, given.spread().get()))
                .as("from " + given.name(), "points²", "variance by " + given.name()));
    }

    private static Term square(Given given, Spread spread) {
        return switch (spread.kind()) {
            case RECTANGULAR -> {
                Term width =
                        width(given, spread.high() - spread.low(), "width of ", "from end to end of where it may lie");
                yield width.times(width).over(Term.number(12));
            }
            case NORMAL -> {
                Term half = width(given, (spread.high() - spread.low()) / 2, "reach of ", "half of its 95 % interval")
                        .over(ends95());
                yield half.times(half);
            }
            case TRAPEZOIDAL -> {
                double all = (spread.high() - spread.low()) / 2;
                double even = (spread.evenHigh() - spread.evenLow()) / 2;
                Term one = width(
                        given,
                        (all + even) / 2,
                        "wider half of ",
                        "of the balance's error and half its step the larger");
                Term other = width(given, (all - even) / 2, "narrower half of ", "the smaller of them");
                yield one.times(one).plus(other.times(other)).over(Term.number(3));
            }
        };
    }

    private static Term width(Given given, double width, String name, String meaning) {
        String source = given.spread().map(Spread::source).orElse("");
        return new Given(name + given.name(), width, given.unit(), meaning, source);
    }

    private static Given ends95() {
        return new Given(
                "ends of 95 %",
                Distribution.NORMAL_95,
                "",
                "standard deviations that hold 95 % of a normal distribution",
                "any table of it");
    }
}
