package lyewright.why;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lyewright.makingsheet.SuperfatBand;
import lyewright.uncertainty.MonteCarlo;
import lyewright.why.Term.Drawn;
import lyewright.why.Term.Given;
import lyewright.why.Term.Stage;

/** How sure the superfat is: what is drawn, the worst corner, and what a certificate would gain. */
final class Band {

    /** Share of the draws that lies below the low end of a 95 % interval. */
    private static final double LOW_END = 0.025;

    private static final double HIGH_END = 0.975;

    private static final String DRAWN =
            "Drawn by Monte Carlo (JCGM 101): all that stands under how sure is drawn anew each time and the superfat reckoned"
                    + " with it. The same sheet always draws the same; another drawing may differ by about "
                    + Digits.figure(SuperfatBand.TOLERANCE) + " points.";

    private final Ledger ledger;
    private final SuperfatBand band;

    private Band(Ledger ledger) {
        this.ledger = ledger;
        this.band = ledger.sheet().band();
    }

    static void addTo(Figures figures, Ledger ledger) {
        new Band(ledger).addTo(figures);
    }

    private void addTo(Figures figures) {
        figures.add(
                "superfat.low95Percent",
                "Low end of where the superfat really lies",
                "%",
                band.lowPercent(),
                () -> end("In 1 batch of 40 it is less than this.", LOW_END, band.lowPercent()));
        figures.add(
                "superfat.high95Percent",
                "High end of where the superfat really lies",
                "%",
                band.highPercent(),
                () -> end("In 1 batch of 40 it is more than this.", HIGH_END, band.highPercent()));
        figures.add(
                "superfat.worstPercent",
                "Superfat with everything at its worst at once",
                "%",
                band.worstPercent(),
                this::worst);
        figures.add(
                "superfat.freeAlkaliProbability",
                "Chance that alkali is left over",
                "",
                band.freeAlkaliProbability(),
                this::chance);
        figures.add("superfat.draws", "How many times it was drawn", "", (double) band.draws(), this::draws);
        Contributions.addTo(figures, ledger);
        addCertificate(figures);
    }

    private void addCertificate(Figures figures) {
        Optional<SuperfatBand.Gain> gain = band.certificateGain();
        if (gain.isEmpty()) {
            figures.absent(
                    "superfat.certificate",
                    "What a certificate would gain",
                    "",
                    "No oil's range comes from tables, so no certificate would narrow it.");
            return;
        }
        String with = " with a certificate for " + gain.get().oil();
        double low = gain.get().lowPercent();
        double high = gain.get().highPercent();
        figures.add(
                "superfat.certificate.low95Percent",
                "Low end" + with,
                "%",
                low,
                () -> certificate(gain.get().oil(), LOW_END, low));
        figures.add(
                "superfat.certificate.high95Percent",
                "High end" + with,
                "%",
                high,
                () -> certificate(gain.get().oil(), HIGH_END, high));
    }

    /** The superfat as the sheet reckons it, which is what is drawn. */
    private Stage superfat() {
        Reacting reacting = Reacting.asWeighed(ledger);
        return Superfat.percent(reacting.reaching(ledger.lines()), reacting.equivalents(ledger.lines()))
                .as("superfat", "%", "with everything as the sheet takes it");
    }

    private Given drawsFigure() {
        return Ledger.figure("draws", "superfat.draws", (double) band.draws(), "", "how many times it was drawn");
    }

    private Account end(String sentence, double share, double outcome) {
        return new Account(
                        sentence, new Drawn("below", superfat(), List.of(Term.number(share), drawsFigure()), outcome))
                .note(DRAWN);
    }

    private Account chance() {
        return new Account(
                        "The share of the draws in which the superfat is under 0, so that alkali is left over.",
                        new Drawn("chance", superfat(), List.of(drawsFigure()), band.freeAlkaliProbability()))
                .note(DRAWN);
    }

    private Account draws() {
        Given block = new Given(
                "block", MonteCarlo.BLOCK, "", "draws of one block", "JCGM 101, 7.9.4, for an interval of 95 %");
        Given blocks = new Given(
                "blocks",
                (double) band.draws() / MonteCarlo.BLOCK,
                "",
                "blocks until both ends moved by less than " + Digits.figure(SuperfatBand.TOLERANCE) + " points",
                "JCGM 101, 7.9.4; the tolerance is this project's own rule");
        return new Account(
                "As many blocks as it took for the ends to settle, looked at after every few.", blocks.times(block));
    }

    private Account worst() {
        Reacting reacting = Reacting.asWeighed(ledger);
        List<Line> lines = ledger.lines();
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

    static Given least(Given given) {
        return given.spread().map(s -> at(given, s.low(), "at the least", s)).orElse(given);
    }

    private static Given most(Given given) {
        return given.spread().map(s -> at(given, s.high(), "at the most", s)).orElse(given);
    }

    private static Given at(Given given, double end, String which, Spread spread) {
        return new Given(given.name(), end, given.unit(), given.meaning() + ", " + which, spread.source());
    }

    /** The same model with one oil as exactly known as a certificate says it. */
    private Account certificate(String oil, double share, double outcome) {
        var exactness = ledger.tables().practice("certificate-exactness");
        UnaryOperator<Given> certified = given -> given.name().equals(Contents.saponificationName(ledger, oil))
                ? given.spread(Spread.certificate(given.amount(), exactness.high(), exactness.source()))
                : given;
        return new Account(
                        "What it would be with a certificate that says just what the sheet computes with, as exactly as"
                                + " certificates do.",
                        new Drawn("below", superfat().put(certified), List.of(Term.number(share)), outcome))
                .note(DRAWN);
    }
}
