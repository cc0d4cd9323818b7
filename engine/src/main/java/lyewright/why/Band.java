package lyewright.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.SuperfatBand;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.uncertainty.MonteCarlo;
import lyewright.why.Term.Drawn;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** How sure the superfat of the batch or of one portion is: what is drawn, the worst corner, what a certificate would gain. */
final class Band {

    /** Share of the draws that lies below the low end of a 95 % interval. */
    private static final double LOW_END = 0.025;

    private static final double HIGH_END = 0.975;

    private static final String DRAWN =
            "Drawn by Monte Carlo (JCGM 101): all that stands under how sure is drawn anew each time and the superfat reckoned"
                    + " with it. The same sheet always draws the same; another drawing may differ by about "
                    + Digits.figure(SuperfatBand.TOLERANCE)
                    + " points, or a hundredth of the spread where that is more.";

    private static final String CAREFUL = "Of a wax only what surely reacts is counted on.";

    private final Scope scope;
    private final String path;
    private final SuperfatBand band;
    private final Map<String, Oil> waxes = new HashMap<>();

    private Band(Scope scope, String path, SuperfatBand band) {
        this.scope = scope;
        this.path = path;
        this.band = band;
        for (Line line : scope.lines()) {
            if (scope.ledger().isOil(line)) {
                noteWaxes(Contents.oil(scope.ledger(), line));
            }
        }
    }

    private void noteWaxes(OilPart part) {
        for (OilBlend.Part in : part.parts()) {
            if (in.oil().kind() == OilKind.WAX) {
                waxes.put(Contents.saponificationValue(in.oil()).name(), in.oil());
            }
        }
    }

    /** All figures of the batch's band. */
    static void addTo(Figures figures, Ledger ledger) {
        Band batch = new Band(Scope.batch(ledger), "superfat.", ledger.sheet().band());
        batch.addLow(figures);
        batch.addHigh(figures);
        batch.addWorst(figures);
        batch.addChance(figures);
        batch.addDraws(figures);
        Contributions.addTo(figures, ledger);
        batch.addCertificate(figures);
    }

    /** A portion's figures. */
    static void addTo(Figures figures, Scope portion, SuperfatBand band) {
        Band own = new Band(portion, portion.path(), band);
        own.addLow(figures);
        own.addHigh(figures);
        own.addChance(figures);
    }

    private String of() {
        return scope.path().isEmpty() ? "" : ", of " + scope.words();
    }

    private void addLow(Figures figures) {
        figures.add(
                path + "low95Percent",
                "Low end of where the superfat really lies" + of(),
                "%",
                band.lowPercent(),
                () -> end("The chance is 1 in 40 that it is less.", careful(superfat()), LOW_END, band.lowPercent())
                        .note(waxNote()));
    }

    private void addHigh(Figures figures) {
        figures.add(
                path + "high95Percent",
                "High end of where the superfat really lies" + of(),
                "%",
                band.highPercent(),
                () -> end("The chance is 1 in 40 that it is more.", superfat(), HIGH_END, band.highPercent()));
    }

    private void addWorst(Figures figures) {
        figures.add(
                path + "worstPercent",
                "Superfat with everything at its worst at once",
                "%",
                band.worstPercent(),
                this::worst);
    }

    private void addChance(Figures figures) {
        double chance = band.freeAlkaliProbability();
        figures.add(
                path + "freeAlkaliProbability",
                "Chance that alkali is left over" + of(),
                "",
                chance,
                () -> new Account(
                                "The share of the draws in which the superfat is under 0, so that alkali is left over.",
                                new Drawn("chance", careful(superfat()), drawsOf(!waxes.isEmpty()), chance))
                        .note(DRAWN)
                        .note(waxNote()));
    }

    private String waxNote() {
        return waxes.isEmpty() ? "" : CAREFUL;
    }

    private void addDraws(Figures figures) {
        figures.add(path + "draws", "How many times it was drawn", "", (double) band.draws(), this::draws);
    }

