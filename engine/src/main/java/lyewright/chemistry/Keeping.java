package lyewright.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
 * @param unknown oils whose acids nobody here knows, and fats of additions likewise
 */
public record Keeping(OxidationIndices indices, List<Share> uncounted, List<Gap> unknown) {

    /** Percent of the oils from which what is not known is too much for the rest to stand for all; this project's own rule. */
    private static final double MUCH_UNKNOWN = 20;

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
        List<Gap> unknown = Stream.concat(acids.unknown().stream(), acids.addedFats().stream())
                .toList();
        return Optional.of(new Keeping(indices, uncounted, unknown));
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
     * Whether so much is not known that the indices do not speak for the whole.
     *
     * @return true over a fifth of the oils' mass
     */
    public boolean patchy() {
        return unknown.stream().mapToDouble(Gap::percent).sum() > MUCH_UNKNOWN;
    }

    /**
     * The same for a page: what is not known where it is much, else which index, beside which measured fats, and one caveat.
     *
     * @return a few sentences as one
     */
    public String brief() {
        return KeepingWords.brief(this);
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
