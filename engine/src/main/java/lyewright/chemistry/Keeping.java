package lyewright.chemistry;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;

/**
 * What a formula's fatty acids mean for keeping: indices, and sentences that hold them against measured fats. Facts to weigh,
 * no marks and no limit.
 *
 * <p>Counted are C18:1, C18:2 and both kinds of C18:3; of acids with four and more double bonds all. Other acids with double
 * bonds, ricinoleic acid among them, stand in none of the formulas: they are told apart.
 *
 * @param indices of the known acids
 * @param uncounted acids with double bonds that no index counts, largest first
 * @param unknown oils whose acids nobody here knows
 */
public record Keeping(OxidationIndices indices, List<Share> uncounted, List<Gap> unknown) {

    /** Copies its lists. */
    public Keeping {
        uncounted = List.copyOf(uncounted);
        unknown = List.copyOf(unknown);
    }

    /**
     * Reckons it.
     *
     * @param acids a formula's acids
     * @return its keeping; empty where no oil's acids are known
     */
    public static Optional<Keeping> of(OilPhaseAcids acids) {
        if (!acids.known()) {
            return Optional.empty();
        }
        OxidationIndices indices = new OxidationIndices(
                acids.percent("C18:1"),
                acids.percent("C18:2"),
                acids.percent("C18:3") + acids.percent("C18:3n6"),
                withBonds(acids, 4),
                withBonds(acids, 5),
                withBonds(acids, 6));
        List<Share> uncounted = acids.acids().stream()
                .filter(Keeping::uncounted)
                .sorted((one, other) -> Double.compare(other.percent(), one.percent()))
                .toList();
        return Optional.of(new Keeping(indices, uncounted, acids.unknown()));
    }

    private static double withBonds(OilPhaseAcids acids, int bonds) {
        return acids.acids().stream()
                .filter(share -> share.acid().doubleBonds() == bonds)
                .mapToDouble(Share::percent)
                .sum();
    }

    private static boolean uncounted(Share share) {
        int bonds = share.acid().doubleBonds();
        String code = share.acid().code();
        return bonds > 0 && bonds < 4 && !code.equals("C18:1") && !code.equals("C18:2") && !code.startsWith("C18:3");
    }

    /**
     * What it means, in sentences a maker understands, each with its source in brackets.
     *
     * @return between three and five sentences
     */
    public List<String> sentences() {
        return KeepingWords.of(this);
    }
}
