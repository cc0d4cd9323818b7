package lyewright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.chemistry.OxidationIndices;
import lyewright.material.FattyAcid;

/** The fatty acids of the oils, and how they keep, in words: facts, no marks. */
public final class FattyAcidWords {

    /** Acids of less than this are told in one line. */
    private static final double SMALL = 0.5;

    /** From so many mg KOH/g the two ways of reckoning a saponification value are told apart. */
    private static final double APART = 1;

    /** Percent of the oils from which it is said that a value is not of all of them. */
    private static final double LEFT_OUT = 0.05;

    private final OilPhaseAcids acids;
    private final Optional<Keeping> keeping;

    public FattyAcidWords(OilPhaseAcids acids) {
        this.acids = acids;
        this.keeping = Keeping.of(acids);
    }

    /** Said instead of all else where no oil's acids are known. */
    public Optional<String> noneKnown() {
        return keeping.isPresent()
                ? Optional.empty()
                : Optional.of("Not known of any of the oils: " + names(acids.unknown()) + ".");
    }

    /** Whether so much is not known that the gaps are to be told first. */
    public boolean patchy() {
        return keeping.map(Keeping::patchy).orElse(false);
    }

    /** Acids worth a row of their own, in the tables' order. */
    public List<Share> large() {
        return acids.acids().stream().filter(share -> share.percent() >= SMALL).toList();
    }

    /** An acid without the word: {@code lauric C12:0}. */
    public static String name(Share share) {
        FattyAcid acid = share.acid();
        String common = acid.commonName();
        return (common.endsWith(" acid") ? common.substring(0, common.length() - " acid".length()) : common) + " "
                + acid.code();
    }

    /** What is published, {@code 7.1 to 16.7}. */
    public static String range(Share share) {
        String low = Figures.fixed(share.lowPercent(), 1);
        String high = Figures.fixed(share.highPercent(), 1);
        return low.equals(high) ? low : low + " to " + high;
    }

    /** All other acids on one line, where there are any. */
    public Optional<Labelled> small() {
        String all = acids.acids().stream()
                .filter(share -> share.percent() < SMALL && share.highPercent() > 0)
                .map(share -> share.acid().code() + " " + Figures.upTo(share.percent(), 2))
                .collect(Collectors.joining(", "));
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new Labelled("under " + Figures.upTo(SMALL, 1) + " % each", all));
    }

    /** Saturated or not. */
    public Labelled bonds() {
        return new Labelled(
                "by double bonds",
                "none (saturated) " + Figures.percent(withBonds(0, 0), 1) + ", one "
                        + Figures.percent(withBonds(1, 1), 1) + ", two and more "
                        + Figures.percent(withBonds(2, 9), 1)
                        + ". The first make hard soap, the others soften it. [common practice]");
    }

    private double withBonds(int least, int most) {
        return acids.acids().stream()
                .filter(share ->
                        share.acid().doubleBonds() >= least && share.acid().doubleBonds() <= most)
                .mapToDouble(Share::percent)
                .sum();
    }

    /** What counts in none of this. */
    public List<Labelled> gaps() {
        List<Labelled> gaps = new ArrayList<>();
        if (!acids.unknown().isEmpty()) {
            gaps.add(new Labelled(
                    "not known",
                    Figures.percent(acids.unknownPercent(), 1) + " of the oils, which count in none of this: "
                            + names(acids.unknown())));
        }
        if (!acids.addedFats().isEmpty()) {
            gaps.add(new Labelled(
                    "from additions",
                    "soap too, but in neither, in percent of the oils' mass: " + names(acids.addedFats())));
        }
        return gaps;
    }

    private static String names(List<Gap> gaps) {
        return gaps.stream()
                .map(gap -> gap.name() + " " + Figures.percent(gap.percent(), 1))
                .collect(Collectors.joining(", "));
    }

    /** Saponification value, double bonds and keeping; empty where no acids are known. */
    public List<Labelled> values() {
        List<Labelled> values = new ArrayList<>();
        saponificationValue().ifPresent(text -> values.add(new Labelled("Saponification value", text)));
        keeping.ifPresent(known -> {
            values.add(new Labelled("Double bonds", doubleBonds(known.indices())));
            values.add(new Labelled("Keeping", known.brief()));
        });
        return values;
    }

    private Optional<String> saponificationValue() {
        if (acids.saponificationValue().isEmpty()) {
            return Optional.empty();
        }
        double exact = acids.saponificationValue().get();
        double method = acids.saponificationValueCd3a94().orElse(exact);
        String apart = exact - method >= APART
                ? ". They part where short and long acids mix, as in coconut: the method averages acids by mass, but a"
                        + " gram of a short one takes more alkali"
                : "";
        return Optional.of(Figures.fixed(exact, 1) + " mg KOH/g from " + ofWhat() + ", " + Figures.fixed(method, 1)
                + " by AOCS Cd 3a-94 (its formula from memory)" + apart
                + ". The alkali is reckoned from each oil's own value instead." + waxes());
    }

    /** Which acids a value is from: not of all oils, where some are not known or are wax. */
    private String ofWhat() {
        double without = acids.unknownPercent()
                + acids.waxes().stream().mapToDouble(Gap::percent).sum();
        return without < LEFT_OUT
                ? "these acids"
                : "the acids of " + Figures.percent(100 - without, 1) + " of the oils";
    }

    private String waxes() {
        return acids.waxes().isEmpty()
                ? ""
                : " Left out of it and of the iodine value, since wax is no glyceride: " + names(acids.waxes()) + ".";
    }

    private String doubleBonds(OxidationIndices indices) {
        String iodine = acids.iodineValue()
                .map(value -> "iodine value " + Figures.fixed(value, 1) + " g/100 g by AOCS Cd 1c-85; ")
                .orElse("");
        return iodine + "oxidisability " + Figures.fixed(indices.oxidisability(), 1) + ", COX "
                + Figures.fixed(indices.cox(), 2) + ", PI " + Figures.fixed(indices.peroxidisability(), 1) + ", APE "
                + Figures.fixed(indices.allylic(), 1) + ", BAPE " + Figures.fixed(indices.bisAllylic(), 1)
                + " (formulas from memory)";
    }
}