    private void addCertificate(Figures figures) {
        Optional<SuperfatBand.Gain> gain = band.certificateGain();
        if (gain.isEmpty()) {
            figures.absent(
                    path + "certificate",
                    "What a certificate would gain",
                    "",
                    "No oil's range comes from tables, so no certificate would narrow it.");
            return;
        }
        String with = " with a certificate for " + gain.get().oil();
        double low = gain.get().lowPercent();
        double high = gain.get().highPercent();
        UnaryOperator<Given> certified = given -> certified(given, gain.get().oil());
        figures.add(
                path + "certificate.low95Percent",
                "Low end" + with,
                "%",
                low,
                () -> certificate(careful((Stage) superfat().put(certified)), LOW_END, low)
                        .note(waxNote()));
        figures.add(
                path + "certificate.high95Percent",
                "High end" + with,
                "%",
                high,
                () -> certificate((Stage) superfat().put(certified), HIGH_END, high));
    }

    /** The superfat as the sheet reckons it, which is what is drawn. */
    private Stage superfat() {
        Reacting reacting = scope.reacting();
        return Superfat.percent(reacting.reaching(scope.lines()), reacting.equivalents(scope.lines()))
                .as("superfat", "%", "with everything as the sheet takes it");
    }

    /** The same with nothing of a wax reacting but the acid that surely does. */
    private Stage careful(Stage superfat) {
        return (Stage) superfat.put(given -> {
            Oil wax = waxes.get(given.name());
            return wax == null ? given : sure(given, wax);
        });
    }

    private static Given sure(Given given, Oil wax) {
        Given plain = given.sure();
        return wax.acidValue()
                .filter(acid -> acid.low() < acid.high())
                .map(acid -> plain.spread(Spread.of(acid, 1)))
                .orElse(plain);
    }

    /** How often it was drawn; empty where it was drawn apart, as often as it took. */
    private List<Term> drawsOf(boolean apart) {
        return apart || !scope.path().isEmpty()
                ? List.of()
                : List.of(Ledger.figure(
                        "draws", path + "draws", (double) band.draws(), "", "how many times it was drawn"));
    }

    private Account end(String sentence, Stage model, double share, double outcome) {
        List<Term> told = new ArrayList<>(List.of(Term.number(share)));
        told.addAll(drawsOf(share == LOW_END && !waxes.isEmpty()));
        return new Account(sentence, new Drawn("below", model, told, outcome)).note(DRAWN);
    }

    private Account draws() {
        Given block = new Given(
                "block", MonteCarlo.BLOCK, "", "draws of one block", "JCGM 101, 7.9.4, for an interval of 95 %");
        Given blocks = new Given(
                "blocks",
                (double) band.draws() / MonteCarlo.BLOCK,
                "",
                "blocks until both ends moved by less than " + Digits.figure(SuperfatBand.TOLERANCE)
                        + " points, or a hundredth of the spread",
                "JCGM 101, 7.9.4; the tolerance is this project's own rule");
        return new Account(
                "As many blocks as it took for the ends to settle, looked at after every few.", blocks.times(block));
    }

    private Account worst() {
        Reacting reacting = scope.reacting();
        List<Line> lines = scope.lines();
        Term alkali = reacting.alkali(lines).put(Band::most);
        Term reaching = lines.stream().noneMatch(Reacting::takesFirst)
                ? alkali
                : Term.call(
                                Function.MAX,
                                Term.number(0),
                                alkali.minus(reacting.taken(lines).put(Band::least)))
                        .as("reaching", "mol", "alkali that reaches the oils");
        return new Account(
                "Every oil takes the least it may and is weighed lightest, every alkali is at its purest and heaviest, all at once.",
                Superfat.percent(reaching, reacting.equivalents(lines).put(Band::least)));
    }

    private static Given least(Given given) {
        return given.spread().map(s -> at(given, s.low(), "at the least", s)).orElse(given);
    }

    private static Given most(Given given) {
        return given.spread().map(s -> at(given, s.high(), "at the most", s)).orElse(given);
    }

    private static Given at(Given given, double end, String which, Spread spread) {
        return new Given(given.name(), end, given.unit(), given.meaning() + ", " + which, spread.source());
    }

    /** An oil's value as exactly known as a certificate gives it. */
    private Given certified(Given given, String oil) {
        var exactness = scope.ledger().tables().practice("certificate-exactness");
        return given.name().equals(Contents.saponificationName(scope.ledger(), oil))
                ? given.spread(Spread.certificate(given.amount(), exactness.high(), exactness.source()))
                : given;
    }

    private static Account certificate(Stage model, double share, double outcome) {
        return new Account(
                        "What it would be with a certificate that says just what the sheet computes with, as exactly as"
                                + " certificates do.",
                        new Drawn("below", model, List.of(Term.number(share)), outcome))
                .note(DRAWN);
    }
}
