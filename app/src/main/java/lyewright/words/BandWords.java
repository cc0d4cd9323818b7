package lyewright.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.makingsheet.SuperfatBand;
import lyewright.material.Names;

/** How sure a superfat is, what that hangs on, and what would narrow it, in words. */
public final class BandWords {

    private static final int MOST_NAMED = 4;

    /** Percent of the doubt from which an input is named. */
    private static final double LEAST_NAMED = 0.5;

    /** Percent from which all others are told of together. */
    private static final double LEAST_TOLD = 0.05;

    private final SuperfatBand band;

    public BandWords(SuperfatBand band) {
        this.band = band;
    }

    /** The band in numbers, for where it is not drawn; no capital at its head, no full stop. */
    public String inNumbers() {
        return "19 times in 20 it lies between " + Figures.fixed(band.lowPercent(), 1) + " and "
                + Figures.percent(band.highPercent(), 1) + ", all at its worst at once comes to "
                + Figures.percent(band.worstPercent(), 1);
    }

    /** What its width hangs on, the most first; empty where nothing is in doubt. What is too little goes with the rest. */
    public Optional<String> hangsOn() {
        if (band.contributions().isEmpty()) {
            return Optional.empty();
        }
        List<SuperfatBand.Contribution> named = band.contributions().stream()
                .filter(c -> c.percentOfVariance() >= LEAST_NAMED)
                .limit(MOST_NAMED)
                .toList();
        double rest = 100
                - named.stream()
                        .mapToDouble(SuperfatBand.Contribution::percentOfVariance)
                        .sum();
        String told = named.stream()
                .map(c -> c.input() + " " + Figures.percent(c.percentOfVariance(), 0))
                .collect(Collectors.joining(", "));
        return Optional.of(rest >= LEAST_TOLD ? told + ", all else " + share(rest) : told);
    }

    private static String share(double percent) {
        return percent < LEAST_NAMED ? "under 1 %" : Figures.percent(percent, 0);
    }

    /** What counts without any doubt, though there is some. */
    public Optional<String> takenAsExact() {
        return band.takenAsExact().isEmpty() ? Optional.empty() : Optional.of(String.join(", ", band.takenAsExact()));
    }

    /** Which oil's certificate of analysis would narrow it most, and to what. */
    public Optional<String> certificate() {
        return band.certificateGain()
                .map(gain -> "for " + Names.inSentence(gain.oil()) + " would narrow it most: to between "
                        + Figures.fixed(gain.lowPercent(), 1) + " and "
                        + Figures.percent(gain.highPercent(), 1) + ".");
    }
}
