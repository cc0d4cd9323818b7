package lyewright.makingsheet;

import java.util.List;
import lyewright.material.Names;
import lyewright.material.Tables;

/**
 * A vessel and what is weighed into it, in order.
 *
 * @param kind what it is
 * @param of key of what a cup is for, empty for jug and pot
 * @param portion name of the portion a cup is for, empty outside portions
 * @param emptyGrams its empty weight, 0 where it is tared
 * @param weighings in order
 */
public record Vessel(Kind kind, String of, String portion, double emptyGrams, List<Weighing> weighings) {

    /** What a vessel is. */
    public enum Kind {
        /** Where the alkali dissolves. */
        LYE_JUG("lye jug", "vessel-lye-jug"),
        /** Where the oils melt and the batter is made. */
        OIL_POT("oil pot", "vessel-oil-pot"),
        /** A small cup for one addition with its liquid, or for what the larger balance is too coarse for. */
        CUP("cup", "vessel-cup");

        private final String word;
        private final String practice;

        Kind(String word, String practice) {
            this.word = word;
            this.practice = practice;
        }

        /**
         * As written.
         *
         * @return lye jug, oil pot or cup
         */
        public String word() {
            return word;
        }

        /**
         * What one usually weighs empty, for choosing a balance where its own weight is not known.
         *
         * @param tables with the figures of common practice
         * @return grams
         */
        public double usualGrams(Tables tables) {
            return tables.practice(practice).high();
        }
    }

    /**
     * What it is called in data and by whoever asks for one of its figures.
     *
     * @return such as {@code oil pot}, {@code cup: green-clay for kelp}
     */
    public String name() {
        if (kind != Kind.CUP) {
            return kind.word();
        }
        return kind.word() + ": " + of + (portion.isEmpty() ? "" : " for " + portion);
    }

    /**
     * What it is called where people read it.
     *
     * @return such as {@code oil pot}, {@code cup: green clay (French green, illite) for kelp}
     */
    public String words() {
        return weighings.stream()
                .filter(weighing -> kind == Kind.CUP && weighing.line().key().equals(of))
                .map(weighing -> kind.word() + ": " + Names.inSentence(weighing.name())
                        + (portion.isEmpty() ? "" : " for " + portion))
                .findFirst()
                .orElseGet(this::name);
    }
}
